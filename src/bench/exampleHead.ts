/** The demo head that the example runs in assets/bench are made for, by the name that its file gives it. */
export const EXAMPLE_HEAD = 'Dunlin 260, turned nut';

/** A ref that gives an element the focus when it is made: at once, or when the dialog around it opens. */
export function focusFirst(element: HTMLElement | null): void {
  element?.setAttribute('autofocus', '');
  element?.focus();
}

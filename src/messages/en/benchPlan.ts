export const BENCH_PLAN = {
  'bench.rung.drag': 'Drag at rest',
  'bench.rung.bare': 'Bare grip',
  'bench.rung.bolt': 'With bolt',
  'bench.rung.ordinary': 'With blade and ordinary bolt',
  'bench.rung.asDesigned': 'As designed',
  'bench.safety.guard': 'A guard stands all round the rotor and holds what may come off.',
  'bench.safety.eyes': 'Eye protection on, for everybody in the room.',
  'bench.safety.plane': 'Nobody and nothing that matters is in the plane of the disc.',
  'bench.safety.bolt': 'No bolt that was bent or overtightened is used again.',
  'bench.safety.nut': 'A new locking nut: one that was used does not hold as it did.',
  'bench.safety.nothingLoose': 'Every part is fitted, counted and tight; tools and keys are away.',
  'bench.safety.power': 'The power can be cut from outside the plane of the disc.',
  'bench.safety.slow': 'Start slow, listen, and go up in steps.',
  'bench.safety.stop': 'The rotor stands still, power off, before a hand goes near.',
  'bench.safety.inspect':
    'After each run bolts, nuts, blades and grips are looked at for marks and cracks.',
  'bench.safety.note':
    'A result is an estimate. Parts that carry blades are the responsibility of their maker, and of a licensed engineer where rules apply.',
} as const;

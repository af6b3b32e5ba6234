/** Entries: friction, and where it keeps the grip. */
export const HELP_HOLDING = {
  'help.friction.name': 'Friction',
  'help.friction.what':
    'What resists the turning of one grip: its share of the linkage\u2019s drag and its bearings under load. To turn it against the moment takes moment plus friction; on the way back only moment less friction is felt. The same at rest and in motion here (Coulomb), the starting factor included. A rotor shakes, and shaking wears friction down: what is just held here may creep in flight.',
  'help.friction.sign': 'A size: it works against whichever way the grip turns.',
  'help.dragAtRest.name': 'Drag at rest',
  'help.dragAtRest.what':
    'The force that just moves the slider with the rotor standing still, the whole head. Measured against slider travel; it is larger near the ends. About 0.3 to 0.6 N on a small linkage (common practice).',
  'help.dragAtRest.sign': 'A size.',
  'help.bearingFriction.name': 'Bearing friction',
  'help.bearingFriction.what':
    'Half of coefficient times load times diameter for each bearing, times the starting factor for one that has to start. The thrust bearing carries the pull, so this grows with the square of the speed.',
  'help.bearingFriction.sign': 'A size.',
  'help.holdingBand.name': 'Holding band',
  'help.holdingBand.what':
    'The pitches at which friction is at least as large as the moment: let go there, the grip stays. Drawn as arcs on the dial. Shown is what friction has to spare at this pitch.',
  'help.holdingBand.sign': 'To spare, positive: held here. Negative: it moves.',
  'help.holdingBand.formula': '|M| \u2264 M_f',
} as const;

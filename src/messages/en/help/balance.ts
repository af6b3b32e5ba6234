/** Entries: whether the grips match. */
export const HELP_BALANCE = {
  'help.unbalance.name': 'Static unbalance',
  'help.unbalance.what':
    'The grips\u2019 masses times the distances of their centres from the shaft, added as arrows. Alike grips leave nothing.',
  'help.unbalance.sign': 'A size, with the angle at which it lies.',
  'help.unbalance.formula': 'U = |\u2211 m r|',
  'help.balanceGrade.name': 'Balance grade',
  'help.balanceGrade.what':
    'Unbalance times speed over the rotor\u2019s mass: the speed of the wobble of a free rotor. The standard\u2019s grades G are in mm/s.',
  'help.balanceGrade.sign': 'Positive; smaller is better.',
  'help.shaftForce.name': 'Shaking force',
  'help.shaftForce.what':
    'What the unbalance pulls on the shaft at the design\u2019s speed, going round with it.',
  'help.shaftForce.sign': 'A size.',
} as const;

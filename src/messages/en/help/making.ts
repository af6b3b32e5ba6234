/** Entries: what cancels, and how closely parts must be made. */
export const HELP_MAKING = {
  'help.lumpToNeutral.name': 'Weight to neutral',
  'help.lumpToNeutral.what':
    'How much mass, as a small lump on the bolt\u2019s axis 10 mm from the feathering axis, would bring J_yy \u2212 J_zz to zero. At twice the distance a quarter of it does.',
  'help.lumpToNeutral.sign': 'Positive: so much is missing. Negative: so much is too many.',
  'help.massTolerance.name': 'Mass window',
  'help.massTolerance.what':
    'How far a part\u2019s mass may be out before something is wrong: the step of the scale where it was weighed, 2 % where it is worked out from dimensions (common practice). Below, what 2 % of the part does to J_yy \u2212 J_zz.',
  'help.massTolerance.sign': 'Either way.',
  'help.tolerance.name': 'Tolerance and slope',
  'help.tolerance.what':
    'How far one dimension, density or mass may lie from its value, and how much the force changes for a step of it. Slope times tolerance says which number matters. Worked out under Neutralise, How closely.',
  'help.tolerance.sign': 'Slope positive: a larger value moves the force toward tension.',
  'help.tolerance95.name': 'Scatter of the force',
  'help.tolerance95.what':
    'How far apart the forces of heads made within their tolerances lie. To first order the scatters of all numbers add as squares. The tolerance run makes heads at random and needs no such assumption.',
  'help.tolerance95.sign': 'A size.',
  'help.tolerance95.formula': '\u03c3_T\u00b2 = \u2211 (s_i \u03c3_i)\u00b2',
  'help.chance.name': 'Chance within the target',
  'help.chance.what':
    'The share of heads of a tolerance run whose force stays within the target at every pitch in use, with the error that so many heads leave.',
  'help.chance.sign': 'From 0 to 100 %.',
  'help.matching.name': 'Matching of the grips',
  'help.matching.what':
    'How far the forces and the masses of the grips of one rotor differ when each is made within its tolerances. Two blades of about equal mass and layout need about the same bolt (common practice).',
  'help.matching.sign': 'A size.',
  'help.clearance.name': 'Clearance',
  'help.clearance.what':
    'The nearest distance of a turning part to a keep-out through all pitches that the linkage allows, and all the way round.',
  'help.clearance.sign': 'Positive: a gap. Negative: it enters by so much.',
} as const;

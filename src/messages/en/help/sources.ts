/** Where formulas and values are from. */
export const HELP_SOURCES = {
  'help.source.definition': 'Definition.',
  'help.source.mechanics':
    'General mechanics: force is mass times acceleration, moment is force times lever.',
  'help.source.propellerMoment':
    'The centrifugal moment of a blade about its pitch axis, as textbooks of propellers and helicopters give it (from memory); here derived from the force on every element and held against an independent multibody engine.',
  'help.source.virtualWork':
    'Principle of virtual work, general mechanics: what the grip does in turning, the slider takes in moving.',
  'help.source.racketEffect':
    'Euler\u2019s equations of a rigid body, general mechanics (from memory).',
  'help.source.ellipse':
    'Principal axes of a symmetric tensor in a plane, general mechanics (from memory).',
  'help.source.plate':
    'That a thin free plate swings once a turn: textbooks of helicopters (from memory).',
  'help.source.iso76': 'ISO 76, equivalent static load of ball bearings (from memory).',
  'help.source.en1993': 'EN 1993-1-8, bolts in shear and pins in bending (partly from memory).',
  'help.source.iso898': 'ISO 898-1 and ISO 3506-1, strength classes of bolts.',
  'help.source.iso21940': 'ISO 21940-11, balance quality of rotors.',
  'help.source.gum':
    'Guide to the expression of uncertainty in measurement, JCGM 100 (from memory).',
  'help.source.coulomb':
    'Dry friction, general mechanics: it resists up to its size and no further.',
  'help.source.bearingCatalogues':
    'Form of the formula as bearing makers\u2019 catalogues give it (from memory); coefficients are those in the parts.',
  'help.source.momentum':
    'Blade elements with momentum balance and tip loss in hover, as textbooks give it (from memory). An estimate.',
  'help.source.flatPlate':
    'Thin sections turn about the quarter chord; a stalled flat plate about its middle: textbooks of aerodynamics (from memory).',
  'help.source.trade': 'Common practice, without a source.',
  'help.source.dynamics': 'A mass on a spring, general mechanics.',
  'help.source.statistics': 'Textbook statistics (from memory).',
  'help.source.ours': 'How this page defines it.',
} as const;

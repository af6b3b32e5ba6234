/** Entries: what turns the grip. */
export const HELP_TURNING = {
  'help.speed.name': 'Speed',
  'help.speed.what':
    'How fast the rotor spins. Everything that the spin does to the mass goes with the square of it: half again the speed is more than twice the force. Drag at rest does not grow with it.',
  'help.speed.sign': 'The moment of the mass is the same for both ways round.',
  'help.pitch.name': 'Pitch angle',
  'help.pitch.what':
    'How far the grip is turned about the feathering axis from flat. At flat pitch the chord lies in the plane of rotation.',
  'help.pitch.sign': 'Positive raises the leading edge.',
  'help.pitchInUse.name': 'Pitch in use',
  'help.pitchInUse.what':
    'How far either way the control moves the pitch in work. The verdict, the loads and the force to hold are judged within it.',
  'help.pitchInUse.sign': 'A size: it counts both ways from flat.',
  'help.featheringMoment.name': 'Feathering moment',
  'help.featheringMoment.what':
    'What turns one grip about its feathering axis while it spins at a speed that is held, its parts taken as rigid: the mass, and whatever else the design counts, the push rod\u2019s own mass, the air and a blade that swings on its bolt. The air is an estimate, the mass\u2019s share exact. In books the share of the mass is the propeller moment or centrifugal twisting moment.',
  'help.featheringMoment.sign': 'Positive raises the leading edge.',
  'help.partMoment.name': 'Moment of a part',
  'help.partMoment.what':
    'What one part\u2019s mass adds to the feathering moment at this pitch. The shares add up to the mass\u2019s whole. Of the selected part; with nothing selected, all of them.',
  'help.partMoment.sign': 'Positive raises the leading edge.',
  'help.torqueOffset.name': 'Torque offset',
  'help.torqueOffset.what':
    'How far the feathering axis passes beside the shaft axis, the way the blade travels. It adds a moment once a turn of pitch, where the centre of mass lies off the feathering axis; weight spread evenly along the bolt both ways does not cancel it.',
  'help.torqueOffset.sign': 'Positive: the axis lies ahead, toward the blade\u2019s travel.',
  'help.precone.name': 'Precone',
  'help.precone.what':
    'How far the feathering axis is tilted up from the plane of rotation. It weakens what the spread of mass does a little (by cos\u00b2 \u03b2) and adds a moment once a turn of pitch, where mass far out lies off the feathering axis (J_xy, J_xz).',
  'help.precone.sign': 'Positive tilts the tip up, toward thrust.',
  'help.rodMoment.name': 'Push rod\u2019s own moment',
  'help.rodMoment.what':
    'The push rod goes round with the rotor too, and its own mass pushes or pulls the arm. It is worked out for the whole rod between its two balls, not as half of it at one end.',
  'help.rodMoment.sign': 'Positive raises the leading edge.',
  'help.rodMoment.formula':
    'M_rod = \u03a9\u00b2 m_r ( B \u00b7 B\u2032 / 3 + S \u00b7 B\u2032 / 6 ) of an even, thin rod',
  'help.airMoment.name': 'Moment of the air',
  'help.airMoment.what':
    'What the air on the blade turns the grip by: the force on each strip of the blade times how far its centre of pressure lies ahead of the axis, and the section\u2019s own moment. An estimate; beyond about 20 degrees it takes over (common practice).',
  'help.airMoment.sign': 'Positive raises the leading edge.',
  'help.airMoment.formula': 'M_air = \u222b ( d \u00b7 dN + dM_section ) along the span',
  'help.bladeSwing.name': 'Blade swinging on its bolt',
  'help.bladeSwing.what':
    'A blade that is free on its bolt swings until its pull passes through the bolt. That moves its mass about the feathering axis; this is what it changes in the moment. A clamped blade keeps its angle, and nothing of it counts.',
  'help.bladeSwing.sign': 'Positive raises the leading edge.',
} as const;

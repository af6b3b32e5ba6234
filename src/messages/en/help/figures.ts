/** What the small figures of the glossary show, in words, and the labels in them. */
export const HELP_FIGURES = {
  'help.figure.pitch':
    'Seen from the tip: the chord turned by the pitch angle, leading edge up, over the plane of rotation.',
  'help.figure.spread':
    'Two sections seen from the tip: a blade, wide along the chord, lies flat; a bolt, long square to it, stands up.',
  'help.figure.product':
    'A ball ahead of the axis and above the chord plane; the grip rests turned down by the angle that the long axis was tilted up.',
  'help.figure.ellipse':
    'Three ellipses: long along the chord, which centres; round, which is neutral; long along the bolt, which flees.',
  'help.figure.lever':
    'Arm, ball and push rod seen from the tip. The lever is the distance of the rod\u2019s line from the feathering axis.',
  'help.figure.overCentre': 'Arm and push rod in one line through the axis: the lever is nothing.',
  'help.figure.hills':
    'Energy against pitch: a ball in a hollow is a rest angle, filled; one on a top a flee angle, hollow.',
  'help.figure.band':
    'Moment against pitch between two lines of friction: where the curve lies between them, the grip is held.',
  'help.figure.plan':
    'A grip and blade from above: shaft, feathering axis, station, chord, leading edge and quarter chord.',
  'help.figure.flap':
    'From behind: weight below the plane of rotation is pulled up toward it and lifts the tip; weight above bends it down; thrust lifts it.',
  'help.label.planeOfRotation': 'plane of rotation',
  'help.label.leadingEdge': 'leading edge',
  'help.label.centres': 'centres',
  'help.label.flees': 'flees',
  'help.label.atFlatPitch': 'at flat pitch',
  'help.label.whereItRests': 'where it rests',
  'help.label.ball': 'ball',
  'help.label.pushRod': 'push rod',
  'help.label.station': 'station',
  'help.label.chord': 'chord',
  'help.label.shaft': 'shaft',
  'help.label.featheringAxis': 'feathering axis',
  'help.label.bendsTheTipDown': 'bends the tip down',
  'help.label.bendsItUp': 'bends it up',
  'help.label.thrust': 'thrust',
  'help.label.rests': 'rests',
  'help.label.pitch': 'pitch',
  'help.label.held': 'held',
  'help.label.friction': 'friction',
  'help.label.moment': 'moment',
  'help.label.neutral': 'neutral',
} as const;

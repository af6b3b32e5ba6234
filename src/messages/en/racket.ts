/** Learn: the racket, a body that is thrown and free. */
export const RACKET = {
  'racket.axis': 'Thrown about',
  'racket.axis.least': 'the handle (least)',
  'racket.axis.middle': 'across the handle (middle)',
  'racket.axis.greatest': 'across the hoop (greatest)',
  'racket.moment.least': 'handle: least',
  'racket.moment.middle': 'across the handle: middle',
  'racket.moment.greatest': 'across the hoop: greatest',
  'racket.beside': 'Error',
  'racket.degrees': '{angle}\u00b0',
  'racket.throw': 'Throw',
  'racket.pause': 'Pause',
  'racket.timeLabel': 'Time',
  'racket.seconds': '{time} s',
  'racket.time': 'time, s',
  'racket.slowed': '(slowed {times} times)',
  'racket.still': 'This device asks for little motion: move the time yourself.',
  'racket.said.none': 'Not turned over',
  'racket.said.once': 'Turned over once',
  'racket.said': 'Turned over {flips} times',
  'racket.picture':
    'A racket, a hoop on a handle, tumbling in the air: its angular momentum points up and stays, its spin wanders.',
  'racket.noWebGl':
    'This browser cannot draw the 3D view (WebGL 2 is missing or switched off). The curve and the numbers tell the same.',
  'racket.plot': 'Spin about the thrown axis; circles: it turns over',
  'racket.plot.none':
    'Spin about the axis {axis} against time: it keeps its sign, the racket does not turn over.',
  'racket.plot.flips':
    'Spin about the axis {axis} against time: it changes its sign, the racket turns over, after {times} seconds.',
  'racket.key.momentum': 'momentum stays',
  'racket.key.spin': 'spin wanders',
  'racket.key.trace': 'momentum seen from the body',
  'racket.facts': 'The three throws, and the gripped blade',
  'racket.column.axis': 'Axis',
  'racket.column.moment': 'Moment',
  'racket.column.turns': 'Turns over',
  'racket.every': 'every {time} s',
  'racket.never': 'never',
  'racket.once': 'it turns',
  'racket.made':
    'A made-up racket, 1.5 turns a second, watched for longer than a throw lasts; times by the exact solution (elliptic functions). A throw ten times cleaner turns over later, not never. Never only if the spin lies on the axis exactly.',
  'racket.free.head': 'Free.',
  'racket.free':
    'Gravity pulls at the centre of mass and turns nothing, and the air is left out: energy and angular momentum stay. About the axes of the least and the greatest moment of inertia a small error stays small; about the middle one it grows, and the racket turns over, back, and over again.',
  'racket.gripped.head': 'Gripped.',
  'racket.gripped':
    'A blade in its grip is not free: shaft and rotor make it turn about the shaft at one speed, whatever it does, and the motor pays for it. Bearings hold its long axis out from the shaft. One movement alone is left to it, feathering.',
  'racket.shared.head': 'What both share.',
  'racket.shared':
    'One term of Euler\u2019s equations: what turns a body about its long axis is the difference of the two other moments times the two other spins, (I_yy \u2212 I_zz) \u03c9_y \u03c9_z = (J_zz \u2212 J_yy) \u03c9_y \u03c9_z. In the racket thrown about its middle axis this and the like term of the third axis feed each other, and the error grows; in the grip (no precone), with \u03c9_y = W sin t and \u03c9_z = W cos t, it alone is left, and is the moment of the mass that this page shows. A round spread makes it vanish.',
  'racket.rests.head': 'Where it rests.',
  'racket.rests':
    'So the grip does not turn over and over. It rests where its moment of inertia about the shaft is as great as feathering can make it: a blade flat in the plane of the disc, a lone bolt turned into it. A quarter turn on, that moment is as small as feathering can make it, and there the grip flees. For a blade that is the middle axis of the three, the one about which the racket turns over. The least one is the long axis itself: a free racket spins well about it, a grip never can.',
} as const;

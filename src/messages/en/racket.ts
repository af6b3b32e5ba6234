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
    'A made-up racket, 1.5 turns a second; times by the exact solution (elliptic functions). A throw ten times cleaner turns over later, not never.',
  'racket.free.head': 'Free.',
  'racket.free':
    'Nothing turns the racket in the air: its energy and its angular momentum stay. About the axes of the least and the greatest moment of inertia a small error stays small; about the middle one it grows, and the racket turns over, back, and over again.',
  'racket.gripped.head': 'Gripped.',
  'racket.gripped':
    'A blade in its grip is not free: shaft and rotor force it to turn about the shaft at one speed, whatever it does, and the motor pays for it. One movement alone is left to it, feathering.',
  'racket.shared.head': 'What both share.',
  'racket.shared':
    'One term of Euler\u2019s equations: what turns a body about its long axis is the difference of the two other moments times the two other spins, (I_yy \u2212 I_zz) \u03c9_y \u03c9_z = (J_zz \u2212 J_yy) \u03c9_y \u03c9_z. In the racket it makes the error grow; in the grip, with \u03c9_y = W sin t and \u03c9_z = W cos t, it is the moment that this page shows, and a round spread makes it vanish.',
  'racket.rests.head': 'Where it rests.',
  'racket.rests':
    'So the grip does not turn over and over. It rests where its moment of inertia about the shaft is greatest, a blade flat in the plane of the disc, a lone bolt turned into it. About the least one, where a free racket spins well, a gripped one flees.',
} as const;

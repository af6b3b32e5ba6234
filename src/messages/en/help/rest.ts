/** Entries: where the grip goes by itself. */
export const HELP_REST = {
  'help.restAngle.name': 'Rest angle',
  'help.restAngle.what':
    'A pitch at which nothing turns the grip and to which it comes back: a stable equilibrium, a filled circle. For the spread of mass alone it is a formula; with rod, air or offset counted it is searched for, and both are shown.',
  'help.restAngle.sign': 'Positive: it rests with the leading edge up.',
  'help.restAngle.formula': 'tan 2\u03b8 = \u22122 J_yz / (J_yy \u2212 J_zz)',
  'help.fleeAngle.name': 'Flee angle',
  'help.fleeAngle.what':
    'A pitch at which nothing turns the grip but from which it runs to either side: an unstable equilibrium, a hollow circle. For the spread of mass alone it is square to the rest angle.',
  'help.fleeAngle.sign': 'Positive: with the leading edge up.',
  'help.fleeAngle.formula': '\u03b8_flee = \u03b8_rest \u00b1 90\u00b0, mass alone',
  'help.stiffness.name': 'Stiffness at rest',
  'help.stiffness.what':
    'How fast the moment that brings it back grows when the grip is pushed off its rest angle: the slope of the curve where it crosses zero, with its sign turned. It is what the control feels as centring.',
  'help.stiffness.sign': 'Positive at a rest angle, negative at a flee angle.',
  'help.stiffness.formula': 'k = \u2212dM/d\u03b8 at rest',
  'help.frequency.name': 'Frequency',
  'help.frequency.what':
    'How fast a grip swings about its rest angle when it is let go and swings little, friction and damping left out. The push rod\u2019s mass swings with it; the slider\u2019s is set under Let go and not counted here. Wide swings are slower. A thin free blade swings once a turn of the rotor; weight along the bolt makes it slower, until a neutral grip does not swing at all.',
  'help.frequency.sign': 'Positive.',
  'help.frequency.formula': '\u03c9\u00b2 = k / (J_yy + J_zz + I_rod)',
  'help.energy.name': 'Energy',
  'help.energy.what':
    'The work that the moment would do on the way from this pitch to flat, at a speed that is held: a grip rolls into the hollows and off the tops. Rest angles are hollows, flee angles tops. The motor gives and takes what the spin\u2019s own energy changes by.',
  'help.energy.sign': 'Positive: this pitch lies above flat.',
  'help.energy.formula': 'M = \u2212dV/d\u03b8',
} as const;

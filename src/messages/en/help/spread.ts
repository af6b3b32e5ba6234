/** Entries: what the mass of the head is like. */
export const HELP_SPREAD = {
  'help.mass.name': 'Mass',
  'help.mass.what':
    'Everything that turns with the grip, added up. Hidden parts are left out, and so is the push rod, which does not turn with it. What was put on a scale counts before what is worked out.',
  'help.mass.sign': 'Positive. Mass alone does not turn the grip: where it sits does.',
  'help.mass.formula': 'm = \u222b dm',
  'help.centreOfMass.name': 'Centre of mass',
  'help.centreOfMass.what':
    'Where the mass of the head would sit if it were one point: x outboard from the shaft, y toward the leading edge, z square to both. S is the first moment: mass times distance, added up.',
  'help.centreOfMass.sign':
    'x positive outboard, y positive toward the leading edge, z positive up at flat pitch.',
  'help.centreOfMass.formula': 'x_c = \u222b x dm / m',
  'help.jxx.name': 'J_xx, spread along the span',
  'help.jxx.what':
    'Every bit of mass times its distance from the shaft squared. It takes no part in turning the grip; it is there for the pull and for the principal axes.',
  'help.jxx.sign': 'Never negative.',
  'help.jxx.formula': 'J_xx = \u222b x\u00b2 dm',
  'help.jyy.name': 'J_yy, spread along the chord',
  'help.jyy.what':
    'Every bit of mass times its distance squared from the feathering axis, along the chord. Wide blades make it large, and it lays the grip flat.',
  'help.jyy.sign': 'Never negative. More of it centres.',
  'help.jyy.formula': 'J_yy = \u222b y\u00b2 dm',
  'help.jzz.name': 'J_zz, spread along the bolt',
  'help.jzz.what':
    'The same square to the chord, the way the blade bolt stands. Distance counts squared: a little mass far out along the bolt does the work of much mass close in.',
  'help.jzz.sign': 'Never negative. More of it flees flat pitch.',
  'help.jzz.formula': 'J_zz = \u222b z\u00b2 dm',
  'help.product.name': 'J_yz, product of inertia',
  'help.product.what':
    'How far the mass lies off the chord plane on one side: mass ahead and above, or behind and below. It tilts the rest angle, and at flat pitch it is all the moment that the mass makes.',
  'help.product.sign':
    'Positive: more mass ahead and above (or behind and below); at flat pitch it then lowers the leading edge. Negative: it raises it.',
  'help.product.formula': 'J_yz = \u222b y z dm',
  'help.difference.name': 'J_yy \u2212 J_zz',
  'help.difference.what':
    'How much wider the mass is spread along the chord than along the bolt. It decides whether flat pitch is a rest angle or a flee angle, and how hard. To cancel it is the point of the right nut.',
  'help.difference.sign':
    'Positive centres, negative flees flat pitch, zero with J_yz zero is neutral.',
  'help.difference.formula': 'A = J_yy \u2212 J_zz',
  'help.share.name': 'Share of a part',
  'help.share.what':
    'The same difference for one part alone. Shares add up to the head\u2019s, so the list of parts shows who pulls which way. Of the selected part; with nothing selected of the largest.',
  'help.share.sign': 'Positive: pulls the grip flat. Negative: pulls it away from flat.',
  'help.share.formula': 'A_part = J_yy \u2212 J_zz of the part',
  'help.spreadEllipse.name': 'Spread ellipse',
  'help.spreadEllipse.what':
    'The mass as seen along the feathering axis: how far it lies from the axis on the root mean square, in every direction. It is drawn at twice that size. The long axis seeks the plane of rotation; a round one is neutral.',
  'help.spreadEllipse.sign':
    '\u03c6 turns from the leading edge up to the long axis. The grip rests where the long axis has turned into the plane of rotation.',
  'help.principalAxes.name': 'Principal axes',
  'help.principalAxes.what':
    'Three square axes through the centre of mass about which the head could spin freely without wobbling, with the moment of inertia about each. The page finds them as eigenvectors; their sum is twice the spread about the centre, which makes a check.',
  'help.principalAxes.sign': 'Never negative: least, middle and greatest.',
  'help.principalAxes.formula': 'I = tr(J_c) 1 \u2212 J_c',
  'help.featheringInertia.name': 'Inertia about the feathering axis',
  'help.featheringInertia.what':
    'How hard the grip is to turn about its own axis, quite apart from what drives it. With the share of push rod and slider it sets how fast a grip that is let go moves.',
  'help.featheringInertia.sign': 'Positive.',
} as const;

/** Help on quantities and words, and the glossary. Loaded when it is first opened: `state/help/helpText`. */
export const HELP_TEXT = {
  'help.group.spread': 'Spread of mass',
  'help.group.turning': 'What turns the grip',
  'help.group.control': 'Rod, slider and servo',
  'help.group.rest': 'Rest and flee',
  'help.group.holding': 'Friction',
  'help.group.loads': 'Loads',
  'help.group.balance': 'Balance',
  'help.group.making': 'Cancelling and making',
  'help.group.bench': 'At the bench',
  'help.group.words': 'Words',

  'help.sign': 'Sign',
  'help.here': 'With the numbers of this head',
  'help.hereAt': 'With the numbers of this head, at {pitch} of pitch',
  'help.hereLoads':
    'With the numbers of this head, at {pitch} of pitch and the design\u2019s speed',
  'help.source': 'Where it is from',
  'help.see': 'See also',
  'help.explained': 'Explained:',
  'help.more': 'More in Words',
  'help.close': 'Close',
  'help.about': 'What is {name}?',
  'help.worth':
    'Worked in kg, m, s and N and shown in your units, so the shown digits need not multiply out to the last one.',
  'help.none': 'No number here: {why}',
  'help.foundByPage': 'found by search, where the total moment vanishes',
  'help.foundByLever': 'found by search, where the lever vanishes',
  'help.asSet': 'as the design has it',
  'help.valueOf': 'worked out by the page, no short formula',

  'help.search': 'Find a word or a quantity',
  'help.count': '{count} entries',
  'help.countOne': '1 entry',
  'help.valuesAt': 'numbers at {pitch}',
  'help.nothing': 'Nothing by that name. Try another word.',
  'help.print': 'Print the glossary',
  'help.printTitle': 'Words and quantities: {name}',
  'help.list': 'Entries',
  'help.room': 'Words and quantities',
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

  'help.none.parts': 'no part with mass is in the sum.',
  'help.none.reach': 'the push rod does not reach at this pitch.',
  'help.none.arm': 'the head has no pitch arm.',
  'help.none.overCentre': 'the arm is over centre at this pitch.',
  'help.none.neverOverCentre': 'the arm does not go over centre within \u00b190\u00b0.',
  'help.none.servo': 'the arms of bell crank and servo are not given.',
  'help.none.servoReach': 'bell crank or servo cannot swing so far at this pitch.',
  'help.none.still': 'the rotor stands still.',
  'help.none.neutral': 'the head is neutral: it rests at every pitch.',
  'help.none.rest': 'there is no rest angle within \u00b190\u00b0.',
  'help.none.flee': 'there is no flee angle within \u00b190\u00b0.',
  'help.none.friction': 'friction is not counted, or nothing gives it.',
  'help.none.drag': 'no drag at rest is given, or there is no linkage at this pitch.',
  'help.none.bearings': 'no bearing is drawn.',
  'help.none.air': 'the air is not counted, or no blade is drawn.',
  'help.none.rod': 'no push rod is drawn, or its mass is not counted.',
  'help.none.lag': 'no blade swings on its bolt here, or it is clamped.',
  'help.none.bolt': 'no bolt sits in the fork.',
  'help.none.limit': 'nothing is loaded, or no limit is known.',
  'help.none.hub': 'the hub\u2019s mass is not given, or the rotor stands still.',
  'help.none.gauge': 'the step of the gauge is not given (Bench, Plan).',

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

  'help.pushRodForce.name': 'Push-rod force',
  'help.pushRodForce.what':
    'The force in the push rod of one grip that holds it at this pitch, the rod\u2019s own share included. It is the moment over the lever, so it is zero exactly where the grip rests or flees.',
  'help.pushRodForce.sign':
    'Tension is positive: the grip pulls on the rod. Compression is negative.',
  'help.sliderForce.name': 'Slider force',
  'help.sliderForce.what':
    'What the control must put on the slider to hold all grips together, along the shaft. e_Z is how steeply the rod stands.',
  'help.sliderForce.sign': 'Positive: the control must push the slider up, toward thrust.',
  'help.servoTorque.name': 'Servo torque',
  'help.servoTorque.what':
    'What the servo must hold through the bell crank, for all grips. Links are taken as long against their arms, so only the sines of the arms count.',
  'help.servoTorque.sign': 'Positive toward the way the servo turns when the slider goes up.',
  'help.pitchArm.name': 'Pitch arm and lever',
  'help.pitchArm.what':
    'The arm carries the ball of the push rod. Its length is the ball\u2019s distance from the feathering axis; what turns force into moment is the lever h, the distance at which the rod\u2019s line passes the axis, which changes with pitch. e_y and e_z are the rod\u2019s direction.',
  'help.pitchArm.sign': 'The lever changes sign where the arm goes over centre.',
  'help.sliderTravel.name': 'Slider travel',
  'help.sliderTravel.what':
    'How far the slider stands from its place at flat pitch, and how far it goes for a turn of the grip. A short travel for much pitch makes a heavy slider.',
  'help.sliderTravel.sign': 'Positive up the shaft, toward thrust.',
  'help.overCentre.name': 'Over centre',
  'help.overCentre.what':
    'The pitch at which rod and arm stand in one line: the lever is zero, no force of the rod turns the grip, and it jams. Shown are the nearest one and how far the pitch in use stays clear of it.',
  'help.overCentre.sign': 'A margin below zero: it goes over centre within the pitch in use.',
  'help.overCentre.formula': 'h(\u03b8_oc) = 0',

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

  'help.friction.name': 'Friction',
  'help.friction.what':
    'What resists the turning of one grip: its share of the linkage\u2019s drag and its bearings under load. To turn it against the moment takes moment plus friction; on the way back only moment less friction is felt. The same at rest and in motion here (Coulomb), the starting factor included.',
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

  'help.pull.name': 'Pull of a part',
  'help.pull.what':
    'The centrifugal force on a part, as who turns with the grip sees it: away from the shaft, level with the plane of rotation. r is the distance of its centre from the shaft axis. Of the selected part; with nothing selected of the one that pulls hardest.',
  'help.pull.sign': 'A size; its direction is away from the shaft.',
  'help.pull.formula': 'F = \u03a9\u00b2 m r',
  'help.axialPull.name': 'Pull along the axis',
  'help.axialPull.what':
    'What all parts together pull outward along the feathering axis: the load of the thrust bearing. Push rod and air add their share.',
  'help.axialPull.sign': 'Positive outward.',
  'help.bearingLoad.name': 'Bearing loads',
  'help.bearingLoad.what':
    'What each bearing carries across (F_r) and along (F_a) the axis, put together as the load at rest that would press as hard. It is held against the bearing\u2019s static rating.',
  'help.bearingLoad.sign': 'A size.',
  'help.flapMoment.name': 'Flapwise moment',
  'help.flapMoment.what':
    'What bends the grip up or down at the middle of its bearings: mass above the plane of rotation is pulled back into it and bends the tip down, thrust bends it up. Weight on the side toward which the blades pull takes load off the bearings.',
  'help.flapMoment.sign': 'Positive bends the tip up.',
  'help.thrust.name': 'Thrust of a blade',
  'help.thrust.what':
    'The air\u2019s lift on one blade in hover, and the radius at which it acts. An estimate. Shown beside it is how it bends the grip at the shaft.',
  'help.thrust.sign': 'Positive along the shaft.',
  'help.boltPull.name': 'Pull on the bolt',
  'help.boltPull.what':
    'What the blade, and what it carries, pulls on the bolt. The bolt stands in two cheeks, so each shear plane takes half.',
  'help.boltPull.sign': 'A size.',
  'help.boltStrength.name': 'Strength of the bolt',
  'help.boltStrength.what':
    'Each load of the bolt as a share of what its strength class allows: shear in shank or thread, bending between the cheeks, both together, pressure in the cheeks, bending by what hangs over. Static limits only: wear and fatigue are not judged.',
  'help.boltStrength.sign': '1 is the limit; above it is too much.',
  'help.firstLimit.name': 'First limit',
  'help.firstLimit.what':
    'The speed at which the first known limit of a bearing or bolt would be used up at this pitch. Loads go with the square of the speed, so the speed goes with the root of the share used.',
  'help.firstLimit.sign': 'Positive. A limit that is not known is never passed by this page.',

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

  'help.gaugeStep.name': 'Step of the gauge',
  'help.gaugeStep.what':
    'The smallest step that the force gauge shows. A reading that is rounded to it can lie anywhere within, which is a standard uncertainty of the step over the root of twelve.',
  'help.gaugeStep.sign': 'A size.',
  'help.hysteresis.name': 'Push and pull',
  'help.hysteresis.what':
    'Going up and going down the gauge reads differently: friction resists both ways. The mean of the two passes is the moment, half their difference the friction. Shown is what this head\u2019s friction would make at the push rod.',
  'help.hysteresis.sign': 'Positive: pulling reads more tension than pushing.',
  'help.loopWork.name': 'Work of a loop',
  'help.loopWork.what':
    'What friction takes on the way up and down through the pitches: the area between the two passes.',
  'help.loopWork.sign': 'Positive. A negative one means that push and pull were exchanged.',
  'help.residual.name': 'What is left over',
  'help.residual.what':
    'A reading less what the fitted curve says there, in standard uncertainties. Sound readings scatter about zero without a pattern; a pattern says that the curve lacks something.',
  'help.residual.sign': 'Positive: the reading lies above the curve.',
  'help.band95.name': '95 % band',
  'help.band95.what':
    'The range in which the true value lies nineteen times in twenty, if the readings scatter as assumed: about twice the standard uncertainty either way with many readings, more with few.',
  'help.band95.sign': 'Either way.',
  'help.zeroOfGauge.name': 'Zero of the gauge',
  'help.zeroOfGauge.what':
    'What the gauge shows with nothing on it. It shifts every reading alike and is fitted together with the moment.',
  'help.zeroOfGauge.sign': 'Positive: it reads too much tension.',
  'help.returningForce.name': 'Force that comes back',
  'help.returningForce.what':
    'Beyond some pitch readings can show more than mass and friction explain. If it goes with the square of the speed and has not the shape of mass, it looks aerodynamic.',
  'help.returningForce.sign': 'Toward flat or away from it, as the sentence says.',

  'help.featheringAxis.name': 'Feathering axis',
  'help.featheringAxis.what':
    'The axis along the blade about which grip and blade turn to change pitch.',
  'help.bladeGrip.name': 'Blade grip',
  'help.bladeGrip.what':
    'The part that holds the blade by its bolt and turns on bearings about the feathering axis.',
  'help.pushRod.name': 'Push rod',
  'help.pushRod.what':
    'The rod from the slider\u2019s ball to the ball of the pitch arm; also called pitch link.',
  'help.ball.name': 'Ball',
  'help.ball.what': 'The ball joint at an end of the push rod: on the pitch arm, or on the slider.',
  'help.slider.name': 'Slider',
  'help.slider.what':
    'The sleeve that moves along the shaft and takes the push rods of all grips with it.',
  'help.bladeBolt.name': 'Blade bolt',
  'help.bladeBolt.what':
    'The bolt through the fork and the blade\u2019s root. It stands square to the chord, so its ends are where weight against the blade goes. Never use a bent one again.',
  'help.prevailingNut.name': 'Prevailing-torque nut',
  'help.prevailingNut.what':
    'A nut that grips its thread, with a nylon ring or a pinched collar, and stays without being tight. A used one does not hold as it did: take a new one.',
  'help.chord.name': 'Chord',
  'help.chord.what':
    'The line from leading to trailing edge of a blade\u2019s section, and its length.',
  'help.leadingEdge.name': 'Leading edge',
  'help.leadingEdge.what': 'The edge of the blade that meets the air first.',
  'help.span.name': 'Span',
  'help.span.what': 'The direction along the blade, from root to tip, and its length.',
  'help.station.name': 'Station',
  'help.station.what': 'A place along the feathering axis, told by its distance from the shaft.',
  'help.quarterChord.name': 'Quarter chord',
  'help.quarterChord.what':
    'The point a quarter of the chord behind the leading edge. A thin section that has not stalled lifts there.',
  'help.collective.name': 'Collective',
  'help.collective.what': 'Pitch that all blades take together.',
  'help.propellerMoment.name': 'Propeller moment',
  'help.propellerMoment.what':
    'The books\u2019 word for what the spin does to the spread of mass: it turns a blade flat. Also centrifugal twisting moment. The page calls the whole the feathering moment.',
  'help.racketEffect.name': 'Tennis-racket effect',
  'help.racketEffect.what':
    'A racket thrown spinning about its middle axis turns over in the air. One term of the same equations moves a grip, but the grip\u2019s shaft is driven and its axis is held: it turns about one axis only, has its rest angles there, and does not turn over and over.',
  'help.equilibrium.name': 'Equilibrium',
  'help.equilibrium.what':
    'A pitch at which nothing turns the grip. Stable: pushed away it comes back, a rest angle. Unstable: it runs off, a flee angle.',
  'help.neutral.name': 'Neutral',
  'help.neutral.what':
    'The spread of mass is round: J_yy equals J_zz and J_yz is zero, and the mass turns the grip at no pitch.',
  'help.leadLag.name': 'Lead and lag',
  'help.leadLag.what': 'A blade swinging on its bolt, ahead of or behind its place.',
  'help.flapwise.name': 'Flapwise',
  'help.flapwise.what': 'Up and down along the shaft, the way a wing flaps.',
  'help.thrustBearing.name': 'Thrust bearing',
  'help.thrustBearing.what': 'The bearing that carries the pull along the feathering axis.',
  'help.counterweight.name': 'Counterweight',
  'help.counterweight.what':
    'Weight out along the bolt, or on a stalk square to the chord, that cancels what the blade\u2019s chord does. Textbooks call it Chinese weight.',
  'help.pitchDial.name': 'Pitch dial',
  'help.pitchDial.what':
    'The head seen along the feathering axis from the tip, with rest and flee angles, holding bands and limits round it. Turn its pointer to set the pitch.',
  'help.forceFan.name': 'Force fan',
  'help.forceFan.what':
    'The force against pitch laid round the feathering axis on the stage: inward drives away, outward drives back to rest.',
  'help.neutralise.name': 'Neutralise',
  'help.neutralise.what':
    'To solve for the part that cancels: a length, a nut, a weight, from the bars and tables that can be had.',
  'help.letGo.name': 'Let go',
  'help.letGo.what': 'To release the grip at a pitch and watch what it does, slowed down.',
  'help.buildLadder.name': 'Build ladder',
  'help.buildLadder.what':
    'Bench runs with more and more parts on: bare grip, with bolt, with blade. What each step adds is that part\u2019s share.',
  'help.tryOut.name': 'Try-out',
  'help.tryOut.what': 'A variant of the head kept beside it, to compare.',
  'help.keepOut.name': 'Keep-out',
  'help.keepOut.what':
    'A shape that no turning part may enter: the case, a guard, the shaft\u2019s own parts. It weighs nothing.',
} as const;

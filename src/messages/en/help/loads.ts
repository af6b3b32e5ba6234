/** Entries: what bearings, blade and bolt carry. */
export const HELP_LOADS = {
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
    'Each load of the bolt as a share of what its strength class allows: shear in shank or thread, bending between the cheeks, both together, pressure in the cheeks and in the blade\u2019s root, bending by what hangs over. Static limits only: wear and fatigue are not judged, nor what may tear out beside the holes.',
  'help.boltStrength.sign': '1 is the limit; above it is too much.',
  'help.firstLimit.name': 'First limit',
  'help.firstLimit.what':
    'The speed at which the first known limit of a bearing or bolt would be used up at this pitch; under Loads, anywhere in the pitch in use. Loads go with the square of the speed, so the speed goes with the root of the share used.',
  'help.firstLimit.sign':
    'Positive. A limit that is not known is not in it: it may be passed long before.',
} as const;

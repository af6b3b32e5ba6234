export const CLEARANCE = {
  'clearance.about':
    'Every part that turns, through its whole travel, against every space that must stay free.',
  'clearance.none':
    'Nothing has to be kept clear of yet. Put in the case, a tail fin or a hub as a keep-out: it weighs nothing, and the least gap to it is found through all pitches and a full turn of the shaft.',
  'clearance.add': 'Add a keep-out',
  'clearance.add.plane': 'Plane',
  'clearance.add.box': 'Box',
  'clearance.add.cylinder': 'Cylinder',
  'clearance.add.mesh': 'From a mesh file\u2026',
  'clearance.name.plane': 'Keep-out plane',
  'clearance.name.box': 'Keep-out box',
  'clearance.name.cylinder': 'Keep-out cylinder',
  'clearance.table': 'Gaps, the least first',
  'clearance.part': 'Part',
  'clearance.keepOut': 'Keep-out',
  'clearance.gap': 'Least gap',
  'clearance.error': 'Good to',
  'clearance.pitch': 'At pitch',
  'clearance.azimuth': 'Shaft turned',
  'clearance.state': 'State',
  'clearance.go': 'Go there',
  'clearance.goTo': 'Go to {pitch} and select {part}',
  'clearance.any': 'any',
  'clearance.hub': 'turns along',
  'clearance.in': '{depth} in',
  'clearance.is.clear': 'clear',
  'clearance.is.close': 'closer than wanted',
  'clearance.is.overlap': 'overlap',
  'clearance.is.inside': 'holds all of it',
  'clearance.reduced':
    'A mesh with more triangles than are drawn is measured by its picture: how far that is off is not known.',
  'clearance.nearest': 'Nearest: {part} to {keepOut}, {length} at {pitch}.',
  'clearance.overlap': '{part} enters {keepOut} by {depth} at {pitch}.',
  'clearance.overlapInside': '{part} holds all of {keepOut} at {pitch}.',
  'clearance.more': 'And {count} more.',
  'clearance.range.linkage':
    'Looked through from {low} to {high}, as far as the linkage goes, and a full turn of the shaft past what is fixed to the case.',
  'clearance.range.noLinkage':
    'Looked through from {low} to {high}: there is no pitch arm to say how far the grip can go. A full turn of the shaft past what is fixed to the case.',
  'clearance.range.noReach':
    'Looked through from {low} to {high}: the push rod does not reach the slider at flat pitch, and is left out.',
  'clearance.notes':
    'A blade is taken where it is drawn, not where it swings on its bolt. Parts bend and bearings have play: both take from the gap.',
  'clearance.stage': '{length} at {pitch}',
  'clearance.stageIn': '{length} in at {pitch}',
  'clearance.stageTurned': '{text}, shaft turned {azimuth}',
  'clearance.noParts': 'No visible part turns.',
  'clearance.useAsKeepOut': 'Use as a keep-out',
  'clearance.useAsKeepOutHelp':
    'It then weighs nothing, stands still, and turning parts are held clear of it. Its material and what was measured of it are let go.',
  'clearance.useAsBody': 'Use as a body on the grip',
  'clearance.useAsBodyHelp': 'It then turns with the grip and weighs what its density says.',
  'clearance.placement':
    'Placed in the rotor frame: x outboard at right angles to the shaft, z along it. Of a plane, all on the side away from its z must stay free.',
  'clearance.nearestHere': 'Nearest: {part}, {length} at {pitch}.',
} as const;

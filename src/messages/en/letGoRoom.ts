/** What only the room of letting go says; it comes with it. */
export const LET_GO_ROOM = {
  'letGo.pause': 'Pause',
  'letGo.goOn': 'Go on',
  'letGo.step': 'Step',
  'letGo.stepHelp': 'A fortieth of a swing',
  'letGo.toEnd': 'To the end',
  'letGo.toEndHelp': 'Show at once where it ends',
  'letGo.replay': 'Again',
  'letGo.replayHelp': 'Back to where it was let go, and the same again',
  'letGo.controls': 'Letting go',
  'letGo.slowed': 'Slowed',
  'letGo.slowedAuto': 'by itself',
  'letGo.damping': 'Damping',
  'letGo.dampingHelp':
    'Viscous damping, as a share of what would just keep a thin blade from swinging. The air alone damps a blade by some per cent.',
  'letGo.rebound': 'Rebound',
  'letGo.reboundHelp': 'Share of the speed that comes back from a stop of the slider: 0 to 1.',
  'letGo.sliderMass': 'Slider',
  'letGo.sliderMassHelp': 'Mass of the slider and of what moves with it, for the whole head.',
  'letGo.noNumber': '{field}: a number is wanted, say 3.',
  'letGo.range': '{field} must lie between {min} and {max}.',
  'letGo.hills': 'Energy against pitch, {unit}',
  'letGo.trace': 'Pitch against time, {unit}',
  'letGo.energy': 'energy',
  'letGo.pitchAxis': 'Pitch, \u00b0',
  'letGo.time': 'Time, {unit}',
  'letGo.notYet': 'What it does after it has been let go is drawn here.',
  'letGo.ball': 'Pitch of the grip',
  'letGo.ballHelp':
    'Drag the ball: held, it sets the pitch; let go, it is drawn after the pointer by a soft spring. Arrow keys do the same.',
  'letGo.end.stop': 'stop',
  'letGo.end.overCentre': 'over centre',
  'letGo.end.unreachable': 'reach ends',
  'letGo.end.open': '',
  'letGo.key.rests': 'rests',
  'letGo.key.flees': 'flees',
  'letGo.key.holds': 'friction holds',
  'letGo.key.level': 'its energy',
  'letGo.heldStays':
    'Held at {pitch}. Let go here it stays: the moment is {moment}, friction holds up to {friction}.',
  'letGo.heldGoes':
    'Held at {pitch}. The moment of {moment} is more than the {friction} that friction holds: let go, it moves {way}.',
  'letGo.heldStill': 'Held at {pitch}. No moment turns it here.',
  'letGo.heldNoSpin':
    'Held at {pitch}. The rotor stands still: nothing turns the grip, whatever its pitch.',
  'letGo.heldEdge':
    'Held at {pitch}, a flee angle, and nothing rubs: let go exactly here it stands, and the least touch sends it off.',
  'letGo.heldFlees': 'Held at {pitch}: a moment of {moment} drives it {way}, and nothing rubs.',
  'letGo.up': 'up',
  'letGo.down': 'down',
  'letGo.now': '{time} after it was let go: {pitch}, {rate}.',
  'letGo.moving': 'Let go, shown at {slowness}.',
  'letGo.last': 'Last time: {text}',
  'letGo.paused': 'Paused. {now}',
  'letGo.stays': 'It stays at {pitch}: friction holds it (moment {moment} of {friction}).',
  'letGo.staysStill': 'It stays at {pitch}: nothing turns it there.',
  'letGo.staysEdge':
    'It stands at {pitch}, a flee angle, and nothing rubs: the least touch sends it off to either side.',
  'letGo.staysOnStop': 'It stays at {pitch}: the stop carries it.',
  'letGo.settlesFriction':
    'It settles at {pitch} in {time}: friction holds it there (moment {moment} of {friction}).',
  'letGo.settlesDamping': 'It settles at {pitch} in {time}.',
  'letGo.struck': 'On the way it hit the stop {times}, first with {rate}.',
  'letGo.once': 'once',
  'letGo.often': '{count} times',
  'letGo.runsToStop':
    'It runs to the stop at {pitch} in {reached}, hits it with {rate}, and lies there from {time} on.',
  'letGo.overCentre':
    'It runs to where the arm goes over centre, {pitch}, in {time}, and comes there with {rate}: it jams, or swings through to where control acts the wrong way round. Nothing is computed beyond.',
  'letGo.unreachable':
    'It runs toward the end of the rod\u2019s reach: {pitch} in {time}, with {rate}. The last half degree, where rod and slider would move without bound, is not computed.',
  'letGo.open': 'It passes {pitch} after {time}, with {rate}. Nothing is computed beyond.',
  'letGo.oscillates':
    'After {time} it still swings, between {low} and {high}: too little brakes it.',
  'letGo.pushes': 'Push: {force} at the push rod ({moment} about the axis).',
  'letGo.pushesMoment': 'Push: {moment} about the axis.',
  'letGo.pushNeed':
    'Without friction {need} would hold it here; friction adds or takes {friction}.',
  'letGo.pushHint':
    'Push it: drag the ball or, while it moves, the dial. An arrow key held down pushes with {moment}, with Shift twice and with Alt a tenth of that.',
  'letGo.side': 'What comes of it',
  'letGo.books': 'Where its energy is',
  'letGo.bookFallen': 'come down by',
  'letGo.bookGiven': 'given by the hand',
  'letGo.bookMotion': 'in motion',
  'letGo.bookFriction': 'taken by friction',
  'letGo.bookDamping': 'taken by damping',
  'letGo.bookStops': 'taken by the stops',
  'letGo.bookBalance':
    'The first two add up to the last four, to within {error} of the greatest energy of motion.',
  'letGo.assumes':
    'Estimate. The spin speed is held; parts are rigid and without play; friction in motion is that at rest; the air is as in steady hover and its damping is the number set here; all grips move alike.',
  'letGo.caution':
    'On the page only. Never let a spinning grip go by hand: guard, eye protection, nobody in the plane of the disc.',
  'letGo.fault.noReach': 'The push rod does not reach at flat pitch: there is nothing to let go.',
  'letGo.fault.outsideTravel':
    'At {pitch} it cannot be let go: the linkage works from {low} to {high}.',
  'letGo.fault.inertia': 'Nothing here turns: there is no mass to let go.',
  'letGo.fault.moment': 'At {pitch} no moment is known, so it cannot be let go there.',
  'letGo.fault.friction': 'At {pitch} friction is not known, so it cannot be let go there.',
  'letGo.fault.choice': '{field} is out of its limits.',
  'letGo.fault.other': 'It cannot be let go: {field} is out of its limits ({value}).',
  'letGo.fault.notFetched': 'What lets it go could not be fetched ({reason}). Try again.',
  'letGo.summaryHills':
    'Energy of the grip against pitch, from {low} to {high}. {landmarks} {held}',
  'letGo.summaryWell': 'Well at {pitch}, {depth} deep.',
  'letGo.summaryWellOnly': 'Well at {pitch}.',
  'letGo.summaryHill': 'Hill at {pitch}.',
  'letGo.summaryHeld': 'Friction holds it from {from} to {to}.',
  'letGo.summaryTrace':
    'It was let go at {from}, went between {low} and {high}, and was at {pitch} after {time}.',
} as const;

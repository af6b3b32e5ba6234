import type { Entries, Entry } from '../topicTypes';

function word(see: readonly string[], sources: Entry['sources'], also = ''): Entry {
  return { see, sources, ...(also && { also }) };
}

/** Words of the trade and of this page that are no numbers. */
export const WORDS = {
  featheringAxis: word(['pitch', 'bladeGrip', 'station'], ['definition']),
  bladeGrip: word(['featheringAxis', 'bladeBolt', 'thrustBearing'], ['trade']),
  pushRod: word(['pushRodForce', 'rodMoment', 'ball'], ['trade'], 'pitch link'),
  ball: word(['pitchArm', 'pushRod'], ['trade']),
  slider: word(['sliderForce', 'sliderTravel'], ['trade']),
  bladeBolt: word(['boltPull', 'prevailingNut', 'leadLag'], ['trade']),
  prevailingNut: word(['bladeBolt', 'boltStrength'], ['trade'], 'locking nut nylon ring'),
  chord: word(['leadingEdge', 'quarterChord', 'jyy'], ['definition']),
  leadingEdge: word(['chord', 'pitch'], ['definition']),
  span: word(['station', 'chord'], ['definition']),
  station: word(['span', 'featheringAxis'], ['definition']),
  quarterChord: word(['airMoment', 'chord'], ['flatPlate']),
  collective: word(['pitch', 'sliderForce'], ['trade']),
  propellerMoment: word(
    ['featheringMoment', 'racketEffect', 'difference'],
    ['propellerMoment'],
    'centrifugal twisting moment',
  ),
  racketEffect: word(
    ['propellerMoment', 'principalAxes'],
    ['racketEffect'],
    'tennis racket intermediate axis flip',
  ),
  equilibrium: word(['restAngle', 'fleeAngle', 'stiffness'], ['dynamics'], 'stable unstable'),
  neutral: word(
    ['difference', 'product', 'neutralise', 'spreadEllipse'],
    ['ours'],
    'round stays at every pitch',
  ),
  leadLag: word(['bladeSwing', 'bladeBolt'], ['trade'], 'lead lag swing'),
  flapwise: word(['flapMoment', 'thrust'], ['trade']),
  thrustBearing: word(['axialPull', 'bearingLoad'], ['trade']),
  counterweight: word(['lumpToNeutral', 'jzz', 'neutralise'], ['trade'], 'chinese weight'),
  pitchDial: word(['pitch', 'restAngle', 'spreadEllipse', 'forceFan'], ['ours']),
  forceFan: word(['pushRodForce', 'featheringMoment'], ['ours'], 'fan'),
  neutralise: word(['neutral', 'lumpToNeutral', 'tolerance'], ['ours'], 'solve cancel'),
  letGo: word(['restAngle', 'frequency', 'friction'], ['ours'], 'release'),
  buildLadder: word(
    ['difference', 'residual', 'tryOut'],
    ['ours'],
    'runs with more and more parts on',
  ),
  tryOut: word(['neutralise', 'buildLadder'], ['ours'], 'variant compare'),
  keepOut: word(['clearance'], ['ours'], 'case guard'),
} as const satisfies Entries;

import type { AirfoilStation, Solid } from '../../engine/mass/solid';
import { rotationAboutZ } from '../../engine/math/pose';
import { apply, type Vec3, ZERO } from '../../engine/math/vector';
import { metresFromMm, radiansFromDegrees } from '../../engine/units';
import { definePart, type Handle } from '../contract';
import { circle, prism, roundEndedStrip } from '../shapes';
import { type BladeValues, bladeParameters, bladeProblems } from './parameters';

/**
 * A blade: origin on the bolt axis at mid thickness, x outboard, y toward the leading edge, z up, all at zero lag; lag
 * turns the blade in this frame about z, positive toward -y. A root block with the bolt hole, then a tapered, untwisted
 * symmetric airfoil (NACA Report 460 thickness) whose bolt axis stays at the same share of the chord. Homogeneous: a
 * cored or weighted blade is matched by its mean density and corrected by what was measured.
 */
export const blade = definePart({
  kind: 'blade',
  label: 'Blade',
  help: 'A blade with its root block, on the bolt in the fork.',
  parameters: bladeParameters,
  mates: ['bladeSeat'],
  solids: bladeSolids,
  sockets: () => [],
  handles: bladeHandles,
  problems: bladeProblems,
  finish: 'composite',
});

function lagRotation(values: BladeValues) {
  return rotationAboutZ(radiansFromDegrees(-values.lagDeg));
}

function station(values: BladeValues, x: number, chordMm: number, percent: number): AirfoilStation {
  const chord = metresFromMm(chordMm);
  const leadingEdgeY = (values.axisPercent / 100) * chord;
  return { x, chord, thickness: (percent / 100) * chord, leadingEdgeY, z: 0 };
}

function bladeSolids(values: BladeValues): Solid[] {
  const density = values.densityKgM3;
  const pose = { rotation: lagRotation(values), translation: ZERO };
  const begin = metresFromMm(values.rootLengthMm);
  const tip = metresFromMm(values.lengthMm);
  const half = metresFromMm(values.rootBlockThicknessMm) / 2;
  const rootBlock = {
    outer: roundEndedStrip(begin, 0, metresFromMm(values.rootWidthMm)),
    holes: [circle(metresFromMm(values.boltHoleMm) / 2)],
    from: -half,
    to: half,
  };
  return [
    prism('root block', density, rootBlock, pose),
    {
      name: 'airfoil',
      density,
      shape: {
        shape: 'airfoilLoft',
        root: station(values, begin, values.rootChordMm, values.rootThicknessPercent),
        tip: station(values, tip, values.tipChordMm, values.tipThicknessPercent),
      },
      pose,
    },
  ];
}

function bladeHandles(values: BladeValues): Handle<keyof BladeValues>[] {
  const R = lagRotation(values);
  const turned = (x: number, y: number): Vec3 => apply(R, [x, y, 0]);
  const begin = metresFromMm(values.rootLengthMm);
  const tip = metresFromMm(values.lengthMm);
  const ahead = values.axisPercent / 100;
  const behind = 1 - ahead;
  const rootChord = metresFromMm(values.rootChordMm);
  const tipChord = metresFromMm(values.tipChordMm);
  return [
    {
      kind: 'linear',
      parameter: 'lengthMm',
      position: turned(tip, 0),
      direction: turned(1, 0),
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'rootChordMm',
      position: turned(begin, -behind * rootChord),
      direction: turned(0, -1),
      perMm: 1 / behind,
    },
    {
      kind: 'linear',
      parameter: 'tipChordMm',
      position: turned(tip, -behind * tipChord),
      direction: turned(0, -1),
      perMm: 1 / behind,
    },
    {
      kind: 'linear',
      parameter: 'axisPercent',
      position: turned(begin, ahead * rootChord),
      direction: turned(0, 1),
      perMm: 100 / values.rootChordMm,
    },
    {
      kind: 'linear',
      parameter: 'rootLengthMm',
      position: turned(begin, 0),
      direction: turned(1, 0),
      perMm: 1,
    },
    {
      kind: 'turn',
      parameter: 'lagDeg',
      position: turned((begin + 3 * tip) / 4, 0),
      centre: ZERO,
      axis: [0, 0, 1],
      sense: -1,
    },
  ];
}

import type { HomogeneousSolid, Solid } from '../../engine/mass/solid';
import { compose, type Pose, rotationAboutZ } from '../../engine/math/pose';
import { ZERO } from '../../engine/math/vector';
import { metresFromMm, radiansFromDegrees } from '../../engine/units';
import { circle, prism, roundEndedStrip } from '../shapes';
import { airfoilEnds, coreLoft, isPlainSection, outerLoft } from './airfoilShape';
import type { BladeValues } from './parameters';
import { rodSolids, rodsOf } from './rods';

/** The blade's own frame in the part's: lag turns it about the bolt, positive toward -y. */
export function lagPose(values: BladeValues): Pose {
  return { rotation: rotationAboutZ(radiansFromDegrees(-values.lagDeg)), translation: ZERO };
}

/** What the airfoil's outer material weighs, and what a rod lies in. */
export function densitiesOf(values: BladeValues): {
  readonly outer: number;
  readonly around: number;
} {
  if (values.build === 'solid') return { outer: values.densityKgM3, around: values.densityKgM3 };
  return { outer: values.skinDensityKgM3, around: values.coreDensityKgM3 };
}

/**
 * Root block, bushing, airfoil; then what lies inside the airfoil, each preceded by the hole that it fills (the same
 * shape, negative density of what is around it): the core in the skin's material, rods and weights in the core's, or in
 * the solid airfoil's. So every point is counted once: solids that hold it less holes that do.
 */
export function bladeSolids(values: BladeValues): Solid[] {
  const pose = lagPose(values);
  const { outer, around } = densitiesOf(values);
  const solids: Solid[] = [...rootSolids(values, pose), airfoilSolid(values, outer, pose)];
  const core = values.build === 'skin' ? coreLoft(values) : null;
  if (core) {
    solids.push({ name: 'hollow for the core', density: -outer, shape: core, pose });
    solids.push({ name: 'core', density: around, shape: core, pose });
  }
  for (const rod of rodsOf(values)) {
    for (const solid of rodSolids(rod, around)) {
      solids.push({ ...solid, pose: compose(pose, solid.pose as Pose) });
    }
  }
  return solids;
}

function rootSolids(values: BladeValues, pose: Pose): Solid[] {
  const half = metresFromMm(values.rootBlockThicknessMm) / 2;
  const begin = metresFromMm(values.rootLengthMm);
  const hole = circle(metresFromMm(values.boltHoleMm) / 2);
  const bush = circle(metresFromMm(values.bushDiameterMm) / 2);
  const lined = values.bushDiameterMm > 0;
  const block = {
    outer: roundEndedStrip(begin, 0, metresFromMm(values.rootWidthMm)),
    holes: [lined ? bush : hole],
    from: -half,
    to: half,
  };
  const solids: Solid[] = [prism('root block', values.densityKgM3, block, pose)];
  if (lined) {
    const ring = { outer: bush, holes: [hole], from: -half, to: half };
    solids.push(prism('bushing', values.bushDensityKgM3, ring, pose));
  }
  return solids;
}

function airfoilSolid(values: BladeValues, density: number, pose: Pose): HomogeneousSolid {
  const shape = isPlainSection(values)
    ? ({ shape: 'airfoilLoft', ...airfoilEnds(values) } as const)
    : outerLoft(values);
  return { name: 'airfoil', density, shape, pose };
}

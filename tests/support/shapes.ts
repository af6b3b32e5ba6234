import {
  createMoments,
  JXX,
  JXY,
  JXZ,
  JYY,
  JYZ,
  JZZ,
  M,
  type Moments,
  SX,
  SY,
  SZ,
} from '../../src/engine/mass/moments';
import type {
  HomogeneousSolid,
  Outline,
  Prism,
  Revolution,
  Shape,
  Solid,
} from '../../src/engine/mass/solid';
import { sumSolids, volumeMoments } from '../../src/engine/mass/weigh';
import type { Pose } from '../../src/engine/math/pose';

/** Local shapes centred on their own origin, as a designer would build them from the engine's two families. */
export function boxShape(x: number, y: number, z: number): Prism {
  const outer: Outline = [
    [-x / 2, -y / 2],
    [x / 2, -y / 2],
    [x / 2, y / 2],
    [-x / 2, y / 2],
  ];
  return { shape: 'prism', outer, holes: [], from: -z / 2, to: z / 2 };
}

export function cylinderShape(radius: number, height: number): Revolution {
  const h = height / 2;
  return {
    shape: 'revolution',
    profile: [
      [0, -h],
      [radius, -h],
      [radius, h],
      [0, h],
    ],
  };
}

/** From radius `below` at -height/2 to radius `above` at +height/2. */
export function frustumShape(below: number, above: number, height: number): Revolution {
  const h = height / 2;
  return {
    shape: 'revolution',
    profile: [
      [0, -h],
      [below, -h],
      [above, h],
      [0, h],
    ],
  };
}

export function ballShape(radius: number): Revolution {
  return {
    shape: 'revolution',
    profile: [
      [0, -radius, 1],
      [0, radius],
    ],
  };
}

/** A cylinder of `height` with a half ball on each end. A quarter circle has bulge tan(22.5 degrees). */
export function capsuleShape(radius: number, height: number): Revolution {
  const h = height / 2;
  const quarter = Math.SQRT2 - 1;
  return {
    shape: 'revolution',
    profile: [
      [0, -h - radius, quarter],
      [radius, -h],
      [radius, h, quarter],
      [0, h + radius],
    ],
  };
}

/** A regular hexagon of side `side` pushed along z. */
export function hexagonShape(side: number, height: number): Prism {
  const outer: Outline = [0, 1, 2, 3, 4, 5].map(
    (k) => [side * Math.cos((k * Math.PI) / 3), side * Math.sin((k * Math.PI) / 3)] as const,
  );
  return { shape: 'prism', outer, holes: [], from: -height / 2, to: height / 2 };
}

export function solid(shape: Shape, density: number, pose?: Pose): HomogeneousSolid {
  return pose ? { name: 'piece', shape, density, pose } : { name: 'piece', shape, density };
}

export function pointAt(mass: number, x: number, y: number, z: number): Solid {
  const pose: Pose = { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [x, y, z] };
  return { name: 'point', shape: { shape: 'point', mass }, pose };
}

/** Volume moments (density 1) about the shape's own origin. */
export function volumeOf(shape: Shape): Moments {
  return volumeMoments(shape, createMoments());
}

export function weighed(...solids: readonly Solid[]): Moments {
  return sumSolids(solids, createMoments());
}

/** The same ten numbers straight from their definition, for a cloud of points (mass, x, y, z). */
export type CloudPoint = readonly [mass: number, x: number, y: number, z: number];

export function cloudMoments(points: readonly CloudPoint[]): Moments {
  const out = createMoments();
  for (const [m, x, y, z] of points) {
    out[M] += m;
    out[SX] += m * x;
    out[SY] += m * y;
    out[SZ] += m * z;
    out[JXX] += m * x * x;
    out[JYY] += m * y * y;
    out[JZZ] += m * z * z;
    out[JXY] += m * x * y;
    out[JXZ] += m * x * z;
    out[JYZ] += m * y * z;
  }
  return out;
}

import { metresFromMm } from '../engine/units';
import type { LinearHandle } from './contract';

/** Handles of shapes about the origin of their own frame: they grow to both sides, so 2 mm per mm. */

/** In the middle of the three faces of a block at the positive ends of its axes. */
export function blockHandles(sizeMm: readonly [number, number, number]): LinearHandle<'sizeMm'>[] {
  return ([0, 1, 2] as const).map((axis) => {
    const along = (value: number) =>
      [axis === 0 ? value : 0, axis === 1 ? value : 0, axis === 2 ? value : 0] as const;
    return {
      kind: 'linear',
      parameter: 'sizeMm',
      component: axis,
      position: along(metresFromMm(sizeMm[axis]) / 2),
      direction: along(1),
      perMm: 2,
    };
  });
}

/** On the rim and in the middle of the upper end of a cylinder along z. */
export function cylinderHandles(values: {
  readonly diameterMm: number;
  readonly lengthMm: number;
}): LinearHandle<'diameterMm' | 'lengthMm'>[] {
  return [
    {
      kind: 'linear',
      parameter: 'diameterMm',
      position: [metresFromMm(values.diameterMm) / 2, 0, 0],
      direction: [1, 0, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'lengthMm',
      position: [0, 0, metresFromMm(values.lengthMm) / 2],
      direction: [0, 0, 1],
      perMm: 2,
    },
  ];
}

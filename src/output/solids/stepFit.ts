import type { FileBody } from './fileBodies';

/** Whether all of a body is turned or straight: what a CAD kernel has true cylinders, cones, spheres and planes for. */
export function isExact({ solids }: Pick<FileBody, 'solids'>): boolean {
  return solids.every(({ shape }) => shape.shape === 'revolution' || shape.shape === 'prism');
}

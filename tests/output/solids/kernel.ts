import { fileURLToPath } from 'node:url';
import { getOC, importSTEP, type Shape3D, setOC } from 'replicad';
import loadKernel from 'replicad-opencascadejs';
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
} from '../../../src/engine/mass/moments';

/** The CAD kernel in Node. */
export async function startKernel(): Promise<void> {
  const wasm = fileURLToPath(import.meta.resolve('replicad-opencascadejs/wasm'));
  const load = loadKernel as unknown as (options: object) => Promise<never>;
  setOC(await load({ locateFile: () => wasm, print: () => {}, printErr: () => {} }));
}

export async function readStepText(text: string): Promise<Shape3D> {
  return (await importSTEP(new Blob([text]))) as Shape3D;
}

/**
 * Volume, first and second moments (mm^3, mm^4, mm^5, about the file's origin) as the kernel itself integrates them over
 * the faces: moments of inertia about six axes through the origin give all six numbers.
 */
export function kernelMoments(shape: Shape3D): Moments {
  const oc = getOC();
  const props = new oc.GProp_GProps();
  oc.BRepGProp.VolumeProperties(shape.wrapped, props, false, false, false);
  const about = (x: number, y: number, z: number) =>
    props.MomentOfInertia(new oc.gp_Ax1(new oc.gp_Pnt(0, 0, 0), new oc.gp_Dir(x, y, z)));
  const out = createMoments();
  const centre = props.CentreOfMass();
  out[M] = props.Mass();
  out[SX] = out[M] * centre.X();
  out[SY] = out[M] * centre.Y();
  out[SZ] = out[M] * centre.Z();
  const [ixx, iyy, izz] = [about(1, 0, 0), about(0, 1, 0), about(0, 0, 1)];
  out[JXX] = (iyy + izz - ixx) / 2;
  out[JYY] = (ixx + izz - iyy) / 2;
  out[JZZ] = (ixx + iyy - izz) / 2;
  // About (1, 1, 0) / sqrt(2): (ixx + iyy) / 2 - J_xy.
  out[JXY] = (ixx + iyy) / 2 - about(1, 1, 0);
  out[JXZ] = (ixx + izz) / 2 - about(1, 0, 1);
  out[JYZ] = (iyy + izz) / 2 - about(0, 1, 1);
  return out;
}

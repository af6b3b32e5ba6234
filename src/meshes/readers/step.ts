import loadKernel, { type KernelOptions } from 'occt-import-js';
import { fail, type Result } from '../../engine/result';
import type { MeshFileFault, RawMesh } from '../types';
import { AFFINE_IDENTITY, addPlaced } from './affine';
import { GrowingIndices } from './growing';
import { PointPool } from './pointPool';
import { checkCoordinate, checkTriangleCount, faultOf, malformed, reader } from './signal';

/** Distance from the true surface, mm, and turn between neighbouring facets, degrees. */
const DEFLECTION_MM = 0.005;
const ANGLE_DEG = 2;

interface KernelMesh {
  readonly attributes: { readonly position: { readonly array: readonly number[] } };
  readonly index: { readonly array: readonly number[] };
}

/**
 * STEP (ISO 10303-21) through the Open CASCADE kernel, compiled to WebAssembly (package occt-import-js, LGPL-2.1, used
 * unchanged and as a file of its own, so that it can be replaced). The kernel gives triangles in mm, each face's own;
 * a round wall cut at `ANGLE_DEG` loses (2 pi / 180)^2 / 6 = 0.02 % of its circle's area.
 */
export async function readStep(bytes: Uint8Array): Promise<Result<RawMesh, MeshFileFault>> {
  let meshes: readonly KernelMesh[];
  try {
    const kernel = await loadKernel(await kernelOptions());
    const result = kernel.ReadStepFile(bytes, {
      linearUnit: 'millimeter',
      linearDeflectionType: 'absolute_value',
      linearDeflection: DEFLECTION_MM,
      angularDeflection: (ANGLE_DEG * Math.PI) / 180,
    });
    if (!result.success) {
      const detail = 'holds no body that the CAD kernel can read';
      return fail({ kind: 'malformed', format: 'step', detail });
    }
    meshes = result.meshes;
  } catch (thrown) {
    return fail(faultOf(thrown));
  }
  return joinMeshes(meshes);
}

/** In a browser the kernel's binary has an address of its own; elsewhere the kernel finds it beside itself. */
async function kernelOptions(): Promise<KernelOptions> {
  const quiet = { print: () => {}, printErr: () => {} };
  if (typeof location === 'undefined') return quiet;
  const { default: address } = await import('occt-import-js/dist/occt-import-js.wasm?url');
  return { ...quiet, locateFile: () => new URL(address, location.href).href };
}

function joinMeshes(meshes: readonly KernelMesh[]): Result<RawMesh, MeshFileFault> {
  return reader(() => {
    const count = meshes.reduce((sum, mesh) => sum + mesh.index.array.length / 3, 0);
    checkTriangleCount(count, 'step');
    const pool = new PointPool();
    const triangles = new GrowingIndices();
    const check = (value: number) => checkCoordinate(value, 'step', () => 'a face');
    for (const { attributes, index } of meshes) {
      const { array } = attributes.position;
      if (index.array.some((corner) => !(corner < array.length / 3))) {
        malformed('step', 'comes out of the kernel with a corner that is not there');
      }
      addPlaced(AFFINE_IDENTITY, array, index.array, pool, triangles, check);
    }
    return {
      positions: pool.toArray(),
      triangles: triangles.toArray(),
      unitInFile: 'mm' as const,
      notes: [{ kind: 'tessellated', deflectionMm: DEFLECTION_MM, angleDeg: ANGLE_DEG } as const],
    };
  })(new Uint8Array(0), () => {});
}

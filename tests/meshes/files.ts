import { Accessor, Document, WebIO } from '@gltf-transform/core';
import { strToU8, zipSync } from 'fflate';
import type { TriangleMesh } from '../../src/engine/mass/solid';
import { importMesh } from '../../src/meshes/importMesh';
import type { MeshImport } from '../../src/meshes/types';

/** Mesh files for the tests, written from the formats' descriptions, not with the readers' code. */
export const TONON: TriangleMesh = {
  positions: Float64Array.from([
    8.3322, -11.86875, 0.93355, 0.75523, 5, 16.37072, 52.61236, 5, -5.3858, 2, 5, 3,
  ]),
  triangles: Uint32Array.of(0, 2, 1, 0, 3, 2, 0, 1, 3, 1, 2, 3),
};

function corners(mesh: TriangleMesh): number[][][] {
  return Array.from({ length: mesh.triangles.length / 3 }, (_, t) =>
    [0, 1, 2].map((k) => {
      const v = 3 * mesh.triangles[3 * t + k];
      return [...mesh.positions.subarray(v, v + 3)];
    }),
  );
}

export function stlText(mesh: TriangleMesh, name = 'tetrahedron'): Uint8Array {
  const facets = corners(mesh).map(
    (points) =>
      ` facet normal 0 0 0\n  outer loop\n${points
        .map((p) => `   vertex ${p.map((value) => value.toExponential()).join(' ')}\n`)
        .join('')}  endloop\n endfacet\n`,
  );
  return strToU8(`solid ${name}\n${facets.join('')}endsolid ${name}\n`);
}

export function objText(mesh: TriangleMesh): Uint8Array {
  const points = Array.from(
    { length: mesh.positions.length / 3 },
    (_, v) => `v ${[...mesh.positions.subarray(3 * v, 3 * v + 3)].join(' ')}\n`,
  );
  const faces = Array.from({ length: mesh.triangles.length / 3 }, (_, t) => {
    const [a, b, c] = [...mesh.triangles.subarray(3 * t, 3 * t + 3)].map((v) => v + 1);
    return `f ${a}/1/1 ${b}//1 ${c}\n`;
  });
  return strToU8(`# a comment\r\n${points.join('')}vt 0 0\nvn 0 0 1\ng one\n${faces.join('')}`);
}

const CORE = 'http://schemas.microsoft.com/3dmanufacturing/core/2015/02';
const RELATION = 'http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel';
const RELS = `<?xml version="1.0" encoding="UTF-8"?><Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Target="/3D/3dmodel.model" Id="rel0" Type="${RELATION}"/></Relationships>`;

export function meshXml(mesh: TriangleMesh): string {
  const points = Array.from({ length: mesh.positions.length / 3 }, (_, v) => {
    const [x, y, z] = mesh.positions.subarray(3 * v, 3 * v + 3);
    return `<vertex x="${x}" y="${y}" z="${z}"/>`;
  });
  const faces = Array.from({ length: mesh.triangles.length / 3 }, (_, t) => {
    const [a, b, c] = mesh.triangles.subarray(3 * t, 3 * t + 3);
    return `<triangle v1="${a}" v2="${b}" v3="${c}"/>`;
  });
  return `<mesh><vertices>${points.join('')}</vertices><triangles>${faces.join('')}</triangles></mesh>`;
}

export function modelXml(resources: string, build: string, more = ''): string {
  return `<?xml version="1.0" encoding="UTF-8"?><model unit="millimeter" xmlns="${CORE}" ${more}><resources>${resources}</resources><build>${build}</build></model>`;
}

export function package3mf(model: string, others: Record<string, string> = {}): Uint8Array {
  const files: Record<string, Uint8Array> = {
    '_rels/.rels': strToU8(RELS),
    '3D/3dmodel.model': strToU8(model),
  };
  for (const [name, text] of Object.entries(others)) files[name] = strToU8(text);
  return zipSync(files);
}

export function threeMf(mesh: TriangleMesh): Uint8Array {
  const object = `<object id="1" type="model">${meshXml(mesh)}</object>`;
  return package3mf(modelXml(object, '<item objectid="1"/>'));
}

/** Written by an independent library, glTF Transform. */
export async function glb(
  mesh: TriangleMesh,
  change?: (document: Document) => void,
): Promise<Uint8Array> {
  const document = new Document();
  const buffer = document.createBuffer();
  const position = document
    .createAccessor()
    .setType(Accessor.Type.VEC3)
    .setArray(Float32Array.from(mesh.positions))
    .setBuffer(buffer);
  const indices = document
    .createAccessor()
    .setType(Accessor.Type.SCALAR)
    .setArray(mesh.triangles.slice())
    .setBuffer(buffer);
  const primitive = document.createPrimitive().setAttribute('POSITION', position);
  const shape = document.createMesh().addPrimitive(primitive.setIndices(indices));
  document.createScene().addChild(document.createNode('body').setMesh(shape));
  change?.(document);
  return new WebIO().writeBinary(document);
}

export async function importOf(name: string, bytes: Uint8Array): Promise<MeshImport> {
  const result = await importMesh(name, bytes, () => {});
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

export async function faultOfFile(name: string, bytes: Uint8Array) {
  const result = await importMesh(name, bytes, () => {});
  return result.ok ? undefined : result.error;
}

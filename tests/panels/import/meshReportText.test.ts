import { describe, expect, it } from 'vitest';
import { importMesh } from '../../../src/meshes/importMesh';
import { MAX_TRIANGLES, type MeshReport } from '../../../src/meshes/types';
import { writeStl } from '../../../src/meshes/writeStl';
import {
  meshFaultText,
  reportLines,
  sizeInWords,
  unitWarning,
} from '../../../src/panels/import/meshReportText';
import { boxMesh, movedMesh } from '../../support/meshes';

async function reportOf(bytes: Uint8Array): Promise<MeshReport> {
  const read = await importMesh('lug.stl', bytes, () => {});
  if (!read.ok) throw new Error(read.error.kind);
  return read.value.report;
}

function texts(report: MeshReport): string {
  return reportLines(report)
    .map(({ tone, text }) => `${tone}: ${text}`)
    .join('\n');
}

describe('the report of a mesh in words', () => {
  it('says of a sound body that it can be weighed, and nothing that is wrong', async () => {
    const report = await reportOf(writeStl([boxMesh(30, 8, 6)], 1, 'box'));
    const lines = reportLines(report);
    expect(lines[0]).toEqual({
      tone: 'plain',
      text: 'Closed and sound: it can be weighed exactly.',
    });
    expect(lines.every(({ tone }) => tone === 'plain')).toBe(true);
    expect(lines.at(-1)?.text).toBe('12 triangles, one shell.');
  });

  it('counts the open edges of a cracked one first', async () => {
    const bytes = writeStl([boxMesh(30, 8, 6)], 1, 'box').slice(0, -50);
    new DataView(bytes.buffer).setUint32(80, 11, true);
    const report = await reportOf(bytes);
    expect(report.weighable).toBe(false);
    expect(texts(report)).toMatch(/^fault: Cracked.*\nfault: Open edges: 3\./);
  });

  it('tells crossing bodies with the share that is counted twice: a quarter of each of two boxes', async () => {
    const pose = {
      rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1],
      translation: [5.01, 0.01, 0.02],
    } as const;
    const two = [boxMesh(10, 10, 10), movedMesh(boxMesh(10, 10, 10), pose)];
    const report = await reportOf(writeStl(two, 1, 'two'));
    expect(report.verdict).toBe('crossing');
    // They share about half a box, of two boxes' volume: 25 %; the estimate is made of rays.
    const share = Number(/(\d+) % of the whole/.exec(texts(report))?.[1]);
    expect(share).toBeGreaterThan(20);
    expect(share).toBeLessThan(30);
  });
});

describe('a slip of the unit in words', () => {
  it('is told of 30 m that should be millimetres, and of an inch file taken as millimetres', async () => {
    const mm = await reportOf(writeStl([boxMesh(30, 8, 6)], 1, 'box'));
    expect(unitWarning(mm, 'mm')).toBeNull();
    expect(unitWarning(mm, 'm')).toBe(
      'As metres this would be 30.0\u00a0m long. A slip of the unit? millimetres would make it 30.0\u00a0mm.',
    );
    const inches = await reportOf(writeStl([boxMesh(1.18, 0.3, 0.2)], 1, 'box'));
    expect(unitWarning(inches, 'mm')).toContain('inches would make it 30.0\u00a0mm');
    expect(unitWarning(inches, 'in')).toBeNull();
  });

  it('shows sizes so that a slip is seen', () => {
    expect([0.35, 42, 30_480].map(sizeInWords)).toEqual([
      '0.35\u00a0mm',
      '42.0\u00a0mm',
      '30.5\u00a0m',
    ]);
  });
});

describe('a file that is refused', () => {
  it('is told with its number and the limit', () => {
    expect(
      meshFaultText({ kind: 'tooManyTriangles', count: 7_250_000, limit: MAX_TRIANGLES }),
    ).toMatch(/7.250.000 triangles; at most 5.000.000/);
    expect(meshFaultText({ kind: 'empty' })).toBe('The file is empty.');
    expect(meshFaultText({ kind: 'unknownFormat', extension: 'pdf' })).toContain('.pdf');
  });
});

import { meshVolumeMoments } from '../../engine/mass/mesh';
import { createMoments, M, MOMENT_COUNT, type Moments, SX } from '../../engine/mass/moments';
import type { TriangleMesh } from '../../engine/mass/solid';
import { findValidity } from '../../engine/mass/validity';
import type { DataProblem } from '../contract';
import { unpackPicture } from './picture';

/** Metres in one unit of the file. */
export const METRES_PER_UNIT = {
  mm: 1e-3,
  cm: 1e-2,
  m: 1,
  in: 0.0254,
  micron: 1e-6,
  ft: 0.3048,
} as const;
export type MeshUnit = keyof typeof METRES_PER_UNIT;

/** What the packed numbers of a mesh body say, in file units, and what is wrong with them. */
export interface MeshData {
  readonly picture: TriangleMesh;
  readonly moments: Moments;
  readonly problems: readonly DataProblem[];
}

/** Shares of volume by which a picture may differ that is the mesh itself, and one that was reduced. */
const WHOLE_DEVIATION = 1e-4;
const REDUCED_FACTOR = 2;
/** Of the box's diagonal, by which its centre may be off. */
const REDUCED_SHIFT = 0.05;

const EMPTY: TriangleMesh = { positions: new Float64Array(0), triangles: new Uint32Array(0) };

/** Unpacked and checked, remembered for the last few pictures and lists. */
export function meshData(
  picture: string,
  volumeMoments: readonly number[],
  triangleCount: number,
): MeshData {
  const list = volumeMoments.join(' ');
  const at = remembered.findIndex(
    (one) => one.count === triangleCount && one.list === list && one.picture === picture,
  );
  if (at >= 0) {
    const [known] = remembered.splice(at, 1);
    remembered.unshift(known);
    return known.data;
  }
  const data = readMeshData(picture, volumeMoments, triangleCount);
  remembered.unshift({ picture, list, count: triangleCount, data });
  remembered.length = Math.min(remembered.length, MOST_REMEMBERED);
  return data;
}
const MOST_REMEMBERED = 32;
const remembered: {
  readonly picture: string;
  readonly list: string;
  readonly count: number;
  readonly data: MeshData;
}[] = [];

function readMeshData(text: string, list: readonly number[], triangleCount: number): MeshData {
  const moments = createMoments();
  moments.set(list.slice(0, MOMENT_COUNT));
  const unpacked = unpackPicture(text);
  const picture = unpacked.ok ? unpacked.value : EMPTY;
  const problems: DataProblem[] = [];
  if (!unpacked.ok) problems.push(unsound('picture', `it ${unpacked.error}`));
  const impossible = momentsProblem(list, moments);
  if (impossible) problems.push(unsound('volumeMoments', impossible));
  if (problems.length === 0) {
    const apart = disagreement(picture, moments, triangleCount);
    if (apart) problems.push(unsound('picture', apart));
  }
  return { picture, moments, problems };
}

function unsound(field: string, detail: string): DataProblem {
  return { field, rule: 'unsound', detail };
}

function momentsProblem(list: readonly number[], moments: Moments): string | undefined {
  if (list.length !== MOMENT_COUNT) return `it has ${list.length} numbers, not ${MOMENT_COUNT}`;
  const finding = findValidity(moments).find((one) => !one.kind.startsWith('implausible'));
  switch (finding?.kind) {
    case 'notFinite':
      return `its number ${finding.place + 1} is ${finding.value}`;
    case 'massNotPositive':
      return `its volume is ${finding.mass}, not above zero`;
    case 'impossibleSpread':
      return 'no body of positive volume has such second moments';
    default:
      return undefined;
  }
}

/**
 * A whole picture has the volume and centre of the moments to 1e-4, and to what rounding its points to float32 about
 * the middle may do (every face moves by up to e, so the volume by up to area x e). A reduced one has its volume within
 * a factor of two and its centre within 5 % of the diagonal: more is not the same body.
 */
function disagreement(
  picture: TriangleMesh,
  moments: Moments,
  triangleCount: number,
): string | undefined {
  const drawn = meshVolumeMoments(picture, createMoments());
  const count = picture.triangles.length / 3;
  if (count > triangleCount) return `it has ${count} triangles of ${triangleCount}`;
  const whole = count === triangleCount;
  const volume = moments[M];
  const { area, diagonal } = extent(picture);
  const rounding = area * diagonal * 2 ** -23;
  const off = Math.abs(drawn[M] - volume);
  const close = whole
    ? off <= WHOLE_DEVIATION * volume + rounding
    : drawn[M] > volume / REDUCED_FACTOR && drawn[M] < volume * REDUCED_FACTOR;
  if (!close) return `it encloses ${drawn[M]} where the volume is ${volume}`;
  // A body so thin for its size that rounding is all that is left of its volume in the picture: no centre to compare.
  if (whole && rounding >= volume) return undefined;
  const shift = [0, 1, 2].map((k) => drawn[SX + k] / drawn[M] - moments[SX + k] / volume);
  const allowed = whole ? WHOLE_DEVIATION + rounding / volume : REDUCED_SHIFT;
  const moved = Math.hypot(...shift);
  return moved <= allowed * diagonal ? undefined : `its centre is off by ${moved}`;
}

function extent({ positions: p, triangles }: TriangleMesh) {
  let area = 0;
  for (let t = 0; t < triangles.length; t += 3) {
    const i = 3 * triangles[t];
    const [j, k] = [3 * triangles[t + 1], 3 * triangles[t + 2]];
    const [ux, uy, uz] = [p[j] - p[i], p[j + 1] - p[i + 1], p[j + 2] - p[i + 2]];
    const [vx, vy, vz] = [p[k] - p[i], p[k + 1] - p[i + 1], p[k + 2] - p[i + 2]];
    area += Math.hypot(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx) / 2;
  }
  const low = [Infinity, Infinity, Infinity];
  const high = [-Infinity, -Infinity, -Infinity];
  p.forEach((value, n) => {
    low[n % 3] = Math.min(low[n % 3], value);
    high[n % 3] = Math.max(high[n % 3], value);
  });
  return { area, diagonal: Math.hypot(high[0] - low[0], high[1] - low[1], high[2] - low[2]) };
}

const inMetres = new WeakMap<MeshData, Map<MeshUnit, Pick<MeshData, 'picture' | 'moments'>>>();

/** Picture (m) and volume moments (m^3 to m^5) when the file's numbers are in `unit`. */
export function scaledBody(data: MeshData, unit: MeshUnit): Pick<MeshData, 'picture' | 'moments'> {
  let byUnit = inMetres.get(data);
  if (!byUnit) {
    byUnit = new Map();
    inMetres.set(data, byUnit);
  }
  const known = byUnit.get(unit);
  if (known) return known;
  const s = METRES_PER_UNIT[unit];
  const powers = [s ** 3, s ** 4, s ** 4, s ** 4];
  const scaled = {
    picture: {
      positions: data.picture.positions.map((value) => value * s),
      triangles: data.picture.triangles,
    },
    moments: data.moments.map((value, i) => value * (powers[i] ?? s ** 5)),
  };
  byUnit.set(unit, scaled);
  return scaled;
}

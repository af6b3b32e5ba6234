import {
  cast,
  exportSTEP,
  isShape3D,
  iterTopo,
  makeCompound,
  measureVolume,
  type Shape3D,
} from 'replicad';
import { createMoments, M } from '../../engine/mass/moments';
import type { Solid } from '../../engine/mass/solid';
import { volumeMoments } from '../../engine/mass/weigh';
import { kernelShape, placed } from './stepShapes';
import { describedStep } from './stepText';
import type { StepBody, StepFile, StepMade, StepRequest } from './stepTypes';

/** Joined pieces count as sound when their volume is that of the closed form to this share. */
const SOUND = 1e-9;

type Rest = () => Promise<void>;
const noRest: Rest = async () => {};

/** Tells how many parts are done. */
export type StepProgress = (done: number, total: number) => void;

/**
 * The STEP file of the request. The kernel must have been loaded (`loadStepKernel`). `rest` is awaited after each call of it that
 * takes time: there a worker can be ended.
 */
export async function stepFile(
  { bodies, unit, title, description }: StepRequest,
  onProgress: StepProgress = () => {},
  rest: Rest = noRest,
): Promise<StepFile> {
  const made: StepMade[] = [];
  const shapes: { shape: Shape3D; name: string; color: string }[] = [];
  for (const [i, body] of bodies.entries()) {
    onProgress(i, bodies.length + 1);
    const built = await buildBody(body, rest);
    made.push(built.made);
    shapes.push({ shape: built.shape, name: body.name, color: body.colour });
    await rest();
  }
  onProgress(bodies.length, bodies.length + 1);
  // The model is in mm whatever is asked for; without saying so the kernel would take its numbers for inches.
  const blob = exportSTEP(shapes, { unit: unit === 'mm' ? 'MM' : 'INCH', modelUnit: 'MM' });
  const text = describedStep(await blob.text(), title, description);
  return { text, made };
}

interface Group {
  readonly density: number;
  readonly pieces: Shape3D[];
  volume: number;
}

/**
 * The pieces of one material become one solid where the kernel joins them soundly, that is with the volume of the closed
 * form; else they stay side by side. A hole is cut from the material whose density it takes away.
 */
export async function buildBody(
  body: StepBody,
  rest: Rest = noRest,
): Promise<{ shape: Shape3D; made: StepMade }> {
  const groups: Group[] = [];
  for (const solid of body.solids) {
    await addPiece(groups, solid, rest);
    await rest();
  }
  const parts: Joined[] = [];
  for (const group of groups) parts.push(await joinGroup(group, rest));
  const solids = parts.flatMap(({ shapes }) => shapes);
  const shape = solids.length === 1 ? solids[0] : (makeCompound(solids) as Shape3D);
  const exact = groups.reduce((sum, { volume }) => sum + volume, 0);
  const measured = parts.reduce((sum, part) => sum + part.volume, 0);
  return {
    shape: placed(shape, body.pose),
    made: {
      name: body.name,
      solids: solids.length,
      volumeError: (measured - exact) / exact,
      joined: parts.every(({ joined }) => joined),
    },
  };
}

const moments = createMoments();

/** Volume of a solid by the closed form, mm^3. */
function exactVolume(solid: Solid): number {
  if (solid.shape.shape === 'point') throw new RangeError('exactVolume(): a point has none');
  return volumeMoments(solid.shape, moments)[M] * 1e9;
}

async function addPiece(groups: Group[], solid: Solid, rest: Rest): Promise<void> {
  if (!('density' in solid))
    throw new RangeError(`addPiece(): a point has no shape: ${solid.name}`);
  const shape = kernelShape(solid);
  const volume = exactVolume(solid);
  if (solid.density < 0) {
    const group = groups.find(({ density }) => density === -solid.density);
    if (!group) throw new RangeError(`addPiece(): the hole is in nothing: ${solid.name}`);
    for (const [i, piece] of group.pieces.entries()) {
      group.pieces[i] = piece.cut(shape);
      await rest();
    }
    group.volume -= volume;
    return;
  }
  const group = groups.find(({ density }) => density === solid.density);
  if (group) {
    group.pieces.push(shape);
    group.volume += volume;
  } else groups.push({ density: solid.density, pieces: [shape], volume });
}

interface Joined {
  readonly shapes: Shape3D[];
  readonly volume: number;
  readonly joined: boolean;
}

/** What a compound holds, which the kernel also makes round a single solid. */
function solidsIn(shape: Shape3D): Shape3D[] {
  return Array.from(iterTopo(shape.wrapped, 'solid'), cast).filter(isShape3D);
}

async function joinGroup({ pieces, volume }: Group, rest: Rest): Promise<Joined> {
  const apart = {
    shapes: pieces,
    volume: pieces.reduce((sum, piece) => sum + measureVolume(piece), 0),
    joined: pieces.length === 1,
  };
  if (pieces.length === 1) return apart;
  try {
    let sum = pieces[0];
    for (const piece of pieces.slice(1)) {
      sum = sum.fuse(piece);
      await rest();
    }
    const whole = sum.simplify();
    await rest();
    const measured = measureVolume(whole);
    if (Math.abs(measured - volume) > SOUND * volume) return apart;
    return { shapes: solidsIn(whole), volume: measured, joined: true };
  } catch {
    return apart;
  }
}

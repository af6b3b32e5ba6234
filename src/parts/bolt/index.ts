import { translation } from '../../engine/math/pose';
import { metresFromMm } from '../../engine/units';
import { definePart, type Handle, type Socket } from '../contract';
import { facingDown } from '../shapes';
import { boltCatalogue } from './catalogue';
import { boltFacts } from './fastener';
import { type BoltValues, boltParameters } from './parameters';
import { boltProblems } from './problems';
import { boltSolids } from './solids';

/**
 * The blade bolt: origin in the middle of the bearing face under the head, z toward the head (the head at z > 0, shank
 * and thread at z < 0). Washers under the head raise it. Without a head (set screw, stud) the origin is the middle of the
 * top end, where the seat is then: all of the length, socket included, is at z < 0, and what sits on top or underneath
 * sits at that face.
 */
export const bolt = definePart({
  kind: 'bolt',
  label: 'Blade bolt',
  help: 'The bolt through fork and blade, with a head that can be lengthened to carry mass far out.',
  parameters: boltParameters,
  mates: ['boltHole'],
  solids: boltSolids,
  sockets: boltSockets,
  handles: boltHandles,
  problems: boltProblems,
  seatSize: (values) => ({ kind: 'shank', diameterMm: values.shankDiameterMm }),
  raisedBy: 'underHead',
  fastener: boltFacts,
  catalogue: boltCatalogue,
  trims: () => [{ length: 'extensionLengthMm', diameter: 'extensionDiameterMm' }],
  selectedFirst: true,
  finish: 'metal',
});

/** Height of a common nut over its thread diameter, and turns of thread left beyond it, for a new nut's place. */
const COMMON_NUT_HEIGHT = 0.8;
const TURNS_BEYOND_NUT = 2;

function headHeightMm(values: BoltValues): number {
  return values.headForm === 'none' ? 0 : values.headHeightMm;
}

function boltSockets(values: BoltValues): Socket[] {
  const { lengthMm, threadLengthMm, shankDiameterMm, threadPitchMm } = values;
  // The nut's near face goes from where the thread starts to one turn from the end.
  const nearest = Math.max(0, lengthMm - threadLengthMm);
  const farthest = Math.max(nearest, lengthMm - threadPitchMm);
  const usual = lengthMm - COMMON_NUT_HEIGHT * shankDiameterMm - TURNS_BEYOND_NUT * threadPitchMm;
  const top = metresFromMm(headHeightMm(values) + values.extensionLengthMm);
  return [
    {
      name: 'underHead',
      label: 'Under the head',
      mates: 'underHead',
      size: { kind: 'shank', diameterMm: values.shankDiameterMm },
      pose: facingDown(0, 0, 0),
      defaultOffsetMm: 0,
      offsetRangeMm: [0, 0],
      stacks: true,
    },
    {
      name: 'thread',
      label: 'On the thread',
      mates: 'thread',
      size: {
        kind: 'thread',
        diameterMm: values.shankDiameterMm,
        pitchMm: values.threadPitchMm,
      },
      pose: facingDown(0, 0, 0),
      defaultOffsetMm: Math.min(farthest, Math.max(nearest, usual)),
      offsetRangeMm: [nearest, farthest],
    },
    {
      name: 'boltEnd',
      label: 'On the end of the bolt',
      mates: 'boltEnd',
      pose: facingDown(0, 0, -metresFromMm(lengthMm)),
      defaultOffsetMm: 0,
      offsetRangeMm: [0, 0],
    },
    {
      name: 'headTop',
      label: 'On top of the head',
      mates: 'headTop',
      pose: translation(0, 0, top),
      defaultOffsetMm: 0,
      offsetRangeMm: [0, 0],
    },
  ];
}

function boltHandles(values: BoltValues): Handle<keyof BoltValues>[] {
  const radius = metresFromMm(values.shankDiameterMm) / 2;
  const length = metresFromMm(values.lengthMm);
  const shoulder = metresFromMm(headHeightMm(values));
  const extension = metresFromMm(values.extensionLengthMm);
  const handles: Handle<keyof BoltValues>[] = [
    {
      kind: 'linear',
      parameter: 'extensionLengthMm',
      position: [0, 0, shoulder + extension],
      direction: [0, 0, 1],
      perMm: 1,
    },
    ...(values.headForm === 'none' ? [] : [headHandle(values, shoulder)]),
    {
      kind: 'linear',
      parameter: 'lengthMm',
      position: [0, 0, -length],
      direction: [0, 0, -1],
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'threadLengthMm',
      position: [radius, 0, metresFromMm(values.threadLengthMm) - length],
      direction: [0, 0, 1],
      perMm: 1,
    },
  ];
  if (values.extensionLengthMm > 0) {
    handles.push({
      kind: 'linear',
      parameter: 'extensionDiameterMm',
      position: [metresFromMm(values.extensionDiameterMm) / 2, 0, shoulder + extension / 2],
      direction: [1, 0, 0],
      perMm: 2,
    });
  }
  return handles;
}

/** On the rim, or on a flat of a hexagon, whose corners lie on x. */
function headHandle(values: BoltValues, shoulder: number): Handle<keyof BoltValues> {
  const radius = metresFromMm(values.headDiameterMm) / 2;
  const flats = values.headForm === 'hexagon';
  return {
    kind: 'linear',
    parameter: 'headDiameterMm',
    position: flats ? [0, radius, shoulder / 2] : [radius, 0, shoulder / 2],
    direction: flats ? [0, 1, 0] : [1, 0, 0],
    perMm: 2,
  };
}

import { metresFromMm } from '../../engine/units';
import { definePart, type Handle, type Socket } from '../contract';
import { facingDown } from '../shapes';
import { nutCatalogue } from './catalogue';
import { type NutValues, nutParameters } from './parameters';
import { nutProblems } from './problems';
import { nutSolids } from './solids';

const SOCKETS: readonly Socket[] = [
  {
    name: 'nutFace',
    label: 'Under the nut',
    mates: 'nutFace',
    pose: facingDown(0, 0, 0),
    defaultOffsetMm: 0,
    offsetRangeMm: [0, 0],
    stacks: true,
  },
];

/**
 * A nut: origin in the middle of its clamped face, z away from what it clamps. Washers between it and the fork raise it.
 */
export const nut = definePart({
  kind: 'nut',
  label: 'Nut',
  help: 'A hexagonal or turned nut on the blade bolt, open or closed.',
  parameters: nutParameters,
  mates: ['thread'],
  solids: nutSolids,
  sockets: () => SOCKETS,
  handles: nutHandles,
  problems: nutProblems,
  seatSize: (values) => ({
    kind: 'thread',
    diameterMm: values.threadDiameterMm,
    pitchMm: values.threadPitchMm,
  }),
  raisedBy: 'nutFace',
  retention: (values) => (gripsThread(values) ? 'prevailing' : 'plain'),
  innerThread: (values) => {
    const end = metresFromMm(values.heightMm + values.collarHeightMm);
    return {
      lockEnd: gripsThread(values) ? end : null,
      diameter: metresFromMm(values.threadDiameterMm),
    };
  },
  threadEnd: (values) =>
    values.closedEndMm > 0 ? metresFromMm(values.heightMm + values.collarHeightMm) : null,
  // A nut whose collar or ring grips the thread is not closed: the bolt goes through.
  trims: (values) => [
    { length: 'heightMm', diameter: 'acrossMm' },
    ...(gripsThread(values) ? [] : [{ length: 'closedEndMm', diameter: 'acrossMm' } as const]),
  ],
  catalogue: nutCatalogue,
  finish: 'metal',
});

function gripsThread(values: NutValues): boolean {
  const { insertHeightMm, collarHeightMm, collarGrip } = values;
  return insertHeightMm > 0 || (collarHeightMm > 0 && collarGrip === 'squeezed');
}

function nutHandles(values: NutValues): Handle<keyof NutValues>[] {
  const half = metresFromMm(values.acrossMm) / 2;
  const height = metresFromMm(values.heightMm);
  const threadEnd = height + metresFromMm(values.collarHeightMm);
  return [
    {
      kind: 'linear',
      parameter: 'heightMm',
      position: [half, 0, height],
      direction: [0, 0, 1],
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'acrossMm',
      position: [0, half, height / 2],
      direction: [0, 1, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'closedEndMm',
      position: [0, 0, threadEnd + metresFromMm(values.closedEndMm)],
      direction: [0, 0, 1],
      perMm: 1,
    },
  ];
}

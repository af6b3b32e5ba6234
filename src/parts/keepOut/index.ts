import type { Solid } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import { blockHandles, cylinderHandles } from '../centredHandles';
import { definePart, type Handle } from '../contract';
import type { KeepOutFacts } from '../facts';
import { scaledBody } from '../meshBody/body';
import { filePose, meshDataOf, writtenMesh } from '../meshBody/meshParameters';
import { prism, rectangle, revolution, tubeProfile } from '../shapes';
import { type KeepOutValues, keepOutParameters } from './parameters';

/** Thickness of the plate that is drawn under a plane, m. */
const PLATE = 0.0008;
/** What a keep-out becomes when it is a body on the grip again. */
const NYLON = 1140;
/** The drawn body's density: it is not weighed (see `Carrier`), and any will do. */
const NO_MATTER = 1;

/**
 * A space that must stay free of every part that turns: all under the plane z = 0 of its own frame; a box or a cylinder
 * (along z) about its origin; or what a closed mesh encloses. It weighs nothing and is in no sum. Its frame is placed in
 * the rotor frame, and it turns with the shaft (hub) or not at all (case), never with the pitch.
 */
export const keepOut = definePart({
  kind: 'keepOut',
  label: 'Keep-out',
  help: 'A space that turning parts must not enter: the case, a tail fin, a hub. It weighs nothing.',
  parameters: keepOutParameters,
  mates: [],
  solids: keepOutSolids,
  sockets: () => [],
  handles: (values) => HANDLES[values.form](values),
  problems: (values) => (values.form === 'mesh' ? meshDataOf(values).problems : []),
  carriedBy: (values) => values.fixedTo,
  keepOut: keepOutFacts,
  recast: (written) =>
    written.form === 'mesh'
      ? { kind: 'meshBody', densityKgM3: NYLON, ...writtenMesh(written) }
      : null,
  finish: 'neutral',
});

function keepOutFacts(values: KeepOutValues): KeepOutFacts {
  switch (values.form) {
    case 'plane':
      return { shape: { shape: 'plane' }, pose: null };
    case 'box': {
      const [x, y, z] = values.sizeMm;
      const half = [metresFromMm(x) / 2, metresFromMm(y) / 2, metresFromMm(z) / 2] as const;
      return { shape: { shape: 'box', half }, pose: null };
    }
    case 'cylinder': {
      const radius = metresFromMm(values.diameterMm) / 2;
      return {
        shape: { shape: 'cylinder', radius, half: metresFromMm(values.lengthMm) / 2 },
        pose: null,
      };
    }
    default: {
      const { picture } = scaledBody(meshDataOf(values), values.unit);
      return { shape: { shape: 'mesh', mesh: picture }, pose: filePose(values) };
    }
  }
}

function keepOutSolids(values: KeepOutValues): Solid[] {
  switch (values.form) {
    case 'plane': {
      const side = metresFromMm(values.shownMm) / 2;
      const outer = rectangle(-side, side, -side, side);
      return [prism('plane', NO_MATTER, { outer, from: -PLATE, to: 0 })];
    }
    case 'box': {
      const [x, y, z] = values.sizeMm.map((edge) => metresFromMm(edge) / 2);
      return [prism('box', NO_MATTER, { outer: rectangle(-x, x, -y, y), from: -z, to: z })];
    }
    case 'cylinder': {
      const radius = metresFromMm(values.diameterMm) / 2;
      const half = metresFromMm(values.lengthMm) / 2;
      return [revolution('cylinder', NO_MATTER, tubeProfile(0, radius, -half, half))];
    }
    default:
      return [
        {
          name: 'body',
          density: NO_MATTER,
          shape: { shape: 'known', ...scaledBody(meshDataOf(values), values.unit) },
          pose: filePose(values),
        },
      ];
  }
}

type KeepOutHandle = Handle<keyof KeepOutValues>;

const HANDLES: Readonly<
  Record<KeepOutValues['form'], (values: KeepOutValues) => readonly KeepOutHandle[]>
> = {
  plane: (values) => [
    {
      kind: 'linear',
      parameter: 'shownMm',
      position: [metresFromMm(values.shownMm) / 2, 0, 0],
      direction: [1, 0, 0],
      perMm: 2,
    },
  ],
  box: ({ sizeMm }) => blockHandles(sizeMm),
  cylinder: cylinderHandles,
  mesh: () => [],
};

import { metresFromMm } from '../../engine/units';
import { blockHandles } from '../centredHandles';
import { definePart, densityKgM3, type VectorParameter } from '../contract';
import { prism, rectangle } from '../shapes';

const sizeMm: VectorParameter = {
  type: 'vector',
  unit: 'mm',
  label: 'Size',
  help: 'Full length of the three edges, along x, y and z of the block.',
  default: [10, 6, 4],
  axes: ['x', 'y', 'z'],
  min: 0.05,
  max: 2000,
  step: 0.1,
};

/** A rectangular block about the origin of its own frame, edges along the axes. */
export const block = definePart({
  kind: 'block',
  label: 'Block',
  help: 'A plain rectangular block, placed by its middle.',
  parameters: { sizeMm, densityKgM3: densityKgM3(2700) },
  mates: [],
  solids: (values) => {
    const [x, y, z] = values.sizeMm.map((side) => metresFromMm(side) / 2);
    const outer = rectangle(-x, x, -y, y);
    return [prism('block', values.densityKgM3, { outer, from: -z, to: z })];
  },
  sockets: () => [],
  handles: (values) => blockHandles(values.sizeMm),
  problems: () => [],
  finish: 'neutral',
});

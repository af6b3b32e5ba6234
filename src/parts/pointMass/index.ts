import { kilogramsFromGrams } from '../../engine/units';
import { definePart, massGrams } from '../contract';

/** A lump with no size, at the origin of its own frame. For a weighed part of which only the centre is known. */
export const pointMass = definePart({
  kind: 'pointMass',
  label: 'Point mass',
  help: 'A lump with no size: a weighed part of which only the place of its centre is known.',
  parameters: {
    massGrams: massGrams({
      label: 'Mass',
      help: 'Mass of the lump as read from the scale.',
      default: 1,
      min: 0.001,
      max: 10000,
    }),
  },
  mates: [],
  solids: (values) => [
    { name: 'point', shape: { shape: 'point', mass: kilogramsFromGrams(values.massGrams) } },
  ],
  sockets: () => [],
  handles: () => [],
  problems: () => [],
  finish: 'neutral',
});

import type { Solid } from '../../engine/mass/solid';
import { kilogramsFromGrams, metresFromMm } from '../../engine/units';
import { below, definePart, type Handle } from '../contract';
import type { BearingFacts } from '../facts';
import { revolution, tubeProfile } from '../shapes';
import { bearingCatalogue } from './catalogue';
import { BEARING_KINDS } from './kinds';
import { type BearingValues, bearingParameters } from './parameters';

/**
 * A bearing: origin in its middle, z along its own axis. On a grip's seat z points outboard along the feathering axis,
 * and the seat's offset is the place of its middle. An even ring about that axis: it adds pull, and nothing to the moment
 * about the axis.
 */
export const bearing = definePart({
  kind: 'bearing',
  label: 'Bearing',
  help: 'A bearing on the feathering axis. All of its mass is counted as turning with the grip and pulling on it, which is cautious: part of it stays on the shaft.',
  parameters: bearingParameters,
  mates: ['bearingSeat'],
  solids: bearingSolids,
  sockets: () => [],
  handles: bearingHandles,
  problems: (values) => below(values, 'boreMm', 'outerDiameterMm'),
  seatSize: (values) => ({ kind: 'shank', diameterMm: values.outerDiameterMm }),
  bearing: bearingFacts,
  catalogue: bearingCatalogue,
  finish: 'metal',
});

/** One ring from bore to rim, of the density that gives it the bearing's mass. */
function bearingSolids(values: BearingValues): Solid[] {
  const inner = metresFromMm(values.boreMm) / 2;
  const outer = metresFromMm(values.outerDiameterMm) / 2;
  const width = metresFromMm(values.widthMm);
  const volume = Math.PI * (outer - inner) * (outer + inner) * width;
  const density =
    values.massFrom === 'given'
      ? kilogramsFromGrams(values.massGrams) / volume
      : BEARING_KINDS[values.bearingType].fill * values.densityKgM3;
  return [revolution('bearing', density, tubeProfile(inner, outer, -width / 2, width / 2))];
}

function bearingFacts(values: BearingValues): BearingFacts {
  const kind = values.bearingType;
  const bore = metresFromMm(values.boreMm);
  const outer = metresFromMm(values.outerDiameterMm);
  return {
    carries: BEARING_KINDS[kind].carries,
    kind,
    boreDiameter: bore,
    outerDiameter: outer,
    meanDiameter: kind === 'plain' ? bore : (bore + outer) / 2,
    width: metresFromMm(values.widthMm),
    frictionCoefficient: values.frictionCoefficient || BEARING_KINDS[kind].friction,
    frictionDiameter: bore,
    dynamicLoad: values.dynamicLoadN > 0 ? values.dynamicLoadN : null,
    staticLoad: values.staticLoadN > 0 ? values.staticLoadN : null,
  };
}

function bearingHandles(values: BearingValues): Handle<keyof BearingValues>[] {
  const inner = metresFromMm(values.boreMm) / 2;
  const outer = metresFromMm(values.outerDiameterMm) / 2;
  const half = metresFromMm(values.widthMm) / 2;
  return [
    {
      kind: 'linear',
      parameter: 'outerDiameterMm',
      position: [outer, 0, 0],
      direction: [1, 0, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'boreMm',
      position: [0, inner, half],
      direction: [0, 1, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'widthMm',
      position: [0, (inner + outer) / 2, half],
      direction: [0, 0, 1],
      perMm: 2,
    },
  ];
}

import type { Solid } from '../../engine/mass/solid';
import { metresFromMm } from '../../engine/units';
import { definePart, type Handle, type Socket } from '../contract';
import { gripSockets } from '../gripSeats';
import {
  circle,
  facingOutboard,
  prism,
  rectangle,
  revolution,
  roundEndedStrip,
  tubeProfile,
} from '../shapes';
import { type GripValues, gripParameters, gripProblems } from './parameters';

/**
 * The blade grip. Its frame is the grip frame: origin on the feathering axis at the shaft, x outboard, y toward the
 * leading edge, z = x cross y. A barrel about x, a web, and a fork of an upper (+z) and a lower cheek; the pieces follow
 * one another along x and do not overlap. Fillets and screws are not part of it, bearings are parts
 * of their own along the barrel.
 */
export const grip = definePart({
  kind: 'grip',
  label: 'Blade grip',
  help: 'The barrel that turns on the feathering axis and the fork that holds the blade.',
  parameters: gripParameters,
  mates: [],
  solids: gripSolids,
  sockets: seats,
  handles: gripHandles,
  problems: gripProblems,
  fork: (values) => ({
    boltStation: metresFromMm(values.boltStationMm),
    cheekThickness: metresFromMm(values.cheekThicknessMm),
    slotHeight: metresFromMm(values.slotHeightMm),
    width: metresFromMm(values.forkWidthMm),
    holeDiameter: metresFromMm(values.boltHoleMm),
  }),
  finish: 'plastic',
});

function gripSolids(values: GripValues): Solid[] {
  const density = values.densityKgM3;
  const start = metresFromMm(values.barrelStartMm);
  const end = metresFromMm(values.barrelEndMm);
  const bore = metresFromMm(values.barrelBoreMm) / 2;
  const radius = metresFromMm(values.barrelDiameterMm) / 2;
  const slotBottom = metresFromMm(values.barrelEndMm + values.webThicknessMm);
  const bolt = metresFromMm(values.boltStationMm);
  const width = metresFromMm(values.forkWidthMm);
  const inside = metresFromMm(values.slotHeightMm) / 2;
  const outside = inside + metresFromMm(values.cheekThicknessMm);
  const barrel = tubeProfile(bore, radius, start, end);
  const web = rectangle(end, slotBottom, -width / 2, width / 2);
  const cheek = {
    outer: roundEndedStrip(slotBottom, bolt, width),
    holes: [circle(metresFromMm(values.boltHoleMm) / 2, bolt)],
  };
  return [
    revolution('barrel', density, barrel, facingOutboard(0, 0, 0)),
    prism('web', density, { outer: web, from: -outside, to: outside }),
    prism('upper cheek', density, { ...cheek, from: inside, to: outside }),
    prism('lower cheek', density, { ...cheek, from: -outside, to: -inside }),
  ];
}

function seats(values: GripValues): Socket[] {
  const face = metresFromMm(values.slotHeightMm / 2 + values.cheekThicknessMm);
  return gripSockets({
    arm: metresFromMm(values.armSeatMm),
    bolt: metresFromMm(values.boltStationMm),
    above: face,
    below: face,
    hole: { kind: 'hole', diameterMm: values.boltHoleMm },
    barrelMm: [values.barrelStartMm, values.barrelEndMm],
    ...(values.barrelBoreMm > 0
      ? { bearingHole: { kind: 'hole', diameterMm: values.barrelBoreMm } as const }
      : {}),
  });
}

function gripHandles(values: GripValues): Handle<keyof GripValues>[] {
  const start = metresFromMm(values.barrelStartMm);
  const end = metresFromMm(values.barrelEndMm);
  const bolt = metresFromMm(values.boltStationMm);
  const half = metresFromMm(values.forkWidthMm) / 2;
  const slot = metresFromMm(values.slotHeightMm) / 2;
  const face = slot + metresFromMm(values.cheekThicknessMm);
  return [
    {
      kind: 'linear',
      parameter: 'boltStationMm',
      position: [bolt + half, 0, (slot + face) / 2],
      direction: [1, 0, 0],
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'forkWidthMm',
      position: [bolt, half, (slot + face) / 2],
      direction: [0, 1, 0],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'cheekThicknessMm',
      position: [bolt - half / 2, 0, face],
      direction: [0, 0, 1],
      perMm: 1,
    },
    {
      kind: 'linear',
      parameter: 'slotHeightMm',
      position: [bolt + half, 0, slot],
      direction: [0, 0, 1],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'barrelDiameterMm',
      position: [(start + end) / 2, 0, metresFromMm(values.barrelDiameterMm) / 2],
      direction: [0, 0, 1],
      perMm: 2,
    },
    {
      kind: 'linear',
      parameter: 'barrelStartMm',
      position: [start, 0, 0],
      direction: [1, 0, 0],
      perMm: 1,
    },
  ];
}

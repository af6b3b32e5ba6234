import { translation } from '../engine/math/pose';
import { metresFromMm } from '../engine/units';
import type { SeatSize, Socket } from './contract';
import { facingDown, facingOutboard } from './shapes';

/** Where a grip, modelled or from a mesh, seats what it carries; metres, in the grip frame. */
export interface GripSeats {
  /** Station of the arm on the barrel. */
  readonly arm: number;
  /** Station of the bolt axis. */
  readonly bolt: number;
  /** Heights of the outer faces of the cheeks over the feathering axis, and depth below it. */
  readonly above: number;
  readonly below: number;
  /** The bolt's hole, where it is known. */
  readonly hole?: SeatSize;
  /** Stations between which bearings may sit, mm (as the socket's range is). */
  readonly barrelMm: readonly [number, number];
  /** The hole for bearings, where it is known. */
  readonly bearingHole?: SeatSize;
}

/** The seats of every grip, under the same names, so that one grip can take another's place. */
export function gripSockets(seats: GripSeats): Socket[] {
  const { arm, bolt, above, below, hole } = seats;
  const fixed = { defaultOffsetMm: 0, offsetRangeMm: [0, 0] } as const;
  const size = hole ? { size: hole } : {};
  return [
    {
      name: 'armSeat',
      label: 'On the barrel',
      mates: 'armSeat',
      pose: translation(arm, 0, 0),
      ...fixed,
    },
    {
      name: 'boltTop',
      label: 'Bolt hole, from above',
      mates: 'boltHole',
      pose: translation(bolt, 0, above),
      ...size,
      ...fixed,
    },
    {
      name: 'boltBottom',
      label: 'Bolt hole, from below',
      mates: 'boltHole',
      pose: facingDown(bolt, 0, -below),
      ...size,
      ...fixed,
    },
    {
      name: 'bladeRoot',
      label: 'In the fork',
      mates: 'bladeSeat',
      pose: translation(bolt, 0, 0),
      ...fixed,
    },
    bearingSeat(seats),
  ];
}

/** Bearings along the feathering axis: the socket's z points outboard, its offset is the distance from the barrel's start. */
function bearingSeat({ barrelMm: [startMm, endMm], bearingHole }: GripSeats): Socket {
  const length = endMm - startMm;
  return {
    name: 'bearings',
    label: 'Bearing in the barrel',
    mates: 'bearingSeat',
    pose: facingOutboard(metresFromMm(startMm), 0, 0),
    defaultOffsetMm: length / 2,
    offsetRangeMm: [0, length],
    ...(bearingHole ? { size: bearingHole } : {}),
  };
}

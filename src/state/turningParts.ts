import type { HeadReading, PartReading } from './reading';

/** Every part that turns with the grip and is not hidden: what the head's sums count, in list order. */
export function turningParts(reading: HeadReading): readonly PartReading[] {
  return reading.order.flatMap((id) => {
    const part = reading.part(id);
    return part && turnsWithGrip(part) ? [part] : [];
  });
}

export function turnsWithGrip({ part, carriedBy }: PartReading): boolean {
  return carriedBy === 'grip' && !part.hidden;
}

import { FILE_UNITS, type FileUnit, type UnitGuess, type UnitReading } from '../types';

/** One of each in mm. */
export const MM_PER_UNIT: Readonly<Record<FileUnit, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: 25.4,
  micron: 0.001,
  ft: 304.8,
};

/** Longest side of grips and their parts, mm (common practice). */
const SHORTEST = 1;
const LONGEST = 400;
/** Units that files without a unit are written in, in the order of likelihood (common practice). */
const HABITS: readonly FileUnit[] = ['mm', 'in', 'm', 'cm'];

/**
 * Which unit a file's numbers are in, from the longest side of the box. A stated unit holds, but where it makes the
 * part implausible and another does not, that is said: 30 numbers long and "m" is a 30 m grip; probably mm.
 */
export function guessUnit(size: number, stated: FileUnit | undefined): UnitGuess {
  const readings = FILE_UNITS.map((unit): UnitReading => {
    const sizeMm = size * MM_PER_UNIT[unit];
    return { unit, sizeMm, plausible: sizeMm >= SHORTEST && sizeMm <= LONGEST };
  });
  const reading = (unit: FileUnit) => readings.find((one) => one.unit === unit) as UnitReading;
  const likely = HABITS.map(reading).find((one) => one.plausible);
  if (stated !== undefined) {
    const own = reading(stated);
    const slip = !own.plausible && likely ? { slip: { stated: own, likely } } : {};
    return { unit: stated, because: 'stated', readings, ...slip };
  }
  if (!likely) return { unit: 'mm', because: 'nothingFits', readings };
  return { unit: likely.unit, because: likely.unit === 'mm' ? 'habit' : 'size', readings };
}

const CLOCK =
  /^(?:(\d{4})-(\d{2})-(\d{2})[T ])?(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?(?:Z|[+-]\d{2}:?\d{2})?$/;

/**
 * Seconds of a clock time "14:03:05.250" since midnight, or of a date with time (ISO 8601, "2026-03-01T14:03:05") since
 * 1970 with the clock taken as it is, its time zone left aside: only differences count. Null where it is neither, or no
 * such hour or day exists.
 */
export function clockSeconds(text: string): number | null {
  const match = CLOCK.exec(text.trim());
  if (!match) return null;
  const [, year, month, day, hour, minute, second = '', fraction = ''] = match;
  const within = Number(hour) < 24 && Number(minute) < 60 && Number(second) < 61;
  if (!within) return null;
  const ofDay =
    Number(hour) * 3600 + Number(minute) * 60 + Number(second) + Number(`0.${fraction}`);
  if (year === undefined) return ofDay;
  const date = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  // A day that the month does not have lies in another one.
  const exists = date.getUTCMonth() === Number(month) - 1;
  return exists ? date.getTime() / 1000 + ofDay : null;
}

import { JYY, JZZ, M, SX } from '../../engine/mass/moments';
import { t } from '../../messages';
import type { HeadReading, PartReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { displayRailMass, secondMomentText } from '../../state/shownUnits';
import { setText } from '../marks/svg';

/** Below this share of the largest, a part leans neither way. */
const LEANS_FROM = 1e-3;

export type Leaning = 'centres' | 'flees' | 'even';

/** J_yy - J_zz of one part, kg m^2: positive centres, negative flees; zero while it is hidden, of a push rod and of a keep-out. */
export function partShare(reading: PartReading): number {
  const turns = !reading.part.hidden && reading.carriedBy === 'grip';
  return !turns ? 0 : reading.moments_G[JYY] - reading.moments_G[JZZ];
}

/** Station of a part's centre of mass, metres; of its origin where it weighs nothing. */
export function partStation(reading: PartReading): number {
  const mass = reading.moments_G[M];
  return mass > 0 ? reading.moments_G[SX] / mass : reading.pose_G.translation[0];
}

/** Ids ordered from the shaft outward; what lies at one station keeps its list order. */
export function byStation(reading: HeadReading, ids: readonly string[]): string[] {
  const station = new Map(
    ids.map((id) => {
      const part = reading.part(id);
      return [id, part ? partStation(part) : 0] as const;
    }),
  );
  return ids.toSorted((a, b) => {
    const gap = (station.get(a) ?? 0) - (station.get(b) ?? 0);
    return Math.abs(gap) < 1e-9 ? 0 : gap;
  });
}

/** Writes masses and bars into the rows under `list`; the words for screen readers only when `settled`. */
export function writeRows(
  list: HTMLElement,
  reading: HeadReading,
  units: DisplayUnits,
  settled: boolean,
): void {
  let largest = 0;
  for (const id of reading.order) {
    const part = reading.part(id);
    if (part) largest = Math.max(largest, Math.abs(partShare(part)));
  }
  for (const row of list.querySelectorAll<HTMLElement>('[data-part]')) {
    const part = reading.part(row.dataset.part ?? '');
    if (!part) continue;
    const share = partShare(part);
    const scaled = largest > 0 ? share / largest : 0;
    const massKg = part.moments_G[M];
    const shown = { part: part.part, massKg, share, scaled, units, settled };
    if (isWritten(row, shown)) continue;
    written.set(row, shown);
    const leans = leaning(scaled);
    const keepsOut = part.carriedBy === 'hub' || part.carriedBy === 'case';
    const mass = keepsOut ? t('rail.keepOut') : displayRailMass(massKg, units);
    setPlace(row, 'mass', mass);
    setBar(row, scaled, leans);
    if (settled && keepsOut) setPlace(row, 'spoken', mass);
    else if (settled) setWords(row, part.part.hidden === true, mass, leans, share, units);
  }
}

interface Shown {
  readonly part: PartReading['part'];
  readonly massKg: number;
  readonly share: number;
  readonly scaled: number;
  readonly units: DisplayUnits;
  readonly settled: boolean;
}

/** What each row was last written with. */
const written = new WeakMap<HTMLElement, Shown>();

/** Nothing that the row shows is another: in a drag that is so for almost all rows. */
function isWritten(row: HTMLElement, now: Shown): boolean {
  const before = written.get(row);
  return (
    before !== undefined &&
    before.part === now.part &&
    before.massKg === now.massKg &&
    before.share === now.share &&
    before.scaled === now.scaled &&
    before.units === now.units &&
    (before.settled || !now.settled)
  );
}

/** The same for the row of the whole head: its mass, and which way all together lean. */
export function writeWhole(row: HTMLElement, reading: HeadReading, units: DisplayUnits): void {
  const { totals } = reading;
  const share = totals[JYY] - totals[JZZ];
  const spread = totals[JYY] + totals[JZZ];
  setPlace(row, 'mass', displayRailMass(totals[M], units));
  const leans = leaning(spread > 0 ? share / spread : 0);
  if (row.dataset.leans !== leans) row.dataset.leans = leans;
  setPlace(row, 'share', secondMomentText(share, units));
}

function leaning(scaled: number): Leaning {
  if (Math.abs(scaled) < LEANS_FROM) return 'even';
  return scaled > 0 ? 'centres' : 'flees';
}

/** What each bar was last written with. */
const barPlaces = new WeakMap<HTMLElement, string>();

function setBar(row: HTMLElement, scaled: number, leans: Leaning): void {
  if (row.dataset.leans !== leans) row.dataset.leans = leans;
  const bar = cell(row, 'bar');
  if (!bar) return;
  const half = 50 * Math.min(1, Math.abs(scaled));
  // A tenth of a percent of a bar is a twentieth of a pixel.
  const width = `${half.toFixed(1)}%`;
  const left = `${(scaled > 0 ? 50 - half : 50).toFixed(1)}%`;
  const place = `${width} ${left}`;
  if (barPlaces.get(bar) === place) return;
  barPlaces.set(bar, place);
  bar.style.width = width;
  bar.style.left = left;
}

function setWords(
  row: HTMLElement,
  hidden: boolean,
  mass: string,
  leans: Leaning,
  share: number,
  units: DisplayUnits,
): void {
  const leansText = t(`rail.${leans}`);
  const shareText = secondMomentText(share, units);
  setPlace(
    row,
    'spoken',
    hidden
      ? t('rail.spokenHidden', { mass })
      : t('rail.spoken', { mass, leans: leansText, share: shareText }),
  );
  const title = hidden ? t('rail.hidden') : t('rail.share', { leans: leansText, share: shareText });
  if (row.title !== title) row.title = title;
}

/** The places of a row, looked up once. */
const cells = new WeakMap<HTMLElement, Map<string, HTMLElement | null>>();

function cell(row: HTMLElement, place: string): HTMLElement | null {
  let known = cells.get(row);
  if (!known) {
    known = new Map();
    cells.set(row, known);
  }
  let element = known.get(place);
  if (element === undefined) {
    element = row.querySelector<HTMLElement>(`[data-place="${place}"]`);
    known.set(place, element);
  }
  return element;
}

function setPlace(row: HTMLElement, place: string, text: string): void {
  const element = cell(row, place);
  if (element) setText(element, text);
}

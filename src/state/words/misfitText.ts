import type { BottomedNut } from '../../design/bottomsOut';
import type { ShortBolt } from '../../design/engagement';
import type { Misfit } from '../../design/misfits';
import { t } from '../../messages';
import type { SeatSize } from '../../parts/contract';
import type { DisplayUnits } from '../settings';
import { shownText, shownUnit } from '../shownUnits';

/** The first part that does not fit where it sits, and how many more; null where all do. */
export function misfitText(found: readonly Misfit[], units: DisplayUnits): string | null {
  const [first] = found;
  if (!first) return null;
  const text = t('verdict.misfit', {
    part: first.part,
    own: sizeText(first.own, units),
    on: first.on,
    seat: sizeText(first.seat, units),
  });
  return found.length === 1
    ? text
    : `${text} ${t('verdict.misfitMore', { count: found.length - 1 })}`;
}

/** A closed nut that its bolt keeps from going home; null where there is none. */
export function bottomText([first]: readonly BottomedNut[], units: DisplayUnits): string | null {
  if (!first) return null;
  const { nut, bolt, byMm } = first;
  const by = shownText(Number(byMm.toFixed(2)), shownUnit('mm', units));
  return t('verdict.bottomsOut', { nut, bolt, by });
}

/** A bolt that ends too soon in its nut; null where there is none. */
export function shortText([first]: readonly ShortBolt[], units: DisplayUnits): string | null {
  if (!first) return null;
  const { nut, bolt, lacks, byMm } = first;
  const by = shownText(Number(byMm.toFixed(2)), shownUnit('mm', units));
  return t(`verdict.short.${lacks}`, { nut, bolt, by });
}

function sizeText(size: SeatSize, units: DisplayUnits): string {
  const mm = shownUnit('mm', units);
  const diameter = shownText(size.diameterMm, mm);
  return size.kind === 'thread'
    ? t('verdict.threadSize', { diameter, pitch: shownText(size.pitchMm, mm) })
    : t(`verdict.${size.kind}Size`, { diameter });
}

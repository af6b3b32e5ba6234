import { MODEL_SHARE } from '../../../design/massCard';
import { type MassOrigin, massOrigins } from '../../../design/massOrigin';
import { measuredReport } from '../../../design/measuredReport';
import { type Materials, materialKeyOf, materialNamed, materialsOf } from '../../../design/resolve';
import { isUsed } from '../../../parts/contract';
import { findMaterial } from '../../../parts/materials';
import { partType } from '../../../parts/registry';
import { fixed } from '../../../state/quantities';
import type { PartReading } from '../../../state/reading';
import type { ReportInputs } from '../inputs';
import { type Block, list } from '../model';
import { t } from '../roomText';

/** What the numbers stand on: measured, taken from tables, remembered, estimated, left out. */
export function assumptionBlocks(inputs: ReportInputs): Block[] {
  const { design, reading } = inputs;
  const items = [
    ...(design.note ? [t('report.demo', { note: design.note })] : []),
    t('report.assumeExact'),
    ...massItems(inputs),
    ...airItems(inputs),
    ...frictionItems(inputs),
    ...(reading.linkage && reading.linkage.rodPart === null ? [t('report.assumeNoRod')] : []),
    t('report.assumeSteady'),
  ];
  return [list(items)];
}

function massItems({ design, reading }: ReportInputs): string[] {
  const all = reading.order
    .flatMap((id) => reading.part(id) ?? [])
    .filter(({ carriedBy }) => carriedBy === 'grip' || carriedBy === 'rod');
  const parts = all.filter(({ part }) => !part.hidden);
  const hidden = all.filter(({ part }) => part.hidden);
  const from = (origin: MassOrigin) =>
    parts.filter(({ part, values }) => massOrigins(part, values).includes(origin));
  const weighed = from('weighed');
  const total = parts.length;
  const materials = materialsOf(design);
  const remembered = parts.filter((one) => isRemembered(one, materials));
  const disagree = parts.filter((one) => disagrees(one, materials));
  return [
    weighed.length > 0
      ? t('report.assumeWeighed', { count: weighed.length, total, names: names(weighed) })
      : t('report.assumeNoneWeighed', { total }),
    ...(weighed.length < total
      ? [t('report.assumeDimensions', { percent: fixed(100 * MODEL_SHARE, 0) })]
      : []),
    ...named('report.assumeMemory', remembered),
    ...named('report.assumeDefault', from('densityDefault')),
    ...disagree.map((one) => t('report.assumeDisagree', { name: names([one]) })),
    ...named('report.assumeHidden', hidden),
  ];
}

function named(
  key: 'report.assumeMemory' | 'report.assumeDefault' | 'report.assumeHidden',
  parts: readonly PartReading[],
): string[] {
  return parts.length === 0 ? [] : [t(key, { names: names(parts) })];
}

const MOST_NAMES = 8;

function names(parts: readonly PartReading[]): string {
  const shown = parts.slice(0, MOST_NAMES).map(({ part }) => part.name || part.id);
  const more = parts.length - shown.length;
  return [...shown, ...(more > 0 ? [t('report.andMore', { count: more })] : [])].join(', ');
}

/** A density that counts comes from a row of the tables that was recalled, not read. */
function isRemembered({ part, values }: PartReading, materials: Materials): boolean {
  if (part.measured?.massGrams !== undefined) return false;
  return Object.values(partType(part.kind).parameters).some((parameter) => {
    if (materialKeyOf(parameter) === undefined || !isUsed(parameter, values)) return false;
    const id = materialNamed(part, parameter);
    const material = id === undefined ? undefined : findMaterial(id, materials);
    return material !== undefined && 'fromMemory' in material && material.fromMemory;
  });
}

function disagrees({ part, values }: PartReading, materials: Materials): boolean {
  if (!part.measured) return false;
  const found = measuredReport(part, values, materials);
  return found?.quantities.some(({ comparison }) => comparison?.disagrees) ?? false;
}

function airItems({ reading }: ReportInputs): string[] {
  return [t(reading.air.kind === 'estimated' ? 'report.assumeAir' : 'report.assumeNoAir')];
}

function frictionItems({ reading, design }: ReportInputs): string[] {
  const { counted, known } = reading.friction;
  if (!counted) return [t('report.assumeNoFriction')];
  if (!known) return [t('report.assumeFrictionUnknown')];
  const count = design.friction?.drag?.length ?? 0;
  return [
    count > 0 ? t('report.assumeFrictionTable', { count }) : t('report.assumeFrictionBearings'),
  ];
}

import type { BoltLoads, HeadLoads, Margin } from '../../design/forces/loadTypes';
import { t } from '../../messages';
import { phrase } from '../../messages/phrases';
import {
  displayForce,
  displayMoment,
  displayStress,
  fixed,
  type Quantity,
  show,
  showBoth,
} from '../quantities';
import type { DisplayUnits } from '../settings';

/** How near to its limit a load is. */
export type LoadState = 'within' | 'close' | 'beyond' | 'unknown' | 'plain';

/** A line of the table of loads. */
export interface LoadRow {
  readonly key: string;
  /** The part it belongs to, to be selected; null: none. */
  readonly part: string | null;
  readonly what: string;
  readonly value: string;
  readonly limit: string;
  /** Share of the limit used, or null. */
  readonly use: number | null;
  readonly state: LoadState;
  readonly words: string;
}

/** From here a load is called close to its limit. */
export const CLOSE_FROM = 0.67;

export function loadState(margin: Margin): LoadState {
  if (margin.kind === 'unknown') return 'unknown';
  if (margin.use >= 1) return 'beyond';
  return margin.use >= CLOSE_FROM ? 'close' : 'within';
}

/** Everything that the loads say, in the order in which one would check a head. */
export function loadRows(
  loads: HeadLoads,
  nameOf: (id: string) => string,
  units: DisplayUnits,
): readonly LoadRow[] {
  const force = (value: number) => show(displayForce(value, units));
  const moment = (value: number) => show(displayMoment(value, units));
  return [
    plain(
      'axial',
      null,
      t('loads.axial'),
      force(loads.axialPull),
      t(loads.missing.includes('thrust') ? 'loads.axialRadial' : 'loads.axialNote'),
    ),
    ...loads.bearings.map((bearing) =>
      marginRow(
        `bearing ${bearing.id}`,
        bearing.id,
        t(bearing.carries === 'thrust' ? 'loads.thrustBearing' : 'loads.radialBearing', {
          name: nameOf(bearing.id),
        }),
        bearing.rating,
        (value) => displayForce(value, units),
        t('loads.bearingNote', { radial: force(bearing.radial), axial: force(bearing.axial) }),
      ),
    ),
    ...loads.missing.map((kind) =>
      plain(
        `missing ${kind}`,
        null,
        t(`loads.missing.${kind}`),
        t('loads.none'),
        t('loads.missingNote'),
      ),
    ),
    plain('flap', null, t('loads.flap'), moment(flapTotal(loads)), flapWords(loads, moment)),
    ...loads.bolts.flatMap((bolt) => boltRows(bolt, nameOf(bolt.id), units)),
  ];
}

function flapTotal({ flap }: HeadLoads): number {
  return flap.fromMass + (flap.fromThrust ?? 0);
}

/** Which way mass and thrust bend the grip, and on which side weight would take load off the bearings. */
function flapWords({ flap }: HeadLoads, moment: (value: number) => string): string {
  const { fromMass, fromThrust, balancingProduct } = flap;
  if (fromThrust === null) return t('loads.flapMassOnly', { mass: moment(fromMass) });
  const both = t('loads.flapBoth', { mass: moment(fromMass), thrust: moment(fromThrust) });
  if (balancingProduct === null || Math.abs(balancingProduct) < 1e-12) return both;
  const side = t(balancingProduct > 0 ? 'loads.above' : 'loads.below');
  return `${both} ${t('loads.side', { side })}`;
}

function boltRows(bolt: BoltLoads, name: string, units: DisplayUnits): LoadRow[] {
  const [first, second] = bolt.planes;
  const planes = first === second ? t(`loads.both.${first}`) : t('loads.planes');
  const force = (newtons: number) => displayForce(newtons, units);
  const stress = (pascal: number) => displayStress(pascal, units);
  const shown = {
    shear: force,
    bending: (value: number) => displayMoment(value, units),
    shearAndBending: (value: number) => ({ value, unit: '' }),
    cheekPressure: stress,
    rootPressure: stress,
    headPull: stress,
    thread: force,
  };
  return [
    plain(
      `${bolt.id} pull`,
      bolt.id,
      t('loads.boltPull', { name }),
      show(force(bolt.pull)),
      planes,
    ),
    ...bolt.checks.map(({ name: check, margin }) =>
      marginRow(
        `${bolt.id} ${check}`,
        bolt.id,
        t('loads.checkOf', { name, check: t(`loads.check.${check}`) }),
        margin,
        shown[check],
        t(`loads.checkNote.${check}`),
      ),
    ),
    {
      ...plain(
        `${bolt.id} retention`,
        bolt.id,
        t('loads.checkOf', { name, check: t('loads.retention') }),
        t(`loads.retained.${bolt.retention}`),
        t(`loads.retainedNote.${bolt.retention}`),
      ),
      state: KEPT[bolt.retention],
    },
  ];
}

const KEPT = {
  prevailing: 'within',
  plain: 'close',
  none: 'close',
  shallow: 'beyond',
  unlocked: 'beyond',
} as const satisfies Readonly<Record<BoltLoads['retention'], LoadState>>;

function plain(
  key: string,
  part: string | null,
  what: string,
  value: string,
  words: string,
): LoadRow {
  return { key, part, what, value, limit: '', use: null, state: 'plain', words };
}

function marginRow(
  key: string,
  part: string,
  what: string,
  margin: Margin,
  shown: (value: number) => Quantity,
  note: string,
): LoadRow {
  const state = loadState(margin);
  if (margin.kind === 'unknown') {
    return {
      key,
      part,
      what,
      value: Number.isNaN(margin.value) ? t('loads.none') : show(shown(margin.value)),
      limit: t('loads.unknown'),
      use: null,
      state,
      words: `${t(`loads.why.${margin.why}`)} ${note}`.trim(),
    };
  }
  const value = shown(margin.value);
  // A share has no unit, and no third digit that says anything.
  const [is, may] = showBoth(value, shown(margin.limit), value.unit === '' ? 2 : 3);
  const own = phrase(margin.source);
  const source = margin.outside ? t('loads.outside', { source: own }) : own;
  return {
    key,
    part,
    what,
    value: is,
    limit: `${may} (${source})`,
    use: margin.use,
    state,
    words: `${t(`loads.state.${state as 'within'}`)} ${note}`.trim(),
  };
}

/** The rows as text to copy, tabs between: the conditions first, what it is worth last. */
export function loadText(conditions: string, rows: readonly LoadRow[]): string {
  const head = [
    t('loads.what'),
    t('loads.value'),
    t('loads.limit'),
    t('loads.use'),
    t('loads.words'),
  ];
  const lines = rows.map(({ what, value, limit, use, words }) =>
    [what, value, limit, use === null ? '' : fixed(use, 3), words].join('\t'),
  );
  return [conditions, head.join('\t'), ...lines, t('loads.caution')].join('\n');
}

import type { Design } from '../../design/design';
import { describeFault } from '../../design/faultText';
import { materialNamed, materialsOf, valuesOf } from '../../design/resolve';
import { type MessageKey, t } from '../../messages';
import { inSentence } from '../../messages/inSentence';
import type { Answer, Setting } from '../../neutralise/answers';
import type { Remains } from '../../neutralise/candidates';
import type { Pick } from '../../neutralise/choices';
import type { ReportedGap } from '../../neutralise/headReport';
import { knobPart, knobRange } from '../../neutralise/knobs';
import type { Obstacle } from '../../neutralise/obstacles';
import type { SearchResult } from '../../neutralise/search';
import type { Wanted } from '../../neutralise/trialHead';
import { partType } from '../../parts/registry';
import { displayForce, displayMoment, fixed, show, showDegrees } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition, secondMomentText } from '../../state/shownUnits';
import { materialName } from '../../state/words/materialText';
import { knobText, knobValueText, optionText } from '../../state/words/planText';

/** What an answer asks to be changed, in words, one phrase a change. */
export function changeText(answer: Answer, design: Design, units: DisplayUnits): string {
  if (answer.make === 'asIs') return t('answers.asIs');
  const picks = answer.picks.map((pick) => pickText(pick, design, units));
  const settings = answer.added.length > 0 ? [weightText(answer, design, units)] : [];
  const turned = answer.settings
    .filter(({ ref }) => !answer.added.includes(ref.part))
    .map((setting) => settingText(setting, { ...design, parts: answer.parts }, units));
  return [...picks, ...settings, ...turned].join('; ');
}

function pickText(pick: Pick, design: Design, units: DisplayUnits): string {
  const id = pick.kind === 'values' ? pick.ref.part : pick.part;
  const part = design.parts.find((one) => one.id === id)?.name || id;
  switch (pick.kind) {
    case 'values':
      return t('answers.pick.values', {
        what: knobText(design, pick.ref),
        value: knobValueText(pick.value, 'mm', units),
      });
    case 'catalogue': {
      const { standard, size, lengthMm } = pick.row;
      return lengthMm === undefined
        ? t('answers.pick.catalogue', { part, standard, size })
        : t('answers.pick.catalogueLength', { part, standard, size, length: lengthMm });
    }
    case 'material':
      return t('answers.pick.material', { part, material: materialText(pick.material, design) });
    case 'option': {
      const option = optionText(design, { part: pick.part, field: pick.field }, pick.option);
      return t('answers.pick.option', { part, option });
    }
    default:
      return pick.count === 0
        ? t('answers.pick.countNone', { part })
        : t('answers.pick.count', { part, count: `${pick.count}\u00a0\u00d7` });
  }
}

function materialText(id: string, design: Design): string {
  const name = materialName(id, materialsOf(design));
  // What comes after a comma is for the list of materials.
  return inSentence(name.split(',')[0]);
}

function settingText(setting: Setting, design: Design, units: DisplayUnits): string {
  const { ref, also, from, made, exact } = setting;
  const unit = knobRange(design, ref)?.unit ?? 'mm';
  const text = (value: number) => knobValueText(value, unit, units);
  const rounded = Math.abs(made - exact) > 1e-6 * Math.max(1, Math.abs(exact));
  const what = knobText(design, ref);
  const along = also.map((one) => t('answers.both', { what: knobText(design, one) })).join('');
  return (
    t(rounded ? 'answers.setExact' : 'answers.set', {
      what,
      from: from === null ? t('answers.exactNone') : text(from),
      made: text(made),
      exact: text(Number(exact.toPrecision(5))),
    }) + along
  );
}

function weightText(answer: Answer, design: Design, units: DisplayUnits): string {
  const whole = { ...design, parts: answer.parts };
  const part = knobPart(whole, { part: answer.added[0], field: '' });
  if (!part) return '';
  const values = valuesOf(part, materialsOf(design)) as unknown as Record<string, number>;
  const density = Object.entries(partType(part.kind).parameters).find(
    ([, parameter]) => materialNamed(part, parameter) !== undefined,
  );
  const material = density ? (materialNamed(part, density[1]) ?? '') : '';
  const side =
    answer.added.length > 1 ? 'both' : part.socket?.name === 'headTop' ? 'headTop' : 'boltEnd';
  return t('answers.new', {
    diameter: knobValueText(values.diameterMm, 'mm', units),
    length: knobValueText(values.lengthMm, 'mm', units),
    material: materialText(material, design),
    where: t(`answers.where.${side}`),
  });
}

/** A short name for the try-out that an answer becomes: what it is made of, without what it was. */
export function answerName(answer: Answer, design: Design, units: DisplayUnits): string {
  const whole = { ...design, parts: answer.parts };
  const picks = answer.picks.map((pick) => pickText(pick, design, units));
  const added = answer.added.length > 0 ? [weightText(answer, design, units)] : [];
  const turned = answer.settings
    .filter(({ ref }) => !answer.added.includes(ref.part))
    .map(({ ref, made }) =>
      t('answers.pick.values', {
        what: knobText(whole, ref),
        value: knobValueText(made, knobRange(whole, ref)?.unit ?? 'mm', units),
      }),
    );
  return [...turned, ...added, ...picks].join('; ').slice(0, LONGEST_NAME);
}

const LONGEST_NAME = 120;

/** Push-rod force or moment with its unit. */
export function holdText(
  value: number | null,
  kind: 'force' | 'moment',
  units: DisplayUnits,
): string {
  if (value === null) return t('answers.exactNone');
  return show(kind === 'force' ? displayForce(value, units) : displayMoment(value, units));
}

export function holdNumber(
  value: number | null,
  kind: 'force' | 'moment',
  units: DisplayUnits,
): string {
  if (value === null) return t('answers.exactNone');
  const { value: shown } =
    kind === 'force' ? displayForce(value, units) : displayMoment(value, units);
  return fixed(shown, Math.abs(shown) >= 100 ? 0 : Math.abs(shown) >= 10 ? 1 : 2);
}

/** "0.19 N per 0.1 mm" for each number that is turned. */
export function exactText(answer: Answer, design: Design, units: DisplayUnits): string {
  const whole = { ...design, parts: answer.parts };
  const texts = answer.settings.flatMap(({ ref, perUnit }) => {
    const unit = knobRange(whole, ref)?.unit;
    if (perUnit === null || !unit) return [];
    const step = EXACT_STEPS[unit];
    return [
      t('answers.exactEach', {
        force: holdText(perUnit * step, answer.report.kind, units),
        step: knobValueText(step, unit, units),
      }),
    ];
  });
  return texts.length > 0 ? texts.join('; ') : t('answers.exactNone');
}

const EXACT_STEPS = { mm: 0.1, g: 0.1, deg: 1, 'kg/m3': 10, N: 1, '1': 1 } as const;

/** What stood in the way, in words. */
export function obstacleText(
  knobs: readonly number[],
  obstacle: Obstacle,
  result: {
    readonly design: Design;
    readonly refs: readonly { readonly part: string; readonly field: string }[];
  },
  units: DisplayUnits,
): string {
  const { design, refs } = result;
  const names = knobs.map((i) => knobText(design, refs[i]));
  const all = names.join(', ');
  switch (obstacle.kind) {
    case 'limit': {
      const ref = refs[knobs[obstacle.knob]];
      const unit = knobRange(design, ref)?.unit ?? 'mm';
      const limit = knobValueText(obstacle.limit, unit, units);
      const what = knobText(design, ref);
      return obstacle.needed === null
        ? t('answers.obstacle.limitNever', { what, limit })
        : t('answers.obstacle.limit', {
            what,
            limit,
            needed: `${knobValueText(Number(obstacle.needed.toPrecision(4)), unit, units)}`,
          });
    }
    case 'rule':
      return t('answers.obstacle.rule', { what: all, rule: describeFault(obstacle.fault) });
    case 'noEffect':
      return t('answers.obstacle.noEffect', { what: all });
    case 'partly':
      return t('answers.partly');
    default:
      return Number.isFinite(obstacle.share)
        ? t('answers.obstacle.short', { what: all, share: fixed(100 * obstacle.share, 0) })
        : t('answers.obstacle.shortNone', { what: all });
  }
}

export function refusedText({ refused, refusal }: SearchResult): string {
  if (refused === 0 || !refusal) return '';
  return t('answers.refused', { count: refused, rule: describeFault(refusal) });
}

export function loadText(answer: Answer): string {
  const { limit } = answer.report;
  if (!limit) return t('answers.loadNone');
  const what =
    limit.what === 'bearing'
      ? t('answers.load.bearing')
      : t(`loads.check.${limit.what}` as MessageKey);
  return `${fixed(100 * limit.use, 0)}\u00a0% ${what}`;
}

/** The least gap with its uncertainty, or by how much it touches. */
export function gapText(gap: ReportedGap | null, units: DisplayUnits): string {
  if (!gap) return t('answers.gapNone');
  const text = (metres: number) =>
    `${displayPosition(metres, units)}\u00a0${units.length === 'mm' ? 'mm' : 'in'}`;
  return gap.gap < 0 ? t('answers.gapOverlap', { depth: text(-gap.gap) }) : text(gap.gap);
}

/** What is still to be done, in the goal's own units. */
export function remainsText({ kind, value }: Remains, units: DisplayUnits): string {
  switch (kind) {
    case 'secondMoment':
      return secondMomentText(value, units);
    case 'force':
    case 'pull':
      return show(displayForce(value, units));
    default:
      return show(displayMoment(value, units));
  }
}

/** The limit that an answer uses up, or what else is in its way; null where nothing is. */
export function blockedText(answer: Answer, units: DisplayUnits): string | null {
  const { limit, gap, bottomsMm, shortMm } = answer.report;
  if (bottomsMm !== null) {
    return t('answers.bottoms', { by: knobValueText(Number(bottomsMm.toFixed(2)), 'mm', units) });
  }
  if (shortMm !== null) {
    return t('answers.short', { by: knobValueText(Number(shortMm.toFixed(2)), 'mm', units) });
  }
  if ((limit?.use ?? 0) > 1) return t('answers.beyond', { load: loadText(answer) });
  return gap?.tooNear ? gapText(gap, units) : null;
}

/** What was asked for, in words: the goal with its numbers, and the speeds. */
export function wantedText({ goal, speedsRpm }: Wanted, units: DisplayUnits): string {
  const speeds = speedsRpm.map((rpm) => fixed(rpm, 0)).join(', ');
  if (goal.kind === 'neutral') return t('answers.wanted.neutral');
  if (goal.kind === 'centring') {
    return t('answers.wanted.centring', {
      rest: showDegrees(goal.restDeg),
      away: showDegrees(goal.awayDeg),
      force: show(displayForce(goal.forceN, units)),
      speeds: fixed(speedsRpm[0], 0),
    });
  }
  const range = { from: showDegrees(goal.fromDeg), to: showDegrees(goal.toDeg), speeds };
  return t(`answers.wanted.${goal.kind}`, range);
}

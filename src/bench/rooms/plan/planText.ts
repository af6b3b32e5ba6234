import type { Design } from '../../../design/design';
import { t } from '../../../messages';
import { displayForce, fixed, show, significant } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import type { GaugeHeadFault } from '../../gaugeHead';
import type { BenchPlan, PlannedRung } from '../../plan';
import { type MissingRung, rungName } from '../../rungs';
import type { PlanKey } from '../../safety';
import { say } from '../../say';

/** A text of the plan: rungs and safety. */
export function sayPlan(key: PlanKey): string {
  return t(key);
}

/** Highest reading, range, steps, speeds and settling, in sentences; `fastestRpm` is what the design is meant to turn. */
export function planSentences(
  plan: BenchPlan,
  units: DisplayUnits,
  fastestRpm = Number.POSITIVE_INFINITY,
): readonly string[] {
  const { highest, rangeShare, steps, settleSeconds, speedsRpm, frictionKnown } = plan;
  const lines = [
    say('benchRoom.plan.highest', { force: show(displayForce(highest, units)) }),
    rangeShare === null
      ? say('benchRoom.plan.noRange')
      : say(rangeShare > 1 ? 'benchRoom.plan.tooMuch' : 'benchRoom.plan.share', {
          share: fixed(100 * rangeShare, 0),
        }),
  ];
  if (steps !== null)
    lines.push(
      say(steps < FEW_STEPS ? 'benchRoom.plan.fewSteps' : 'benchRoom.plan.steps', {
        steps: significant(steps, 2),
      }),
    );
  const fastest = Math.max(...speedsRpm);
  if (fastest > fastestRpm)
    lines.push(
      say('benchRoom.plan.tooFast', { speed: fixed(fastest, 0), max: fixed(fastestRpm, 0) }),
    );
  lines.push(
    say('benchRoom.plan.how', {
      speeds: speedsRpm.map((one) => fixed(one, 0)).join(', '),
      seconds: settleSeconds,
    }),
  );
  if (plan.senses.includes('pull') && plan.senses.includes('push'))
    lines.push(say(`benchRoom.plan.way.${plan.pullRaises ? 'pullRaises' : 'pullLowers'}`));
  if (!frictionKnown) lines.push(say('benchRoom.plan.noFriction'));
  return lines;
}

/** Fewer gauge steps than this in the largest reading of the head as designed say little. */
const FEW_STEPS = 10;

export function missingText(missing: MissingRung, design: Design): string {
  const part = missing.why === 'noOrdinary' ? missing.part : '';
  return say(`benchRoom.plan.missing.${missing.why}`, {
    rung: rungName(missing.key),
    part: partName(design, part),
  });
}

/** True where the mass drives this step away from flat, and somewhere in the planned pitches harder than friction holds. */
export function fleesFlat(rung: PlannedRung): boolean {
  const isDriven = rung.expected.some(({ force, friction }) => Math.abs(force) > friction);
  return rung.key !== 'drag' && rung.model.spread < 0 && isDriven;
}

export function partName(design: Design, id: string): string {
  return design.parts.find((part) => part.id === id)?.name || id;
}

export function gaugeFaultText({ kind }: GaugeHeadFault): string {
  return say(`benchRoom.plan.fault.${kind}`);
}

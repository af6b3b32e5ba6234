import type { Design } from '../../../design/design';
import { significant } from '../../../state/quantities';
import { knobText } from '../../../state/words/planText';
import type { CorrectionFault } from '../../correction';
import { say } from '../../say';
import { partName } from '../plan/planText';
import type { Fixes, Refused } from './fixes';

/** What is not offered, and why: numbers that no correction asks for. */
export function RefusedFixes({
  fixes,
  design,
}: {
  readonly fixes: Fixes;
  readonly design: Design;
}) {
  const lines = [
    ...fixes.refused.map((one) => refusedText(one, design)),
    ...[fixes.agrees ? null : fixes.lump, fixes.added].flatMap((lump) =>
      lump && !lump.ok ? lumpText(lump.error) : [],
    ),
  ];
  if (lines.length === 0) return null;
  return (
    <details data-testid="bench-refused">
      <summary>{say('benchRoom.correct.refused', { count: lines.length })}</summary>
      <ul className="bench-words">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </details>
  );
}

function refusedText(one: Refused, design: Design): string {
  if (one.kind === 'length')
    return say('benchRoom.correct.tooFar', {
      what: knobText(design, one.ref),
      value: significant(one.fault.value, 4),
      reach: significant(one.fault.reach, 3),
    });
  const part = partName(design, one.part);
  const grams = significant(one.fault.massGrams, 4);
  if (one.fault.kind === 'weighed')
    return say('benchRoom.correct.weighed', {
      part,
      grams,
      step: significant(one.fault.stepGrams, 2),
    });
  return say('benchRoom.correct.absurdMass', {
    part,
    grams,
    limit: significant(one.fault.limitGrams, 4),
  });
}

function lumpText(fault: CorrectionFault): readonly string[] {
  if (fault.kind !== 'notSensible') return [];
  const { massGrams, limitGrams } = fault;
  return [
    say('benchRoom.correct.absurdLump', {
      grams: significant(massGrams, 4),
      limit: significant(limitGrams, 3),
    }),
  ];
}

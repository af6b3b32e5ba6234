import { misfits } from '../../../design/misfits';
import { anglesOf } from '../../../design/verdict';
import { t } from '../../../messages';
import { signedDegrees } from '../../../panels/marks/pitchText';
import { misfitText } from '../../../panels/verdict/misfitText';
import { verdictText } from '../../../panels/verdict/verdictText';
import { overlapText } from '../../../state/gapText';
import type { HeadReading } from '../../../state/reading';
import type { ReportInputs } from '../inputs';
import { type Block, type Fact, words } from '../model';
import { say } from '../say';

/** The page's own sentence, what is missing, the figures beside it, and what does not fit. */
export function verdictBlocks({ reading, model, units }: ReportInputs): Block[] {
  const text = verdictText(reading.verdict(), anglesOf(reading.equilibria, 'stable'), units);
  const nameOf = (id: string) => reading.part(id)?.part.name || id;
  const wrong = [
    misfitText(misfits(model), units),
    overlapText(reading.clearance().pairs, nameOf, units),
  ].filter((one) => one !== null);
  const label = text.holdLabel;
  const facts: Fact[] = [
    {
      label: say(reading.linkage ? 'report.hold' : 'report.holdMoment', { label }),
      value: text.hold,
    },
    { label: say('report.rests'), value: text.rest },
    { label: t('verdict.figureDifference'), value: text.difference },
    { label: say('report.overCentre'), value: text.overCentre },
    { label: say('report.band'), value: bandText(reading) },
  ];
  return [
    words(text.line, 'lead'),
    ...(text.detail === '' ? [] : [words(text.detail)]),
    ...wrong.map((one) => words(one, 'warning')),
    { kind: 'facts', title: null, facts },
  ];
}

function bandText({ friction, bandsDeg }: HeadReading): string {
  if (!friction.counted) return say('report.bandNotCounted');
  if (!friction.known) return say('report.bandUnknown');
  if (bandsDeg.length === 0) return say('report.bandNowhere');
  return bandsDeg
    .map(([from, to]) =>
      say('report.bandFrom', { from: signedDegrees(from), to: signedDegrees(to) }),
    )
    .join('; ');
}

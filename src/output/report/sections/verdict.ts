import { misfits } from '../../../design/misfits';
import { anglesOf } from '../../../design/verdict';
import { overlapText } from '../../../state/gapText';
import type { HeadReading } from '../../../state/reading';
import { misfitText } from '../../../state/words/misfitText';
import { signedDegrees } from '../../../state/words/pitchText';
import { verdictText } from '../../../state/words/verdictText';
import type { ReportInputs } from '../inputs';
import { type Block, type Fact, words } from '../model';
import { t } from '../roomText';
import { beyondLimitText } from './loads';

/** The page's own sentence, what is missing, the figures beside it, and what does not fit. */
export function verdictBlocks(inputs: ReportInputs): Block[] {
  const { reading, model, units } = inputs;
  const text = verdictText(reading.verdict(), anglesOf(reading.equilibria, 'stable'), units);
  const nameOf = (id: string) => reading.part(id)?.part.name || id;
  const wrong = [
    misfitText(misfits(model), units),
    overlapText(reading.clearance().pairs, nameOf, units),
    beyondLimitText(inputs),
  ].filter((one) => one !== null);
  const label = text.holdLabel;
  const facts: Fact[] = [
    {
      label: t(reading.linkage ? 'report.hold' : 'report.holdMoment', { label }),
      value: text.hold,
    },
    { label: t('report.rests'), value: text.rest },
    { label: t('verdict.figureDifference'), value: text.difference },
    { label: t('report.overCentre'), value: text.overCentre },
    { label: t('report.band'), value: bandText(reading) },
  ];
  return [
    words(text.line, 'lead'),
    ...(text.detail === '' ? [] : [words(text.detail)]),
    ...wrong.map((one) => words(one, 'warning')),
    { kind: 'facts', title: null, facts },
  ];
}

function bandText({ friction, bandsDeg }: HeadReading): string {
  if (!friction.counted) return t('report.bandNotCounted');
  if (!friction.known) return t('report.bandUnknown');
  if (bandsDeg.length === 0) return t('report.bandNowhere');
  return bandsDeg
    .map(([from, to]) => t('report.bandFrom', { from: signedDegrees(from), to: signedDegrees(to) }))
    .join('; ');
}

import { useState } from 'react';
import type { Design } from '../../design/design';
import { type MessageKey, t } from '../../messages';
import type { Answer } from '../../neutralise/answers';
import type { GoalKind } from '../../neutralise/goal';
import type { HeadReport } from '../../neutralise/headReport';
import { displayMass, fixed, show, showDegrees } from '../../state/quantities';
import type { DisplayUnits } from '../../state/settings';
import { MathText } from '../../ui/MathText';
import { useAppState } from '../../ui/session';
import {
  blockedText,
  changeText,
  exactText,
  gapText,
  holdNumber,
  loadText,
  remainsText,
} from './answerText';

/** Whether an answer is a try-out of the open design, and the adopted one. */
export type TriedState = 'new' | 'tried' | 'adopted';

type SortKey = 'best' | 'mass' | 'hold' | 'load' | 'left';

const SORTS: Readonly<Record<Exclude<SortKey, 'best'>, (answer: Answer) => number>> = {
  mass: ({ massAdded }) => massAdded,
  hold: ({ report }) => Math.max(...report.holds.map((hold) => Math.abs(hold ?? Infinity))),
  load: ({ report }) => report.limit?.use ?? Infinity,
  left: ({ left }) => left,
};

/** The answers as a table; pressing the head of a column sorts by it, pressing it again goes back to the best first. */
export function AnswerTable(props: {
  readonly answers: readonly Answer[];
  readonly now: HeadReport;
  readonly design: Design;
  readonly goal: GoalKind;
  readonly tried: (answer: Answer) => TriedState;
  readonly onTry: (answer: Answer) => void;
  readonly onAdopt: (answer: Answer) => void;
}) {
  const { answers, now, design } = props;
  const units = useAppState((state) => state.settings.units);
  const [sort, setSort] = useState<SortKey>('best');
  const sorted =
    sort === 'best' ? answers : answers.toSorted((a, b) => SORTS[sort](a) - SORTS[sort](b));
  const pitches = now.pitchesDeg
    .map((deg) => fixed(deg, Number.isInteger(deg) ? 0 : 1))
    .join(' / ');
  const unit = now.kind === 'force' ? units.force : units.moment;
  const holds = t(now.kind === 'force' ? 'answers.holds' : 'answers.moments', {
    pitches: `${pitches}\u00b0`,
    unit,
  });

  function heading(key: SortKey, text: string, title?: string) {
    const chosen = sort === key;
    return (
      <th
        scope="col"
        className="lower-number"
        aria-sort={chosen ? 'ascending' : undefined}
        title={title}
      >
        <button
          type="button"
          className="answers-sort"
          title={t('answers.sort', { column: text })}
          onClick={() => setSort(chosen ? 'best' : key)}
        >
          <MathText text={text} />
          {chosen ? ' \u2191' : ''}
        </button>
      </th>
    );
  }

  return (
    <table className="lower-table answers-table" data-testid="answers-table">
      <thead>
        <tr>
          <th scope="col" className="lower-number">
            #
          </th>
          <th scope="col">
            <span className="ui-unseen">{t('answers.try')}</span>
          </th>
          <th scope="col">{t('answers.change')}</th>
          {heading('left', t(`answers.left.${props.goal}`), t('answers.leftTitle'))}
          {heading('load', t('answers.load'), t('answers.loadTitle'))}
          {heading('mass', t('answers.mass'))}
          {heading('hold', holds)}
          <th scope="col">{t('answers.rests')}</th>
          <th scope="col">{t('answers.band')}</th>
          <th scope="col">{t('answers.gap')}</th>
          <th scope="col" title={t('answers.exactTitle')}>
            {t('answers.exact')}
          </th>
          <th scope="col">{t('answers.make')}</th>
        </tr>
      </thead>
      <tbody>
        {sorted.map((answer) => (
          <AnswerRow
            key={answer.key}
            answer={answer}
            rank={answers.indexOf(answer) + 1}
            units={units}
            design={design}
            tried={props.tried(answer)}
            onTry={() => props.onTry(answer)}
            onAdopt={() => props.onAdopt(answer)}
          />
        ))}
      </tbody>
    </table>
  );
}

/** Tries the answer, then adopts it. The button stays when there is nothing left to do, and keeps the focus. */
function NextStep(props: {
  readonly answer: Answer;
  readonly tried: TriedState;
  readonly onTry: () => void;
  readonly onAdopt: () => void;
}) {
  const { answer, tried } = props;
  if (answer.make === 'asIs') {
    return tried === 'adopted' ? <strong>{t('answers.adoptedMark')}</strong> : null;
  }
  if (tried === 'adopted') {
    return (
      <button key="step" type="button" className="ui-button answers-mark" aria-disabled={true}>
        {t('answers.adoptedMark')}
      </button>
    );
  }
  return (
    <button
      key="step"
      type="button"
      className={tried === 'tried' ? 'ui-button ui-button-main' : 'ui-button'}
      title={t(tried === 'tried' ? 'answers.adoptTitle' : 'answers.tryTitle')}
      onClick={tried === 'tried' ? props.onAdopt : props.onTry}
    >
      {t(tried === 'tried' ? 'answers.adopt' : 'answers.try')}
    </button>
  );
}

function AnswerRow(props: {
  readonly answer: Answer;
  readonly rank: number;
  readonly units: DisplayUnits;
  readonly design: Design;
  readonly tried: TriedState;
  readonly onTry: () => void;
  readonly onAdopt: () => void;
}) {
  const { answer, units, design } = props;
  const { report, massAdded, make } = answer;
  const blocked = blockedText(answer, units);
  return (
    <tr data-make={make} data-testid={`answer-${props.rank}`}>
      <td className="lower-number">{props.rank}</td>
      <td>
        <NextStep {...props} />
      </td>
      <th scope="row">{changeText(answer, design, units)}</th>
      <td className="lower-number">{remainsText(answer.remains, units)}</td>
      <td className="lower-number answers-load" data-state={blocked ? 'beyond' : undefined}>
        {blocked ?? loadText(answer)}
      </td>
      <td className="lower-number">{signedMass(massAdded, units)}</td>
      <td className="lower-number answers-holds">
        {report.holds.map((hold, i) => (
          <span key={report.pitchesDeg[i]}>{holdNumber(hold, report.kind, units)}</span>
        ))}
      </td>
      <td className="answers-band">
        {report.restsDeg.length > 0
          ? report.restsDeg.map((deg) => showDegrees(deg)).join(', ')
          : t('answers.restsNone')}
      </td>
      <td className="answers-band">
        {report.bandDeg
          ? `${showDegrees(report.bandDeg[0], 0)} \u2026 ${showDegrees(report.bandDeg[1], 0)}`
          : t('answers.bandNone')}
      </td>
      <td className="answers-load" data-state={report.gap?.tooNear ? 'beyond' : undefined}>
        {gapText(report.gap, units)}
      </td>
      <td className="answers-exact">{exactText(answer, design, units)}</td>
      <td>{t(`answers.make.${make}` as MessageKey)}</td>
    </tr>
  );
}

function signedMass(kilograms: number, units: DisplayUnits): string {
  const text = show(displayMass(kilograms, units));
  return kilograms > 0 ? `+${text}` : text;
}

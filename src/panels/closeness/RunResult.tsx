import { useState } from 'react';
import type { Design } from '../../design/design';
import type {
  Tightening,
  ToleranceResult,
  ToleranceShare,
} from '../../neutralise/closeness/toleranceTypes';
import { knobKey, sameKnob } from '../../neutralise/knobs';
import { displayForce } from '../../state/quantities';
import { t } from '../../state/words/closenessText';
import { signedDegrees } from '../../state/words/pitchText';
import { knobText, knobValueText } from '../../state/words/planText';
import {
  bandLine,
  bareForce,
  chanceLines,
  matchingLines,
  percentText,
} from '../../state/words/runText';
import { PlotTools } from '../../ui/plots/PlotTools';
import { useAppState, useSession } from '../../ui/session';
import { PlotBox } from '../plots/PlotBox';
import { bandPlot } from './bandPlot';

/** What a run found; `design` is the head that it is of. */
export function RunResult(props: { readonly result: ToleranceResult; readonly design: Design }) {
  const { result, design } = props;
  const units = useAppState((state) => state.settings.units);
  const [asTable, setAsTable] = useState(false);
  const [first, ...more] = chanceLines(result, units);
  const summary = () => t('closely.plotSummary', { band: bandLine(result, units) });
  return (
    <>
      <p className="closeness-words" data-testid="tolerance-chance">
        <strong>{first}</strong>
      </p>
      {more.map((line) => (
        <p key={line} className="closeness-words">
          {line}
        </p>
      ))}
      <div className="closeness-plot" key={plotKey(result)}>
        <PlotBox
          testId="tolerance-plot"
          data={() => bandPlot(result, units)}
          summary={summary}
          asTable={asTable}
          tableName={t('lower.closely')}
        />
      </div>
      <div className="lower-head">
        <PlotTools
          testId="tolerance"
          plot={() => ({
            data: bandPlot(result, units),
            design,
            lines: [`${t('lower.closely')}. ${first}`],
            summary: summary(),
            name: 'tolerances',
          })}
          asTable={asTable}
          onTable={setAsTable}
        />
      </div>
      <h3 className="closeness-heading">
        {t('closely.setPitches', { unit: displayForce(0, units).unit })}
      </h3>
      <SetPitches result={result} />
      <h3 className="closeness-heading">{t('closely.tighten')}</h3>
      <Tighten result={result} design={design} />
      <h3 className="closeness-heading">{t('closely.matching')}</h3>
      <ul className="lower-list" data-testid="tolerance-matching">
        {matchingLines(result, design, units).map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </>
  );
}

/** Exact heads and first order side by side, at the ends of the pitch in use, half way and flat. */
function SetPitches({ result }: { readonly result: ToleranceResult }) {
  const units = useAppState((state) => state.settings.units);
  const force = (value: number) => bareForce(value, units);
  const [from, to] = result.used;
  const places = [0, 1, 2, 3, 4].map((k) => from + (k * (to - from)) / 4);
  return (
    <table className="lower-table" data-testid="tolerance-pitches">
      <thead>
        <tr>
          {(['at', 'nominal', 'range', 'sigma', 'firstSigma'] as const).map((name) => (
            <th key={name} scope="col" className="lower-number">
              {t(`closely.${name}`)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {places.map((i) => (
          <tr key={i}>
            <th scope="row" className="lower-number">
              {signedDegrees(result.pitchDeg[i])}
            </th>
            <td className="lower-number">{force(result.nominal[i])}</td>
            <td className="lower-number">
              {t('closely.rangeText', {
                low: force(result.exact.low[i]),
                high: force(result.exact.high[i]),
              })}
            </td>
            <td className="lower-number">{force(result.exact.sigma[i])}</td>
            <td className="lower-number">{force(result.rssSigma[i])}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Another result draws its plot anew. */
function plotKey({ exact, samples, worst }: ToleranceResult): string {
  return `${samples} ${exact.mean[worst]} ${exact.sigma[worst]}`;
}

function Tighten(props: { readonly result: ToleranceResult; readonly design: Design }) {
  const { result, design } = props;
  const { shares, tighten } = result;
  return (
    <table className="lower-table closeness-tighten" data-testid="tolerance-tighten">
      <thead>
        <tr>
          <th scope="col">{t('closely.number')}</th>
          <th scope="col" className="lower-number">
            {t('closely.share')}
          </th>
          <th scope="col" className="lower-number">
            {t('closely.halved')}
          </th>
        </tr>
      </thead>
      <tbody>
        {shares.slice(0, tighten.length).map((share) => (
          <TightenRow
            key={knobKey(share.ref)}
            share={share}
            tightening={tighten.find(({ ref }) => sameKnob(ref, share.ref))}
            design={design}
          />
        ))}
      </tbody>
    </table>
  );
}

function TightenRow(props: {
  readonly share: ToleranceShare;
  readonly tightening: Tightening | undefined;
  readonly design: Design;
}) {
  const { share, tightening, design } = props;
  const { actions } = useSession();
  const units = useAppState((state) => state.settings.units);
  return (
    <tr>
      <th scope="row">
        <button
          type="button"
          className="lower-name closeness-name"
          onClick={() => actions.select(share.ref.part)}
        >
          {knobText(design, share.ref)}
        </button>{' '}
        <span className="closeness-per">
          {`\u00b1${knobValueText(share.plusMinus, share.unit, units)}`}
        </span>
      </th>
      <td className="lower-number">{percentText(share.share)}</td>
      <td className="lower-number">
        {tightening &&
          t('closely.halvedTo', {
            from: percentText(tightening.from),
            to: percentText(tightening.to),
          })}
      </td>
    </tr>
  );
}

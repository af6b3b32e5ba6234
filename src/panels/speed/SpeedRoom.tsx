import { useRef, useState } from 'react';
import type { SpeedSweep } from '../../design/forces/speedSweep';
import { t } from '../../messages';
import { significant } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import { signedDegrees } from '../../state/words/pitchText';
import type { PlotData } from '../../ui/drawn/plotLayout';
import { HelpRow } from '../../ui/help/HelpRow';
import type { PlotToSave } from '../../ui/plotFiles';
import { PlotTools } from '../../ui/plots/PlotTools';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { QuantitySelect } from '../chart/QuantitySelect';
import { type PlottedQuantity, plottedQuantity } from '../chart/quantity';
import { PlotBox } from '../plots/PlotBox';

const LOOKS = { grip: '1', rod: '3', air: '2', lag: '4' } as const;

/** The chosen quantity against speed, at the pitch of the pointer, with what it is made of. */
export function SpeedRoom() {
  const { store, live } = useSession();
  const where = useRef<HTMLSpanElement>(null);
  const [asTable, setAsTable] = useState(false);
  const pitchOf = () => store.getState().pitchDeg;
  useLive((_, changes) => {
    if (!where.current || !(changes.pitch || changes.design)) return;
    const text = t('speed.at', { pitch: signedDegrees(pitchOf()) });
    if (where.current.textContent !== text) where.current.textContent = text;
  });

  function quantityOf(reading: HeadReading): PlottedQuantity {
    const { settings } = store.getState();
    const quantity = plottedQuantity(reading, settings);
    // Energy is a matter of pitch; the moment stands in for it.
    return quantity.kind === 'energy'
      ? plottedQuantity(reading, { ...settings, chartQuantity: 'moment' })
      : quantity;
  }

  function data(reading: HeadReading): PlotData {
    return sweepData(reading.speeds(pitchOf()), quantityOf(reading), reading);
  }

  function summary(reading: HeadReading): string {
    const quantity = quantityOf(reading);
    const sweep = reading.speeds(pitchOf());
    const column = columnOf(sweep, quantity);
    return [...sweep.speedRpm]
      .map((rpm, i) => ({ rpm, value: column[i] }))
      .filter((_, i) => i % 15 === 0)
      .map(({ rpm, value }) =>
        t('speed.summary', {
          rpm: Math.round(rpm),
          pitch: signedDegrees(sweep.pitchDeg),
          value: Number.isNaN(value)
            ? t('speed.none')
            : `${significant(value * quantity.factor)}\u00a0${quantity.unit}`,
        }),
      )
      .join(' ');
  }

  function toSave(): PlotToSave {
    live.flush();
    const at = t('speed.at', { pitch: signedDegrees(pitchOf()) });
    return {
      data: data(live.reading),
      design: store.getState().design,
      lines: [`${t('lower.speed')}. ${at}.`],
      summary: summary(live.reading),
      name: 'speed',
    };
  }

  return (
    <section className="lower-room" aria-label={t('lower.speed')} data-testid="speed-room">
      <div className="lower-head">
        <QuantitySelect without="energy" />
        <PlotTools testId="speed" plot={toSave} asTable={asTable} onTable={setAsTable} />
        <span ref={where} />
        <p className="lower-quiet">{t('speed.note')}</p>
        <HelpRow ids={['speed', 'firstLimit']} />
      </div>
      <PlotBox
        data={data}
        summary={summary}
        testId="speed-plot"
        asTable={asTable}
        tableName={t('lower.speed')}
      />
    </section>
  );
}

function columnOf(sweep: SpeedSweep, { kind }: PlottedQuantity): Float64Array {
  if (kind === 'force') return sweep.force;
  if (kind === 'slider') return sweep.slider;
  return kind === 'servo' ? sweep.servo : sweep.moment;
}

function sweepData(sweep: SpeedSweep, quantity: PlottedQuantity, reading: HeadReading): PlotData {
  const total = columnOf(sweep, quantity);
  // One factor turns moment into the quantity at a pitch, whatever the speed.
  const at = total.findIndex((value, i) => value !== 0 && sweep.moment[i] !== 0);
  const per = at < 0 ? 1 : total[at] / sweep.moment[at];
  const scaled = (values: Float64Array, factor: number) =>
    values.map((value) => value * factor * quantity.factor);
  const { friction } = reading;
  const banded = friction.counted && friction.known;
  return {
    x: sweep.speedRpm,
    lines: [
      { name: t('speed.total'), look: 'total', values: scaled(total, 1) },
      ...sweep.shares.map(({ id, moment }) => ({
        name: t(`speed.${id}`),
        look: LOOKS[id],
        values: scaled(moment, per),
      })),
    ],
    ...(banded ? { band: scaled(sweep.friction, Math.abs(per)) } : {}),
    xTitle: t('speed.axis'),
    yTitle: `${t(`chart.short.${quantity.kind}`)}, ${quantity.unit}`,
    marks: [
      { x: sweep.designRpm, text: t('speed.design') },
      ...(sweep.highestRpm > sweep.designRpm
        ? [{ x: sweep.highestRpm, text: t('speed.highest') }]
        : []),
      { x: sweep.overspeedRpm, text: t('speed.overspeed') },
    ],
  };
}

import { useRef } from 'react';
import { centreOfMass } from '../../engine/mass/inertia';
import { JYY, JYZ, JZZ, M, type Moments } from '../../engine/mass/moments';
import { t } from '../../messages';
import type { TopicId } from '../../state/help/topics';
import { displayForce, displayMass, displayMoment, fixed, show } from '../../state/quantities';
import type { HeadReading } from '../../state/reading';
import type { DisplayUnits } from '../../state/settings';
import { displayPosition, secondMomentText } from '../../state/shownUnits';
import { HelpName } from '../../ui/help/HelpName';
import { MathText } from '../../ui/MathText';
import { useSession } from '../../ui/session';
import { useLive } from '../../ui/useLive';
import { setText } from '../marks/svg';

/** What the selected part comes to (the whole head when none is selected); written with every frame. */
export function Results(props: { readonly partId: string | null }) {
  const { store } = useSession();
  const list = useRef<HTMLDListElement>(null);
  useLive((reading, changes) => {
    if (!list.current || !(changes.design || changes.settings || changes.selection)) return;
    const { units } = store.getState().settings;
    for (const [place, text] of Object.entries(resultTexts(reading, props.partId, units))) {
      const element = list.current.querySelector(`[data-place="${place}"]`);
      if (element) setText(element, text);
    }
  }, 'lists');
  return (
    <section className="fields-group">
      <h3 className="ui-heading">
        {t(props.partId === null ? 'fields.wholeResults' : 'fields.results')}
      </h3>
      <dl className="fields-results" ref={list}>
        <Result place="mass" topic="mass" label={t('fields.mass')} />
        <Result
          place="centre"
          topic="centreOfMass"
          label={t('fields.centre')}
          help={t('fields.centreHelp')}
        />
        <Result
          place="share"
          topic={props.partId === null ? 'difference' : 'share'}
          label={t('fields.share')}
          help={t('fields.shareHelp')}
        />
        <Result
          place="product"
          topic="product"
          label={t('fields.product')}
          help={t('fields.productHelp')}
        />
        <Result
          place="force"
          topic={props.partId === null ? 'pushRodForce' : 'partMoment'}
          labelPlace="forceLabel"
          help={t('fields.forceHelp')}
        />
      </dl>
    </section>
  );
}

function Result(props: {
  readonly place: string;
  readonly topic: TopicId;
  readonly label?: string;
  readonly labelPlace?: string;
  readonly help?: string;
}) {
  return (
    <div className="fields-result" data-help={props.help}>
      <dt>
        <HelpName id={props.topic}>
          <span data-place={props.labelPlace}>
            {props.label && <MathText text={props.label} />}
          </span>
        </HelpName>
      </dt>
      <dd data-place={props.place} data-testid={`result-${props.place}`} />
    </div>
  );
}

function resultTexts(reading: HeadReading, partId: string | null, units: DisplayUnits) {
  const part = partId === null ? null : reading.part(partId);
  if (part === undefined) return {};
  const moments: Moments = part?.moments_G ?? reading.totals;
  const pitch = `+${fixed(reading.usedPitchDeg, Number.isInteger(reading.usedPitchDeg) ? 0 : 1)}\u00b0`;
  const centre = centreOfMass(moments);
  const positions = centre?.map((one) => displayPosition(one, units)).join(', ');
  return {
    mass: show(displayMass(moments[M], units)),
    centre: positions ? `${positions}\u00a0${units.length}` : t('fields.noMass'),
    share: secondMomentText(moments[JYY] - moments[JZZ], units),
    product: secondMomentText(withoutRounding(moments[JYZ], moments), units),
    forceLabel: t(reading.linkage ? 'fields.force' : 'fields.moment', { pitch }),
    force: forceText(reading, part, units),
  };
}

/** A product that is nothing but rounding beside the spread about the axis reads 0. */
function withoutRounding(value: number, moments: Moments): number {
  return Math.abs(value) < 1e-12 * (moments[JYY] + moments[JZZ]) ? 0 : value;
}

function forceText(
  reading: HeadReading,
  part: ReturnType<HeadReading['part']> | null,
  units: DisplayUnits,
): string {
  const { usedPitchDeg } = reading;
  if (part?.part.hidden) return t('fields.hiddenResults');
  const moment = part ? part.momentAt(usedPitchDeg) : reading.momentAt(usedPitchDeg);
  if (!reading.linkage) return show(displayMoment(moment, units));
  const force = reading.forceOf(moment, usedPitchDeg);
  return force === null ? t('fields.noMass') : show(displayForce(force, units));
}

import { useMemo, useState } from 'react';
import type { Design } from '../../../design/design';
import { describeFault } from '../../../design/faultText';
import { knobRange } from '../../../neutralise/knobs';
import { fixed, show, significant } from '../../../state/quantities';
import { displaySecondMoment } from '../../../state/shownUnits';
import { knobText, knobValueText } from '../../../state/words/planText';
import { MathText } from '../../../ui/MathText';
import { useAppState, useSession } from '../../../ui/session';
import type { Lump, ScaledMass } from '../../correction';
import type { Estimated } from '../../fitRung';
import type { NeutralBy } from '../../neutralBy';
import { say } from '../../say';
import { withHalf } from '../fit/fitWords';
import { NumberField } from '../NumberField';
import { partName } from '../plan/planText';
import { fixesFor, type LumpPlace } from './fixes';

const STATION = { min: -1000, max: 1000 };
const RADIUS = { min: 1, max: 1000 };

/** What may be wrong in the model, and what would bring the measured head to neutral; each can be made a try-out. */
export function Offers(props: {
  readonly design: Design;
  readonly deficit: Estimated;
  /** J_yy - J_zz of the model, kg m^2. */
  readonly modelSpread: number;
}) {
  const { design, deficit, modelSpread } = props;
  const { actions } = useSession();
  const [place, setPlace] = useState<LumpPlace>({ stationMm: 45, radiusMm: 10 });
  const [said, setSaid] = useState('');
  const fixes = useMemo(() => {
    const names = {
      lump: say('benchRoom.correct.lumpName'),
      added: say('benchRoom.correct.addedName'),
    };
    return fixesFor(design, deficit, place, names, modelSpread);
  }, [design, deficit, place, modelSpread]);
  function tryIt(corrected: Pick<Design, 'parts'>, name: string): void {
    const made = actions.tryOuts.addAndShow(corrected.parts, name, say('benchRoom.correct.note'));
    setSaid(made.ok ? say('benchRoom.correct.made', { name }) : describeFault(made.error));
  }
  const { lump, added } = fixes;
  return (
    <>
      <p role="status" data-testid="bench-correct-said">
        {said}
      </p>
      <h3 className="ui-heading">{say('benchRoom.correct.model')}</h3>
      <ul className="bench-flags" data-testid="bench-offers">
        {fixes.masses.map((one) => (
          <MassOffer key={one.part} mass={one} design={design} onTry={tryIt} />
        ))}
        {lump.ok && <LumpOffer lump={lump.value} kind="lump" onTry={tryIt} />}
      </ul>
      {fixes.masses.length === 0 && <p>{say('benchRoom.correct.noMass')}</p>}
      <LumpFields place={place} onChange={setPlace} />
      <h3 className="ui-heading">{say('benchRoom.correct.turn')}</h3>
      <ul className="bench-flags" data-testid="bench-lengths">
        {fixes.lengths.map((one) => (
          <LengthOffer
            key={`${one.ref.part} ${one.ref.field}`}
            length={one}
            design={design}
            onTry={tryIt}
          />
        ))}
        {added.ok && <LumpOffer lump={added.value} kind="added" onTry={tryIt} />}
      </ul>
      {fixes.lengths.length === 0 && <p>{say('benchRoom.correct.noLength')}</p>}
    </>
  );
}

type OnTry = (corrected: Pick<Design, 'parts'>, name: string) => void;

function Offer(props: {
  readonly text: string;
  readonly name: string;
  readonly corrected: Pick<Design, 'parts'>;
  readonly onTry: OnTry;
}) {
  const { text, name, corrected, onTry } = props;
  return (
    <li>
      <span>
        <MathText text={text} />
      </span>
      <button
        type="button"
        className="ui-button"
        data-testid="bench-try"
        onClick={() => onTry(corrected, name)}
      >
        {say('benchRoom.correct.try')}
      </button>
    </li>
  );
}

function MassOffer(props: {
  readonly mass: ScaledMass;
  readonly design: Design;
  readonly onTry: OnTry;
}) {
  const { mass, design, onTry } = props;
  const { factor, massGrams, massSigmaGrams } = mass;
  const part = partName(design, mass.part);
  // Twice the standard uncertainty: about 95 %.
  const grams = withHalf({ value: massGrams, unit: 'g' }, 2 * massSigmaGrams);
  const percent = `${factor > 1 ? '+' : ''}${significant(100 * (factor - 1), 2)}`;
  return (
    <Offer
      text={say('benchRoom.correct.mass', { part, grams, percent })}
      name={say('benchRoom.correct.massName', { part, grams: significant(massGrams, 4) })}
      corrected={mass.design}
      onTry={onTry}
    />
  );
}

function LumpOffer(props: {
  readonly lump: Lump;
  readonly kind: 'lump' | 'added';
  readonly onTry: OnTry;
}) {
  const { lump, kind, onTry } = props;
  const [, y, z] = lump.positionMm;
  return (
    <Offer
      text={say(`benchRoom.correct.${kind}`, {
        grams: withHalf({ value: lump.massGrams, unit: 'g' }, 2 * lump.massSigmaGrams),
        y: fixed(y, 2),
        z: fixed(z, 2),
      })}
      name={say(`benchRoom.correct.${kind}Name`)}
      corrected={lump.design}
      onTry={onTry}
    />
  );
}

function LengthOffer(props: {
  readonly length: NeutralBy;
  readonly design: Design;
  readonly onTry: OnTry;
}) {
  const { length, design, onTry } = props;
  const units = useAppState((state) => state.settings.units);
  const { ref, from, value, sigma, productLeft } = length;
  const text = (one: number) => knobValueText(one, knobRange(design, ref)?.unit ?? 'mm', units);
  const values = {
    what: knobText(design, ref),
    from: text(from),
    value: text(value),
    sigma: text(Number((2 * sigma).toPrecision(2))),
    left: show(displaySecondMoment(productLeft, units)),
  };
  return (
    <Offer
      text={say('benchRoom.correct.length', values)}
      name={say('benchRoom.correct.lengthName', values)}
      corrected={length.design}
      onTry={onTry}
    />
  );
}

function LumpFields(props: {
  readonly place: LumpPlace;
  readonly onChange: (place: LumpPlace) => void;
}) {
  const { place, onChange } = props;
  return (
    <div className="bench-fields">
      <NumberField
        label={say('benchRoom.correct.station')}
        unit="mm"
        {...STATION}
        value={place.stationMm}
        testId="bench-lump-station"
        onChange={(value) => value !== null && onChange({ ...place, stationMm: value })}
      />
      <NumberField
        label={say('benchRoom.correct.radius')}
        unit="mm"
        {...RADIUS}
        value={place.radiusMm}
        testId="bench-lump-radius"
        onChange={(value) => value !== null && onChange({ ...place, radiusMm: value })}
      />
    </div>
  );
}

import { useId, useMemo, useState } from 'react';
import type { Design } from '../../../design/design';
import { describeFault } from '../../../design/faultText';
import { knobRange } from '../../../neutralise/knobs';
import { fixed, show, significant } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import { displaySecondMoment, type FieldUnit, shownUnit } from '../../../state/shownUnits';
import { knobText } from '../../../state/words/planText';
import { MathText } from '../../../ui/MathText';
import { useAppState, useSession } from '../../../ui/session';
import type { Lump, ScaledMass } from '../../correction';
import type { Estimated } from '../../fitRung';
import { runsLeftWith, runsMoved } from '../../headRuns';
import type { NeutralBy } from '../../neutralBy';
import { recordOf } from '../../record';
import { say } from '../../say';
import { withHalf } from '../fit/fitWords';
import { NumberField } from '../NumberField';
import { partName } from '../plan/planText';
import { useDesk } from '../useDesk';
import { fixesFor, type LumpPlace } from './fixes';
import { turnedLength, withLumpRounded, withTurned, withWeighed } from './makeable';
import { RefusedFixes } from './Refused';

const STATION = { min: -1000, max: 1000 };
const RADIUS = { min: 1, max: 1000 };

/** Whether the model of the same head is put right, or the head becomes another, which then has to be measured again. */
type OfferKind = 'model' | 'head';
type OnTry = (corrected: Pick<Design, 'parts'>, name: string, kind: OfferKind) => void;

/** What may be wrong in the model, and what would bring the measured head to neutral; each can be made a try-out. */
export function Offers(props: {
  readonly design: Design;
  readonly deficit: Estimated;
  /** J_yy - J_zz of the model, kg m^2. */
  readonly modelSpread: number;
  readonly onTried: (said: string) => void;
}) {
  const { design, deficit, modelSpread } = props;
  const tryIt = useTry(props.onTried);
  const [place, setPlace] = useState<LumpPlace>({ stationMm: 45, radiusMm: 10 });
  const fixes = useMemo(() => {
    const names = {
      lump: say('benchRoom.correct.lumpName'),
      added: say('benchRoom.correct.addedName'),
    };
    return fixesFor(design, deficit, place, names, modelSpread);
  }, [design, deficit, place, modelSpread]);
  const { lump, added, agrees } = fixes;
  return (
    <>
      <h3 className="ui-heading">{say('benchRoom.correct.model')}</h3>
      {!agrees && (
        <ul className="bench-flags" data-testid="bench-offers">
          {fixes.masses.map((one) => (
            <MassOffer key={one.part} mass={one} design={design} onTry={tryIt} />
          ))}
          {lump.ok && <LumpOffer lump={lump.value} kind="lump" onTry={tryIt} />}
        </ul>
      )}
      {fixes.masses.length === 0 && (
        <p>{say(agrees ? 'benchRoom.correct.nothing' : 'benchRoom.correct.noMass')}</p>
      )}
      <h3 className="ui-heading">{say('benchRoom.correct.turn')}</h3>
      {!agrees && <p>{say('benchRoom.correct.modelFirst')}</p>}
      <ul className="bench-flags" data-testid="bench-lengths">
        {fixes.lengths.map((one) => (
          <LengthOffer
            key={`${one.ref.part} ${one.ref.field}`}
            length={one}
            design={design}
            {...(agrees && { onTry: tryIt })}
          />
        ))}
        {added.ok && (
          <LumpOffer lump={added.value} kind="added" {...(agrees && { onTry: tryIt })} />
        )}
      </ul>
      {fixes.lengths.length === 0 && <p>{say('benchRoom.correct.noLength')}</p>}
      <LumpFields place={place} onChange={setPlace} />
      <RefusedFixes fixes={fixes} design={design} />
    </>
  );
}

/** Puts a corrected head on the stage, and says of which head the runs so far are: one undo step. */
function useTry(onTried: (said: string) => void): OnTry {
  const { actions } = useSession();
  const desk = useDesk();
  return (corrected, name, kind) => {
    const note = say('benchRoom.correct.note');
    const made = actions.tryOuts.addAndShow(corrected.parts, name, note, (next, ids) => {
      const state = desk.store.getState();
      const runs =
        kind === 'model'
          ? runsMoved(state.runs, ids.before, ids.now)
          : runsLeftWith(state.runs, ids.before);
      const bench = recordOf({ ...state, runs });
      return bench ? { ...next, bench } : next;
    });
    onTried(made.ok ? say(`benchRoom.correct.made.${kind}`, { name }) : describeFault(made.error));
  };
}

function Offer(props: {
  readonly text: string;
  readonly name: string;
  readonly kind: OfferKind;
  readonly corrected: Pick<Design, 'parts'>;
  readonly onTry?: OnTry;
}) {
  const { text, name, kind, corrected, onTry } = props;
  const id = useId();
  return (
    <li>
      <span id={id}>
        <MathText text={text} />
      </span>
      {onTry && (
        <button
          type="button"
          className="ui-button"
          data-testid="bench-try"
          aria-describedby={id}
          onClick={() => onTry(corrected, name, kind)}
        >
          {say('benchRoom.correct.try')}
        </button>
      )}
    </li>
  );
}

function MassOffer(props: {
  readonly mass: ScaledMass;
  readonly design: Design;
  readonly onTry: OnTry;
}) {
  const { mass, design, onTry } = props;
  const units = useAppState((state) => state.settings.units);
  const { factor, massGrams, massSigmaGrams } = mass;
  const part = partName(design, mass.part);
  const weight = shownHalf(massGrams, 2 * massSigmaGrams, 'g', units);
  const percent = `${factor > 1 ? '+' : '\u2212'}${significant(100 * Math.abs(factor - 1), 2)}`;
  return (
    <Offer
      text={say('benchRoom.correct.mass', { part, grams: weight, percent })}
      name={say('benchRoom.correct.massName', { part, grams: significant(massGrams, 4) })}
      kind="model"
      corrected={{ parts: withWeighed(mass.design.parts, mass.part) }}
      onTry={onTry}
    />
  );
}

function LumpOffer(props: {
  readonly lump: Lump;
  readonly kind: 'lump' | 'added';
  readonly onTry?: OnTry;
}) {
  const { lump, kind, onTry } = props;
  const units = useAppState((state) => state.settings.units);
  const [, y, z] = lump.positionMm;
  const { name: unit, perShown } = shownUnit('mm', units);
  const decimals = unit === 'mm' ? 2 : 4;
  return (
    <Offer
      text={say(`benchRoom.correct.${kind}`, {
        grams: shownHalf(lump.massGrams, 2 * lump.massSigmaGrams, 'g', units),
        y: fixed(y / perShown, decimals),
        z: fixed(z / perShown, decimals),
        unit,
      })}
      name={say(`benchRoom.correct.${kind}Name`)}
      kind={kind === 'lump' ? 'model' : 'head'}
      corrected={{ parts: withLumpRounded(lump.design.parts, lump.id) }}
      {...(onTry && { onTry })}
    />
  );
}

function LengthOffer(props: {
  readonly length: NeutralBy;
  readonly design: Design;
  readonly onTry?: OnTry;
}) {
  const { length, design, onTry } = props;
  const units = useAppState((state) => state.settings.units);
  const { ref, from, value, sigma, productLeft } = length;
  const unit = knobRange(design, ref)?.unit ?? 'mm';
  const { name, perShown } = shownUnit(unit, units);
  const made = unit === 'mm' ? turnedLength(value) : value;
  const values = {
    what: knobText(design, ref),
    from: show({ value: from / perShown, unit: name }),
    value: shownHalf(value, 2 * sigma, unit, units),
    left: show(displaySecondMoment(productLeft, units)),
    made: `${fixed(made / perShown, name === 'mm' ? 2 : 4)}\u00a0${name}`,
  };
  return (
    <Offer
      text={say('benchRoom.correct.length', values)}
      name={say('benchRoom.correct.lengthName', {
        what: values.what,
        value: values.made,
      })}
      kind="head"
      corrected={{
        parts: unit === 'mm' ? withTurned(length.design.parts, ref) : length.design.parts,
      }}
      {...(onTry && { onTry })}
    />
  );
}

/** A value of a field's unit as shown; the half width is twice the standard uncertainty, about 95 %. */
function shownHalf(value: number, half: number, unit: FieldUnit, units: DisplayUnits): string {
  const { name, perShown } = shownUnit(unit, units);
  return withHalf({ value: value / perShown, unit: name }, half / perShown);
}

function LumpFields(props: {
  readonly place: LumpPlace;
  readonly onChange: (place: LumpPlace) => void;
}) {
  const { place, onChange } = props;
  const units = useAppState((state) => state.settings.units);
  const { name: unit, perShown } = shownUnit('mm', units);
  const field = (
    label: string,
    testId: string,
    valueMm: number,
    limits: typeof STATION,
    put: (mm: number) => LumpPlace,
  ) => (
    <NumberField
      label={label}
      unit={unit}
      min={Number((limits.min / perShown).toPrecision(4))}
      max={Number((limits.max / perShown).toPrecision(4))}
      value={valueMm / perShown}
      testId={testId}
      onChange={(value) => value !== null && onChange(put(value * perShown))}
    />
  );
  return (
    <div className="bench-fields" role="group" aria-label={say('benchRoom.correct.place')}>
      {field(
        say('benchRoom.correct.station'),
        'bench-lump-station',
        place.stationMm,
        STATION,
        (stationMm) => ({ ...place, stationMm }),
      )}
      {field(
        say('benchRoom.correct.radius'),
        'bench-lump-radius',
        place.radiusMm,
        RADIUS,
        (radiusMm) => ({ ...place, radiusMm }),
      )}
    </div>
  );
}

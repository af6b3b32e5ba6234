import { useId } from 'react';
import type { Design } from '../../../design/design';
import { knobRange } from '../../../neutralise/knobs';
import { fixed, show, significant } from '../../../state/quantities';
import type { DisplayUnits } from '../../../state/settings';
import { displaySecondMoment, type FieldUnit, shownUnit } from '../../../state/shownUnits';
import { knobText } from '../../../state/words/planText';
import { MathText } from '../../../ui/MathText';
import { useAppState } from '../../../ui/session';
import type { Lump, ScaledMass } from '../../correction';
import type { NeutralBy } from '../../neutralBy';
import { say } from '../../say';
import { withHalf } from '../fit/fitWords';
import { partName } from '../plan/planText';
import { turnedLength, withLumpRounded, withTurned, withWeighed } from './makeable';

/** Whether the model of the same head is put right, or the head becomes another, which then has to be measured again. */
type OfferKind = 'model' | 'head';
export type OnTry = (corrected: Pick<Design, 'parts'>, name: string, kind: OfferKind) => void;

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

export function MassOffer(props: {
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

export function LumpOffer(props: {
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

export function LengthOffer(props: {
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

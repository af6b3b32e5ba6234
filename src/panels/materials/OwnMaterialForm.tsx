import { useId, useState } from 'react';
import type { DesignFault } from '../../design/fault';
import { faultMessage } from '../../design/faultText';
import { materialsOf } from '../../design/resolve';
import { t } from '../../messages';
import { focusFirst } from '../../ui/focusFirst';
import { useAppState, useSession } from '../../ui/session';
import { FieldFault } from '../fields/FieldFault';
import {
  DRAFT_NUMBERS,
  type DraftFaults,
  type DraftKey,
  type MaterialDraft,
  type NumberKey,
  withDraft,
} from './ownMaterial';
import './materials.css';

/** Name, density and what else is known of a material of the design's own. What is refused stays as it was typed. */
export function OwnMaterialForm(props: {
  readonly draft: MaterialDraft;
  readonly onDraft: (draft: MaterialDraft) => void;
  readonly onBack: () => void;
  readonly onSaved: (id: string) => void;
}) {
  const { draft } = props;
  const { actions } = useSession();
  const own = useAppState((state) => materialsOf(state.design));
  const [faults, setFaults] = useState<DraftFaults>({});
  const [refused, setRefused] = useState<string | null>(null);
  const id = useId();

  function save(): void {
    const made = withDraft(own, draft);
    setRefused(null);
    if (!made.ok) return setFaults(made.error);
    const outcome = actions.setOwnMaterials(made.value.materials);
    if (outcome.ok) return props.onSaved(made.value.id);
    const { key, text } = refusalOf(outcome.error);
    setFaults(key ? { [key]: text } : {});
    if (!key) setRefused(text);
  }

  function box(key: DraftKey, label: string, unit: string) {
    const fault = faults[key] ?? null;
    return (
      <div className="material-field" key={key}>
        <label htmlFor={`${id}-${key}`}>{label}</label>
        <input
          id={`${id}-${key}`}
          ref={key === 'name' ? focusFirst : undefined}
          className="ui-input"
          type="text"
          inputMode={unit === '' ? 'text' : 'decimal'}
          autoComplete="off"
          required={key === 'name' || key === 'densityKgM3'}
          aria-invalid={fault !== null}
          aria-describedby={fault ? `${id}-${key}-fault` : undefined}
          data-testid={`material-${key}`}
          value={draft.texts[key]}
          onChange={(event) =>
            props.onDraft({ ...draft, texts: { ...draft.texts, [key]: event.target.value } })
          }
        />
        {unit !== '' && <span className="pick-aside">{unit}</span>}
        <FieldFault id={`${id}-${key}-fault`} text={fault} />
      </div>
    );
  }

  return (
    <form
      className="material-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        save();
      }}
    >
      <p className="pick-note">{t('materials.formNote')}</p>
      {box('name', t('materials.name'), '')}
      {DRAFT_NUMBERS.map(([key, label, unit]) => box(key, t(label), UNIT_NAMES[unit] ?? unit))}
      {box('note', t('materials.note'), '')}
      {refused !== null && (
        <p className="pick-fault" role="alert">
          {refused}
        </p>
      )}
      <div className="pick-actions">
        <button type="submit" className="ui-button pick-take" data-testid="material-save">
          {t('materials.save')}
        </button>
        <button type="button" className="ui-button" onClick={props.onBack}>
          {t('materials.back')}
        </button>
      </div>
    </form>
  );
}

const UNIT_NAMES: Readonly<Record<string, string>> = { 'kg/m3': 'kg/m\u00b3' };

/** Which field of the form the design's check refuses, where it is one, and why. */
function refusalOf({ path, reason }: DesignFault): {
  readonly key?: NumberKey;
  readonly text: string;
} {
  const found = DRAFT_NUMBERS.find(([one]) => path.endsWith(`.${one}`));
  const text = faultMessage(reason);
  if (!found) return { text: t('materials.saveRefused', { reason: text }) };
  const [key, label] = found;
  return { key, text: t('materials.refused', { field: t(label), reason: text }) };
}

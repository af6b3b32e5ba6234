import { fileOpen } from 'browser-fs-access';
import { useState } from 'react';
import { OTHER_GRIP_LIMITS, PART_MASS_LIMITS } from '../../design/sections/grips';
import { t } from '../../messages';
import { partType } from '../../parts/registry';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { useAppState, useSession } from '../../ui/session';
import { OptionalNumberRow } from '../measured/OptionalNumberRow';
import { changeGrip, resetGrip, takePartsFile, weighPartOf } from './gripEdits';
import '../conditions/conditions.css';

const FILES = {
  description: 'Stillgrip design',
  extensions: ['.json'],
  mimeTypes: ['application/json'],
  id: 'stillgrip-design',
};

/** How another grip differs from the one drawn: weighed whole, in parts, or with its own list of parts. */
export function GripEditor({ index }: { readonly index: number }) {
  const session = useSession();
  const grip = useAppState((state) => state.design.otherGrips?.[index - 1]);
  const drawn = useAppState((state) => state.design.parts);
  const [fault, setFault] = useState<string | null>(null);
  // Push rods, keep-outs and hidden parts do not turn with the grip.
  const parts = (grip?.parts ?? drawn).filter(
    (part) => !part.hidden && (partType(part.kind).carriedBy ?? 'grip') === 'grip',
  );

  async function open(): Promise<void> {
    try {
      setFault(await takePartsFile(session, index, await fileOpen(FILES)));
    } catch (error) {
      if (!isCancelled(error)) setFault(reasonOf(error));
    }
  }

  function rename(name: string): void {
    if (name !== (grip?.name ?? '')) setFault(changeGrip(session, index, { name }));
  }

  return (
    <div className="balance-editor" data-testid="grip-editor">
      <label className="field">
        <span className="field-label">{t('balance.name')}</span>
        <input
          key={grip?.name}
          className="balance-name"
          defaultValue={grip?.name ?? ''}
          maxLength={200}
          placeholder={t('balance.nth', { n: index + 1 })}
          data-testid="grip-name"
          onBlur={(event) => rename(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') rename(event.currentTarget.value);
          }}
        />
      </label>
      <OptionalNumberRow
        value={grip?.massGrams}
        placeholder={t('balance.asParts')}
        field={{
          key: 'gripMass',
          label: t('balance.whole'),
          help: t('balance.wholeHelp'),
          limits: OTHER_GRIP_LIMITS.massGrams,
          step: 0.01,
          commit: (massGrams) => changeGrip(session, index, { massGrams }),
        }}
      />
      <OptionalNumberRow
        value={grip?.stationMm}
        placeholder={t('balance.asParts')}
        field={{
          key: 'gripStation',
          label: t('balance.centre'),
          help: t('balance.centreHelp'),
          limits: OTHER_GRIP_LIMITS.stationMm,
          step: 0.1,
          commit: (stationMm) => changeGrip(session, index, { stationMm }),
        }}
      />
      <p className="lower-quiet">{t('balance.partsHelp')}</p>
      {parts.map((part) => (
        <OptionalNumberRow
          key={part.id}
          value={grip?.partMassesGrams?.[part.id]}
          placeholder={t('balance.asDrawn')}
          field={{
            key: `mass-${part.id}`,
            label: part.name === '' ? part.id : part.name,
            help: t('balance.partHelp'),
            limits: PART_MASS_LIMITS,
            step: 0.01,
            commit: (mass) => weighPartOf(session, index, part.id, mass),
          }}
        />
      ))}
      <div className="conditions-buttons">
        <button type="button" className="ui-button" onClick={() => void open()}>
          {t('balance.fromFile')}
        </button>
        <button
          type="button"
          className="ui-button"
          data-testid="grip-reset"
          onClick={() => setFault(resetGrip(session, index))}
        >
          {t('balance.reset')}
        </button>
      </div>
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </div>
  );
}

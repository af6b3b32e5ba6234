import { useMemo } from 'react';
import { t } from '../../messages';
import { signedDegrees } from '../../state/words/pitchText';
import { useAppState, useSession } from '../../ui/session';
import { FINENESSES, type Fineness } from '../solids/fineness';
import { useKept } from './choice';
import { contentLines } from './contentText';
import { FileChoice, FileSection, SaveButton } from './Rows';
import { StepBox } from './StepBox';
import { KINDS, saveFile } from './saveFile';
import {
  bodyParts,
  chosenPart,
  FIRST_CHOICE,
  FORMATS,
  type SolidChoice,
  solidContent,
  triangleFile,
  WHATS,
} from './solidChoice';
import { stepJobOf } from './stepDesk';
import { type Head, headNow } from './useRestingHead';

interface Props {
  readonly head: Head;
}

/** Parts as solid files: what, in which format, how finely, and what will be in the file. */
export function SolidsSection({ head }: Props) {
  const session = useSession();
  const units = useAppState((state) => state.settings.units);
  const [choice, setChoice] = useKept('solid', (before) => {
    const { selection } = session.store.getState();
    const first = before ?? { ...FIRST_CHOICE, part: selection, unit: units.length };
    // A STEP under way is what one comes back for.
    const running = stepJobOf(session).store.getState().job.kind === 'running';
    return running ? { ...first, format: 'step' } : first;
  });
  const content = useMemo(() => solidContent(head, choice), [head, choice]);
  const lines = useMemo(() => contentLines(content, choice, units), [content, choice, units]);
  const { format } = choice;
  return (
    <FileSection title={t('files.solids')} testId="files-solids">
      <WhatRows choice={choice} head={head} onChange={setChoice} />
      <FormatRows choice={choice} onChange={setChoice} />
      <ul className="files-lines" data-testid="files-content">
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {format === 'step' ? (
        <StepBox content={content} unit={choice.unit} />
      ) : (
        <SaveButton
          text={t('files.save', { format: KINDS[format].description })}
          testId="files-save-solid"
          disabled={content.bodies.length === 0}
          save={() =>
            saveFile(content.stem, KINDS[format], () =>
              asPart(triangleFile(headNow(session), choice, format)),
            )
          }
        />
      )}
    </FileSection>
  );
}

/** The bytes of a whole buffer of their own. */
function asPart(bytes: Uint8Array): BlobPart {
  return bytes as Uint8Array<ArrayBuffer>;
}

interface RowProps {
  readonly choice: SolidChoice;
  readonly onChange: (choice: SolidChoice) => void;
}

function WhatRows({ choice, head, onChange }: RowProps & Props) {
  const parts = useMemo(() => bodyParts(head), [head]);
  const where =
    choice.what === 'part'
      ? t('files.where.part')
      : t('files.where.head', { pitch: signedDegrees(head.pitchDeg) });
  return (
    <>
      <FileChoice
        label={t('files.what')}
        value={choice.what}
        options={WHATS.map((value) => ({ value, text: t(`files.what.${value}`) }))}
        testId="files-what"
        onChoose={(what) => onChange({ ...choice, what })}
      />
      {choice.what === 'part' && parts.length > 0 && (
        <FileChoice
          label={t('files.part')}
          value={chosenPart(head, choice)?.part.id ?? ''}
          options={parts.map(({ part }) => ({ value: part.id, text: part.name }))}
          testId="files-part"
          onChoose={(part) => onChange({ ...choice, part })}
        />
      )}
      {choice.what === 'chosen' && (
        <fieldset className="files-parts" data-testid="files-parts">
          <legend className="ui-unseen">{t('files.chosen')}</legend>
          {parts
            .filter(({ part }) => !part.hidden)
            .map(({ part: { id, name } }) => (
              <label key={id}>
                <input
                  type="checkbox"
                  checked={!choice.without.has(id)}
                  onChange={(event) =>
                    onChange({
                      ...choice,
                      without: toggled(choice.without, id, event.target.checked),
                    })
                  }
                />
                {name}
              </label>
            ))}
        </fieldset>
      )}
      <p className="files-note">{where}</p>
    </>
  );
}

function toggled(without: ReadonlySet<string>, id: string, inIt: boolean): ReadonlySet<string> {
  const next = new Set(without);
  if (inIt) next.delete(id);
  else next.add(id);
  return next;
}

function FormatRows({ choice, onChange }: RowProps) {
  const { format } = choice;
  return (
    <>
      <FileChoice
        label={t('files.format')}
        value={format}
        options={FORMATS.map((value) => ({ value, text: t(`files.format.${value}`) }))}
        testId="files-format"
        onChoose={(chosen) => onChange({ ...choice, format: chosen })}
      />
      {format !== 'glb' && (
        <FileChoice
          label={t('files.unit')}
          value={choice.unit}
          options={(['mm', 'in'] as const).map((value) => ({
            value,
            text: t(`files.unit.${value}`),
          }))}
          testId="files-unit"
          onChoose={(unit) => onChange({ ...choice, unit })}
        />
      )}
      {format !== 'step' && (
        <FileChoice
          label={t('files.fineness')}
          value={choice.fineness}
          options={(Object.keys(FINENESSES) as Fineness[]).map((value) => ({
            value,
            text: t(`files.fineness.${value}`, { count: FINENESSES[value] }),
          }))}
          testId="files-fineness"
          onChoose={(fineness) => onChange({ ...choice, fineness })}
        />
      )}
    </>
  );
}

import { serializeDesign } from '../../design/file';
import { t } from '../../messages';
import { signedDegrees } from '../../state/words/pitchText';
import { fileStem } from '../../ui/fileStem';
import { MathText } from '../../ui/MathText';
import { useSession } from '../../ui/session';
import { curveCsv } from '../data/curveCsv';
import { loadsCsv } from '../data/loadsCsv';
import { partsCsv } from '../data/partsCsv';
import { CURVE_STEPS, useKept } from './choice';
import { FileChoice, FileSection, SaveButton } from './Rows';
import { KINDS, saveFile } from './saveFile';
import { type Head, headNow } from './useRestingHead';

interface Props {
  readonly head: Head;
}

/** Curve, parts and loads as numbers. */
export function TablesSection({ head }: Props) {
  const session = useSession();
  const [step, setStep] = useKept('curveStep', (before) => before ?? '1');
  const stem = fileStem(head.design.name, 'head');
  const empty = head.design.parts.length === 0;
  function save(name: string, make: (now: Head) => string): Promise<string> {
    return saveFile(`${stem}-${name}`, KINDS.csv, () => make(headNow(session)));
  }
  return (
    <FileSection title={t('files.tables')} testId="files-tables">
      {empty && <p className="files-note">{t('files.noTables')}</p>}
      <FileChoice
        label={t('files.step')}
        value={step}
        options={CURVE_STEPS.map((value) => ({ value, text: `${value}\u00b0` }))}
        testId="files-curve-step"
        onChoose={setStep}
      />
      <SaveButton
        text={t('files.curve')}
        testId="files-save-curve"
        disabled={empty}
        save={() => save('curve', ({ reading, design }) => curveCsv(reading, design, Number(step)))}
      />
      <p className="files-note">{t('files.curveNote')}</p>
      <SaveButton
        text={t('files.partsTable')}
        testId="files-save-parts"
        disabled={empty}
        save={() => save('parts', ({ reading, design }) => partsCsv(reading, design))}
      />
      <p className="files-note">
        <MathText text={t('files.partsNote')} />
      </p>
      <SaveButton
        text={t('files.loads')}
        testId="files-save-loads"
        disabled={empty}
        save={() =>
          save('loads', ({ reading, design, pitchDeg }) => loadsCsv(reading, design, pitchDeg))
        }
      />
      <p className="files-note">{t('files.loadsNote', { pitch: signedDegrees(head.pitchDeg) })}</p>
      <p className="files-note">{t('files.csvNote')}</p>
    </FileSection>
  );
}

/** A copy of the design file; where it is kept is not changed. */
export function DesignSection({ head }: Props) {
  const session = useSession();
  return (
    <FileSection title={t('files.design')} testId="files-design">
      <SaveButton
        text={t('files.saveCopy')}
        testId="files-save-design"
        save={() =>
          saveFile(fileStem(head.design.name, 'design'), KINDS.json, () =>
            serializeDesign(headNow(session).design),
          )
        }
      />
      <p className="files-note">{t('files.designNote')}</p>
    </FileSection>
  );
}

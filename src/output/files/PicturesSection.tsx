import { useId, useMemo, useState, useSyncExternalStore } from 'react';
import { t } from '../../messages';
import { fixed } from '../../state/quantities';
import { fileStem } from '../../ui/fileStem';
import { useAppState, useSession } from '../../ui/session';
import { FigureSvg } from '../report/FigureSvg';
import { grouped } from './contentText';
import {
  DENSITIES,
  FIRST_PICTURE,
  hasPixels,
  mmOf,
  PICTURES,
  type PictureChoice,
  pictureFile,
  pictureSize,
  pixelsOf,
  SHAPES,
  sheetOf,
  sizeFault,
} from './pictureChoice';
import { FileChoice, FileSection, SaveButton } from './Rows';
import { KINDS, saveFile } from './saveFile';
import type { Head } from './useRestingHead';

/** Stage, dial and chart as pictures of a chosen size. */
export function PicturesSection({ head }: { readonly head: Head }) {
  const session = useSession();
  const { stageCamera } = session;
  const ready = useSyncExternalStore(stageCamera.subscribe, stageCamera.ready);
  const units = useAppState((state) => state.settings.units);
  const [choice, setChoice] = useState(FIRST_PICTURE);
  const { which, format } = choice;
  const sheet = useMemo(() => sheetOf(head, units, choice), [head, units, choice]);
  const size = pictureSize(choice, sheet);
  const fault = sizeFault(choice, size);
  const missing = which === 'stage' && !ready;
  const stem = `${fileStem(head.design.name, 'head')}-${which}`;
  return (
    <FileSection title={t('files.pictures')} testId="files-pictures">
      <LookRows choice={choice} onChange={setChoice} />
      <SizeRows choice={choice} onChange={setChoice} />
      <p
        className="files-note"
        data-tone={fault || missing ? 'fault' : 'plain'}
        data-testid="files-picture-size"
      >
        {missing ? t('files.noStage') : (fault ?? sizeText(choice, size))}
      </p>
      <SaveButton
        text={t('files.save', { format: KINDS[format].description })}
        testId="files-save-picture"
        disabled={fault !== null || missing}
        save={() => saveFile(stem, KINDS[format], () => pictureFile(session, choice))}
      />
      {sheet && (
        <div className="files-preview">
          <FigureSvg figure={sheet} />
        </div>
      )}
      {which === 'stage' && (
        <p className="files-note">{t(format === 'svg' ? 'files.stageSvg' : 'files.stageNote')}</p>
      )}
    </FileSection>
  );
}

function sizeText(
  choice: PictureChoice,
  { width, height, widthMm, heightMm }: ReturnType<typeof pictureSize>,
): string {
  const onPaper = { widthMm: fixed(widthMm, 1), heightMm: fixed(heightMm, 1) };
  if (!hasPixels(choice)) return t('files.svgSize', onPaper);
  return t('files.pictureSize', { ...onPaper, width: grouped(width), height: grouped(height) });
}

interface RowProps {
  readonly choice: PictureChoice;
  readonly onChange: (choice: PictureChoice) => void;
}

function LookRows({ choice, onChange }: RowProps) {
  return (
    <>
      <FileChoice
        label={t('files.which')}
        value={choice.which}
        options={PICTURES.map((value) => ({ value, text: t(`files.which.${value}`) }))}
        testId="files-which"
        onChoose={(which) => onChange({ ...choice, which })}
      />
      <FileChoice
        label={t('files.pictureFormat')}
        value={choice.format}
        options={(['png', 'svg'] as const).map((value) => ({ value, text: t(`files.${value}`) }))}
        testId="files-picture-format"
        onChoose={(format) => onChange({ ...choice, format })}
      />
      {choice.which === 'stage' ? (
        <FileChoice
          label={t('files.shape')}
          value={choice.shape}
          options={(Object.keys(SHAPES) as (keyof typeof SHAPES)[]).map((value) => ({
            value,
            text: value.replace(':', '\u2009:\u2009'),
          }))}
          testId="files-shape"
          onChoose={(shape) => onChange({ ...choice, shape })}
        />
      ) : (
        <label className="files-check">
          <input
            type="checkbox"
            checked={choice.words}
            data-testid="files-words"
            onChange={(event) => onChange({ ...choice, words: event.target.checked })}
          />
          {t('files.words')}
        </label>
      )}
    </>
  );
}

/** Width on paper and in pixels, tied by the pixels an inch. */
function SizeRows({ choice, onChange }: RowProps) {
  const { widthMm, density } = choice;
  return (
    <>
      <NumberRow
        label={t('files.width')}
        value={Number(widthMm.toFixed(2))}
        step={0.1}
        testId="files-width-mm"
        onEnter={(lengthMm) => onChange({ ...choice, widthMm: lengthMm })}
      />
      {hasPixels(choice) && (
        <>
          <NumberRow
            label={t('files.widthPixels')}
            value={pixelsOf(widthMm, density)}
            step={1}
            testId="files-width-px"
            onEnter={(pixels) => onChange({ ...choice, widthMm: mmOf(pixels, density) })}
          />
          <FileChoice
            label={t('files.density')}
            value={String(density)}
            options={DENSITIES.map((count) => ({
              value: String(count),
              text: t('files.perInch', { count }),
            }))}
            testId="files-density"
            onChoose={(chosen) => onChange({ ...choice, density: Number(chosen) })}
          />
        </>
      )}
    </>
  );
}

/** A number that takes effect when the field is left or Enter pressed; what is no number is refused by the browser. */
function NumberRow(props: {
  readonly label: string;
  readonly value: number;
  readonly step: number;
  readonly testId: string;
  readonly onEnter: (value: number) => void;
}) {
  const { label, value, step, testId, onEnter } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  function enter(): void {
    if (typed !== null && Number(typed) !== value)
      onEnter(typed === '' ? Number.NaN : Number(typed));
    setTyped(null);
  }
  return (
    <div className="files-row">
      <label htmlFor={id}>{label}</label>
      <input
        id={id}
        type="number"
        className="files-number"
        step={step}
        value={typed ?? (Number.isFinite(value) ? value : '')}
        data-testid={testId}
        onChange={(event) => setTyped(event.target.value)}
        onBlur={enter}
        onKeyDown={(event) => {
          if (event.key === 'Enter') enter();
        }}
      />
    </div>
  );
}

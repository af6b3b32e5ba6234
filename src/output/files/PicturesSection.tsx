import { useId, useMemo, useSyncExternalStore } from 'react';
import { t } from '../../messages';
import type { DisplayUnits } from '../../state/settings';
import { shownUnit } from '../../state/shownUnits';
import { fileStem } from '../../ui/fileStem';
import { useAppState, useSession } from '../../ui/session';
import { FigureSvg } from '../report/FigureSvg';
import { useKept } from './choice';
import { grouped } from './contentText';
import { NumberRow } from './NumberRow';
import {
  DENSITIES,
  FIRST_PICTURE,
  hasPixels,
  mmOf,
  onPaperText,
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
  const id = useId();
  const ready = useSyncExternalStore(stageCamera.subscribe, stageCamera.ready);
  const units = useAppState((state) => state.settings.units);
  const [choice, setChoice] = useKept('picture', (before) => before ?? FIRST_PICTURE);
  const { which, format } = choice;
  const sheet = useMemo(() => sheetOf(head, units, choice), [head, units, choice]);
  const size = pictureSize(choice, sheet);
  const fault = sizeFault(choice, size, units);
  const missing = which === 'stage' && !ready;
  const stem = `${fileStem(head.design.name, 'head')}-${which}`;
  return (
    <FileSection title={t('files.pictures')} testId="files-pictures">
      <LookRows choice={choice} onChange={setChoice} />
      <SizeRows choice={choice} units={units} outside={fault && id} onChange={setChoice} />
      <label className="files-check">
        <input
          type="checkbox"
          checked={choice.carries}
          data-testid="files-carries"
          onChange={(event) => setChoice({ ...choice, carries: event.target.checked })}
        />
        {t('files.carries')}
      </label>
      <p
        id={id}
        className="files-note"
        role="status"
        data-tone={fault || missing ? 'fault' : 'plain'}
        data-testid="files-picture-size"
      >
        {missing ? t('files.noStage') : (fault ?? sizeText(choice, size, units))}
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
  size: ReturnType<typeof pictureSize>,
  units: DisplayUnits,
): string {
  const paper = onPaperText(size, units);
  if (!hasPixels(choice)) return t('files.svgSize', { paper });
  const [width, height] = [grouped(size.width), grouped(size.height)];
  return t('files.pictureSize', { paper, width, height });
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

const PIXEL = { field: '1', shown: { name: '', perShown: 1, decimals: 0 } } as const;

/** Width on paper and in pixels, tied by the pixels an inch. */
function SizeRows(
  props: RowProps & { readonly units: DisplayUnits; readonly outside: string | null },
) {
  const { choice, units, outside, onChange } = props;
  const { widthMm, density } = choice;
  const length = shownUnit('mm', units);
  return (
    <>
      <NumberRow
        label={t('files.width', { unit: length.name })}
        name={t('files.widthName')}
        value={Number(widthMm.toFixed(length.name === 'mm' ? 2 : 4))}
        unit={{ field: 'mm', shown: length }}
        outside={outside}
        testId="files-width-mm"
        onEnter={(lengthMm) => onChange({ ...choice, widthMm: lengthMm })}
      />
      {hasPixels(choice) && (
        <>
          <NumberRow
            label={t('files.widthPixels')}
            name={t('files.widthPixels')}
            value={pixelsOf(widthMm, density)}
            unit={PIXEL}
            outside={outside}
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

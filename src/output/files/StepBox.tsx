import { useMemo } from 'react';
import { useStore } from 'zustand';
import { t } from '../../messages';
import { Press } from '../../ui/Press';
import { useSession } from '../../ui/session';
import type { SolidUnit } from '../solids/bodyMesh';
import { NO_KERNEL, type StepFile } from '../solids/stepTypes';
import { namesOf } from './contentText';
import { SaveButton } from './Rows';
import { KINDS, saveFile, sizeText } from './saveFile';
import { type SolidContent, stepRequest } from './solidChoice';
import { stepJobOf } from './stepDesk';

/** Size of the CAD kernel's binary, bytes: replicad-opencascadejs 1.1.0. */
const KERNEL_BYTES = 23e6;
/** Beside the page; put there by the build (`licences` in vite.config.ts). */
const LICENCE = './licences/open-cascade.txt';

/** Makes a STEP file in the CAD kernel's worker, then offers it: the kernel takes longer than a press of a button counts. */
export function StepBox(props: { readonly content: SolidContent; readonly unit: SolidUnit }) {
  const { content, unit } = props;
  const job = stepJobOf(useSession());
  const state = useStore(job.store, (store) => store.job);
  const request = useMemo(() => stepRequest(content, unit), [content, unit]);
  const fresh = useMemo(
    () => state.kind === 'done' && JSON.stringify(state.request) === JSON.stringify(request),
    [state, request],
  );
  const running = state.kind === 'running';
  const nothing = request.bodies.length === 0;
  return (
    <div className="files-step" data-testid="files-step">
      <div className="files-save">
        {/* One button, whatever it does at the time: the focus stays on it. */}
        <Press
          testId={running ? 'files-step-cancel' : 'files-step-make'}
          off={!running && (nothing || fresh)}
          onPress={() => (running ? job.cancel() : job.start(request))}
        >
          {t(running ? 'files.cancel' : state.kind === 'done' ? 'files.makeAgain' : 'files.make')}
        </Press>
        {running && <Progress done={state.progress.done} total={state.progress.total} />}
      </div>
      <p className="files-note" role="status" data-testid="files-step-said">
        {state.kind === 'cancelled' && t('files.cancelled')}
        {state.kind === 'failed' && failedText(state.reason)}
        {state.kind === 'done' && (fresh ? madeText(state.result) : t('files.stepOutdated'))}
      </p>
      {state.kind === 'done' && fresh && (
        <SaveButton
          text={t('files.save', { format: 'STEP' })}
          testId="files-save-solid"
          save={() => saveFile(content.stem, KINDS.step, () => state.result.text)}
        />
      )}
      <p className="files-note">
        {t('files.kernel', { size: sizeText(KERNEL_BYTES) })}{' '}
        <a href={LICENCE} target="_blank" rel="noreferrer">
          {t('files.kernelLicence')}
        </a>
      </p>
    </div>
  );
}

function Progress(props: { readonly done: number; readonly total: number }) {
  const { done, total } = props;
  // The first of the worker's steps is the kernel, the last the writing.
  const parts = total - 2;
  const text =
    done === 0
      ? t('files.loading')
      : done > parts
        ? t('files.writing')
        : t('files.making', { done, total: parts });
  return (
    <>
      <progress value={total > 0 ? done : undefined} max={Math.max(1, total)} aria-label={text} />
      <span role="status">{text}</span>
    </>
  );
}

function failedText(reason: string): string {
  return reason === NO_KERNEL ? t('files.stepNoKernel') : t('files.stepFailed', { reason });
}

function madeText({ text, made }: StepFile): string {
  const count = made.reduce((sum, { solids }) => sum + solids, 0);
  const error = Math.max(...made.map(({ volumeError }) => Math.abs(volumeError)));
  const values = { count, size: sizeText(text.length), error: shareText(error) };
  const apart = made.filter(({ joined }) => !joined);
  const said = t(count === 1 ? 'files.stepMadeOne' : 'files.stepMade', values);
  if (apart.length === 0) return said;
  return `${said} ${t('files.stepApart', { parts: namesOf(apart) })}`;
}

/** A share as a power of ten that it does not exceed, from 1e-15 (rounding) on: "10^-12" as "1e-12". */
function shareText(share: number): string {
  return `1e${Math.max(-15, Math.ceil(Math.log10(Math.max(share, 1e-300))))}`;
}

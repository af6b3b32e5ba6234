import { fileOpen } from 'browser-fs-access';
import { useState } from 'react';
import { t } from '../../messages';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { fileSave } from '../../ui/fileSave';
import { useAppState, useSession } from '../../ui/session';
import { dropPolar, examplePolar, POLAR_ENDINGS, polarText, takePolarFile } from './polarDesk';

const FILES = {
  description: 'Section coefficients',
  extensions: POLAR_ENDINGS,
  mimeTypes: ['text/plain', 'text/csv'],
  id: 'stillgrip-polar',
};

/** The coefficients of the blade's section from a file: open one, see what it holds, let it go, save the built-in one. */
export function PolarFileRow() {
  const session = useSession();
  const polar = useAppState((state) => state.design.air?.polar ?? null);
  const [fault, setFault] = useState<string | null>(null);

  async function guarded(action: () => Promise<string | null>): Promise<void> {
    try {
      setFault(await action());
    } catch (error) {
      if (!isCancelled(error)) setFault(t('conditions.polarFailed', { reason: reasonOf(error) }));
    }
  }

  async function open(): Promise<string | null> {
    return takePolarFile(session, await fileOpen(FILES));
  }

  async function saveExample(): Promise<null> {
    const blob = new Blob([examplePolar()], { type: 'text/csv' });
    await fileSave(blob, { fileName: 'section.csv', extensions: ['.csv'] });
    return null;
  }

  return (
    <div className="conditions-table" data-testid="polar-file">
      <p className="conditions-hint">{polar ? polarText(polar) : t('conditions.polarNone')}</p>
      <div className="conditions-buttons">
        <button type="button" className="ui-button" onClick={() => void guarded(open)}>
          {t('conditions.polarOpen')}
        </button>
        {polar && (
          <button
            type="button"
            className="ui-button"
            onClick={() => {
              dropPolar(session);
              setFault(null);
            }}
          >
            {t('conditions.polarDrop')}
          </button>
        )}
        <button
          type="button"
          className="ui-button ui-button-bare"
          onClick={() => void guarded(saveExample)}
        >
          {t('conditions.polarSave')}
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

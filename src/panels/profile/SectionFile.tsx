import { fileOpen } from 'browser-fs-access';
import { useId, useState } from 'react';
import type { Part } from '../../design/design';
import { valueOf } from '../../design/values';
import { t } from '../../messages';
import { isCancelled, reasonOf } from '../../ui/fileErrors';
import { useAppState, useSession } from '../../ui/session';
import {
  dropSection,
  MAX_SECTION_BYTES,
  outlineHeight,
  outlinePath,
  takeSection,
} from './sectionDesk';
import './profile.css';

const FILES = {
  description: 'Section coordinates',
  extensions: ['.dat', '.txt', '.csv'],
  mimeTypes: ['text/plain'],
  id: 'stillgrip-section',
};

/** A blade's section from a file of coordinates: open one, see it, go back to the four-digit section. */
export function SectionFile(props: { readonly partId: string }) {
  const { partId } = props;
  const session = useSession();
  const title = useId();
  const [fault, setFault] = useState<string | null>(null);
  const find = (parts: readonly Part[]) => parts.find((part) => part.id === partId);
  const coordinates = useAppState((state) => sectionOf(find(state.design.parts)));
  const name = useAppState((state) => nameOf(find(state.design.parts)));

  async function open(): Promise<void> {
    try {
      const file = await fileOpen(FILES);
      if (file.size > MAX_SECTION_BYTES) {
        setFault(t('section.tooLarge', { limit: MAX_SECTION_BYTES / 1000 }));
        return;
      }
      const taken = takeSection(session, partId, file.name, await file.text());
      setFault(taken.ok ? null : taken.error);
    } catch (error) {
      if (!isCancelled(error)) setFault(t('section.openFailed', { reason: reasonOf(error) }));
    }
  }

  return (
    <section className="section-file" aria-labelledby={title} data-testid="section-file">
      <h4 className="ui-heading" id={title}>
        {t('section.title')}
      </h4>
      <p className="section-name">
        {coordinates
          ? t('section.fromFile', { name, count: coordinates.length / 2 })
          : t('section.naca')}
      </p>
      {coordinates && (
        <svg
          className="section-outline"
          viewBox={`-1 0 102 ${outlineHeight(coordinates)}`}
          role="img"
          aria-label={t('section.outline')}
        >
          <path d={outlinePath(coordinates, outlineHeight(coordinates))} />
        </svg>
      )}
      <div className="section-buttons">
        <button type="button" className="ui-button" onClick={() => void open()}>
          {t('section.open')}
        </button>
        {coordinates && (
          <button
            type="button"
            className="ui-button"
            onClick={() => {
              dropSection(session, partId);
              setFault(null);
            }}
          >
            {t('section.back')}
          </button>
        )}
      </div>
      {fault && (
        <p className="field-fault" role="alert">
          {fault}
        </p>
      )}
    </section>
  );
}

/** A list of the part's own identity; null while the section is the four-digit one. */
function sectionOf(part: Part | undefined): readonly number[] | null {
  const value = part && valueOf(part, 'sectionCoordinates');
  return Array.isArray(value) && value.length > 0 ? (value as readonly number[]) : null;
}

function nameOf(part: Part | undefined): string {
  return String((part && valueOf(part, 'sectionName')) ?? '');
}

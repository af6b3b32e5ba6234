import { t } from '../../messages';
import './files.css';
import { PicturesSection } from './PicturesSection';
import { SolidsSection } from './SolidsSection';
import { DesignSection, TablesSection } from './TablesSection';
import { useRestingHead } from './useRestingHead';

/** Solid files, pictures and tables. */
export function FilesRoom() {
  const head = useRestingHead();
  return (
    <section
      className="files-room"
      aria-label={t('files.title')}
      tabIndex={0}
      data-testid="files-room"
    >
      <div className="files-stack">
        <SolidsSection head={head} />
        <DesignSection head={head} />
      </div>
      <div className="files-stack">
        <PicturesSection head={head} />
        <TablesSection head={head} />
      </div>
    </section>
  );
}

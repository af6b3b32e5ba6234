import { ChevronDown, LayoutGrid } from 'lucide-react';
import { t } from '../../messages';
import { Menu, MenuItem } from '../../ui/Menu';

export interface GalleryEntry {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  readonly text: string;
}

/** The demo heads. Choosing one opens it in place of the design, as one undo step. */
export function Gallery(props: {
  readonly entries: readonly GalleryEntry[];
  readonly onOpen: (entry: GalleryEntry) => void;
}) {
  return (
    <Menu
      label={t('app.demos')}
      title={t('app.demos')}
      testId="gallery"
      button={
        <>
          {/* On a small screen the picture stands for the words. */}
          <LayoutGrid aria-hidden="true" className="gallery-picture" />
          <span className="gallery-words">{t('app.demos')}</span>
          <ChevronDown aria-hidden="true" />
        </>
      }
    >
      <div className="ui-menu-group">
        {t(props.entries.length > 0 ? 'app.demosNote' : 'app.noDemos')}
      </div>
      {props.entries.map((entry) => (
        <MenuItem
          key={entry.file}
          testId={`demo-${entry.file.replace('.json', '')}`}
          note={entry.summary}
          onClick={() => props.onOpen(entry)}
        >
          {entry.title}
        </MenuItem>
      ))}
    </Menu>
  );
}

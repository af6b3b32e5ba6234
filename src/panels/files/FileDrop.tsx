import { useEffect, useState } from 'react';
import { t } from '../../messages';
import { useSession } from '../../ui/session';
import { isPolarName } from '../conditions/polarDesk';
import { useMeshDesk } from '../import/ImportRoom';
import { isMeshName } from '../import/meshDesk';
import { carriesDesign } from './carriers';
import type { FileDesk } from './fileDesk';
import type { ReadingsDoor } from './readingsDoor';
import { takeTables } from './takeTables';
import './files.css';

/**
 * A design file may be dropped anywhere on the page, meshes for bodies, tables of readings for the bench and of a section
 * for the air; while one is over it, the page says so. Of several designs one is opened, and that is said.
 */
export function FileDrop(props: { readonly desk: FileDesk; readonly readings: ReadingsDoor }) {
  const { desk, readings } = props;
  const session = useSession();
  const meshes = useMeshDesk();
  const [over, setOver] = useState(false);
  useEffect(() => {
    let depth = 0;
    const carries = (event: DragEvent) => event.dataTransfer?.types.includes('Files') === true;
    const enter = (event: DragEvent) => {
      if (!carries(event)) return;
      depth++;
      setOver(true);
    };
    const leave = (event: DragEvent) => {
      if (!carries(event)) return;
      depth = Math.max(0, depth - 1);
      if (depth === 0) setOver(false);
    };
    const hover = (event: DragEvent) => {
      if (carries(event)) event.preventDefault();
    };
    const drop = (event: DragEvent) => {
      if (!carries(event)) return;
      event.preventDefault();
      depth = 0;
      setOver(false);
      void take([...(event.dataTransfer?.files ?? [])]);
    };
    /** A 3MF package is a design if one of ours is in it, and a body if not. */
    const take = async (files: readonly File[]) => {
      const carriers = await Promise.all(files.map(carriesDesign));
      const bodies = files.filter((file, k) => isMeshName(file.name) && !carriers[k]);
      const tables = files.filter((file) => isPolarName(file.name) || readings.isName(file.name));
      const [design, ...more] = files.filter(
        (file) => !bodies.includes(file) && !tables.includes(file),
      );
      if (design) void desk.openFile(design);
      if (more.length > 0) desk.sayOneOnly(more.length);
      if (bodies.length > 0) meshes.take(bodies);
      if (tables.length > 0) void takeTables(session, readings, tables);
    };
    window.addEventListener('dragenter', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('dragover', hover);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragenter', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('dragover', hover);
      window.removeEventListener('drop', drop);
    };
  }, [desk, meshes, readings, session]);
  if (!over) return null;
  return (
    <div className="files-drop" role="status">
      <p>{t('app.dropHint')}</p>
    </div>
  );
}

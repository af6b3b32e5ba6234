import { fileOpen } from 'browser-fs-access';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Result } from '../../engine/result';
import { readMeshFile } from '../../meshes/readMeshFile';
import type { MeshFileFault, MeshImport, MeshProgress } from '../../meshes/types';
import { t } from '../../messages';
import type { Session } from '../../state/session';
import { isCancelled, reasonOf } from '../../ui/fileErrors';

/** A file on its way in. `outcome` is null while it is being read. */
export interface MeshJob {
  readonly file: string;
  readonly progress: MeshProgress;
  readonly outcome: Result<MeshImport, MeshFileFault> | null;
  /** What it is wanted for, where that was said before the file was chosen. */
  readonly role?: 'keepOut';
  /** Files that were dropped with it and come after it. */
  readonly waiting: number;
}

/** Bringing in bodies from files, one at a time. Nothing is put into the design before a person says so. */
export interface MeshDesk {
  readonly job: StoreApi<MeshJob | null>;
  /** `role`: what the body is to be, put before the person who decides. */
  open(role?: 'keepOut'): Promise<void>;
  take(files: readonly File[]): void;
  /** Gives up the file at hand, read or not, and goes on to the next. */
  next(): void;
}

const FILES = {
  description: 'STL, 3MF, GLB, OBJ, STEP',
  extensions: ['.stl', '.3mf', '.glb', '.obj', '.step', '.stp'],
  multiple: true as const,
  id: 'stillgrip-mesh',
};

/** Whether a file's name is one that a mesh or CAD program writes. */
export function isMeshName(name: string): boolean {
  return FILES.extensions.some((ending) => name.toLowerCase().endsWith(ending));
}

export function createMeshDesk({ actions }: Session): MeshDesk {
  const job = createStore<MeshJob | null>(() => null);
  const waiting: File[] = [];
  let wanted: 'keepOut' | undefined;
  let stop: AbortController | null = null;

  async function read(file: File): Promise<void> {
    const own = new AbortController();
    stop = own;
    const put = (change: Partial<MeshJob>) => {
      if (stop === own) job.setState({ ...(job.getState() as MeshJob), ...change }, true);
    };
    job.setState(
      {
        file: file.name,
        progress: { step: 'open' },
        outcome: null,
        waiting: waiting.length,
        ...(wanted ? { role: wanted } : {}),
      },
      true,
    );
    const outcome = await readMeshFile(file, {
      signal: own.signal,
      onProgress: (progress) => put({ progress }),
    });
    put({ outcome, waiting: waiting.length });
  }

  function next(): void {
    stop?.abort();
    stop = null;
    const file = waiting.shift();
    if (file) void read(file);
    else job.setState(null, true);
  }

  function take(files: readonly File[]): void {
    waiting.push(...files);
    if (job.getState() === null) next();
    else job.setState({ ...(job.getState() as MeshJob), waiting: waiting.length }, true);
  }

  return {
    job,
    take,
    next,
    async open(role) {
      try {
        const files = await fileOpen(FILES);
        wanted = role;
        take(files);
      } catch (error) {
        if (isCancelled(error)) return;
        const text = t('import.failed', { reason: reasonOf(error) });
        actions.notify({ tone: 'warning', text });
      }
    },
  };
}

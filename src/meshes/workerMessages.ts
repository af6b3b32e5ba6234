import type { Result } from '../engine/result';
import type { MeshFileFault, MeshImport, MeshProgress } from './types';

export type WorkerReply =
  | { readonly kind: 'progress'; readonly progress: MeshProgress }
  | { readonly kind: 'done'; readonly result: Result<MeshImport, MeshFileFault> };

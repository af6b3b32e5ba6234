import type { Design } from '../../design/design';
import type { Derivative } from './derivatives';

/** The derivatives of a design are wanted. A later question takes the place of one under way. */
export interface SlopeQuestion {
  readonly id: number;
  readonly design: Design;
  readonly pitchesDeg: readonly number[];
}

/**
 * First with air and a swinging blade as they are in the design, at once; then, where the design counts any of it, with them
 * solved anew for each changed number.
 */
export interface SlopeReply {
  readonly id: number;
  readonly terms: 'nominal' | 'anew';
  readonly derivatives: readonly Derivative[];
}

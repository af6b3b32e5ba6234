/** A picture of the stage: PNG as a data URL, and its size in pixels. */
export interface StagePicture {
  readonly dataUrl: string;
  readonly width: number;
  readonly height: number;
}

/** What the stage shows, drawn anew at a size in pixels; null where the browser draws none of that size. */
export type StagePhotographer = (width: number, height: number) => StagePicture | null;

/** Takes pictures of the stage for rooms that know nothing of it. */
export interface StageCamera {
  /** Puts the stage's way of taking pictures here; returns a function that takes it away. */
  attach(photographer: StagePhotographer): () => void;
  /**
   * A picture of the stage as it is; null while there is no stage (not loaded, folded away, or without WebGL), or where the
   * browser draws none of that size.
   */
  take(width: number, height: number): StagePicture | null;
  /** Calls when a stage comes or goes; returns a function that stops. */
  subscribe(listener: () => void): () => void;
  /** Whether there is a stage. */
  ready(): boolean;
}

export function createStageCamera(): StageCamera {
  let own: StagePhotographer | null = null;
  const listeners = new Set<() => void>();
  function put(photographer: StagePhotographer | null): void {
    own = photographer;
    for (const listener of listeners) listener();
  }
  return {
    attach(photographer) {
      put(photographer);
      return () => {
        if (own === photographer) put(null);
      };
    },
    take: (width, height) => own?.(width, height) ?? null,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    ready: () => own !== null,
  };
}

/** What a person made happen on the page that the design does not tell; lessons look for it. */
export type Happening =
  /** A grip was let go and its movement has ended. */
  | {
      readonly kind: 'letGo';
      readonly fromDeg: number;
      readonly endDeg: number;
      /** It never moved; it came to rest between the stops; it lies against one; it was still moving. */
      readonly outcome: 'stays' | 'settles' | 'stop' | 'moving';
    }
  /** The pulls were added one by one: so many of them stand now. */
  | { readonly kind: 'pulls'; readonly added: number; readonly of: number }
  /** The racket was thrown and has turned over so many times. */
  | {
      readonly kind: 'racket';
      readonly axis: 'least' | 'middle' | 'greatest';
      readonly flips: number;
    };

export interface Happenings {
  tell(happening: Happening): void;
  /** Returns a function that stops listening. */
  subscribe(listener: (happening: Happening) => void): () => void;
}

export function createHappenings(): Happenings {
  const listeners = new Set<(happening: Happening) => void>();
  return {
    tell(happening) {
      for (const listener of listeners) listener(happening);
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

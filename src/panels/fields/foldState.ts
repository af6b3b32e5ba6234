/** A folding group: whether it is open, and whether a person said so. */
export interface FoldState {
  readonly open: boolean;
  readonly pressed: boolean;
}

/** As it is first shown: as a person left it, else open where some of its values (`changed`) are not the usual ones. */
export function firstFold(chosen: boolean | undefined, changed: number): FoldState {
  return { open: chosen ?? changed > 0, pressed: chosen !== undefined };
}

/** After its values changed: it may open, but never closes under a person's hands. The same object where nothing is new. */
export function followedFold(fold: FoldState, changed: number): FoldState {
  return fold.open || fold.pressed || changed === 0 ? fold : { ...fold, open: true };
}

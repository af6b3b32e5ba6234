/** One file of a built page. */
export interface BuiltFile {
  /** From the page's folder; the page itself is ''. */
  readonly path: string;
  /** SHA-256 of its bytes, in base64: what `integrity` of a request takes. */
  readonly sha256: string;
}

/** What a build consists of: the list that the service worker keeps. */
export interface Release {
  /** Differs where any byte of the build differs. */
  readonly version: string;
  /** Kept before the page is called ready to work without a network. */
  readonly files: readonly BuiltFile[];
  /** Large and rarely wanted: kept when they are first used. */
  readonly later: readonly BuiltFile[];
}

/** What the page may ask of the service worker. */
export type OfflineRequest =
  /** Put the newer version in the place of the one that runs: only when a person has asked for it. */
  | 'take over'
  /** A page of the version that runs has opened: what older ones left may go if no other page is open. */
  | 'opened';

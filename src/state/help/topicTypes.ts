import type { HelpHead } from './helpHead';
import type { HelpTextKey } from './helpText';
import type { Worked } from './worked';

/** What a formula comes to for a head: its lines, or why there are none. */
export type Working =
  | { readonly kind: 'worked'; readonly lines: readonly Worked[] }
  | { readonly kind: 'none'; readonly why: HelpTextKey };

/** Where a formula or a value is from; the text of each is `help.source.<name>`. */
export type SourceName =
  | 'definition'
  | 'mechanics'
  | 'propellerMoment'
  | 'virtualWork'
  | 'racketEffect'
  | 'ellipse'
  | 'plate'
  | 'iso76'
  | 'en1993'
  | 'iso898'
  | 'iso21940'
  | 'gum'
  | 'coulomb'
  | 'bearingCatalogues'
  | 'momentum'
  | 'flatPlate'
  | 'trade'
  | 'dynamics'
  | 'statistics'
  | 'ours';

/** Groups of the glossary, in its order. */
export const TOPIC_GROUPS = [
  'spread',
  'turning',
  'control',
  'rest',
  'holding',
  'loads',
  'balance',
  'making',
  'bench',
  'words',
] as const;
export type TopicGroup = (typeof TOPIC_GROUPS)[number];

/**
 * An entry of the help: its texts are `help.<id>.name`, `.what` and `.sign`, which only a word of the trade, being no number,
 * has not.
 */
export interface Entry {
  /** Its letter in formulas. */
  readonly symbol?: string;
  /** The formula with the numbers of a head put in; left out where there is none. */
  readonly work?: (head: HelpHead) => Working;
  readonly sources: readonly SourceName[];
  /** Entries that say more. */
  readonly see: readonly string[];
  /** Other words that a search finds it by, small letters. */
  readonly also?: string;
}

/** Those of a group, by their ids. */
export type Entries = Readonly<Record<string, Entry>>;

export interface Topic extends Entry {
  readonly group: TopicGroup;
}

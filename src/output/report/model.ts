import type { StagePicture } from '../../state/stageCamera';
import type { Figure } from './figures/figure';

/** A report as data: what is said, in which order; how it looks on a page or in a PDF is the renderers' own matter. */
export interface ReportModel {
  readonly title: ReportTitle;
  readonly sections: readonly ReportSection[];
}

/** The title block, after ISO 7200: what it is, of what, when, which state of it. */
export interface ReportTitle {
  readonly design: string;
  readonly kind: string;
  readonly fields: readonly Fact[];
  /** What the design says of itself (a demo: that it is invented). */
  readonly note: string | null;
  /** Stands at the foot of every page. */
  readonly foot: string;
}

export const SECTION_IDS = [
  'verdict',
  'figures',
  'conditions',
  'parts',
  'changes',
  'loads',
  'tolerances',
  'clearance',
  'balance',
  'assumptions',
  'cautions',
  'source',
] as const;
export type SectionId = (typeof SECTION_IDS)[number];

export interface ReportSection {
  readonly id: SectionId;
  readonly title: string;
  readonly blocks: readonly Block[];
}

export type Block =
  | TextBlock
  | LinkBlock
  | ListBlock
  | FactsBlock
  | TableBlock
  | FiguresBlock
  | BesideBlock;

export interface TextBlock {
  readonly kind: 'text';
  readonly text: string;
  /** 'lead': the sentence that matters; 'warning': something that is wrong or must be minded. */
  readonly look: 'plain' | 'lead' | 'quiet' | 'warning';
}

/** An address printed whole, which opens where it is pressed. */
export interface LinkBlock {
  readonly kind: 'link';
  readonly address: string;
}

export interface ListBlock {
  readonly kind: 'list';
  readonly items: readonly string[];
  /** Short items stand in two columns. */
  readonly columns: 1 | 2;
}

/** Labels with their values, unit included. */
export interface FactsBlock {
  readonly kind: 'facts';
  readonly title: string | null;
  readonly facts: readonly Fact[];
}

export interface Fact {
  readonly label: string;
  readonly value: string;
}

export interface TableBlock {
  readonly kind: 'table';
  readonly caption: string;
  readonly columns: readonly TableColumn[];
  readonly rows: readonly (readonly string[])[];
  /** The last row is a sum. */
  readonly sum?: boolean;
}

export interface TableColumn {
  readonly title: string;
  readonly align: 'left' | 'right';
  /** Share of the width among the columns. */
  readonly share: number;
}

/** Pictures side by side. */
export interface FiguresBlock {
  readonly kind: 'figures';
  readonly figures: readonly FigureItem[];
}

/** A picture with a short table to its right. */
export interface BesideBlock {
  readonly kind: 'beside';
  readonly figure: FigureItem;
  readonly table: TableBlock;
}

export type FigureItem =
  | { readonly kind: 'drawn'; readonly caption: string; readonly figure: Figure }
  | { readonly kind: 'picture'; readonly caption: string; readonly picture: StagePicture };

export function words(text: string, look: TextBlock['look'] = 'plain'): TextBlock {
  return { kind: 'text', text, look };
}

export function list(items: readonly string[], columns: 1 | 2 = 1): ListBlock {
  return { kind: 'list', items, columns };
}

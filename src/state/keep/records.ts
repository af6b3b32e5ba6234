/**
 * What lies in the browser for one design, one of its past states, or something set aside: a small card, and its text
 * under the same key in a store of its own, so that lists are read without the texts. Card and text are always written
 * in one transaction.
 */
export interface Card {
  readonly key: string;
  /** How this card is written. A card of a later format is left alone. */
  readonly format: typeof CARD_FORMAT;
  /** The design it belongs to. */
  readonly id: string;
  /** Counts the writes of the design, from 1: whoever writes must know the one it replaces. */
  readonly revision: number;
  /** Of this one write, never given twice: tells a write that was made from one that only seemed to fail. */
  readonly stamp: string;
  /** The tab that wrote it. */
  readonly writer: string;
  /** Name of the design in it. */
  readonly name: string;
  /** ms since 1970. */
  readonly savedAt: number;
  /** When it came onto a stage since, where nothing was written by that, ms since 1970. */
  readonly openedAt?: number;
  /** Length of the text: one that differs was not written by this page. */
  readonly length: number;
  /** False while nothing was changed since it was opened. */
  readonly edited: boolean;
  /** Id of the design that it was split off from. */
  readonly copyOf?: string;
  /** Name given to a past state; one without was kept by itself. */
  readonly title?: string;
  /** Why it was set aside, and when (ms since 1970). */
  readonly reason?: AsideReason;
  readonly asideAt?: number;
}

export type AsideReason = 'damaged' | 'removed';

/** When the design was last worked on or looked at: the latest is what the next visit opens. */
export function stoodAt(card: Card): number {
  return Math.max(card.savedAt, typeof card.openedAt === 'number' ? card.openedAt : 0);
}

export interface Kept {
  readonly card: Card;
  readonly text: string;
}

export const CARD_FORMAT = 1;
const DESIGN = 'design/';
const PAST = 'past/';
const ASIDE = 'aside/';

export const designKey = (id: string): string => DESIGN + id;
export const pastsOf = (id: string): string => `${PAST}${id}/`;
export const ALL_DESIGNS = DESIGN;
export const ALL_ASIDE = ASIDE;
export const ALL_PASTS = PAST;

/** Keys of past states sort by time. */
export function pastKey(card: Pick<Card, 'id' | 'savedAt' | 'revision' | 'stamp'>): string {
  return `${pastsOf(card.id)}${ordered(card.savedAt)} ${card.revision} ${card.stamp}`;
}

export function asideKey(card: Pick<Card, 'stamp'>, at: number): string {
  return `${ASIDE}${ordered(at)} ${card.stamp}`;
}

function ordered(at: number): string {
  return String(Math.max(0, Math.round(at))).padStart(15, '0');
}

/** The card in a record; 'newer' where a later page wrote it, null where it is none. */
export function cardFrom(value: unknown): Card | 'newer' | null {
  if (typeof value !== 'object' || value === null) return null;
  const card = value as Record<string, unknown>;
  if (typeof card.format === 'number' && card.format > CARD_FORMAT) return 'newer';
  const texts = [card.key, card.id, card.stamp, card.writer, card.name];
  const sound =
    card.format === CARD_FORMAT &&
    texts.every((text) => typeof text === 'string') &&
    isCount(card.revision) &&
    isCount(card.length) &&
    typeof card.savedAt === 'number' &&
    Number.isFinite(card.savedAt) &&
    typeof card.edited === 'boolean';
  return sound ? (value as Card) : null;
}

function isCount(value: unknown): boolean {
  return typeof value === 'number' && Number.isSafeInteger(value) && value >= 0;
}

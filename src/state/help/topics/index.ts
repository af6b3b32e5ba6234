import { type Entries, type Entry, TOPIC_GROUPS, type Topic, type TopicGroup } from '../topicTypes';
import { BALANCE } from './balance';
import { BENCH } from './bench';
import { CONTROL } from './control';
import { HOLDING } from './holding';
import { LOADS } from './loads';
import { MAKING } from './making';
import { REST } from './rest';
import { SPREAD } from './spread';
import { TURNING } from './turning';
import { WORDS } from './words';

const GROUPS = {
  spread: SPREAD,
  turning: TURNING,
  control: CONTROL,
  rest: REST,
  holding: HOLDING,
  loads: LOADS,
  balance: BALANCE,
  making: MAKING,
  bench: BENCH,
  words: WORDS,
} as const satisfies Readonly<Record<TopicGroup, Entries>>;

type KeyOf<T> = T extends unknown ? keyof T : never;
export type TopicId = KeyOf<(typeof GROUPS)[TopicGroup]>;

/** Every quantity and word that the help knows, in the order of its groups. */
export const TOPICS = Object.fromEntries(
  TOPIC_GROUPS.flatMap((group) =>
    Object.entries<Entry>(GROUPS[group]).map(([id, entry]) => [id, { ...entry, group }]),
  ),
) as Readonly<Record<TopicId, Topic>>;

export const TOPIC_IDS = Object.keys(TOPICS) as readonly TopicId[];

/** Beside the groups that are worked at a pitch. */
const AT_PITCH: ReadonlySet<TopicId> = new Set<TopicId>(['energy', 'hysteresis']);
const AT_NO_PITCH: ReadonlySet<TopicId> = new Set<TopicId>(['speed', 'overCentre', 'pitchInUse']);

/** Whether an entry's numbers depend on where the pitch stands. */
export function isAtPitch(id: TopicId): boolean {
  const { group } = TOPICS[id];
  if (AT_NO_PITCH.has(id)) return false;
  return AT_PITCH.has(id) || ['turning', 'control', 'holding', 'loads'].includes(group);
}

export function isTopic(id: string): id is TopicId {
  return Object.hasOwn(TOPICS, id);
}

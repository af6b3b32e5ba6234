import type { Topic } from '../topicTypes';
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

const ALL = {
  ...SPREAD,
  ...TURNING,
  ...CONTROL,
  ...REST,
  ...HOLDING,
  ...LOADS,
  ...BALANCE,
  ...MAKING,
  ...BENCH,
  ...WORDS,
} as const;

export type TopicId = keyof typeof ALL;

/** Every quantity and word that the help knows. */
export const TOPICS: Readonly<Record<TopicId, Topic>> = ALL;

export const TOPIC_IDS = Object.keys(ALL) as readonly TopicId[];

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
  return Object.hasOwn(ALL, id);
}

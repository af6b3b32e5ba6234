import { createStore } from 'zustand/vanilla';
import type { TopicId } from './topics';

/** Which entry of the glossary is looked at, and what is searched for. */
export interface WordsState {
  readonly shown: TopicId;
  readonly search: string;
}

/** The page's one glossary: kept while other rooms are open, the same for the own design and a lesson's. */
export const wordsDesk = createStore<WordsState>(() => ({ shown: 'featheringMoment', search: '' }));

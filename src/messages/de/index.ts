import type { OtherLanguage } from '../spoken';
import { CATALOGUE_TEXTS } from './catalogueText';
import { DEMO_TEXTS } from './demos';
import { MATERIAL_NAMES } from './materialNames';
import { DE } from './opening';
import { PAGE_WORDS } from './pageWords';
import { PARTS } from './parts';
import { READER_TEXTS } from './readers';
import { RULE_TEXTS } from './rules';
import { SECTION_TEXTS } from './sections';

/** German. */
export const GERMAN: OtherLanguage = {
  opening: {
    ...DE,
    ...PARTS,
    ...SECTION_TEXTS,
    ...MATERIAL_NAMES,
    ...CATALOGUE_TEXTS,
    ...READER_TEXTS,
    ...PAGE_WORDS,
    ...RULE_TEXTS,
    ...DEMO_TEXTS,
  },
  rooms: {
    bench: () => import('./bench').then(({ BENCH }) => BENCH),
    benchFit: () => import('./benchFit').then(({ BENCH_FIT }) => BENCH_FIT),
    benchPlan: () => import('./benchPlan').then(({ BENCH_PLAN }) => BENCH_PLAN),
    benchRooms: () => import('./benchRooms').then(({ BENCH_ROOMS }) => BENCH_ROOMS),
    closeness: () => import('./closeness').then(({ CLOSENESS }) => CLOSENESS),
    designsRoom: () => import('./designsRoom').then(({ DESIGNS_ROOM }) => DESIGNS_ROOM),
    drawing: () => import('./drawing').then(({ DRAWING }) => DRAWING),
    help: () => import('./help').then(({ HELP_TEXT }) => HELP_TEXT),
    lessonFiles: () => import('./lessonFiles').then(({ LESSON_TEXTS }) => LESSON_TEXTS),
    lessonRoom: () => import('./lessonRoom').then(({ LESSON_ROOM }) => LESSON_ROOM),
    letGoRoom: () => import('./letGoRoom').then(({ LET_GO_ROOM }) => LET_GO_ROOM),
    report: () => import('./report').then(({ REPORT }) => REPORT),
  },
};

import type { OtherLanguage } from '../spoken';
import { CATALOGUE_TEXTS } from './catalogueText';
import { DEMO_TEXTS } from './demos';
import { MATERIAL_NAMES } from './materialNames';
import { DE } from './opening';
import { PARTS } from './parts';
import { RULE_TEXTS } from './rules';
import { SECTION_TEXTS } from './sections';

const none = async () => ({});

/** German. */
export const GERMAN: OtherLanguage = {
  opening: {
    ...DE,
    ...PARTS,
    ...SECTION_TEXTS,
    ...MATERIAL_NAMES,
    ...CATALOGUE_TEXTS,
    ...RULE_TEXTS,
    ...DEMO_TEXTS,
  },
  rooms: {
    bench: none,
    benchFit: none,
    benchPlan: none,
    benchRooms: none,
    closeness: none,
    designsRoom: none,
    drawing: none,
    help: () => import('./help').then(({ HELP_TEXT }) => HELP_TEXT),
    lessonFiles: () => import('./lessonFiles').then(({ LESSON_TEXTS }) => LESSON_TEXTS),
    lessonRoom: none,
    letGoRoom: none,
    report: none,
  },
};

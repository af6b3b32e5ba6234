import type { OtherLanguage } from '../spoken';

const none = async () => ({});

/** German. */
export const GERMAN: OtherLanguage = {
  opening: {},
  rooms: {
    bench: none,
    benchFit: none,
    benchPlan: none,
    benchRooms: none,
    closeness: none,
    designsRoom: none,
    drawing: none,
    help: none,
    lessonRoom: none,
    letGoRoom: none,
    report: none,
  },
};

import { describeFault } from '../../../src/design/faultText';
import { adoptPart } from '../../../src/design/ownMaterials';
import { markedLesson } from '../../../src/lessons/course/mark';
import { readLesson } from '../../../src/lessons/course/readLesson';
import { linkFaultText } from '../../../src/output/share/linkFaultText';
import { readShareLink } from '../../../src/output/share/shareLink';
import { takePartsFile } from '../../../src/panels/balance/gripEdits';
import { createFileDesk } from '../../../src/panels/files/fileDesk';
import { faultTexts } from '../../../src/panels/shelf/shelfFiles';
import { workOf } from '../../../src/state/keep/page';
import { rescueNotes } from '../../../src/state/keep/rescue';
import { isPartText, partFrom } from '../../../src/state/partClipboard';
import { refusalText } from '../../../src/state/refusalText';
import { parseShelf } from '../../../src/state/shelfFile';
import { carriedPart } from '../../../src/state/shelfItem';
import { anyText, type Door, designFlaw, hasNonNumber, refused, strictText, taken } from './door';

const NOT_UTF8 = 'it is not UTF-8 text';

/** Doors behind which a design, or a part of one, is read from JSON. */
export const JSON_DOORS: readonly Door[] = [
  {
    name: 'design',
    entries: [
      'src/panels/files/fileDesk.ts',
      'src/panels/files/FileDrop.tsx',
      'src/ui/fileErrors.ts',
      'src/design/jsonText.ts',
      'src/design/jsonScan.ts',
    ],
    form: 'text',
    good: ['bare grip', 'turned nut', 'both sides', 'full size', 'all sections', 'mesh part'],
    async open(bytes, session) {
      const before = session.store.getState();
      await createFileDesk(session).openFile(new File([bytes as BlobPart], 'a.json'));
      const { design, notice } = session.store.getState();
      if (design === before.design) return refused(notice?.text ?? '');
      return taken(designFlaw(design));
    },
  },
  {
    name: 'parts of another grip',
    entries: ['src/panels/balance/GripEditor.tsx', 'src/panels/balance/gripEdits.ts'],
    form: 'text',
    good: ['bare grip', 'turned nut', 'both sides'],
    async open(bytes, session) {
      const words = await takePartsFile(session, 1, new File([bytes as BlobPart], 'a.json'));
      if (words !== null) return refused(words);
      return taken(designFlaw(session.store.getState().design));
    },
  },
  {
    name: 'lesson',
    entries: ['src/lessons/course/panel/lessonFile.ts'],
    form: 'text',
    good: ['lesson 1', 'lesson 8', 'lesson 10'],
    open(bytes) {
      const text = strictText(bytes);
      if (text === null) return refused(NOT_UTF8);
      const read = readLesson(text);
      return read.ok
        ? taken(designFlaw(read.value.scene.design))
        : refused(describeFault(read.error));
    },
  },
  {
    name: 'lesson where it stood',
    entries: ['src/lessons/course/mark.ts', 'src/state/keep/slip.ts'],
    form: 'text',
    good: ['mark of a lesson'],
    open(bytes) {
      const stood = markedLesson(anyText(bytes));
      if (!stood) return refused('there is no lesson');
      const { design, pitchDeg, settings, run } = stood;
      if (hasNonNumber([pitchDeg, settings, run.step])) return taken('a number in it is none');
      return taken(designFlaw(design));
    },
  },
  {
    name: 'shelf',
    entries: ['src/panels/shelf/shelfFiles.ts'],
    form: 'text',
    good: ['shelf', 'shelf with a mesh'],
    open(bytes, session) {
      const text = strictText(bytes);
      if (text === null) return refused(NOT_UTF8);
      const read = parseShelf(text);
      if (!read.ok) return refused(faultTexts(read.error).join('\n'));
      const { design } = session.store.getState();
      const flaws = read.value.slice(0, 3).flatMap((item) => {
        const { part, materials } = adoptPart(carriedPart(item), design.materials ?? []);
        return designFlaw({ ...design, materials, parts: [part] }) ?? [];
      });
      return taken(flaws[0] ?? null);
    },
  },
  {
    name: 'pasted part',
    entries: ['src/app/useShortcuts.ts', 'src/state/partClipboard.ts'],
    form: 'text',
    good: ['copied bolt', 'copied blade', 'copied mesh'],
    open(bytes, session) {
      const text = anyText(bytes);
      if (!isPartText(text)) return refused('it is no part');
      const { design } = session.store.getState();
      const read = partFrom(text, design);
      if (!read.ok) return refused(describeFault(read.error));
      const outcome = session.actions.pastePart(read.value.part, read.value.materials);
      if (outcome.ok) return taken(designFlaw(session.store.getState().design));
      return refused(
        refusalText(outcome.error, design, null, session.store.getState().settings.units),
      );
    },
  },
  {
    name: 'link',
    entries: [
      'src/app/share/ArrivedDesign.tsx',
      'src/output/share/shareLink.ts',
      'src/app/main.tsx',
    ],
    form: 'link',
    good: ['link to a bare grip', 'link to a turned nut'],
    open(bytes) {
      const read = readShareLink(anyText(bytes));
      return read.ok ? taken(designFlaw(read.value)) : refused(linkFaultText(read.error));
    },
  },
  {
    name: 'design kept in the browser',
    entries: [
      'src/state/guardedStorage.ts',
      'src/state/keep/page.ts',
      'src/state/keep/rescue.ts',
      'src/state/keep/legacy.ts',
    ],
    form: 'text',
    good: ['rescue note'],
    open(bytes, session) {
      const held = oneNote('stillgrip.rescue.tab.id', anyText(bytes));
      const [note] = rescueNotes(() => held).all();
      if (!note) return refused('it is no note');
      let opened: string | null = null;
      const work = workOf(session, (design) => {
        opened = designFlaw(design);
      });
      return work.open(note.text) ? taken(opened) : refused('it holds no design');
    },
  },
];

/** A browser's storage with one text in it. */
export function oneNote(key: string, text: string): Storage {
  const held = { length: 1, key: () => key, getItem: () => text };
  return held as unknown as Storage;
}

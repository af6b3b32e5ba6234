import type { Design } from '../design/design';
import { parseDesign, serializeDesign } from '../design/file';
import { partText } from '../messages';

/** A demo head of the gallery; its text is part of the page, nothing is fetched. */
export interface DemoDesign {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  readonly opensFirst: boolean;
  readonly text: string;
}

interface IndexEntry {
  readonly file: string;
  readonly title: string;
  readonly summary: string;
  readonly opensFirst?: boolean;
}

const FOLDER = '../../assets/designs/';
const texts = import.meta.glob<string>('../../assets/designs/*.json', {
  eager: true,
  query: '?raw',
  import: 'default',
});

/** In the order of the gallery; empty where the build has none. */
export const DEMO_DESIGNS: readonly DemoDesign[] = readIndex();

function readIndex(): DemoDesign[] {
  const index = texts[`${FOLDER}index.json`];
  if (index === undefined) return [];
  return (JSON.parse(index) as IndexEntry[]).flatMap(({ file, title, summary, opensFirst }) => {
    const text = texts[FOLDER + file];
    return text === undefined
      ? []
      : [
          {
            file,
            title: partText(`demo.${file}.title`, title),
            summary: partText(`demo.${file}.summary`, summary),
            opensFirst: opensFirst === true,
            text,
          },
        ];
  });
}

/** Whether a design is one of the demos with nothing changed in it. */
export function isDemo(design: Design): boolean {
  const text = serializeDesign(design);
  return DEMO_DESIGNS.some((demo) => {
    const read = parseDesign(demo.text);
    return read.ok && serializeDesign(read.value) === text;
  });
}

/** The demo that a first visit opens. */
export function openingDesign(): Design | undefined {
  const first = DEMO_DESIGNS.find((demo) => demo.opensFirst) ?? DEMO_DESIGNS[0];
  if (!first) return undefined;
  const read = parseDesign(first.text);
  if (!read.ok) throw new Error(`openingDesign(): ${first.file} is not sound: ${read.error.path}`);
  return read.value;
}

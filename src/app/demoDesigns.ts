import type { Design } from '../design/design';
import { parseDesign, serializeDesign } from '../design/file';
import { partText } from '../messages';
import { spokenLanguage } from '../messages/languages';

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

/** In the order of the gallery, in the language spoken; empty where the build has none. */
export function demoDesigns(): readonly DemoDesign[] {
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
            text: spokenLanguage() === 'en' ? text : inLanguageSpoken(text),
          },
        ];
  });
}

interface NamedFile {
  readonly name: string;
  readonly note?: string;
  readonly parts: readonly { readonly name: string }[];
}

/** A demo with its own name, its note and the names of its parts as they are said in the language spoken. */
function inLanguageSpoken(text: string): string {
  const design = JSON.parse(text) as NamedFile;
  const say = (name: string) => partText(`demo.name.${name}`, name);
  return JSON.stringify({
    ...design,
    name: say(design.name),
    ...(design.note === undefined ? {} : { note: say(design.note) }),
    parts: design.parts.map((part) => ({ ...part, name: say(part.name) })),
  });
}

/** Whether a design is one of the demos with nothing changed in it, in whatever language it was opened. */
export function isDemo(design: Design): boolean {
  const text = serializeDesign(design);
  const english = Object.values(texts).filter((file) => !file.startsWith('['));
  return [...demoDesigns().map((demo) => demo.text), ...english].some((demo) => {
    const read = parseDesign(demo);
    return read.ok && serializeDesign(read.value) === text;
  });
}

/** The demo that a first visit opens. */
export function openingDesign(): Design | undefined {
  const demos = demoDesigns();
  const first = demos.find((demo) => demo.opensFirst) ?? demos[0];
  if (!first) return undefined;
  const read = parseDesign(first.text);
  if (!read.ok) throw new Error(`openingDesign(): ${first.file} is not sound: ${read.error.path}`);
  return read.value;
}

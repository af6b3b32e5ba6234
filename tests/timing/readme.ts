import { readFileSync, writeFileSync } from 'node:fs';

const README = new URL('../../README.md', import.meta.url);
const END = '<!-- to here -->';

/** Puts a text between the README's mark of a script and the next end mark. Throws where they are missing. */
export function writeReadme(script: 'timing' | 'timing:page', text: string): void {
  const begin = `<!-- npm run ${script} writes from here -->`;
  const [before, rest] = readFileSync(README, 'utf8').split(begin);
  const end = rest?.indexOf(END) ?? -1;
  if (end < 0) throw new Error(`writeReadme(): the marks of ${script} are not in the README`);
  writeFileSync(README, `${before}${begin}\n${text}${rest.slice(end)}`);
}

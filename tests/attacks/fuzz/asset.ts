import { readFileSync } from 'node:fs';

/** Text of a file that comes with the page. */
export function asset(path: string): string {
  return readFileSync(new URL(`../../../assets/${path}`, import.meta.url), 'utf8');
}

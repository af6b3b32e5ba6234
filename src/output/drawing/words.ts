import { DRAWING } from '../../messages/en/drawing';

export type DrawingWord = keyof typeof DRAWING;

/** Text of the drawing. */
export function say(
  key: DrawingWord,
  values: Readonly<Record<string, string | number>> = {},
): string {
  return DRAWING[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(values[name] ?? whole));
}

import type { ReadingsPreview } from '../../readings/preview';
import { say } from '../../say';

/** Names of the signs, as keys of texts. */
export const SIGNS = {
  ',': 'comma',
  ';': 'semicolon',
  '\t': 'tab',
  '|': 'pipe',
  spaces: 'spaces',
  '.': 'point',
} as const;

/** What was found out about a table, in sentences: how it is parted, what was assumed, what is left out. */
export function previewWords(preview: ReadingsPreview): readonly string[] {
  const { table, guess, derived, mappingFrom, isSeries } = preview;
  const delimiter = say(`benchRoom.sign.${SIGNS[table.delimiter]}`);
  const decimal = table.styles[0]?.decimal ?? '.';
  const lines = [
    say('benchRoom.parted', { rows: table.rows.length, delimiter }),
    say(`benchRoom.decimal.${table.decimalFrom}`, {
      sign: say(`benchRoom.sign.${SIGNS[decimal]}`),
    }),
    say(`benchRoom.from.${mappingFrom}`),
  ];
  if (mappingFrom === 'guessed' && guess.assumedUnits.length > 0)
    lines.push(
      say('benchRoom.assumed', {
        columns: guess.assumedUnits
          .map((k) => `${table.headings[k] || k + 1} (${preview.mapping[k].unit ?? ''})`)
          .join(', '),
      }),
    );
  if (derived.ok) {
    const { takenRows, refusedRows, backwards, otherUnits } = derived.value;
    lines.push(say('benchRoom.counts', { taken: takenRows, refused: refusedRows }));
    if (backwards.length > 0)
      lines.push(say('benchRoom.backwards', { row: backwards[0], count: backwards.length }));
    if (otherUnits > 0) lines.push(say('benchRoom.otherUnits', { count: otherUnits }));
  }
  if (isSeries) lines.push(say('benchRoom.isSeries'));
  if (table.repeated.length > 0)
    lines.push(say('benchRoom.repeated', { count: table.repeated.length }));
  const known = guess.metadata.lines.filter(({ field }) => field !== null);
  if (known.length > 0)
    lines.push(
      say('benchRoom.metadata', {
        list: known.map(({ name, value }) => `${name}: ${value}`).join('; '),
      }),
    );
  return lines;
}

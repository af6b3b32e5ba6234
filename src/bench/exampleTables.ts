/** The example runs as text, for whoever has none of their own yet. Imported when they are asked for. */
const texts = import.meta.glob<string>('../../assets/bench/*.csv', {
  eager: true,
  query: '?raw',
  import: 'default',
});

/** As files of a force gauge would arrive, in the order of the ladder. */
export function exampleTables(): readonly File[] {
  return Object.keys(texts)
    .toSorted()
    .map((path) => new File([texts[path]], path.slice(path.lastIndexOf('/') + 1)));
}

/** Whether two plain values (numbers, texts, lists, typed arrays, records of them) hold the same. -0 is not 0. */
export function sameData(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false;
  if (isList(a)) {
    if (!isList(b) || a.length !== b.length) return false;
    for (let i = 0; i < a.length; i++) if (!sameData(a[i], b[i])) return false;
    return true;
  }
  if (isList(b)) return false;
  let count = 0;
  for (const key in a) {
    count++;
    if (!(key in b) || !sameData(a[key as never], b[key as never])) return false;
  }
  for (const _ in b) count--;
  return count === 0;
}

function isList(value: object): value is ArrayLike<unknown> {
  return Array.isArray(value) || ArrayBuffer.isView(value);
}

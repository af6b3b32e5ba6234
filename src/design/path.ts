/** Steps to a field written as in the file: `parts[2].pose.positionMm[1]`. */
export function joinPath(steps: readonly PropertyKey[]): string {
  let path = '';
  for (const step of steps) {
    if (typeof step === 'number') path += `[${step}]`;
    else path += path === '' ? String(step) : `.${String(step)}`;
  }
  return path;
}

/** The value at the end of the steps; undefined where one of them is not there. */
export function valueAt(root: unknown, steps: readonly PropertyKey[]): unknown {
  let value = root;
  for (const step of steps) {
    if (typeof value !== 'object' || value === null || !Object.hasOwn(value, step))
      return undefined;
    value = (value as Record<PropertyKey, unknown>)[step];
  }
  return value;
}

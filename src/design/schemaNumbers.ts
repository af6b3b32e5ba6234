import * as z from 'zod/mini';
import type { NumberLimits } from './limits';

// The page's content policy forbids code from strings. Must come before the first schema.
z.config({ jitless: true });

interface SchemaText {
  readonly title?: string;
  readonly description?: string;
}

/** Words for editors that read the JSON Schema. */
export const schemaTexts = z.registry<SchemaText>();

export function number(limits: Pick<NumberLimits, 'min' | 'max' | 'whole'>) {
  const range = [z.gte(limits.min), z.lte(limits.max)] as const;
  return limits.whole ? z.int().check(...range) : z.number().check(...range);
}

export function triple(limits: Pick<NumberLimits, 'min' | 'max'>) {
  return z.tuple([number(limits), number(limits), number(limits)]);
}

/** An object of numbers, all optional but those named. */
export function numbers<Key extends string>(
  limits: Readonly<Record<Key, NumberLimits>>,
  required: readonly NoInfer<Key>[] = [],
) {
  return Object.fromEntries(
    Object.entries<NumberLimits>(limits).map(([name, own]) => {
      const schema = number(own);
      return [name, required.includes(name as Key) ? schema : z.optional(schema)];
    }),
  );
}

import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Design } from '../../src/design/design';
import { describeFault } from '../../src/design/faultText';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { addTryOut, keepAsTryOut } from '../../src/design/tryOuts';
import { designArbitrary, designOf, fullHead } from './designs';

const THREE_LUMPS = readFileSync(new URL('../fixtures/three-lumps.json', import.meta.url), 'utf8');

function parsed(text: string): Design {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(describeFault(design.error));
  return design.value;
}

describe('a design file', () => {
  test('opens equal to what was saved, to the last bit, for any parts of the registry', () => {
    fc.assert(
      fc.property(designArbitrary, (design) => {
        expect(parsed(serializeDesign(design))).toEqual(design);
      }),
      { seed: 20, numRuns: 100 },
    );
  });

  test('with try-outs opens equal as well, for any parts of the registry in every variant', () => {
    fc.assert(
      fc.property(
        designArbitrary,
        designArbitrary,
        fc.string({ maxLength: 40 }),
        (one, two, name) => {
          const design = keepAsTryOut(addTryOut(one, two.parts, name, 'as found'), 'B');
          expect(parsed(serializeDesign(design))).toEqual(design);
          expect(serializeDesign(parsed(serializeDesign(design)))).toBe(serializeDesign(design));
        },
      ),
      { seed: 24, numRuns: 40 },
    );
  });

  test('of ten thousand parts opens', () => {
    const design = parsed(THREE_LUMPS);
    const parts = Array.from({ length: 10_000 }, (_, i) => ({
      ...design.parts[i % 3],
      id: `part ${i}`,
    }));
    expect(parsed(serializeDesign({ ...design, parts })).parts).toEqual(parts);
  });

  test('with single characters changed is opened or refused in one line, never thrown on', () => {
    const source = serializeDesign(designOf(fullHead()));
    const printable = fc.constantFrom(...'{}[]",:.-+eE019 \n\\anull\u0000\ud800');
    let refused = 0;
    fc.assert(
      fc.property(
        fc.nat({ max: source.length - 1 }),
        fc.nat({ max: 3 }),
        fc.array(printable, { maxLength: 3 }),
        (at, removed, put) => {
          const text = source.slice(0, at) + put.join('') + source.slice(at + removed);
          const design = parseDesign(text);
          if (design.ok) return;
          refused++;
          expect(describeFault(design.error)).toMatch(/^[^\n\r]{5,400}$/);
        },
      ),
      { seed: 21, numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(1000);
  });
});

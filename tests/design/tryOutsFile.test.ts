import { describe, expect, it } from 'vitest';
import { checkDesign } from '../../src/design/checkDesign';
import type { Design, TryOut } from '../../src/design/design';
import type { DesignFault } from '../../src/design/fault';
import { describeFault } from '../../src/design/faultText';
import { parseDesign, serializeDesign } from '../../src/design/file';
import { tryOutsOf } from '../../src/design/tryOuts';
import { designOf, fullHead, mounted, partOf } from './designs';

function parsed(text: string): Design {
  const design = parseDesign(text);
  if (!design.ok) throw new Error(describeFault(design.error));
  return design.value;
}

/** The fault that a file with these try-outs is refused for, and the one a design in memory has: they must agree. */
function faultOf(tryOuts: unknown, parts = [partOf('block', 'a')]): DesignFault | null {
  const design = { ...designOf(parts), tryOuts } as Design;
  const read = parseDesign(JSON.stringify(design));
  const found = checkDesign(design);
  expect(read.ok).toBe(found === null);
  if (!read.ok) expect(read.error.path).toBe(found?.path);
  return read.ok ? null : read.error;
}

const SHOWN: TryOut = { id: 'one', name: 'One' };
const other = (more: object = {}) => ({
  id: 'two',
  name: 'Two',
  parts: [partOf('block', 'b')],
  ...more,
});

describe('a design file with try-outs', () => {
  it('keeps note and mark, writes the keys in one order, and has no key where there are none', () => {
    const entry = { parts: fullHead(), adopted: true, note: 'n', name: 'Two', id: 'two' } as const;
    const design: Design = { ...designOf(fullHead()), tryOuts: [SHOWN, entry] };
    const text = serializeDesign(design);
    expect(parsed(text)).toEqual(design);
    const keys = Object.keys((JSON.parse(text) as Design).tryOuts?.[1] ?? {});
    expect(keys).toEqual(['id', 'name', 'note', 'adopted', 'parts']);
    expect(serializeDesign(designOf([]))).not.toContain('tryOuts');
  });

  it('of before there were try-outs opens as it did', () => {
    expect(tryOutsOf(parsed(serializeDesign(designOf(fullHead()))))).toEqual([]);
  });
});

describe('try-outs are refused with the place of the fault', () => {
  it.each<[string, unknown, string, string]>([
    ['two without parts', [SHOWN, { id: 'two', name: '' }], 'tryOuts', 'shownTryOuts'],
    ['none without parts', [other()], 'tryOuts', 'shownTryOuts'],
    ['two of one id', [SHOWN, other({ id: 'one' })], 'tryOuts[1].id', 'repeatedTryOut'],
    [
      'two adopted',
      [{ ...SHOWN, adopted: true }, other({ adopted: true })],
      'tryOuts[1].adopted',
      'adoptedTwice',
    ],
    ['an empty id', [SHOWN, other({ id: '' })], 'tryOuts[1].id', 'emptyText'],
    ['a long name', [{ ...SHOWN, name: 'n'.repeat(201) }], 'tryOuts[0].name', 'textTooLong'],
    ['a long note', [{ ...SHOWN, note: 'n'.repeat(4001) }], 'tryOuts[0].note', 'textTooLong'],
    [
      'too many',
      [SHOWN, ...Array.from({ length: 50 }, (_, i) => other({ id: `t${i}` }))],
      'tryOuts',
      'tooMany',
    ],
  ])('%s', (_, tryOuts, path, code) => {
    expect(faultOf(tryOuts)).toMatchObject({ path, reason: { code } });
  });

  it('a number of a part beyond its limit, with the unit of its field', () => {
    const wrong = other({ parts: [partOf('cylinder', 'pin', { lengthMm: -1 })] });
    const found = faultOf([SHOWN, wrong]);
    expect(found?.path).toBe('tryOuts[1].parts[0].lengthMm');
    expect(found?.reason).toMatchObject({ code: 'tooSmall', value: -1, unit: 'mm' });
  });

  it('a part of the registry whose own rule is broken, or whose seat is not there', () => {
    const bore = partOf('cylinder', 'pin', { diameterMm: 3, boreMm: 4 });
    expect(faultOf([SHOWN, other({ parts: [bore] })])).toMatchObject({
      path: 'tryOuts[1].parts[0].boreMm',
      reason: { code: 'rule' },
    });
    const lost = other({
      parts: [partOf('grip', 'grip'), mounted('nut', 'nut', 'bolt', 'thread')],
    });
    expect(faultOf([SHOWN, lost])).toMatchObject({
      path: 'tryOuts[1].parts[1].socket.part',
      reason: { code: 'missingParent', parent: 'bolt' },
    });
  });

  it('a material that only a part kept aside names, once it is gone from the design', () => {
    const { densityKgM3: _, ...bare } = partOf('block', 'b') as unknown as Record<string, unknown>;
    const own = { ...bare, material: 'bar' };
    expect(faultOf([SHOWN, other({ parts: [own] })])).toMatchObject({
      path: 'tryOuts[1].parts[0].material',
      reason: { code: 'unknownMaterial', material: 'bar' },
    });
  });

  it('more parts in all than a file may hold, whichever is on the stage', () => {
    const many = Array.from({ length: 7000 }, (_, i) => partOf('pointMass', `p${i}`));
    const three = [SHOWN, other({ parts: many }), other({ id: 'three', parts: many })];
    const sum: Design = { ...designOf(many), tryOuts: three as TryOut[] };
    expect(checkDesign(sum)).toMatchObject({
      path: 'tryOuts',
      reason: { code: 'tooManyTryOutParts', count: 21_000, limit: 20_000 },
    });
    expect(checkDesign({ ...sum, tryOuts: three.slice(0, 2) as TryOut[] })).toBeNull();
  });

  it('each told in words with its numbers', () => {
    const found = faultOf([SHOWN, { id: 'two', name: '' }]) as DesignFault;
    expect(describeFault(found)).toBe(
      'tryOuts: must have exactly one entry without parts, the one that is on the stage; 2 have none',
    );
  });
});

import { afterEach, expect, it, vi } from 'vitest';
import { POSE_IDENTITY, rotationAboutX, translation } from '../../../src/engine/math/pose';
import { IDENTITY } from '../../../src/engine/math/vector';
import { radiansFromDegrees } from '../../../src/engine/units';
import { PartShadow } from '../../../src/panels/dial/partShadow';
import { partType } from '../../../src/parts/registry';
import type { PartReading } from '../../../src/state/reading';

/** What a shadow asks of an SVG element. */
class PlainElement {
  readonly dataset = {};
  textContent = '';
  private readonly values = new Map<string, string>();
  getAttribute(name: string) {
    return this.values.get(name) ?? null;
  }
  setAttribute(name: string, value: string) {
    this.values.set(name, value);
  }
  append() {}
}

afterEach(() => vi.unstubAllGlobals());

it('a shadow is drawn anew when its part grows or turns, not when it moves or is renamed', () => {
  const made: PlainElement[] = [];
  vi.stubGlobal('document', {
    createElementNS: () => made[made.push(new PlainElement()) - 1],
  });
  const type = partType('cylinder');
  const values = Object.fromEntries(
    Object.entries(type.parameters).map(([name, one]) => [name, one.default]),
  );
  const part = { id: 'pin', kind: 'cylinder', name: 'Pin' };
  const reading = { part, values, pose_G: POSE_IDENTITY } as unknown as PartReading;
  const shadow = new PartShadow('pin');
  const solids = vi.spyOn(type, 'solids');

  expect(shadow.update(reading, IDENTITY)).toBe(true);
  const renamed = { ...reading, part: { ...reading.part, name: 'Dowel' }, values: { ...values } };
  expect(shadow.update(renamed, IDENTITY)).toBe(false);
  expect(shadow.update({ ...renamed, pose_G: translation(1, 2, 3) }, IDENTITY)).toBe(false);
  expect(solids).toHaveBeenCalledTimes(1);
  expect(made.map((element) => element.textContent)).toContain('Dowel');

  const turned = rotationAboutX(radiansFromDegrees(10));
  expect(shadow.update(renamed, turned)).toBe(true);
  const extent = shadow.extent;
  const longer = { ...values, lengthMm: 2 * Number(values.lengthMm) };
  expect(shadow.update({ ...renamed, values: longer }, turned)).toBe(true);
  expect(shadow.extent).toBeGreaterThan(extent);
});

import { describe, expect, test } from 'vitest';
import { insetLimit, insetSection } from '../../../src/engine/mass/sectionInset';
import {
  fourDigitOutline,
  outlineClearance,
  type SectionOutline,
} from '../../../src/engine/mass/sectionOutline';
import { sectionArea } from '../../support/sections';

function areaOf(outline: SectionOutline | null): number {
  return outline ? sectionArea(outline).area : 0;
}

/** From the trailing edge over the top: a regular polygon of `count` corners about (1, 0). */
function regular(count: number, radius: number): SectionOutline {
  return Float64Array.from(
    Array.from({ length: count }, (_, i) => {
      const angle = (2 * Math.PI * i) / count;
      return [1 + radius * Math.cos(angle), radius * Math.sin(angle)];
    }).flat(),
  );
}

describe('a section moved inward by a skin', () => {
  test('from a rectangle leaves the rectangle less two skins each way', () => {
    const rectangle = Float64Array.of(3, 0.5, 0, 0.5, 0, -0.5, 3, -0.5);
    expect(areaOf(insetSection(rectangle, 0.1, 32))).toBeCloseTo(2.8 * 0.8, 12);
  });

  // Elementary geometry: an inner parallel of a rhombus is a rhombus, scaled by 1 - skin / inradius.
  test('from a rhombus leaves a similar one', () => {
    const [long, short] = [2, 0.5];
    const rhombus = Float64Array.of(2 * long, 0, long, short, 0, 0, long, -short);
    const inradius = (long * short) / Math.hypot(long, short);
    const expected = 2 * long * short * (1 - 0.1 / inradius) ** 2;
    const error = (panels: number) => areaOf(insetSection(rhombus, 0.1, panels)) / expected - 1;
    // The two corners at mid-chord are moved by a sixth of a panel's rise: second order in the panels.
    expect(Math.abs(error(32))).toBeLessThan(3e-3);
    expect(error(32) / error(64)).toBeCloseTo(4, 1);
  });

  // The inner parallel of a regular polygon of inradius r is one of inradius r - skin: area n tan(pi / n) (r - skin)^2.
  test('from a regular polygon leaves one with a smaller inradius', () => {
    const count = 240;
    const polygon = regular(count, 1);
    const inradius = Math.cos(Math.PI / count);
    const expected = count * Math.tan(Math.PI / count) * (inradius - 0.3) ** 2;
    expect(Math.abs(areaOf(insetSection(polygon, 0.3, 64)) / expected - 1)).toBeLessThan(1e-4);
  });

  test('of a blade keeps the skin everywhere and no more, and ends before the trailing edge', () => {
    const outline = fourDigitOutline({ thickness: 0.1, camber: 0.03, position: 0.4 }, 48);
    const skin = 0.014;
    const inner = insetSection(outline, skin, 32) as SectionOutline;
    let back = 0;
    for (let i = 0; i < inner.length; i += 2) {
      back = Math.max(back, inner[i]);
      const kept = outlineClearance(outline, inner[i], inner[i + 1]);
      // Equalising moves corners outward by L^2 k / 12, here up to 0.8 % of the skin (0.9918 to 1.0008 seen).
      expect(kept).toBeLessThan(1.01 * skin);
      expect(kept).toBeGreaterThan(0.99 * skin);
    }
    expect(back).toBeLessThan(0.95);
    expect(back).toBeGreaterThan(0.8);
  });

  test('leaves less, the thicker the skin, and nothing beyond the limit', () => {
    const outline = fourDigitOutline({ thickness: 0.12, camber: 0, position: 0.4 }, 48);
    const areas = [0.001, 0.01, 0.03, 0.05, 0.0595].map((skin) =>
      areaOf(insetSection(outline, skin, 32)),
    );
    for (let i = 1; i < areas.length; i++) expect(areas[i]).toBeLessThan(areas[i - 1]);
    expect(areas[areas.length - 1]).toBeGreaterThan(0);
    // Half of 12 % at the thickest place (NACA polynomial: 0.0600173).
    expect(insetLimit(outline)).toBeGreaterThan(0.0599);
    expect(insetLimit(outline)).toBeLessThan(0.06005);
    expect(insetSection(outline, 0.0602, 32)).toBeNull();
  });

  test('is refused for a side that turns back along the chord', () => {
    const hooked = Float64Array.of(1, 0.01, 0.5, 0.1, 0.6, 0.2, 0.3, 0.2, 0, 0, 0.5, -0.1);
    expect(insetSection(hooked, 0.01, 32)).toBeNull();
  });
});

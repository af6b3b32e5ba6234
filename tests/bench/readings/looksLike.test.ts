import { describe, expect, it } from 'vitest';
import { looksLikeReadings } from '../../../src/bench/readings/looksLikeReadings';
import { parsePolarText } from '../../../src/engine/air/polarText';

describe('readings of a bench are told from a table of a blade section', () => {
  it.each([
    ['Pitch [deg],Force [ozf],T/C\n-10,3.5,C\n10,4,T\n'],
    ['speed: 10200 rpm\nWinkel;Kraft [N]\n-10;3,5\n10;4\n'],
    ['time (s)\tforce (N)\n0\t1.5\n0.01\t1.6\n'],
    ['Angle (deg),Torque (N mm)\n-10,3.5\n10,4\n'],
    ['Pitch;Force [N]\n1;1,234\n2;2,345\n'],
    ['-10,3.5,C\n10,4,T\n'],
  ])('readings are above a half: %j', (text) => {
    expect(looksLikeReadings(text)).toBeGreaterThan(0.5);
  });

  it.each([
    ['alpha,cl,cd,cm\n-5,-0.5,0.01,0\n5,0.5,0.01,0\n'],
    ['name = x\nRe = 160000\nangle lift drag moment\n-5 -0.5 0.01 0\n5 0.5 0.01 0\n'],
    ['angle (deg);lift;drag;moment\n-5;-0,5;0,01;0\n5;0,5;0,01;0\n'],
  ])('a table of a section that the air can read is no such thing: %j', (text) => {
    expect(parsePolarText(text).ok).toBe(true);
    expect(looksLikeReadings(text)).toBe(0);
  });

  it.each([
    ['NACA 0012\n1.0 0.00126\n0.95 0.00807\n0.9 0.01448\n'],
    ['1.0 0.00126\n0.95 0.00807\n'],
    ['{"format":"design","parts":[]}'],
    ['solid a\nfacet normal 0 0 1\n'],
    ['name,massGrams\nnut,1.2\nbolt,3.4\n'],
    [''],
  ])('nor is an outline, a design, a body or a list: %j', (text) => {
    expect(looksLikeReadings(text)).toBeLessThan(0.5);
  });
});

describe('a text that looks like readings', () => {
  it.each([
    ['Pitch [deg],Force [N]\n1,2\n', 1],
    ['Pitch [deg],Force\n1,2\n', 0.9],
    ['1,2\n2,3\n', 0.2],
    ['1,2,T\n2,3,C\n', 0.6],
    ['1,2,up\n2,3,down\n', 0.6],
    ['Pitch,Speed\n1,2\n', 0],
    ['Force [N],Note\n1,a\n2,b\n', 0],
    ['Pitch [deg],Force [N],cl,cd\n1,2,3,4\n', 0],
    ['Pitch [deg],Force [N],ca,cw\n1,2,3,4\n', 0],
    ['Pitch [deg]|Force [N]|lift|drag\n1|2|3|4\n', 0],
    ['Pitch [deg],Force [N],cl\n1,2,3\n', 1],
    ['Pitch [deg],Force [N],cd\n1,2,3\n', 1],
    ['Pitch [deg],Force [N],xcl,clx,xcd,cdx\n1,2,3,4,5,6\n', 1],
    ['Pitch [deg],Force [N],xcl,cd\n1,2,3,4\n', 1],
    ['Pitch [deg],Force [N],clx,cd\n1,2,3,4\n', 1],
    ['Pitch [deg],Force [N],cl,xcd\n1,2,3,4\n', 1],
    ['Pitch [deg],Force [N],cl,cdx\n1,2,3,4\n', 1],
    ['Pitch [deg],Force [N],Note\n1,2,{"x"}\n', 1],
    ['Scale [mm],Force [N]\n1,2\n', 0.95],
    // Without a line end.
    ['Pitch [deg],Force [N]\n1,2', 1],
    ['{"Pitch [deg]",Force [N]\n1,2\n', 0],
    ['\ufeff { "Pitch [deg]",Force [N]\n1,2\n', 0],
    ['soft\n', 0],
  ])('%j: %d', (text, wanted) => {
    expect(looksLikeReadings(text)).toBeCloseTo(wanted, 9);
  });

  it('is judged by its first lines, whole ones', () => {
    const head = 'Pitch [deg],Force [N]\n1,2\n';
    // Rows of 2000 letters: the first 16,384 end within the ninth, in a quote that is closed in it.
    const row = `3,4,"${'x'.repeat(1990)}"\n`;
    expect(looksLikeReadings(head + row.repeat(12))).toBe(1);
    expect(looksLikeReadings((head + row.repeat(12)).replaceAll('\n', '\r'))).toBe(1);
    expect(looksLikeReadings('x'.repeat(20_000))).toBe(0);
    // A quote that is never closed, far below.
    expect(looksLikeReadings(`${head}${'3,4\n'.repeat(5000)}5,"x\n`)).toBe(1);
  });

  it('is a section by one of its first sixty lines, empty ones not counted', () => {
    const head = 'Pitch [deg],Force [N]\n';
    expect(looksLikeReadings(`${head}${'1,2\n'.repeat(70)}# cl cd\n`)).toBe(1);
    expect(looksLikeReadings(`${head}${'1,2\n'.repeat(40)}# cl cd\n`)).toBe(0);
    expect(
      looksLikeReadings(`${'calm\r\n'.repeat(40)}Pitch [deg],Force [N],cl,cd\r\n1,2,3,4\r\n`),
    ).toBe(0);
  });
});

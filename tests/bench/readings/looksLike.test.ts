import { readdirSync, readFileSync } from 'node:fs';
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

  it('and no file of fixtures or assets that is something else is taken for readings', () => {
    const roots = ['../../fixtures/', '../../../assets/'].map(
      (path) => new URL(path, import.meta.url),
    );
    const files = roots.flatMap((root) =>
      readdirSync(root, { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.(?:csv|txt|dat|tsv|pol|json)$/i.test(name))
        .filter((name) => !/reading|bench|run/i.test(name))
        .map((name) => new URL(name.replaceAll('\\', '/'), root)),
    );
    expect(files.length).toBeGreaterThan(3);
    const taken = files.filter((file) => looksLikeReadings(readFileSync(file, 'utf8')) > 0.5);
    expect(taken.map(String)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import type { Design } from '../../../src/design/design';
import { keepAsTryOut, setTryOutNote } from '../../../src/design/tryOuts';
import { runTolerances } from '../../../src/neutralise/closeness/runTolerances';
import type { Block, ReportModel, SectionId, TableBlock } from '../../../src/output/report/model';
import { reportModel } from '../../../src/output/report/reportModel';
import { revisionMark } from '../../../src/output/report/revision';
import { comparedPair } from '../../../src/output/report/sections/comparedPair';
import { fnv1a } from '../../../src/output/revision';
import { INCH_UNITS } from '../../../src/state/settings';
import { demoDesign, inputsOf } from './demoReport';

const NUT = demoDesign('4-turned-nut');

function blocksOf(report: ReportModel, id: SectionId): readonly Block[] {
  return report.sections.find((section) => section.id === id)?.blocks ?? [];
}

function tablesOf(blocks: readonly Block[]): TableBlock[] {
  return blocks.flatMap((block) =>
    block.kind === 'table' ? [block] : block.kind === 'beside' ? [block.table] : [],
  );
}

function wordsOf(blocks: readonly Block[]): string {
  return blocks
    .flatMap((block) =>
      block.kind === 'text' ? [block.text] : block.kind === 'list' ? block.items : [],
    )
    .join('\n');
}

/** The number in front of a text, with its unit dropped. */
function numberIn(text: string): number {
  return Number(text.replace('\u2212', '-').replace(/[^-+\d.].*$/, ''));
}

/** Half of the last digit that a shown number has. */
function lastDigit(text: string): number {
  const decimals = /\.(\d+)/.exec(text)?.[1].length ?? 0;
  return 0.5 * 10 ** -decimals;
}

function factOf(report: ReportModel, id: SectionId, label: string): string | undefined {
  return blocksOf(report, id)
    .flatMap((block) => (block.kind === 'facts' ? block.facts : []))
    .find((fact) => fact.label === label)?.value;
}

describe('the report of the demo head', () => {
  const report = reportModel(inputsOf(NUT));

  it('says of itself what it is: name, date, revision with the mark of the content, and that it is invented', () => {
    const { title } = report;
    expect(title.design).toBe('Dunlin 260, turned nut');
    expect(title.note).toContain('invented');
    const fields = Object.fromEntries(title.fields.map(({ label, value }) => [label, value]));
    expect(fields.Date).toBe('2026-11-25');
    expect(fields.Revision).toBe(`A (content ${revisionMark(NUT)})`);
  });

  it('gives at the set pitches forces that do the same work as the moment (virtual work, by hand)', () => {
    const [table] = tablesOf(blocksOf(report, 'figures'));
    const flat = table.rows.find(([pitch]) => pitch === '0\u00b0') ?? [];
    const column = (title: string) => flat[table.columns.findIndex((one) => one.title === title)];
    const momentText = column('Moment, one grip');
    const sliderText = column('Slider, all grips');
    // The page's note: millimetres of slider a degree at flat pitch. Two grips: 2 M dt = -F ds.
    const perDegree = Number(
      /([\d.]+) mm of slider a degree/.exec(wordsOf(blocksOf(report, 'conditions')))?.[1],
    );
    const perRadian = (perDegree * 180) / Math.PI;
    const work = (2 * Math.abs(numberIn(momentText))) / perRadian;
    // Rounding: 0.005 of 4.87 N mm, 0.0005 of 0.264 mm, 0.0005 of 0.645 N.
    expect(Math.abs(Math.abs(numberIn(sliderText)) - work)).toBeLessThan(0.003);
    expect(momentText.endsWith('N\u00a0mm')).toBe(true);
  });

  it('weighs the washer as its ring: M3, 7 by 3.2 by 0.5 mm of steel are 0.12 g (by hand)', () => {
    const hand = (Math.PI / 4) * (7 ** 2 - 3.2 ** 2) * 0.5 * 7.85e-3;
    const [table] = tablesOf(blocksOf(report, 'parts'));
    const washer = table.rows.find(([name]) => name === 'Washer under the head') ?? [];
    expect(Math.abs(numberIn(washer[2]) - hand)).toBeLessThanOrEqual(0.006);
    // It sits on the bolt, 38 mm out.
    expect(washer[4]).toBe('38.00\u00a0mm');
    expect(washer[3]).toBe('Steel');
  });

  it('adds the parts up to their sum, in mass and in J_yy - J_zz, to the rounding of each line', () => {
    const [{ rows }] = tablesOf(blocksOf(report, 'parts'));
    const sum = rows[rows.length - 1];
    const own = rows.slice(0, -1).filter(([name]) => !name.includes('not in the sum'));
    for (const column of [2, 5]) {
      const added = own.reduce((total, row) => total + numberIn(row[column]), 0);
      const rounding = [...own, sum].reduce((total, row) => total + lastDigit(row[column]), 0);
      expect(Math.abs(added - numberIn(sum[column]))).toBeLessThanOrEqual(rounding);
    }
    const shares = own.map((row) => Math.abs(numberIn(row[6])));
    expect(Math.abs(shares.reduce((a, b) => a + b) - 100)).toBeLessThanOrEqual(
      0.05 * shares.length,
    );
  });

  it('judges loads at overspeed: 5 % over 10 200 rpm are 10 710 (by hand)', () => {
    expect(wordsOf(blocksOf(report, 'loads'))).toContain('At 10710 rpm (5 % over');
    const inputs = inputsOf(NUT);
    const [grip] = tablesOf(blocksOf(report, 'loads'));
    const pull = numberIn(grip.rows[0][1]);
    // It goes with the square of the speed; the shown number is whole.
    const atSpeed = inputs.reading.loadsAt(20, 10200).axialPull;
    expect(Math.abs(pull - atSpeed * 1.05 ** 2)).toBeLessThanOrEqual(0.5);
  });

  it('tells what nobody gave from what somebody did', () => {
    expect(factOf(report, 'conditions', 'Overspeed')).toBe('5\u00a0%');
    expect(factOf(report, 'conditions', 'Altitude')).toBe('0\u00a0m (usual)');
    expect(factOf(report, 'conditions', 'Highest speed')).toBe('the speed');
  });

  it('names what is estimated, remembered and left out', () => {
    const said = wordsOf(blocksOf(report, 'assumptions'));
    expect(said).toContain('None of the 11 parts was weighed');
    expect(said).toContain('Air is an estimate');
    expect(said).toContain('drag at rest as measured (5 readings)');
    expect(said).toContain('Densities recalled and not read from a table: Blade grip');
    expect(wordsOf(blocksOf(report, 'clearance'))).toContain('no gap was looked for');
    expect(wordsOf(blocksOf(report, 'changes'))).toContain('No try-outs were kept');
    expect(wordsOf(blocksOf(report, 'tolerances'))).toContain('No tolerance run');
  });

  it('leaves no number without its unit but counts and ratios', () => {
    const bare = /^[+\u2212\u00b1]?\d[\d.,]*( \(usual\))?$/;
    const counts = [
      'Blades',
      'Wanted margin',
      'Starting factor',
      'Friction on the bolt',
      'Samples',
      'Seed',
    ];
    const facts = report.sections
      .flatMap(({ blocks }) => blocks)
      .flatMap((block) => (block.kind === 'facts' ? block.facts : []))
      .filter(({ value }) => bare.test(value));
    expect(facts.map(({ label }) => label).toSorted()).toEqual(counts.toSorted());
    const cells = report.sections
      .flatMap(({ blocks }) => tablesOf(blocks))
      .flatMap(({ rows }) => rows)
      .filter((row) => row.some((cell) => bare.test(cell)));
    // The root of two squares has no unit.
    expect(cells.map(([name]) => name)).toEqual(['Shear and bending together']);
  });

  it('speaks inches and ounces where the page does', () => {
    const inch = reportModel(inputsOf(NUT, { units: INCH_UNITS }));
    const [table] = tablesOf(blocksOf(inch, 'figures'));
    expect(table.rows[0][2]).toMatch(/ozf$/);
    const [parts] = tablesOf(blocksOf(inch, 'parts'));
    // 38 mm are 1.4961 in.
    expect(parts.rows.find(([name]) => name === 'Washer under the head')?.[4]).toBe(
      '1.4961\u00a0in',
    );
  });

  it('has only the sections that were chosen, in their order', () => {
    const some = reportModel(inputsOf(NUT, { sections: new Set<SectionId>(['parts', 'verdict']) }));
    expect(some.sections.map(({ id }) => id)).toEqual(['verdict', 'parts']);
  });
});

describe('what was changed', () => {
  /** The ordinary locking nut kept as it was, the turned one adopted with a note. */
  function changed(): Design {
    const kept = keepAsTryOut(demoDesign('3-ordinary-bolt'), 'Turned nut');
    const tryOuts = (kept.tryOuts ?? []).map((one) =>
      one.parts === undefined ? { ...one, adopted: true as const } : one,
    );
    const shown = { ...kept, tryOuts, parts: NUT.parts };
    const own = tryOuts.find((one) => one.parts === undefined);
    return setTryOutNote(shown, own?.id ?? '', 'The rudder was lazy.');
  }

  it('takes the head as it was, by its name, wherever it stands in the list', () => {
    const design = changed();
    const [first, shown] = design.tryOuts ?? [];
    const other = { id: 'other', name: 'Something else', parts: demoDesign('2-long-bolt').parts };
    const pair = comparedPair({ ...design, tryOuts: [other, shown, first] });
    expect(pair?.before.name).toBe('Head as it was');
    expect(pair?.beforeParts).toBe(first.parts);
    expect(pair?.afterParts).toBe(design.parts);
    expect(comparedPair(NUT)).toBeNull();
  });

  it('holds the adopted try-out against the head as it was, says why, and draws both curves', () => {
    const report = reportModel(inputsOf(changed()));
    const blocks = blocksOf(report, 'changes');
    expect(wordsOf(blocks)).toContain('Adopted: Turned nut. Turned nut against Head as it was.');
    expect(wordsOf(blocks)).toContain('Turned nut: The rudder was lazy.');
    const [parts, head] = tablesOf(blocks);
    expect(parts.columns.map(({ title }) => title)).toEqual([
      'What',
      'Head as it was',
      'Turned nut',
    ]);
    const height = parts.rows.find(([label]) => label.endsWith('Height'));
    expect(height?.slice(1)).toEqual(['2.4\u00a0mm', '6.3\u00a0mm']);
    const mass = head.rows.find(([label]) => label === 'Mass that turns') ?? [];
    const [before, after] = [numberIn(mass[1]), numberIn(mass[2])];
    const told = Number(/\(\+([\d.]+)/.exec(mass[2])?.[1]);
    expect(Math.abs(after - before - told)).toBeLessThanOrEqual(0.015);
    const chart = blocksOf(report, 'figures')
      .flatMap((block) => (block.kind === 'figures' ? block.figures : []))
      .flatMap((item) => (item.kind === 'drawn' ? item.figure.shapes : []))
      .flatMap((shape) => (shape.kind === 'text' ? [shape.text] : []));
    expect(chart).toContain('Head as it was');
  });
});

describe('the last tolerance run', () => {
  // 200 heads are a second's work, more on a busy machine.
  it('is told with its own numbers, and as of the head as it was once a part has changed', {
    timeout: 30_000,
  }, () => {
    const small: Design = { ...NUT, tolerance: { samples: 200, targetForceN: 2 } };
    const answer = runTolerances(small, () => {});
    const fresh = reportModel(inputsOf(small, { tolerance: { design: small, answer } }));
    const said = wordsOf(blocksOf(fresh, 'tolerances'));
    expect(said).toContain('of heads stay within \u00b12.00\u00a0N');
    expect(said).not.toContain('Of the head as it was.');
    const other = { ...small, parts: [...small.parts] };
    const stale = reportModel(inputsOf(other, { tolerance: { design: small, answer } }));
    expect(wordsOf(blocksOf(stale, 'tolerances'))).toContain('Of the head as it was.');
  });
});

describe('the mark of a design', () => {
  it('is FNV-1a of its file, whose published values are met (from memory)', () => {
    expect(fnv1a('')).toBe('811c9dc5');
    expect(fnv1a('a')).toBe('e40c292c');
    expect(fnv1a('foobar')).toBe('bf9cf968');
  });

  it('is another after any change, and the same for an equal design', () => {
    expect(revisionMark(structuredClone(NUT))).toBe(revisionMark(NUT));
    expect(revisionMark({ ...NUT, name: `${NUT.name}.` })).not.toBe(revisionMark(NUT));
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { EXAMPLE_HEAD } from '../../src/bench/exampleHead';
import { EXAMPLE_ERRORS, EXAMPLE_SEED, exampleBench, exampleFiles } from '../../src/bench/examples';
import { exampleTables } from '../../src/bench/exampleTables';
import { practiceBench } from '../../src/bench/practice';
import { drawErrors, type HiddenErrors, withErrors } from '../../src/bench/practiceErrors';
import { previewReadings } from '../../src/bench/readings/preview';
import { buildRungs } from '../../src/bench/rungs';
import { rungOfRun } from '../../src/bench/runs';
import { HeadModel } from '../../src/design/headModel';
import { M } from '../../src/engine/mass/moments';
import { demo, fitBench } from './heads';

const DESIGN = demo('4-turned-nut');
const FILES = exampleFiles(DESIGN);
const FOLDER = fileURLToPath(new URL('../../assets/bench/', import.meta.url));

describe('the example ladder', () => {
  it('lies in assets as the virtual gauge makes it, byte for byte', () => {
    const files = FILES;
    expect(readdirSync(FOLDER).toSorted()).toEqual(files.map(({ file }) => file));
    for (const { file, text } of files) {
      expect(readFileSync(`${FOLDER}/${file}`).equals(Buffer.from(text, 'utf8'))).toBe(true);
    }
  });

  it('is what the page offers with the head that it is made for', async () => {
    expect(DESIGN.name).toBe(EXAMPLE_HEAD);
    const offered = exampleTables();
    expect(offered.map(({ name }) => name)).toEqual(FILES.map(({ file }) => file));
    const bytes = await Promise.all(offered.map((file) => file.arrayBuffer()));
    FILES.forEach(({ text }, k) => {
      expect(Buffer.from(bytes[k]).equals(Buffer.from(text, 'utf8'))).toBe(true);
    });
  });

  it('says in every file that it is invented, by which seed, and what was fitted', () => {
    const { rungs } = buildRungs(DESIGN);
    FILES.forEach(({ file, text }, k) => {
      const preview = previewReadings(new Uint8Array(readFileSync(FOLDER + file)));
      if (!preview.ok || !preview.value.derived.ok) throw new Error(file);
      const { run } = preview.value.guess.metadata;
      expect(run.note).toMatch(/^Invented .*seed 260$/);
      expect(EXAMPLE_SEED).toBe(260);
      expect(run.gaugeStep).toBe(0.1);
      expect(rungOfRun({ fitted: run.fitted }, rungs)?.key).toBe(rungs[k].key);
      expect(preview.value.derived.value.refusedRows).toBe(0);
      expect(text.startsWith('\ufeff# fitted')).toBe(true);
    });
  });

  it('comes back from its text as the numbers that were written', () => {
    for (const { text, readings } of exampleBench(DESIGN).runs) {
      const preview = previewReadings(text);
      if (!preview.ok || !preview.value.derived.ok) throw new Error('not read');
      const back = preview.value.derived.value.readings;
      expect(back.map(({ travel }) => travel)).toEqual(readings.map(({ travel }) => travel));
      back.forEach(({ force, pitch, speed }, k) => {
        // Fifteen digits are written.
        expect(force).toBeCloseTo(readings[k].force ?? Number.NaN, 12);
        expect(pitch).toBeCloseTo(readings[k].pitch ?? Number.NaN, 13);
        expect(speed).toBeCloseTo(readings[k].speed ?? Number.NaN, 9);
      });
    }
  });
});

describe('a practice bench', () => {
  it('is the same for a seed, another for another, and reads in whole steps of the gauge', () => {
    const of = (seed: number) => {
      const made = practiceBench(DESIGN, { seed, gaugeStep: 0.1 });
      if (!made.ok) throw new Error(made.error.kind);
      return made.value;
    };
    const [five, six] = [of(5), of(6)];
    expect(of(5)).toEqual(five);
    expect(five.runs[4].text).not.toBe(six.runs[4].text);
    expect(five.errors).not.toEqual(six.errors);
    for (const { force } of five.runs.flatMap(({ readings }) => readings)) {
      const steps = (force ?? Number.NaN) / 0.1;
      expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
    }
  });

  it('hides the mass that it says it hides', () => {
    const truth = withErrors(DESIGN, EXAMPLE_ERRORS);
    if (!truth.ok) throw new Error(truth.error.path);
    const massOf = (design: typeof DESIGN) => {
      const model = new HeadModel();
      if (!model.load(design).ok) throw new Error('refused');
      return model.placed('blade')?.moments_P[M] ?? Number.NaN;
    };
    expect(massOf(truth.value) / massOf(DESIGN)).toBeCloseTo(1.1, 10);
  });

  it('draws errors that the head takes, for any seed', () => {
    for (let seed = 0; seed < 40; seed++) {
      const errors = drawErrors(DESIGN, seed);
      expect(Object.keys(errors.massShares).toSorted()).toEqual(['blade', 'nut']);
      expect(withErrors(DESIGN, errors).ok).toBe(true);
      expect(errors.frictionFactor).toBeGreaterThanOrEqual(0.5);
      expect(errors.frictionFactor).toBeLessThanOrEqual(2);
    }
  });
});

describe('what all runs of a practice bench have alike', () => {
  it('makes what is measured wrong by as much as a hand calculation says', () => {
    // No noise, steps of a hundred-thousandth of a newton, a gauge at an arm of constant length: what is left are the hidden
    // errors. The bare grip has no air.
    const shared = { gainShare: 0.01, leverShare: 0.005, speedShare: 0.002, pitchZeroDeg: 0.1 };
    const bare = (errors: Partial<HiddenErrors>) => {
      const hidden = { ...EXAMPLE_ERRORS, massShares: {}, noiseN: 0, pitchSigmaDeg: 0, ...errors };
      const made = practiceBench(DESIGN, {
        seed: 4,
        gaugeStep: 1e-5,
        place: { kind: 'arm', arm: 0.02 },
        errors: hidden,
        pitchesDeg: [-20, -10, 0, 10, 20],
      });
      if (!made.ok) throw new Error(made.error.kind);
      const found = fitBench(made.value).rungs.find(({ key }) => key === 'bare');
      if (!found) throw new Error('no bare grip');
      return found;
    };
    const { measured, model } = bare(shared);
    // Force is 1.01 x 1.005 too large, the square of the speed 1.002^2 too small; the pitch zero d turns the pair:
    // A/2 sin 2(t + d) + P cos 2(t + d) has (A/2 cos 2d - P sin 2d) sin 2t and (A/2 sin 2d + P cos 2d) cos 2t.
    const factor = (1.01 * 1.005) / 1.002 ** 2;
    const twice = (0.2 * Math.PI) / 180;
    const [cos, sin] = [Math.cos(twice), Math.sin(twice)];
    const spread = factor * (model.spread * cos - 2 * model.product * sin);
    const product = factor * ((model.spread / 2) * sin + model.product * cos);
    // Steps of 1e-5 N of some newtons.
    expect(measured.spread / spread).toBeCloseTo(1, 5);
    expect(measured.product / product).toBeCloseTo(1, 5);
    // Beside it: without shared errors the truth comes out.
    const right = bare({});
    expect(right.measured.spread / model.spread).toBeCloseTo(1, 5);
  });
});

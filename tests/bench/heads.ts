import { readFileSync } from 'node:fs';
import { type FittedHead, fitHead } from '../../src/bench/fitRung';
import { GaugeHead, type GaugePlace } from '../../src/bench/gaugeHead';
import type { MeasuredRung } from '../../src/bench/ladder';
import type { PracticeBench } from '../../src/bench/practice';
import { previewReadings } from '../../src/bench/readings/preview';
import { type RestResult, restDrag } from '../../src/bench/restDrag';
import { benchReadings, type RunReadings } from '../../src/bench/runs';
import { type AirUse, benchSetup } from '../../src/bench/setup';
import type { Design } from '../../src/design/design';
import { parseDesign } from '../../src/design/file';
import { radiansFromDegrees } from '../../src/engine/units';

export function demo(name: string): Design {
  const url = new URL(`../../assets/designs/${name}.json`, import.meta.url);
  const read = parseDesign(readFileSync(url, 'utf8'));
  if (!read.ok) throw new Error(`${name}: ${read.error.path}`);
  return read.value;
}

const madeOnce = new Map<string, GaugeHead>();

/** A head of a design is made once: its air is what takes time. */
export function gaugeHead(design: Design, place: GaugePlace = { kind: 'rod' }): GaugeHead {
  const key = JSON.stringify([design, place]);
  const known = madeOnce.get(key);
  if (known) return known;
  const head = GaugeHead.of(design, place);
  if (!head.ok) throw new Error(head.error.kind);
  madeOnce.set(key, head.value);
  return head.value;
}

/** The runs of a practice bench, read back from their CSV text as a stranger's file would be. */
export function readBack(bench: PracticeBench, air: AirUse = 'known') {
  const heads = new Map<string, GaugeHead>();
  const runs = new Map<string, RunReadings>();
  for (const { key, text } of bench.runs) {
    const rung = bench.plan.rungs.find((one) => one.key === key);
    if (!rung) throw new Error(`no rung ${key}`);
    const head = gaugeHead(rung.design, bench.plan.place);
    const preview = previewReadings(text);
    if (!preview.ok || !preview.value.derived.ok) throw new Error(`${key} cannot be read`);
    const { readings } = preview.value.derived.value;
    heads.set(key, head);
    runs.set(key, benchReadings(readings, {}, { head, zero: 0, air }));
  }
  const rest = restDrag(runs.get('drag')?.rest ?? [], bench.gauge);
  return { heads, runs, rest };
}

export interface FittedBench {
  readonly rest: RestResult;
  readonly rungs: readonly (MeasuredRung & { readonly fitted: FittedHead })[];
}

/** Every rung of a practice bench fitted with the drag at rest that was measured on it. */
export function fitBench(bench: PracticeBench): FittedBench {
  const { heads, runs, rest } = readBack(bench);
  const pitchSigma = radiansFromDegrees(bench.errors.pitchSigmaDeg);
  const rungs = bench.plan.rungs
    .filter(({ key }) => key !== 'drag')
    .map(({ key, added }) => {
      const head = heads.get(key);
      const run = runs.get(key);
      if (!head || !run) throw new Error(`no run ${key}`);
      const setup = benchSetup(head, { drag: rest.drag });
      const fitted = fitHead(head, run.readings, bench.gauge, setup, pitchSigma);
      if (!fitted.ok || !fitted.value.measured) throw new Error(`${key} has no fit`);
      const { model, measured } = fitted.value;
      return { key, added, model, measured, fitted: fitted.value };
    });
  return { rest, rungs };
}

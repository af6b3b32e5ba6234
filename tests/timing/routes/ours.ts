import { emptyColumns, fillCurve } from '../../../src/design/curve';
import { HeadForces } from '../../../src/design/forces/headForces';
import { HeadModel } from '../../../src/design/headModel';
import { featheringMoment } from '../../../src/engine/feathering/harmonics';
import { PitchGrid } from '../../../src/engine/feathering/pitchGrid';
import { principalInertia } from '../../../src/engine/mass/inertia';
import { createMoments, JYY, JZZ } from '../../../src/engine/mass/moments';
import { radians } from '../../../src/engine/units';
import type { Dragged } from '../heads';

/** Pitches of the chart: a quarter degree over a half turn. */
export const POINTS = 721;
const PITCHES = Float64Array.from({ length: POINTS }, (_, i) => ((i - 360) * Math.PI) / 720);
const GRID = new PitchGrid(PITCHES);

/** The page's own path over one head: the same classes that a drag goes through. */
export class OwnHead {
  readonly model = new HeadModel();
  readonly forces = new HeadForces(this.model);
  private readonly totals = createMoments();
  private readonly inertialCurve = new Float64Array(POINTS);
  private readonly columns = emptyColumns(POINTS);

  constructor(readonly dragged: Dragged) {
    const loaded = this.model.load(dragged.design);
    if (!loaded.ok) throw new Error(`OwnHead: ${loaded.error.path}`);
  }

  /** One part changed: weighed, placed, summed; J_yy - J_zz. */
  change(state: number): number {
    const changed = this.model.setPart(this.dragged.states[state & 1]);
    if (!changed.ok) throw new Error(`OwnHead.change(): ${changed.error.path}`);
    return this.spread();
  }

  spread(): number {
    this.model.totals(this.totals);
    return this.totals[JYY] - this.totals[JZZ];
  }

  /** The same with principal axes and the inertial moment at 721 pitches: what a mesh route's answer would be used for. */
  changeAndChart(state: number): number {
    this.change(state);
    const axes = principalInertia(this.totals);
    return (axes?.values[0] ?? Number.NaN) + this.inertialChart();
  }

  /** Every part weighed and placed anew. */
  reload(state: number): number {
    const { design, states } = this.dragged;
    const part = states[state & 1];
    const loaded = this.model.load({
      ...design,
      parts: design.parts.map((one) => (one.id === part.id ? part : one)),
    });
    if (!loaded.ok) throw new Error(`OwnHead.reload(): ${loaded.error.path}`);
    return this.spread();
  }

  inertialChart(): number {
    const { harmonics } = this.model;
    for (let i = 0; i < POINTS; i++) {
      this.inertialCurve[i] = featheringMoment(harmonics, radians(PITCHES[i]));
    }
    return this.inertialCurve[100];
  }

  /** All columns of the chart, every counted share in them. */
  chart(): number {
    fillCurve(this.forces, GRID, this.columns);
    return this.columns.moment[100];
  }

  /** Rest and flee angles within a quarter turn. */
  equilibria(): number {
    const found = this.forces.equilibria(radians(-Math.PI / 2), radians(Math.PI / 2));
    return found.kind === 'found' ? found.roots.length : 0;
  }
}

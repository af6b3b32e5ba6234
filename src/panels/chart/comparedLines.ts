import type { TryOut } from '../../design/design';
import { tryOutsOf } from '../../design/tryOuts';
import type { VariantOutlook } from '../../design/variantOutlook';
import type { Session } from '../../state/session';
import type { AppState } from '../../state/store';
import { MAX_COMPARED } from '../../state/tryOutActions';
import { type PlottedQuantity, perMoment } from './quantity';

/** A try-out whose curve is laid over the chart. */
interface ComparedLine {
  readonly id: string;
  readonly name: string;
  readonly outlook: VariantOutlook;
}

/** The try-outs whose curves are wanted beside that of the one on the stage. */
export function laidOver({ design, compared }: AppState): readonly TryOut[] {
  return tryOutsOf(design).filter((one) => one.parts !== undefined && compared.includes(one.id));
}

/**
 * The curves of the try-outs that are compared, in display units, a slot for each: a line keeps its slot, and with it its
 * dash, while it is compared. Samples come remembered from `outlooks`; a drag of the parts on the stage fills nothing.
 */
export class ComparedLines {
  readonly values: readonly Float64Array[];
  readonly lines: (ComparedLine | null)[] = new Array<null>(MAX_COMPARED).fill(null);
  private readonly slots: (string | null)[] = new Array<null>(MAX_COMPARED).fill(null);
  private readonly filled: (Filled | null)[] = new Array<null>(MAX_COMPARED).fill(null);

  constructor(count: number) {
    this.values = Array.from({ length: MAX_COMPARED }, () => new Float64Array(count));
  }

  get any(): boolean {
    return this.lines.some((line) => line !== null);
  }

  /** Takes on what is compared now; a curve that is not known yet is asked for, and left out until it is there. */
  update({ store, outlooks }: Session, quantity: PlottedQuantity): void {
    const wanted = laidOver(store.getState());
    this.slots.forEach((id, k) => {
      if (!wanted.some((one) => one.id === id)) this.slots[k] = null;
    });
    this.lines.fill(null);
    for (const { id, name, parts } of wanted) {
      const slot = this.slotOf(id);
      const outlook = parts && outlooks.of(parts);
      if (slot < 0 || !outlook?.ok) continue;
      this.lines[slot] = { id, name, outlook: outlook.value };
      this.fill(slot, outlook.value, quantity);
    }
  }

  private slotOf(id: string): number {
    const own = this.slots.indexOf(id);
    const slot = own < 0 ? this.slots.indexOf(null) : own;
    if (slot >= 0) this.slots[slot] = id;
    return slot;
  }

  private fill(slot: number, { curve }: VariantOutlook, { kind, factor }: PlottedQuantity): void {
    const before = this.filled[slot];
    if (before?.curve === curve && before.kind === kind && before.factor === factor) return;
    this.filled[slot] = { curve, kind, factor };
    const source = kind === 'energy' ? curve.energy : curve.moment;
    const per = perMoment(curve, kind);
    const out = this.values[slot];
    for (let i = 0; i < out.length; i++) out[i] = source[i] * (per?.[i] ?? 1) * factor;
  }
}

interface Filled {
  readonly curve: VariantOutlook['curve'];
  readonly kind: PlottedQuantity['kind'];
  readonly factor: number;
}

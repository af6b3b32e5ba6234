import type { Design, Part } from '../../design/design';
import type { DesignFault } from '../../design/fault';
import { type HeadOutlook, headOutlook } from '../../design/headOutlook';
import type { CarriedPart } from '../../design/ownMaterials';
import { materialsOf, valuesOf } from '../../design/resolve';
import { swapPart } from '../../design/swap';
import { weighPart } from '../../design/weighPart';
import { centreOfMass } from '../../engine/mass/inertia';
import { createMoments, JYY, JZZ, M, type Moments } from '../../engine/mass/moments';
import type { Vec3 } from '../../engine/math/vector';
import { carriedPart, type ShelfItem } from '../../state/shelfItem';

/** A part by itself, SI, in its own frame about its own origin. */
export interface OwnFigures {
  readonly mass: number;
  readonly centre: Vec3 | null;
  readonly jyy: number;
  readonly jzz: number;
}

/** One column: the head as it is (`item` null), or with a shelf part in the place of `old`. */
export interface Column {
  readonly item: ShelfItem | null;
  /** The part in the head that is looked at, or that gives way; null where there is none of the kind. */
  readonly old: Part | null;
  readonly figures: OwnFigures | null;
  readonly outlook: HeadOutlook | null;
  readonly fault: DesignFault | null;
}

/**
 * The head as it is, then with each of the items swapped in: for the selected part where it is of the item's kind, else
 * for the first of that kind, one that counts before one that is hidden.
 */
export function compareItems(
  design: Design,
  selection: string | null,
  items: readonly ShelfItem[],
): readonly Column[] {
  const olds = items.map((item) => partInHead(design, selection, item.kind));
  const [first] = olds;
  const same = first && olds.every((old) => old === first) ? first : null;
  const now = headOutlook(design);
  const head: Column = {
    item: null,
    old: same,
    figures: same && ownFigures({ part: same, materials: materialsOf(design) }),
    outlook: now.ok ? now.value : null,
    fault: null,
  };
  return [head, ...items.map((item, i) => columnOf(design, item, olds[i]))];
}

function columnOf(design: Design, item: ShelfItem, old: Part | null): Column {
  const carried = carriedPart(item);
  const column = {
    item,
    old,
    figures: ownFigures(carried),
    outlook: null,
    fault: null,
  };
  if (!old) return column;
  const swapped = swapPart(design, old.id, carried);
  if (!swapped.ok) return { ...column, fault: swapped.error };
  const outlook = headOutlook(swapped.value);
  return outlook.ok ? { ...column, outlook: outlook.value } : { ...column, fault: outlook.error };
}

/** The part that an item of a kind would take the place of. */
export function partInHead(design: Design, selection: string | null, kind: string): Part | null {
  const fitting = design.parts.filter((part) => part.kind === kind);
  return (
    fitting.find((part) => part.id === selection) ??
    fitting.find((part) => !part.hidden) ??
    fitting[0] ??
    null
  );
}

const remembered = new WeakMap<ShelfItem, OwnFigures>();

/** A shelf part by itself; remembered by the item's identity. */
export function itemFigures(item: ShelfItem): OwnFigures {
  let figures = remembered.get(item);
  if (!figures) {
    figures = ownFigures(carriedPart(item));
    remembered.set(item, figures);
  }
  return figures;
}

function ownFigures({ part, materials }: CarriedPart): OwnFigures {
  const moments = createMoments();
  const weighed = weighPart(part, valuesOf(part, materials), moments);
  if (!weighed.ok) throw new Error(`ownFigures(): part is not checked: ${part.id}`);
  return figuresFrom(moments);
}

function figuresFrom(moments: Moments): OwnFigures {
  return {
    mass: moments[M],
    centre: centreOfMass(moments),
    jyy: moments[JYY],
    jzz: moments[JZZ],
  };
}

/** Items whose name holds the words, of the kind asked for ('' for any); those of `first` before the others. */
export function listedItems(
  items: readonly ShelfItem[],
  words: string,
  kind: string,
  first: string | null,
): readonly ShelfItem[] {
  const wanted = words.trim().toLowerCase();
  const found = items.filter(
    (item) => (kind === '' || item.kind === kind) && item.name.toLowerCase().includes(wanted),
  );
  return [
    ...found.filter((item) => item.kind === first),
    ...found.filter((item) => item.kind !== first),
  ];
}

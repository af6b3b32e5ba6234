import { densitiesOf } from '../../design/densityRange';
import type { Design, Part } from '../../design/design';
import { type Materials, materialsOf, valuesOf } from '../../design/resolve';
import { withoutCatalogue, withoutMaterial } from '../../design/writeValue';
import { isPlace, MEASURED_MASS } from '../knobs';
import type { Toleranced } from './tolerances';

type Writable = Record<string, unknown>;

/** Puts one number of a part at a value; the part is a copy of its own. */
type Write = (part: Writable, value: number) => void;

/**
 * The parts of a design as they come out of the workshop: each number of the list off by its deviation. A made part is a
 * new object whose numbers are written in it, beside any reference to catalogue or material.
 */
export function makeParts(
  design: Design,
  list: readonly Toleranced[],
): (deviations: Float64Array) => readonly Part[] {
  const writers = new Map<string, { readonly at: number; readonly write: Write }[]>();
  const materials = materialsOf(design);
  list.forEach((one, at) => {
    const part = design.parts.find(({ id }) => id === one.ref.part);
    if (!part) return;
    const own = writers.get(part.id) ?? [];
    own.push({ at, write: writerOf(design, part, one) });
    writers.set(part.id, own);
  });
  const drawn = design.parts.map((part) =>
    writers.has(part.id) ? writtenOut(part, materials) : part,
  );
  return (deviations) =>
    drawn.map((part) => {
      const own = writers.get(part.id);
      if (!own) return part;
      const made: Writable = { ...part };
      for (const { at, write } of own) write(made, list[at].value + deviations[at]);
      return made as unknown as Part;
    });
}

/** A part with every value written in it and no reference, so that nothing is looked up again for each head. */
function writtenOut(part: Part, materials: Materials): Part {
  const densities = densitiesOf(part);
  const bare = densities.reduce(
    (one, density) => withoutMaterial(one, density, materials),
    withoutCatalogue(part, materials),
  );
  return { ...valuesOf(bare, materials), ...bare } as Part;
}

function writerOf(design: Design, part: Part, { ref }: Toleranced): Write {
  const { field, component } = ref;
  if (field === MEASURED_MASS) {
    return (made, massGrams) => {
      made.measured = { ...(made.measured as object), massGrams };
    };
  }
  if (!isPlace(field)) {
    if (component === undefined) {
      return (made, value) => {
        made[field] = value;
      };
    }
    const whole = valuesOf(part, materialsOf(design))[field] as unknown as readonly number[];
    return (made, value) => {
      made[field] = ((made[field] as readonly number[] | undefined) ?? whole).with(
        component,
        value,
      );
    };
  }
  const place = part.pose ? 'pose' : 'socket';
  return (made, value) => {
    const old = made[place] as Readonly<Record<string, unknown>>;
    const next =
      component === undefined ? value : (old[field] as readonly number[]).with(component, value);
    made[place] = { ...old, [field]: next };
  };
}

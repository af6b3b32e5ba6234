import { materialsOf, valuesOf } from '../../design/resolve';
import type { Family, FamilyRequest } from '../../neutralise/family';
import type { Session } from '../../state/session';
import { lengthAt } from './familyScale';

/** Diameter and length of the family's part as it is now, mm; null where it is gone. */
export function placeNow(
  { store }: Session,
  { length, diameter }: FamilyRequest,
): readonly [diameterMm: number, lengthMm: number] | null {
  const { design } = store.getState();
  const part = design.parts.find((one) => one.id === length.part);
  if (!part) return null;
  const values = valuesOf(part, materialsOf(design)) as unknown as Record<string, number>;
  return [values[diameter.field], values[length.field]];
}

/** The material that the part names; undefined where its density is a number. */
export function materialNow({ store }: Session, { length }: FamilyRequest): string | undefined {
  const part = store.getState().design.parts.find((one) => one.id === length.part);
  return (part as { readonly material?: string } | undefined)?.material;
}

/** The curve of the material that the part has; null where there is none of it. */
export function curveNow(session: Session, request: FamilyRequest, family: Family): number | null {
  const material = materialNow(session, request);
  const found = family.curves.findIndex(
    (curve) => curve.material === null || curve.material === material,
  );
  return found < 0 ? null : found;
}

/** Diameters by tenths of a millimetre, or hundredths; lengths by hundredths, so that it stays on the curve. */
const STEPS = { usual: 10, fine: 100 } as const;

/** Sets the part to a place on a curve. The caller holds the gesture. False off the curve and where a rule refuses it. */
export function moveAlong(
  { store, actions }: Session,
  request: FamilyRequest,
  family: Family,
  to: { readonly curve: number; readonly diameterMm: number; readonly fine: boolean },
): boolean {
  const steps = STEPS[to.fine ? 'fine' : 'usual'];
  const across = Math.round(to.diameterMm * steps) / steps;
  const curve = family.curves[to.curve];
  const exact = lengthAt(curve, across);
  if (exact === null) return false;
  const long = Math.round(exact * STEPS.fine) / STEPS.fine;
  const { part } = request.length;
  const { material } = curve;
  const known = store.getState().design.parts.find((one) => one.id === part) as
    | { readonly material?: string }
    | undefined;
  if (material !== null && request.density && known?.material !== material) {
    actions.setMaterial(part, request.density, material);
  }
  const set = () => actions.setParameter(part, request.diameter.field, across).ok;
  const first = set();
  const second = actions.setParameter(part, request.length.field, long).ok;
  // One may have stood in the way of the other.
  return second && (first || set());
}

import type { KnobSpec } from '../neutralise/request';
import type { LocalNotes } from './localNotes';
import { FIRST_PLAN, type Plan, type PlanDesk } from './plan';

const NOTE = 'plan';

/** Keeps the plan of the room Neutralise in the browser from now on, so that a reload loses none of it. */
export function keepPlan({ store }: PlanDesk, notes: LocalNotes): () => void {
  return store.subscribe(({ plan }, before) => {
    if (plan !== before.plan) notes.write(NOTE, JSON.stringify(plan));
  });
}

/** The plan of the last visit; whatever in it is not understood is as it is at first. */
export function readPlan(notes: LocalNotes): Plan {
  const text = notes.read(NOTE);
  if (text === null) return FIRST_PLAN;
  try {
    return planFrom(JSON.parse(text));
  } catch {
    return FIRST_PLAN;
  }
}

const OPTIONS: { readonly [K in 'goal' | 'speeds' | 'weightSide']: readonly Plan[K][] } = {
  goal: ['neutral', 'leastForce', 'centring', 'leastServo'],
  speeds: ['design', 'range'],
  weightSide: ['none', 'headTop', 'boltEnd', 'both'],
};

function planFrom(value: unknown): Plan {
  if (typeof value !== 'object' || value === null) return FIRST_PLAN;
  const found = value as Readonly<Record<string, unknown>>;
  const entries = Object.entries(FIRST_PLAN).map(([key, standard]) => {
    const one = found[key];
    return [key, isSound(key, one, standard) ? one : standard] as const;
  });
  return Object.fromEntries(entries) as unknown as Plan;
}

function isSound(key: string, value: unknown, standard: unknown): boolean {
  if (key in OPTIONS)
    return (OPTIONS[key as keyof typeof OPTIONS] as readonly unknown[]).includes(value);
  if (key === 'knobs') return value === null || (Array.isArray(value) && value.every(isKnob));
  if (key === 'trim') return value === null || typeof value === 'string';
  if (standard === null) return value === null || Number.isFinite(value);
  if (Array.isArray(standard)) {
    return Array.isArray(value) && value.every((one) => typeof one === 'string');
  }
  return typeof value === typeof standard && (typeof value !== 'number' || Number.isFinite(value));
}

function isKnob(value: unknown): value is KnobSpec {
  if (typeof value !== 'object' || value === null) return false;
  const { ref, also, min, max, step } = value as Partial<Record<keyof KnobSpec, unknown>>;
  const refs = [ref, ...(Array.isArray(also) ? also : [])];
  return (
    refs.every(isRef) &&
    (also === undefined || Array.isArray(also)) &&
    Number.isFinite(min) &&
    Number.isFinite(max) &&
    (step === 'bars' || Number.isFinite(step))
  );
}

function isRef(value: unknown): boolean {
  if (typeof value !== 'object' || value === null) return false;
  const { part, field, component } = value as Readonly<Record<string, unknown>>;
  return (
    typeof part === 'string' &&
    typeof field === 'string' &&
    (component === undefined || component === 0 || component === 1 || component === 2)
  );
}

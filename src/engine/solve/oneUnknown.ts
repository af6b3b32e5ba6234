import { bracketedRoot } from '../math/rootBracket';

/** A function of one unknown; NaN where it cannot be had (a part that breaks a rule). */
export type OneUnknown = (x: number) => number;

export interface Crossings {
  /** Ascending. `value` is what the function is there: rounding, unless it jumps. */
  readonly roots: readonly { readonly x: number; readonly value: number }[];
  /** Where |f| is least among what was looked at; null where the function could be had nowhere. */
  readonly nearest: { readonly x: number; readonly value: number } | null;
  /** Ends of the stretch about `nearest` in which the function can be had. */
  readonly allowed: readonly [number, number] | null;
}

/**
 * Every place in [low, high] where a function crosses zero between neighbours of `count` evenly spaced looks (and at
 * `extra` ones), each found by Brent's method. Where it can be had at one look and not at the next, the edge is found by
 * halving and looked at too, so that a crossing just inside is not missed. Two crossings between two looks are missed
 * together; so is a touch without crossing.
 */
export function crossings(
  f: OneUnknown,
  low: number,
  high: number,
  count: number,
  extra: readonly number[] = [],
): Crossings {
  const looks = lookPlaces(low, high, count, extra).map((x) => ({ x, value: f(x) }));
  const seen = withEdges(f, looks);
  const roots: { x: number; value: number }[] = [];
  for (let i = 0; i < seen.length; i++) {
    const here = seen[i];
    if (here.value === 0) roots.push(here);
    const next = seen[i + 1];
    if (!next || !(here.value * next.value < 0)) continue;
    const found = bracketedRoot(f, here.x, next.x, 1e-15 * Math.max(Math.abs(low), Math.abs(high)));
    if (found && Number.isFinite(found.residual)) {
      roots.push({ x: found.root, value: found.residual });
    }
  }
  const known = seen.filter(({ value }) => !Number.isNaN(value));
  const nearest = [...known, ...roots].reduce<Crossings['nearest']>(
    (best, one) => (best === null || Math.abs(one.value) < Math.abs(best.value) ? one : best),
    null,
  );
  return { roots, nearest, allowed: nearest && stretchAbout(seen, nearest.x) };
}

function lookPlaces(low: number, high: number, count: number, extra: readonly number[]): number[] {
  const even = Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));
  even[count - 1] = high;
  const inside = extra.filter((x) => x > low && x < high);
  return [...new Set([...even, ...inside])].toSorted((a, b) => a - b);
}

interface Look {
  readonly x: number;
  readonly value: number;
}

/** The looks with the last allowed place put in wherever the function begins or ends. */
function withEdges(f: OneUnknown, looks: readonly Look[]): readonly Look[] {
  const all: Look[] = [];
  looks.forEach((here, i) => {
    all.push(here);
    const next = looks[i + 1];
    if (!next || Number.isNaN(here.value) === Number.isNaN(next.value)) return;
    let inside = Number.isNaN(here.value) ? next.x : here.x;
    let outside = Number.isNaN(here.value) ? here.x : next.x;
    let value = Number.isNaN(here.value) ? next.value : here.value;
    for (let k = 0; k < 60; k++) {
      const middle = (inside + outside) / 2;
      if (middle === inside || middle === outside) break;
      const found = f(middle);
      if (Number.isNaN(found)) outside = middle;
      else {
        inside = middle;
        value = found;
      }
    }
    if (inside === here.x || inside === next.x) return;
    const edge = { x: inside, value };
    const gap = { x: outside, value: Number.NaN };
    all.push(...(Number.isNaN(here.value) ? [gap, edge] : [edge, gap]));
  });
  return all;
}

/** `x` is one of those seen, or lies between two neighbours where the function can be had. */
function stretchAbout(seen: readonly Look[], x: number): readonly [number, number] {
  let from = x;
  let to = x;
  for (const { x: at, value } of seen) {
    if (at > x) break;
    if (Number.isNaN(value)) from = Infinity;
    else from = Math.min(from, at);
  }
  for (const { x: at, value } of seen.toReversed()) {
    if (at < x) break;
    if (Number.isNaN(value)) to = -Infinity;
    else to = Math.max(to, at);
  }
  return [from, to];
}

import { localNumber } from '../../messages/numbers';
import { isUnified, threadOf } from '../../parts/threadTable';

const UNIFIED_NAMES: Readonly<Record<string, string>> = {
  '#2-56': '#2-56 UNC',
  '#4-40': '#4-40 UNC',
  '#6-32': '#6-32 UNC',
  '#8-32': '#8-32 UNC',
  '#10-32': '#10-32 UNF',
  '1/4-28': '1/4-28 UNF',
};

/** How near a number is to a listed one to be taken for it, mm. */
const SAME = 1e-3;

/**
 * Designation of a thread (ISO 6410-1, ISO 965-1): "M3" where the pitch is the coarse one, else "M3 x 0.35"; a listed
 * Unified thread by its own name (ASME B1.1).
 */
export function threadName(diameterMm: number, pitchMm: number): string {
  if (isUnified(diameterMm, pitchMm)) {
    const size = Object.keys(UNIFIED_NAMES).find((name) => same(name, diameterMm, pitchMm));
    if (size !== undefined) return UNIFIED_NAMES[size];
  }
  const metric = `M${rounded(diameterMm, 4)}`;
  const name = localNumber(metric);
  return isListed(metric) && same(metric, diameterMm, pitchMm)
    ? name
    : `${name} \u00d7 ${trimmed(pitchMm, 4)}`;
}

/** Diameter and pitch, mm, of a designation that `threadName` wrote; null for any other text. */
export function threadNamed(name: string): { diameterMm: number; pitchMm: number } | null {
  const unified = Object.keys(UNIFIED_NAMES).find((size) => UNIFIED_NAMES[size] === name);
  if (unified !== undefined) return { ...threadOf(unified) };
  const metric = name.replaceAll(',', '.');
  const parts = /^M([\d.]+)(?: \u00d7 ([\d.]+))?$/.exec(metric);
  if (!parts) return null;
  if (parts[2] !== undefined) return { diameterMm: Number(parts[1]), pitchMm: Number(parts[2]) };
  return isListed(metric) ? { ...threadOf(metric) } : null;
}

function same(size: string, diameterMm: number, pitchMm: number): boolean {
  const listed = threadOf(size);
  return (
    Math.abs(listed.diameterMm - diameterMm) < SAME && Math.abs(listed.pitchMm - pitchMm) < SAME
  );
}

function isListed(size: string): boolean {
  return ['M1.6', 'M2', 'M2.5', 'M3', 'M4', 'M5', 'M6', 'M8'].includes(size);
}

/** A number with at most `decimals` decimals and no trailing zeros, as the language writes it. */
export function trimmed(value: number, decimals: number): string {
  return localNumber(String(rounded(value, decimals)));
}

function rounded(value: number, decimals: number): number {
  return Number(value.toFixed(decimals));
}

/** Twelve digits: what a file holds of a number that was worked out, 10200 and not 10199.999999999998. */
export function digits(value: number): number {
  return Number(value.toPrecision(12));
}

import { type Seeded, seeded } from '../../support/seeded';

/** Random numbers of one input of a run: each input can be made again without those before it. */
export function ofInput(seed: number, index: number): Seeded {
  let mixed = Math.imul(seed ^ 0x9e3779b9, 0x85ebca6b) ^ Math.imul(index + 1, 0xc2b2ae35);
  mixed = Math.imul(mixed ^ (mixed >>> 15), 0x2c1b3c6d);
  return seeded(mixed ^ (mixed >>> 13));
}

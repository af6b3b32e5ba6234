import { expect, test } from 'vitest';
import { seldom } from '../../src/meshes/rest';

test('a rest that is called often lets others in every 100 ms of work, and not between', async () => {
  let clock = 0;
  let turns = 0;
  const rest = seldom(
    async () => {
      turns++;
      // What waited takes its time, which is none of the work's.
      clock += 1000;
    },
    () => clock,
  );
  for (let k = 0; k < 99; k++) {
    clock++;
    await rest();
  }
  expect(turns).toBe(0);
  clock++;
  await rest();
  expect(turns).toBe(1);
  for (let k = 0; k < 250; k++) {
    clock++;
    await rest();
  }
  expect(turns).toBe(3);
});

// npm run budget: writes what the built page sends now, with a little room, into tests/budget.json. Counted work is left alone.
import { writeFileSync } from 'node:fs';
import { BUDGET_PATH, readBudget } from './budget';
import { firstFiles, laterFiles, sentSum } from './built';

/** Room for a sentence or two, in bytes: the budget is there to stop what nobody meant. */
const ROOM = 2000;
/** Up to this a script has no entry of its own. */
const SMALL = 15_000;

function withRoom(bytes: number): number {
  return Math.ceil((bytes + ROOM) / 1000) * 1000;
}

const later: Record<string, number> = { other: SMALL };
for (const [name, files] of [...laterFiles()].toSorted(([a], [b]) => a.localeCompare(b))) {
  const bytes = sentSum(files);
  if (bytes > SMALL) later[name] = withRoom(bytes);
}
const budget = { ...readBudget(), bytes: { first: withRoom(sentSum(firstFiles())), later } };
writeFileSync(BUDGET_PATH, `${JSON.stringify(budget, null, 2)}\n`);

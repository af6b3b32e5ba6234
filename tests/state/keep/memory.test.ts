import { describe, expect, it } from 'vitest';
import { collected } from '../../support/collected';
import { createWorld, UNDO_STEPS } from './world';

describe('the keeper of a page that stays open', () => {
  it('holds no design that is stored and that undo cannot bring back, and each that it can goes on as itself', async () => {
    const world = createWorld(31);
    const tab = await world.openTab();
    await world.pass(600);
    const opened: WeakRef<object>[] = [];
    const count = UNDO_STEPS + 50;
    for (let i = 0; i < count; i++) {
      tab.openNew(`design ${i}`);
      opened.push(new WeakRef(tab.design()));
      await world.pass(50);
    }
    await world.pass(2000);
    // The present one, those of the undo steps, and at most one more that went with the last.
    expect(count - (await collected(opened))).toBeLessThanOrEqual(UNDO_STEPS + 2);
    expect(await collected(opened.slice(0, 40))).toBe(40);
    for (let i = 0; i < UNDO_STEPS; i++) tab.undo();
    expect(tab.text()).toBe('design 49');
    await world.pass(2000);
    tab.edit('design 49, changed');
    await world.pass(2000);
    const texts = [...world.texts].filter(([key]) => key.startsWith('design/'));
    expect(texts.length).toBe(count);
    expect(texts.map(([, text]) => text)).toContain('design 49, changed');
    expect(texts.map(([, text]) => text)).not.toContain('design 49');
  });
});

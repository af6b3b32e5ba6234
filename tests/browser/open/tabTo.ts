import type { Locator } from '@playwright/test';

/** More stops of Tab than the page has. */
const ROUND = 300;

/**
 * Moves the focus by Tab alone to the target, once it is there, the shorter way by the page's order or as `key` says. Throws where
 * Tab does not come to it in one round: then it cannot be reached.
 */
export async function tabTo(target: Locator, key?: 'Tab' | 'Shift+Tab'): Promise<void> {
  await target.waitFor();
  const { keyboard } = target.page();
  const way = key ?? (await target.evaluate(shorterWay));
  for (let presses = 0; presses < ROUND; presses++) {
    if (await isFocused(target)) return;
    await keyboard.press(way);
  }
  throw new Error(`tabTo(): Tab does not come to ${target}`);
}

/** Arrows go on from where the focus is, as in a menu or a row of tabs. */
export async function arrowTo(target: Locator, key: 'ArrowDown' | 'ArrowRight'): Promise<void> {
  const { keyboard } = target.page();
  for (let presses = 0; presses < 40; presses++) {
    if (await isFocused(target)) return;
    await keyboard.press(key);
  }
  throw new Error(`arrowTo(): arrows do not come to ${target}`);
}

function isFocused(target: Locator): Promise<boolean> {
  return target.evaluate((element) => element === document.activeElement);
}

/** Runs in the page. */
function shorterWay(element: Element): 'Tab' | 'Shift+Tab' {
  const { activeElement } = document;
  const isAfter =
    !activeElement ||
    (activeElement.compareDocumentPosition(element) & Node.DOCUMENT_POSITION_FOLLOWING) !== 0;
  return isAfter ? 'Tab' : 'Shift+Tab';
}

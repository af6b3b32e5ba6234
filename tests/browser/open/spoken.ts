import type { Page } from '@playwright/test';

/** One thing that can be worked with, as the browser tells it to a screen reader. */
export interface SpokenControl {
  readonly role: string;
  readonly name: string;
  /** How its value is spoken; empty for what has none. */
  readonly value: string;
  /** What is read after it. */
  readonly description: string;
}

/** A number and what it counts. A field of text is read as value, then unit and help from its description. */
const WITH_UNIT =
  /\d[\s\u00a0]*(?:mm|in|g|kg|oz|N|ozf|°|degrees?|newtons?|rpm|m\/s|m|%|V|s)(?!\p{L})/u;

const WORKED_WITH: ReadonlySet<string> = new Set([
  'button',
  'checkbox',
  'combobox',
  'link',
  'listbox',
  'menuitem',
  'option',
  'radio',
  'searchbox',
  'slider',
  'spinbutton',
  'switch',
  'tab',
  'textbox',
]);

interface AxValue {
  readonly value?: unknown;
}

/** The controls of the page in the browser's own accessibility tree: what a screen reader gets, not what the page wrote. */
export async function spokenControls(page: Page): Promise<SpokenControl[]> {
  const session = await page.context().newCDPSession(page);
  const { nodes } = await session.send('Accessibility.getFullAXTree');
  await session.detach();
  const text = (value: AxValue | undefined) => String(value?.value ?? '');
  return nodes
    .filter(({ ignored, role }) => !ignored && WORKED_WITH.has(text(role)))
    .map(({ role, name, value, description, properties }) => ({
      role: text(role),
      name: text(name).trim(),
      value:
        utf8(text(properties?.find((one) => String(one.name) === 'valuetext')?.value)) ||
        text(value),
      description: text(description),
    }));
}

/** Properties of nodes come with each byte of UTF-8 as a letter of its own; names and values do not. */
function utf8(bytes: string): string {
  return Buffer.from(bytes, 'latin1').toString('utf8');
}

/** What is wrong with them: no name, or a number that is spoken without what it counts. */
export function unspoken(controls: readonly SpokenControl[]): string[] {
  const nameless = controls.filter(({ name }) => !/\p{L}|\d/u.test(name));
  const bare = controls.filter(
    ({ role, value, description }) =>
      (role === 'slider' || role === 'spinbutton') && !WITH_UNIT.test(`${value} ${description}`),
  );
  return [
    ...nameless.map(({ role, value }) => `no name: ${role} ${value}`),
    ...bare.map(({ role, name, value }) => `no unit: ${role} ${name}: ${value}`),
  ];
}

/** Counts what the live region of the verdict is given from now on. */
export async function listenToVerdict(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    const heard: string[] = [];
    const region = document.querySelector('.verdict [aria-live]');
    if (!region) throw new Error('the verdict has no live region');
    // What was said goes again after a while, which is not heard.
    new MutationObserver(() => region.textContent && heard.push(region.textContent)).observe(
      region,
      {
        childList: true,
        characterData: true,
        subtree: true,
      },
    );
    Object.assign(window, { heard });
  });
  return () => page.evaluate(() => (window as unknown as { heard: string[] }).heard);
}

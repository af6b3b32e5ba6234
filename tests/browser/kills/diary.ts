import type { Page } from '@playwright/test';

/** What the page shows of the design: its name and the length of the bolt as it is drawn, mm. */
export interface Sight {
  readonly name: string;
  readonly lengthMm: number;
}

interface Entry extends Sight {
  /** Time of the first touch since the picture before, else of the picture: ms since 1970, not later than the change. */
  readonly at: number;
}

/** What was seen and heard of one visit from outside the page; what was on its way when the browser died is not in it. */
export interface Diary {
  readonly seen: Entry[];
  /** Places in `seen` of the picture that stood there when the page said that all is kept, and when. */
  readonly kept: { readonly place: number; readonly at: number }[];
  /** When the page's thread was free to do something, about every 100 ms. */
  readonly beats: number[];
  /** What the page said, in its notices and in the dialog of the designs. */
  readonly said: { readonly text: string; readonly place: number }[];
}

declare global {
  interface Window {
    readonly diaryOfKills?: (entry: string) => Promise<void>;
  }
}

/** Has every page of the tab write into the diary. To be called before the page opens. */
export async function keepDiary(page: Page): Promise<Diary> {
  const diary: Diary = { seen: [], kept: [], beats: [], said: [] };
  await page.exposeFunction('diaryOfKills', (text: string) => {
    const { kind, ...entry } = JSON.parse(text);
    if (kind === 'seen') diary.seen.push(entry);
    else if (kind === 'kept') diary.kept.push(entry);
    else if (kind === 'beat') diary.beats.push(entry.at);
    else diary.said.push(entry);
  });
  await page.addInitScript(watch);
  return diary;
}

/** Runs in the page. */
function watch(): void {
  let places = 0;
  let last = '';
  let touched: number | null = null;
  const told = new Map<string, string>();

  function tell(entry: object): void {
    void window.diaryOfKills?.(JSON.stringify(entry));
  }
  function look(): void {
    requestAnimationFrame(look);
    const box = window.stillgrip?.scene?.worldPosition('bolt');
    const name = /^(.*) \u00b7 [^\u00b7]*$/.exec(document.title)?.[1];
    if (!box || name === undefined) return;
    // The bolt stands along z.
    const lengthMm = box.max[2] - box.min[2];
    const now = `${name} ${lengthMm.toFixed(3)}`;
    if (now !== last) {
      tell({ kind: 'seen', name, lengthMm, at: touched ?? Date.now() });
      places++;
      last = now;
    }
    touched = null;
  }
  function listen(): void {
    for (const id of ['autosave-state', 'notice', 'designs-said']) {
      const text = document.querySelector(`[data-testid="${id}"]`)?.textContent ?? '';
      if (told.get(id) === text) continue;
      told.set(id, text);
      const place = places - 1;
      if (id !== 'autosave-state') tell({ kind: 'said', text, place });
      else if (text === 'Kept in this browser') tell({ kind: 'kept', place, at: Date.now() });
    }
  }
  for (const kind of ['pointermove', 'pointerdown', 'keydown', 'click', 'change', 'drop']) {
    window.addEventListener(kind, () => (touched ??= Date.now()), { capture: true });
  }
  new MutationObserver(listen).observe(document, {
    subtree: true,
    childList: true,
    characterData: true,
  });
  requestAnimationFrame(look);
  setInterval(() => tell({ kind: 'beat', at: Date.now() }), 100);
}

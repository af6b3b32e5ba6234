/** The page's colours as the canvas needs them, read from the tokens of ui/theme.css. */
export interface ChartTheme {
  ink: string;
  quiet: string;
  line: string;
  lineStrong: string;
  used: string;
  warning: string;
  holds: string;
  shares: string[];
}

export function readTheme(): ChartTheme {
  const style = getComputedStyle(document.documentElement);
  const token = (name: string) => style.getPropertyValue(name).trim();
  return {
    ink: token('--ink'),
    quiet: token('--ink-quiet'),
    line: token('--line'),
    lineStrong: token('--line-strong'),
    used: token('--surface-sunken'),
    warning: token('--warning'),
    holds: token('--holds'),
    shares: [1, 2, 3, 4, 5, 6].map((n) => token(`--share-${n}`)),
  };
}

/** Tells when the page changes between light and dark. Returns the way to stop. */
export function watchTheme(changed: () => void): () => void {
  const observer = new MutationObserver(changed);
  observer.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme'] });
  const system = matchMedia('(prefers-color-scheme: dark)');
  system.addEventListener('change', changed);
  return () => {
    observer.disconnect();
    system.removeEventListener('change', changed);
  };
}

/** A dash for each share, so that colour is never alone. CSS pixels. */
export const SHARE_DASHES: readonly (readonly number[])[] = [
  [9, 4],
  [2, 3],
  [9, 3, 2, 3],
  [5, 3],
  [14, 4],
  [1, 5],
];

/** The same for try-outs laid over: thin lines in ink, each with its own dash, none of them a share's. */
export const COMPARED_DASHES: readonly (readonly number[])[] = [
  [4, 2],
  [12, 3, 3, 3],
  [2, 2],
  [8, 2, 2, 2, 2, 2],
  [18, 3],
  [3, 6],
];

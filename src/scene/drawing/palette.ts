import { useSyncExternalStore } from 'react';

/**
 * The page's colour tokens (ui/theme.css) as three.js needs them: read from the document whenever the theme changes,
 * so that stage, dial and chart cannot drift apart.
 */
const TOKENS = {
  surface: '--surface',
  ink: '--ink',
  inkQuiet: '--ink-quiet',
  line: '--line',
  lineStrong: '--line-strong',
  accent: '--accent',
  centres: '--centres',
  flees: '--flees',
  holds: '--holds',
  pull: '--pull',
  warning: '--warning',
  metal: '--stage-metal',
  plastic: '--stage-plastic',
  composite: '--stage-composite',
  neutral: '--stage-neutral',
} as const;

export type Palette = Readonly<Record<keyof typeof TOKENS, string>> & { readonly dark: boolean };

export function usePalette(): Palette {
  return useSyncExternalStore(watchTheme, currentPalette);
}

let palette: Palette | null = null;

function currentPalette(): Palette {
  palette ??= readPalette();
  return palette;
}

/** The colours of the light page, whatever the page is: for pictures on paper. */
export function lightPalette(): Palette {
  const probe = document.createElement('div');
  probe.dataset.theme = 'light';
  document.body.append(probe);
  const light = readPalette(probe);
  probe.remove();
  return light;
}

function readPalette(element: Element = document.documentElement): Palette {
  const style = getComputedStyle(element);
  const colours = Object.fromEntries(
    Object.entries(TOKENS).map(([name, token]) => [name, style.getPropertyValue(token).trim()]),
  ) as Record<keyof typeof TOKENS, string>;
  return { ...colours, dark: style.colorScheme.includes('dark') };
}

function watchTheme(changed: () => void): () => void {
  function reread(): void {
    const next = readPalette();
    if (JSON.stringify(next) === JSON.stringify(palette)) return;
    palette = next;
    changed();
  }
  const observer = new MutationObserver(reread);
  observer.observe(document.documentElement, { attributeFilter: ['data-theme', 'class'] });
  const system = matchMedia('(prefers-color-scheme: dark)');
  system.addEventListener('change', reread);
  reread();
  return () => {
    observer.disconnect();
    system.removeEventListener('change', reread);
  };
}

import { useEffect } from 'react';
import type { Settings } from '../state/settings';
import { useAppState } from '../ui/session';

const DARK = '(prefers-color-scheme: dark)';

/** Puts the theme on the document, so that the tokens of ui/theme.css follow. */
export function showTheme(theme: Settings['theme']): void {
  const dark = theme === 'dark' || (theme === 'system' && matchMedia(DARK).matches);
  const name = dark ? 'dark' : 'light';
  if (document.documentElement.dataset.theme !== name) {
    document.documentElement.dataset.theme = name;
  }
}

/** Keeps the theme on the document while the setting or the system's own changes; paper is white whatever the theme. */
export function useTheme(): void {
  const theme = useAppState((state) => state.settings.theme);
  useEffect(() => {
    showTheme(theme);
    const media = matchMedia(DARK);
    const follow = () => showTheme(theme);
    const print = () => showTheme('light');
    media.addEventListener('change', follow);
    window.addEventListener('beforeprint', print);
    window.addEventListener('afterprint', follow);
    return () => {
      media.removeEventListener('change', follow);
      window.removeEventListener('beforeprint', print);
      window.removeEventListener('afterprint', follow);
    };
  }, [theme]);
}

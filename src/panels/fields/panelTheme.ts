import type { LevaPanel } from 'leva';
import type { ComponentProps } from 'react';

/** The panel in the page's own colours and type: names of the tokens in ui/theme.css, so that it follows the theme. */
export const PANEL_THEME: NonNullable<ComponentProps<typeof LevaPanel>['theme']> = {
  colors: {
    elevation1: 'var(--surface)',
    elevation2: 'var(--surface)',
    elevation3: 'var(--surface-quiet)',
    accent1: 'var(--accent)',
    accent2: 'var(--accent)',
    accent3: 'var(--accent)',
    highlight1: 'var(--ink-quiet)',
    highlight2: 'var(--ink-quiet)',
    highlight3: 'var(--ink)',
    folderWidgetColor: 'var(--ink-quiet)',
    folderTextColor: 'var(--ink)',
    toolTipBackground: 'var(--ink)',
    toolTipText: 'var(--surface)',
  },
  fonts: { mono: 'var(--font)', sans: 'var(--font)' },
  fontSizes: { root: '13px' },
  space: { sm: '0px', md: '0px', rowGap: '4px', colGap: '8px' },
};

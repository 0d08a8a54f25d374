/** leva in the dress of the page: its colours are the page's, so light and dark follow by themselves. */
export const LEVA_THEME = {
  colors: {
    elevation1: 'transparent',
    elevation2: 'transparent',
    elevation3: 'var(--field)',
    accent1: 'var(--accent)',
    accent2: 'var(--accent)',
    accent3: 'var(--accent)',
    highlight1: 'var(--rule)',
    highlight2: 'var(--ink-soft)',
    highlight3: 'var(--ink)',
    vivid1: 'var(--accent)',
  },
  radii: { xs: '0px', sm: '0px', lg: '0px' },
  space: { xs: '4px', sm: '0px', md: '0px', rowGap: '0px', colGap: '8px' },
  fonts: { mono: 'var(--text-face)', sans: 'var(--text-face)' },
  fontSizes: { root: '1rem', toolTip: '1rem' },
  shadows: { level1: 'none', level2: 'none' },
} as const;

import type { ThemeOptions } from '@mui/material/styles';
import type { Tone } from './theme.ts';

/** Forty-four pixels is a thumb; the ring of focus is drawn in ink so that it shows on paper and on amber. */
export function componentsOf(tone: Tone): NonNullable<ThemeOptions['components']> {
  const ring = { outline: `3px solid ${tone.amberInk}`, outlineOffset: 2 };
  const alert = (ground: string, ink: string) => ({ backgroundColor: ground, color: tone.ink, borderLeft: `6px solid ${ink}` });
  return {
    MuiCssBaseline: {
      styleOverrides: {
        'html, body': { backgroundColor: tone.ground },
        ':focus-visible': ring,
        '.tabular': { fontVariantNumeric: 'tabular-nums' },
        '@media (prefers-reduced-motion: reduce)': { '*': { animationDuration: '0.01ms !important' } },
      },
    },
    MuiButtonBase: { defaultProps: { disableRipple: true }, styleOverrides: { root: { '&.Mui-focusVisible': ring } } },
    MuiButton: { defaultProps: { disableElevation: true }, styleOverrides: { root: { minHeight: 44, paddingInline: 18 } } },
    MuiIconButton: { styleOverrides: { root: { minWidth: 44, minHeight: 44 } } },
    MuiCheckbox: { styleOverrides: { root: { padding: 11, color: tone.edge } } },
    MuiRadio: { styleOverrides: { root: { padding: 11, color: tone.edge } } },
    MuiTextField: { defaultProps: { variant: 'outlined', size: 'medium', margin: 'dense', fullWidth: true } },
    MuiFormControl: { defaultProps: { variant: 'outlined', margin: 'dense', fullWidth: true } },
    MuiInputLabel: { styleOverrides: { root: { color: tone.softInk, '&.Mui-focused': { color: tone.ink } } } },
    MuiOutlinedInput: {
      styleOverrides: { root: { backgroundColor: tone.sheet }, notchedOutline: { borderColor: tone.edge } },
    },
    MuiInputBase: { styleOverrides: { root: { minHeight: 56 } } },
    MuiFormHelperText: { styleOverrides: { root: { color: tone.softInk, fontSize: '0.9rem', marginInline: 2 } } },
    MuiPaper: { styleOverrides: { root: { backgroundImage: 'none' } } },
    MuiCard: { defaultProps: { variant: 'outlined' } },
    MuiLink: { defaultProps: { underline: 'always' }, styleOverrides: { root: { textUnderlineOffset: 3 } } },
    MuiTab: { styleOverrides: { root: { minHeight: 48, textTransform: 'none', fontSize: '1rem', fontWeight: 600, color: tone.softInk } } },
    MuiTabs: { styleOverrides: { indicator: { height: 4, backgroundColor: tone.amber } } },
    MuiTableCell: {
      styleOverrides: {
        root: { borderColor: tone.line, fontSize: '1rem', padding: '10px 12px' },
        head: { fontWeight: 600, color: tone.softInk, backgroundColor: tone.band, whiteSpace: 'nowrap' },
      },
    },
    MuiTablePagination: { styleOverrides: { root: { color: tone.ink } } },
    MuiAlert: {
      styleOverrides: {
        root: {
          fontSize: '1rem',
          variants: [
            { props: { severity: 'error' }, style: alert(tone.badGround, tone.bad) },
            { props: { severity: 'warning' }, style: alert(tone.careGround, tone.amber) },
            { props: { severity: 'success' }, style: alert(tone.goodGround, tone.good) },
            { props: { severity: 'info' }, style: alert(tone.noteGround, tone.action) },
          ],
        },
      },
    },
    MuiDialogTitle: { defaultProps: { component: 'h2' } as object },
    MuiTooltip: { styleOverrides: { tooltip: { fontSize: '0.95rem' } } },
  };
}

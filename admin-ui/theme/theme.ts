import { createTheme, type ThemeOptions } from '@mui/material/styles';
import { DARK, LIGHT } from './palette.ts';
import { componentsOf } from './components.ts';

export type Tone = Record<keyof typeof LIGHT, string>;

function themeOf(mode: 'light' | 'dark', tone: Tone): ThemeOptions {
  return createTheme({
    palette: {
      mode,
      primary: { main: tone.action, contrastText: tone.actionInk },
      secondary: { main: tone.amberInk, contrastText: tone.sheet },
      error: { main: tone.bad },
      warning: { main: tone.amberInk },
      success: { main: tone.good },
      info: { main: tone.action },
      text: { primary: tone.ink, secondary: tone.softInk, disabled: tone.softInk },
      background: { default: tone.ground, paper: tone.sheet },
      divider: tone.line,
    },
    shape: { borderRadius: 6 },
    spacing: 8,
    breakpoints: { values: { xs: 0, sm: 600, md: 900, lg: 1200, xl: 1536 } },
    typography: {
      fontFamily: "'Source Sans 3', 'Segoe UI', system-ui, sans-serif",
      fontSize: 15,
      h1: { fontSize: '1.75rem', fontWeight: 700, lineHeight: 1.2 },
      h2: { fontSize: '1.25rem', fontWeight: 700, lineHeight: 1.3 },
      h3: { fontSize: '1.0625rem', fontWeight: 600, lineHeight: 1.35 },
      button: { textTransform: 'none', fontWeight: 600 },
    },
    transitions: { create: () => 'none' },
    components: componentsOf(tone),
  });
}

export const lightTheme = themeOf('light', LIGHT);
export const darkTheme = themeOf('dark', DARK);

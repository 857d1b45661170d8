import { CssBaseline } from '@mui/material';
import { ThemeProvider } from '@mui/material/styles';
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { useState } from 'react';
import { lightTheme } from '../theme/theme.ts';
import { Frame } from './frame.tsx';
import { SponsorSheet } from './sheet.tsx';
import { Start } from './start.tsx';

const WAY = '#/for-sponsors';
const client = new QueryClient();

/** The token stands behind the hash, so that it reaches no server log and no other page's referrer. */
const tokenInAddress = (): string | null => window.location.hash.slice(WAY.length + 1).split(/[/?]/)[0] || null;

export const isForSponsors = (): boolean => window.location.hash.startsWith(WAY);

/** The page a sponsor reaches by its link: outside the office, without a sign-in. */
export function ForSponsors() {
  const [token, setToken] = useState(tokenInAddress);
  const opened = () => {
    window.history.replaceState(null, '', `/${WAY}`);
    setToken(null);
  };
  return (
    <ThemeProvider theme={lightTheme}>
      <CssBaseline />
      <QueryClientProvider client={client}>
        <Frame>{token ? <Start token={token} onOpened={opened} /> : <SponsorSheet />}</Frame>
      </QueryClientProvider>
    </ThemeProvider>
  );
}

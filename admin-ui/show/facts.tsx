import { Box } from '@mui/material';
import type { ReactNode } from 'react';

export type Fact = [label: string, value: ReactNode] | null | false | undefined;

/** Labels and values; what is empty is left out unless it is said that it is empty. */
export function Facts({ facts }: { facts: readonly Fact[] }) {
  const shown = facts.filter((fact): fact is [string, ReactNode] => Boolean(fact) && fact !== null && fact !== false && fact![1] !== null && fact![1] !== undefined && fact![1] !== '');
  return (
    <Box component="dl" sx={{ display: 'grid', gridTemplateColumns: { xs: '1fr', sm: 'minmax(10rem, max-content) 1fr' }, columnGap: 3, rowGap: { xs: 0, sm: 1 }, m: 0 }}>
      {shown.map(([label, value]) => (
        <Box key={label} sx={{ display: 'contents' }}>
          <Box component="dt" sx={{ color: 'text.secondary', mt: { xs: 1, sm: 0 } }}>
            {label}
          </Box>
          <Box component="dd" sx={{ m: 0, overflowWrap: 'anywhere', whiteSpace: 'pre-line' }}>
            {value}
          </Box>
        </Box>
      ))}
    </Box>
  );
}

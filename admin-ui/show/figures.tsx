import { Box } from '@mui/material';
import type { ReactNode } from 'react';

export interface Figure {
  label: string;
  value: ReactNode;
  note?: string;
}

/** A row of numbers a person looks for first. */
export function Figures({ figures }: { figures: readonly Figure[] }) {
  return (
    <Box component="dl" sx={{ display: 'flex', flexWrap: 'wrap', gap: { xs: 2, sm: 4 }, m: 0, mb: 1 }}>
      {figures.map(({ label, value, note }) => (
        <Box key={label} sx={{ minWidth: 88 }}>
          <Box component="dt" sx={{ color: 'text.secondary' }}>
            {label}
          </Box>
          <Box component="dd" className="tabular" sx={{ m: 0, fontSize: '1.5rem', fontWeight: 700, lineHeight: 1.2 }}>
            {value}
            {note && (
              <Box component="span" sx={{ display: 'block', fontSize: '0.9rem', fontWeight: 400, color: 'text.secondary' }}>
                {note}
              </Box>
            )}
          </Box>
        </Box>
      ))}
    </Box>
  );
}

import { Box } from '@mui/material';

export interface Count {
  label: string;
  value: string;
}

/** Numbers under their words; they wrap on a phone and stay together on paper. */
export function Counts({ counts }: { counts: readonly Count[] }) {
  return (
    <Box component="dl" sx={{ display: 'flex', flexWrap: 'wrap', columnGap: 3, rowGap: 1, m: 0, mt: 1 }}>
      {counts.map(({ label, value }) => (
        <Box key={label} sx={{ minWidth: 84 }}>
          <Box component="dt" sx={{ color: 'text.secondary', fontSize: '0.95rem' }}>{label}</Box>
          <Box component="dd" className="tabular" sx={{ m: 0, fontSize: '1.25rem', fontWeight: 700, lineHeight: 1.25 }}>{value}</Box>
        </Box>
      ))}
    </Box>
  );
}

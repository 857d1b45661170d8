import { Box } from '@mui/material';

export interface Count {
  label: string;
  value: string;
}

/** Numbers under their words; they wrap on a phone and stay together on paper. */
export function Counts({ counts }: { counts: readonly Count[] }) {
  return (
    <Box component="dl" sx={{ display: 'grid', gridTemplateColumns: { xs: 'repeat(auto-fill, minmax(84px, auto))', sm: 'repeat(auto-fill, minmax(116px, max-content))' }, columnGap: 1.5, rowGap: 1, m: 0, mt: 1 }}>
      {counts.map(({ label, value }) => (
        <Box key={label}>
          <Box component="dt" sx={{ color: 'text.secondary', fontSize: '0.95rem' }}>{label}</Box>
          <Box component="dd" className="tabular" sx={{ m: 0, fontSize: '1.25rem', fontWeight: 700, lineHeight: 1.25 }}>{value}</Box>
        </Box>
      ))}
    </Box>
  );
}

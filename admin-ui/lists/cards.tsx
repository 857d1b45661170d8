import { Box, Paper } from '@mui/material';
import { rowKey, type RowsProps } from './rows.tsx';

export function Cards<T extends object>({ label, columns, rows, keyOf }: RowsProps<T>) {
  const [first, ...rest] = columns;
  return (
    <Box component="ul" aria-label={label} sx={{ listStyle: 'none', p: 0, m: 0, display: 'grid', gap: 1 }}>
      {rows.map((row, place) => (
        <Paper component="li" variant="outlined" key={rowKey(row, place, keyOf)} sx={{ p: 1.5, overflowWrap: 'anywhere' }}>
          <Box sx={{ fontWeight: 700, fontSize: '1.0625rem' }}>{first?.show(row)}</Box>
          <Box component="dl" sx={{ m: 0, display: 'grid', gridTemplateColumns: 'minmax(6.5rem, max-content) 1fr', columnGap: 1.5, rowGap: 0.25 }}>
            {rest.map((column) => (
              <Box key={column.label} sx={{ display: 'contents' }}>
                <Box component="dt" sx={{ color: 'text.secondary' }}>{column.label}</Box>
                <Box component="dd" sx={{ m: 0 }}>{column.show(row)}</Box>
              </Box>
            ))}
          </Box>
        </Paper>
      ))}
    </Box>
  );
}

import { Box, Typography } from '@mui/material';

const KEYS: readonly (readonly [string, string])[] = [
  ['Arrows', 'from read to read; with one in hand, over windows and games'], ['Enter or Space', 'picks a read up, and puts it down'], ['Escape', 'puts it back'],
  ['P', 'pins or unpins'], ['C', 'chooses, for several at once'], ['U', 'undoes'], ['L', 'locks or unlocks the night of the game'],
];

/** The keys of the board, where one looks for them. */
export function Keys() {
  return (
    <Box component="details" sx={{ mt: 1 }}>
      <Typography component="summary" sx={{ cursor: 'pointer', fontWeight: 600, minHeight: 32, py: 0.5 }}>Keys of the board</Typography>
      <Box component="dl" sx={{ display: 'grid', gridTemplateColumns: 'auto 1fr', gap: '4px 16px', m: 0 }}>
        {KEYS.map(([key, does]) => (
          <Box key={key} sx={{ display: 'contents' }}>
            <Box component="dt" sx={{ fontWeight: 600 }}>{key}</Box>
            <Box component="dd" sx={{ m: 0 }}>{does}</Box>
          </Box>
        ))}
      </Box>
    </Box>
  );
}

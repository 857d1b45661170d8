import { Box } from '@mui/material';

/** A school's two colours; they are decoration beside the name, never the only mark. */
export function Swatches({ first, second }: { first: string; second: string }) {
  return (
    <Box component="span" aria-hidden="true" sx={{ display: 'inline-flex', border: 1, borderColor: 'text.secondary', borderRadius: 0.5, overflow: 'hidden', verticalAlign: 'middle', mr: 1 }}>
      {[first, second].map((colour, place) => (
        <Box key={place} component="span" sx={{ width: 14, height: 18, bgcolor: colour }} />
      ))}
    </Box>
  );
}

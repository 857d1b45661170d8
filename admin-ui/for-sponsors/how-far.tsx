import { Box } from '@mui/material';
import { LIGHT } from '../theme/palette.ts';
import type { ReadsOfSponsor } from './types.ts';

/** Stripes and shades tell the parts apart on paper without colors, too; the numbers stand below. */
const PARTS = [
  { of: ({ given }: ReadsOfSponsor) => given, ground: LIGHT.action },
  { of: ({ madeGood }: ReadsOfSponsor) => madeGood, ground: `repeating-linear-gradient(45deg, ${LIGHT.action} 0 5px, ${LIGHT.sheet} 5px 8px)` },
  { of: ({ credited, noLongerDue, carriedOver }: ReadsOfSponsor) => credited + noLongerDue + carriedOver, ground: LIGHT.edge },
] as const;

/** How far a promise has come, as a bar. */
export function HowFar({ reads }: { reads: ReadsOfSponsor }) {
  const whole = reads.promised + reads.cameOver;
  if (whole <= 0) return null;
  return (
    <Box aria-hidden="true" sx={{ display: 'flex', height: 14, border: `1px solid ${LIGHT.edge}`, borderRadius: '4px', overflow: 'hidden', bgcolor: LIGHT.sheet, my: 1, printColorAdjust: 'exact', WebkitPrintColorAdjust: 'exact' }}>
      {PARTS.map(({ of, ground }, place) => <Box key={place} sx={{ width: `${(100 * of(reads)) / whole}%`, background: ground }} />)}
    </Box>
  );
}

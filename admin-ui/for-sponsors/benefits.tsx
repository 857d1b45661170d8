import { Box, Typography } from '@mui/material';
import type { BenefitOfSponsor } from './types.ts';
import { many, useWritten } from './written.tsx';

/** What else was promised, with the proof that it was delivered. */
export function Benefits({ benefits }: { benefits: readonly BenefitOfSponsor[] }) {
  if (benefits.length === 0) return null;
  return (
    <Box sx={{ mt: 2, pt: 2, borderTop: 1, borderColor: 'divider' }}>
      <Typography component="h4" sx={{ fontWeight: 600, fontSize: '1.0625rem' }}>What else was promised</Typography>
      <Box component="ul" sx={{ listStyle: 'none', p: 0, m: 0 }}>
        {benefits.map((benefit) => <Benefit key={benefit.benefitId} benefit={benefit} />)}
      </Box>
    </Box>
  );
}

function Benefit({ benefit: { name, quantity, delivered, dueOn, earns, startsOn, endsOn, deliveries } }: { benefit: BenefitOfSponsor }) {
  const { day } = useWritten();
  const due = dueOn !== null && delivered < quantity ? ` Due by ${day(dueOn)}.` : '';
  const said = earns === 'overDays' && deliveries.length === 0 ? `${many(quantity, 'piece')}${startsOn && endsOn ? `, from ${day(startsOn)} to ${day(endsOn)}` : ', all season long'}.` : `${delivered} of ${quantity} delivered.${due}`;
  return (
    <Box component="li" sx={{ mt: 1, breakInside: 'avoid' }}>
      <Typography sx={{ fontWeight: 600 }}>{name}</Typography>
      <Typography>{said}</Typography>
      {deliveries.map(({ deliveredOn, quantity: pieces, proof }, place) => (
        <Typography key={place} sx={{ color: 'text.secondary', overflowWrap: 'anywhere' }}>{day(deliveredOn)}: {pieces} delivered. Proof: {proof}</Typography>
      ))}
    </Box>
  );
}

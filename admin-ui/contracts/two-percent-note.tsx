import { Typography } from '@mui/material';
import { centsOf } from '../../server/domain/money.ts';
import { twoPercentOf } from '../../server/domain/sponsorship/two-percent.ts';
import { moneyText } from '../format/money.ts';
import { Figures } from '../show/figures.tsx';
import type { Contract } from './types.ts';

/** What the deal gives besides reads, held against two percent of the payment. */
export function TwoPercentNote({ contract }: { contract: Contract }) {
  const { term, benefits, standing } = contract;
  const priceCents = term.state === 'draft' || !standing ? term.priceCents : standing.priceCents;
  if (benefits.length === 0 || term.pricing !== 'fixed' || priceCents <= 0) return null;
  const known = benefits.filter((benefit) => benefit.fairValueCents !== null);
  const judged = twoPercentOf(centsOf(priceCents), benefits.map((benefit) => centsOf((benefit.fairValueCents ?? benefit.rateCents) * benefit.quantity)));
  return (
    <>
      <Typography variant="h3" sx={{ mt: 2.5, mb: 1 }}>The two-percent line</Typography>
      <Figures
        figures={[
          { label: 'Two percent of the payment', value: moneyText(judged.lineCents) },
          { label: 'Fair value of these benefits', value: moneyText(judged.benefitsCents), note: known.length === benefits.length ? 'as entered' : 'rate-card price where no fair value is entered' },
          { label: 'Counts as a return', value: moneyText(judged.returnCents), note: judged.isDisregarded ? 'within the line: disregarded' : 'above the line: all of it counts' },
          { label: 'May be a sponsorship payment', value: moneyText(judged.qualifiedCents) },
        ]}
      />
      <Typography sx={{ color: 'text.secondary', maxWidth: '72ch', mt: 1 }}>
        All benefits of one payer in the fiscal year count together, over all its contracts; copy that reads as an advertisement and an exclusive
        provider’s place are benefits too (26 CFR 1.513-4(c)(2)(ii), (d)(1)). Being named, on a banner or in a program, and goods on display are none: enter a fair value of zero. Guidance, not tax advice: ask the business office.
      </Typography>
    </>
  );
}

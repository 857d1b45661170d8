import { dayText, daysText } from '../../format/day.ts';
import { Rows } from '../../lists/rows.tsx';
import { Section } from '../../show/section.tsx';
import { numberText } from '../../words/count.ts';
import type { BenefitFulfillment } from './types.ts';

function whenText({ earns, startsOn, endsOn, dueOn }: BenefitFulfillment): string {
  if (earns === 'overDays' && startsOn !== null && endsOn !== null) return daysText(startsOn, endsOn);
  return dueOn === null ? 'No day was agreed' : `By ${dayText(dueOn)}`;
}

function proofText({ earns, earnedThroughOn, deliveries }: BenefitFulfillment): string {
  const proofs = deliveries.map(({ deliveredOn, quantity, proof, isTakenBack }) => `${dayText(deliveredOn)}: ${numberText(quantity)}, ${proof}${isTakenBack ? ' (taken back)' : ''}`);
  if (earns === 'overDays') proofs.push(earnedThroughOn === null ? 'No day has been counted yet' : `Counted through ${dayText(earnedThroughOn)}`);
  return proofs.length === 0 ? 'Not delivered yet' : proofs.join('; ');
}

/** What the package also carries, with its proof. */
export function BenefitsSection({ benefits }: { benefits: readonly BenefitFulfillment[] }) {
  return (
    <Section title="Other benefits">
      <Rows<BenefitFulfillment>
        label="Other benefits and their proof"
        rows={benefits}
        keyOf={(benefit) => benefit.benefitId}
        columns={[
          { label: 'Benefit', show: (benefit) => benefit.name },
          { label: 'Promised', numeric: true, show: (benefit) => numberText(benefit.quantity) },
          { label: 'Delivered', numeric: true, show: (benefit) => (benefit.earns === 'overDays' ? '–' : numberText(benefit.delivered)) },
          { label: 'When', show: whenText },
          { label: 'Proof', show: proofText },
        ]}
      />
    </Section>
  );
}

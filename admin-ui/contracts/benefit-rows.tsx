import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { EARNS_WORDS, wordFor } from '../words/choices.ts';
import { numberText } from '../words/count.ts';
import { DeliverButton } from './deliver-button.tsx';
import type { Benefit, Contract } from './types.ts';

export function BenefitRows({ contract }: { contract: Contract }) {
  const benefits = contract.benefits ?? [];
  const deliverable = contract.term.state === 'signed' && iMay('contracts', 'edit');
  if (benefits.length === 0) return <EmptyList>Nothing besides reads.</EmptyList>;
  return (
    <Rows<Benefit>
      label="Other benefits"
      rows={benefits}
      columns={[
        { label: 'What', show: (one) => one.name },
        { label: 'How many', numeric: true, show: (one) => numberText(one.quantity) },
        { label: 'Rate', numeric: true, show: (one) => moneyText(one.rateCents) },
        { label: 'Fair value', numeric: true, show: (one) => (one.fairValueCents === null ? '–' : moneyText(one.fairValueCents)) },
        { label: 'Earned', show: (one) => (one.earns === 'overDays' ? `${dayText(one.startsOn)} to ${dayText(one.endsOn)}` : wordFor(EARNS_WORDS, one.earns)) },
        { label: 'Delivered', numeric: true, show: (one) => `${numberText(one.delivered ?? 0)} of ${numberText(one.quantity)}` },
        ...(deliverable ? [{ label: 'Record', show: (one: Benefit) => (one.delivered ?? 0) < one.quantity && <DeliverButton contract={contract} benefit={one} /> }] : []),
      ]}
    />
  );
}

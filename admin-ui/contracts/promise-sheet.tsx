import { exceptionsText, rightsText } from '../company/company-facts.ts';
import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { POLICY_WORDS, PRICING_WORDS, TERM_STATE_WORDS, wordFor } from '../words/choices.ts';
import { BenefitRows } from './benefit-rows.tsx';
import { planText } from './billing-plan.ts';
import { CommitmentRows } from './commitment-rows.tsx';
import { ForecastPanel } from './forecast/forecast-panel.tsx';
import { TwoPercentNote } from './two-percent-note.tsx';
import type { Contract } from './types.ts';

function priceText({ term }: Contract): string {
  if (term.pricing === 'fixed') return moneyText(term.priceCents);
  const least = term.billAtLeastCents === null ? '' : `, at least ${moneyText(term.billAtLeastCents)}`;
  const most = term.billAtMostCents === null ? '' : `, at most ${moneyText(term.billAtMostCents)}`;
  return `${wordFor(PRICING_WORDS, term.pricing)}${least}${most}`;
}

export function PromiseSheet({ contract }: { contract: Contract }) {
  const { term } = contract;
  return (
    <>
      <Section title="Terms">
        <Facts
          facts={[
            ['Number', contract.number ?? 'Given at signing'],
            ['State', wordFor(TERM_STATE_WORDS, term.state)],
            ['Sponsor', <Go key="sponsor" resource="sponsors" id={contract.sponsorId}>{contract.sponsorName}</Go>],
            ['Seller of record', <Go key="seller" resource="sellers" id={contract.sellerId}>{contract.sellerName}</Go>],
            ['Payer', <Go key="payer" resource="payers" id={contract.payerId}>{contract.payerName}</Go>],
            ['Term', `${dayText(term.startsOn)} to ${dayText(term.endsOn)}`],
            ['Signed', term.signedOn && `${dayText(term.signedOn)}${term.signedByName ? ` by ${term.signedByName}` : ''}`],
            ['Ended', term.endedOn && dayText(term.endedOn)],
            ['Closed', term.closedOn && dayText(term.closedOn)],
            ['Owner before', contract.assignments.map((one) => `${one.fromSponsorName}, until ${dayText(one.assignedOn)}: ${one.reason}`).join('\n')],
            ['Price', priceText(contract)],
            ['Billed', contract.isInKind ? 'As the goods come' : planText(term.billingPlan)],
            ['Paid in', contract.isInKind ? 'Goods' : 'Money'],
            ['When a game is cancelled', wordFor(POLICY_WORDS, contract.cancelledGamePolicy)],
            ['Purchase order', contract.purchaseOrderNumber],
            ['Exception', contract.categoryException && `${contract.categoryException}, approved by ${contract.categoryExceptionApprovedBy}`],
            ['Only sponsor of', rightsText(contract.exclusivities) || null],
            ['Let through', exceptionsText(contract.companyExceptions) || null],
            ['Note', contract.note],
          ]}
        />
      </Section>
      <Section title="Reads promised"><CommitmentRows contract={contract} /></Section>
      <ForecastPanel contract={contract} />
      <Section title="Other benefits"><BenefitRows contract={contract} /><TwoPercentNote contract={contract} /></Section>
    </>
  );
}

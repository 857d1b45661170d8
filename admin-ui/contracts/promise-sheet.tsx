import { centsOf } from '../../server/domain/money.ts';
import { pricesOfYears } from '../../server/domain/sponsorship/offers/prices-of-years.ts';
import { exceptionsText, rightsText } from '../company/company-facts.ts';
import { Go } from '../fields/go.tsx';
import { dayText, daysText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { Facts } from '../show/facts.tsx';
import { Section } from '../show/section.tsx';
import { POLICY_WORDS, PRICE_VARIES_WORDS, PRICING_WORDS, TERM_STATE_WORDS, wordFor } from '../words/choices.ts';
import { BenefitRows } from './benefit-rows.tsx';
import { planText } from './billing-plan.ts';
import { CommitmentRows } from './commitment-rows.tsx';
import { FollowedBy, Follows } from './follows.tsx';
import { ForecastPanel } from './forecast/forecast-panel.tsx';
import { TwoPercentNote } from './two-percent-note.tsx';
import type { Contract } from './types.ts';
import { VariesCaution } from './varies-caution.tsx';
import { yearsText } from './years-text.ts';

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
            ['Term', daysText(term.startsOn, term.endsOn)],
            ['Signed', term.signedOn && `${dayText(term.signedOn)}${term.signedByName ? ` by ${term.signedByName}` : ''}`],
            ['Ended', term.endedOn && dayText(term.endedOn)],
            ['Closed', term.closedOn && dayText(term.closedOn)],
            ['Owner before', contract.assignments.map((one) => `${one.fromSponsorName}, until ${dayText(one.assignedOn)}: ${one.reason}`).join('\n')],
            ['Price', priceText(contract)],
            contract.years > 1 && ['Years agreed', yearsText(pricesOfYears(centsOf(term.priceCents), contract.increaseBasisPoints, contract.years - contract.yearNumber + 1), contract.increaseBasisPoints, contract.yearNumber)],
            ['Follows', contract.followsContractId && <Follows key="follows" contract={contract} />],
            ['Followed by', contract.followedByContractId && <FollowedBy key="followed" contract={contract} />],
            contract.priceVariesWith !== 'nothing' && ['The price varies with', wordFor(PRICE_VARIES_WORDS, contract.priceVariesWith)],
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
        {contract.priceVariesWith !== 'nothing' && <VariesCaution />}
      </Section>
      <Section title="Reads promised"><CommitmentRows contract={contract} /></Section>
      <ForecastPanel contract={contract} />
      <Section title="Other benefits"><BenefitRows contract={contract} /><TwoPercentNote contract={contract} /></Section>
    </>
  );
}

import { Alert } from '@mui/material';
import { rightInWords } from '../../server/domain/sponsorship/company/words.ts';
import type { WindowKind } from '../../server/domain/season/sport-profile.ts';
import { planText } from '../contracts/billing-plan.ts';
import { VariesCaution } from '../contracts/varies-caution.tsx';
import { yearsText } from '../contracts/years-text.ts';
import { Go } from '../fields/go.tsx';
import { dayText, daysText } from '../format/day.ts';
import { PromiseAnswer } from '../promise/promise-answer.tsx';
import { iMay } from '../session/rights.ts';
import { Facts } from '../show/facts.tsx';
import { PaperButton } from '../show/paper-button.tsx';
import { Section } from '../show/section.tsx';
import { ShowPage } from '../show/show-page.tsx';
import { POLICY_WORDS, PRICE_VARIES_WORDS, wordFor } from '../words/choices.ts';
import { AcceptButton, DeclineButton, DeleteOfferButton, DraftContractButton, ExtendButton, FitButton, OfferAgainButton, PutButton, WithdrawButton } from './commands.tsx';
import { OfferStanding } from './standing.tsx';
import { OfferStateTag } from './state-tag.tsx';
import type { Offer } from './types.ts';
import { ValueRows } from './value-rows.tsx';
import { WhatIsOffered } from './what-is-offered.tsx';
import { lapsesText, offerPriceText } from './words.ts';

function Actions({ offer }: { offer: Offer }) {
  const may = iMay('offers', 'edit');
  const isOut = offer.state === 'open' || offer.state === 'lapsed';
  const name = offer.number ?? 'offer';
  return (
    <>
      {may && offer.state === 'draft' && <PutButton offer={offer} />}
      {may && offer.state === 'draft' && offer.readLines.length > 0 && <FitButton offer={offer} />}
      {may && isOut && <AcceptButton offer={offer} />}
      {may && offer.state === 'open' && <ExtendButton offer={offer} />}
      {may && isOut && <DeclineButton offer={offer} />}
      {may && isOut && <WithdrawButton offer={offer} />}
      {may && isOut && <DraftContractButton offer={offer} />}
      {may && offer.state !== 'draft' && <OfferAgainButton offer={offer} />}
      {offer.state !== 'declined' && offer.state !== 'withdrawn' && <PaperButton path={`/offers/${offer.id}/pdf`} name={name} label="Print to sign (PDF)" />}
      <PaperButton path={`/offers/${offer.id}/pdf?office=true`} name={`${name}-office`} label="Office copy (PDF)" />
      {may && offer.state === 'draft' && <DeleteOfferButton offer={offer} />}
    </>
  );
}

const Terms = ({ offer }: { offer: Offer }) => (
  <Section title="Offer">
    <Facts
      facts={[
        ['Number', offer.number ?? 'Given when it is put to the sponsor'],
        ['State', <OfferStateTag key="state" state={offer.state} />],
        ['Sponsor', <Go key="sponsor" resource="sponsors" id={offer.sponsorId}>{offer.sponsorName}</Go>],
        ['Category', offer.categoryName],
        ['Seller of record', <Go key="seller" resource="sellers" id={offer.sellerId}>{offer.sellerName}</Go>],
        ['Payer', offer.payerName ?? 'Said when it is signed'],
        ['Season', offer.seasonName],
        ['Term', daysText(offer.startsOn, offer.endsOn)],
        ['From the package', offer.packageName],
        ['Put to the sponsor', offer.putOn && dayText(offer.putOn)],
        ['Put without places for all', offer.beyondPlacesReason && `${offer.beyondPlacesReason}${offer.beyondPlacesPersonName ? ` (${offer.beyondPlacesPersonName})` : ''}`],
        offer.state !== 'accepted' && offer.state !== 'declined' && offer.state !== 'withdrawn' && ['Holds until', lapsesText(offer)],
        (offer.state === 'draft' || offer.state === 'open') && ['Places', offer.holdsInventory ? (offer.holdsNow ? `Held through ${dayText(offer.lapsesOn)}` : 'Held while it is open') : 'Not held'],
        ['Declined', offer.declinedOn && `${dayText(offer.declinedOn)}: ${offer.declinedReason}`],
        ['Withdrawn', offer.withdrawnOn && dayText(offer.withdrawnOn)],
        ['Contract', offer.contractId && <Go key="contract" resource="contracts" id={offer.contractId}>{offer.contractNumber ?? 'Draft, not signed yet'}</Go>],
        ['Price', offerPriceText(offer)],
        offer.years > 1 && ['Years', yearsText(offer.pricesOfYears, offer.increaseBasisPoints)],
        ['Billed', planText(offer.billingPlan)],
        ['When a game is cancelled', wordFor(POLICY_WORDS, offer.cancelledGamePolicy)],
        offer.priceVariesWith !== 'nothing' && ['The price varies with', wordFor(PRICE_VARIES_WORDS, offer.priceVariesWith)],
        ['Only sponsor of', offer.exclusivities.map((one) => `${rightInWords({ ...one, windowKinds: one.windowKinds as WindowKind[] })}: ${daysText(one.startsOn, one.endsOn)}`).join('\n')],
        ['Let through', offer.exceptions.map((one) => `${one.reason}. Approved by ${one.approvedByName}, ${dayText(one.approvedOn)}`).join('\n')],
        ['Note for the office', offer.note],
      ]}
    />
    {offer.priceVariesWith !== 'nothing' && <VariesCaution />}
  </Section>
);

export const OfferShow = () => (
  <ShowPage<Offer> title={(offer) => offer.title} canEdit={(offer) => offer.state === 'draft'} actions={(offer) => <Actions offer={offer} />}>
    {(offer) => (
      <>
        <OfferStanding offer={offer} />
        <Section title="What is offered" lead="What each is worth is the amount by which a missed read would be credited, once signed.">
          <WhatIsOffered offer={offer} />
          {offer.valuesTrouble && <Alert severity="warning" icon={false}>{offer.valuesTrouble.sentence}</Alert>}
          {offer.values && offer.values.length > 0 && <ValueRows values={offer.values} />}
        </Section>
        {(offer.state === 'draft' || offer.state === 'open' || offer.state === 'lapsed') && offer.readLines.length > 0 && <PromiseAnswer key={offer.version} path={`/offers/${offer.id}/promise-checks`} />}
        <Terms offer={offer} />
      </>
    )}
  </ShowPage>
);

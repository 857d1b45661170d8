import { useRedirect } from 'react-admin';
import { addDays, type Day } from '../../server/domain/day.ts';
import { CompanyExceptionInput, exceptionOf, useInTheWay } from '../company/company-exception-input.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { dayText } from '../format/day.ts';
import type { Offer } from './types.ts';

const at = (offer: Offer, what: string) => `/offers/${offer.id}/${what}`;

/** Asked only where it matters: who pays, and why a lapsed offer is taken up. */
const TakingUp = ({ offer }: { offer: Offer }) => (
  <>
    {offer.payerId === null && <PickInput source="payerId" reference="payers" label="Payer" helperText="Left empty, the sponsor’s only payer is taken" />}
    {offer.state === 'lapsed' && <WordsInput source="overrideReason" label="Why it is taken up after it lapsed" longest={300} required />}
  </>
);

export const AcceptButton = ({ offer }: { offer: Offer }) => {
  const redirect = useRedirect();
  const inTheWay = useInTheWay('offers', offer.id);
  return (
    <CommandButton<Offer>
      label="Sign"
      title={`Sign “${offer.title}”`}
      explains="The sponsor has signed. A contract is made exactly as it was offered, its number is given, its reads are owed, and the values are fixed. Later changes are amendments."
      path={at(offer, 'accept')}
      defaults={{ signedOn: today() }}
      body={(values) => exceptionOf(values, inTheWay)}
      success="The contract is signed. Its reads are owed."
      variant="contained"
      leaves
      onDone={(taken) => redirect('show', 'contracts', taken.contractId ?? undefined)}
    >
      <FormGrid>
        <DayInput source="signedOn" label="Signed on" required />
        <WordsInput source="signedByName" label="Who signed for the sponsor" longest={120} required />
        <TakingUp offer={offer} />
      </FormGrid>
      <CompanyExceptionInput obstacles={inTheWay} />
    </CommandButton>
  );
};

/** The server proves the places first; what does not fit is refused with what is full. */
export function PutButton({ offer }: { offer: Offer }) {
  const inTheWay = useInTheWay('offers', offer.id);
  return (
    <CommandButton
      label="Put to the sponsor"
      title={`Put “${offer.title}” to ${offer.sponsorName}`}
      explains={`First it is proven that the season can carry it. Then the offer gets its number, its words stay${offer.holdsInventory ? ', and its places are held' : ''} through ${dayText(offer.lapsesOn)}.`}
      path={at(offer, 'put')}
      defaults={{ putOn: today() }}
      body={(values) => exceptionOf(values, inTheWay)}
      confirmLabel="Put it"
      success="The offer lies with the sponsor now."
      variant="contained"
    >
      <DayInput source="putOn" label="On" required />
      <CompanyExceptionInput obstacles={inTheWay} />
      <WordsInput source="beyondPlacesReason" label="Why, although not all of it fits" longest={500} helperText="Only where you know that it does not fit; your name is kept with it" />
    </CommandButton>
  );
}

/** Sets the reads down to what fits beside everything promised; the price stays as it is. */
export const FitButton = ({ offer }: { offer: Offer }) => (
  <CommandButton
    label="Set down to what fits"
    title={`Set “${offer.title}” down to what fits?`}
    explains="The reads become as many as the season can carry beside everything signed and held; a line of which nothing fits is taken out. The price stays as it is: look at it afterwards."
    path={at(offer, 'fit')}
    version={offer.version}
    confirmLabel="Set it down"
    success="The offer is set down to what fits. Look at its price."
  />
);

export const DraftContractButton = ({ offer }: { offer: Offer }) => {
  const redirect = useRedirect();
  return (
    <CommandButton<Offer>
      label="Make a draft contract"
      title={`Make a draft contract of “${offer.title}”?`}
      explains="For what still has to be changed before it is signed. From then on the offer holds no places any more; the contract owes nothing until it is signed. Throwing the draft away opens the offer again."
      path={at(offer, 'draft-contract')}
      confirmLabel="Make the draft"
      success="The draft contract is made."
      leaves
      onDone={(taken) => redirect('show', 'contracts', taken.contractId ?? undefined)}
    >
      <FormGrid><TakingUp offer={offer} /></FormGrid>
    </CommandButton>
  );
};

export const DeclineButton = ({ offer }: { offer: Offer }) => (
  <CommandButton
    label="Declined"
    title={`${offer.sponsorName} declines`}
    explains="The offer is over and its places are free again. The reason helps next season."
    path={at(offer, 'decline')}
    defaults={{ declinedOn: today() }}
    confirmLabel="Write it down"
    success="The offer is declined; its places are free."
  >
    <DayInput source="declinedOn" label="On" required />
    <WordsInput source="reason" label="Why" longest={500} required />
  </CommandButton>
);

export const WithdrawButton = ({ offer }: { offer: Offer }) => (
  <CommandButton
    label="Withdraw"
    title={`Withdraw “${offer.title}”?`}
    explains="You take the offer back. Its places are free again at once. It stays in the list, and can be offered again."
    path={at(offer, 'withdraw')}
    confirmLabel="Withdraw it"
    color="error"
    success="The offer is withdrawn; its places are free."
  />
);

export const ExtendButton = ({ offer }: { offer: Offer }) => (
  <CommandButton
    label="Extend"
    title="Hold the offer longer"
    explains={`It holds through ${dayText(offer.lapsesOn)}. Choose a later last day; ${offer.holdsInventory ? 'its places stay held until then' : 'it holds no places'}.`}
    path={at(offer, 'extend')}
    defaults={{ lapsesOn: addDays(offer.lapsesOn as Day, 7) }}
    confirmLabel="Extend it"
    success="The offer holds longer."
  >
    <DayInput source="lapsesOn" label="Last day" required />
  </CommandButton>
);

export function OfferAgainButton({ offer }: { offer: Offer }) {
  const redirect = useRedirect();
  return (
    <CommandButton<Offer>
      label="Offer again"
      title={`Offer “${offer.title}” again?`}
      explains="A new draft with the same lines and price is made. It holds places only once it is put to the sponsor."
      path={at(offer, 'again')}
      confirmLabel="Make the draft"
      success="The new draft is made."
      leaves
      onDone={(draft) => redirect('edit', 'offers', draft.id)}
    />
  );
}

export function DeleteOfferButton({ offer }: { offer: Offer }) {
  const redirect = useRedirect();
  return (
    <CommandButton
      label="Throw the draft away"
      title={`Throw “${offer.title}” away?`}
      explains="The draft is removed. An offer that was put to a sponsor is never removed."
      path={`/offers/${offer.id}`}
      method="DELETE"
      version={offer.version}
      confirmLabel="Throw it away"
      color="error"
      success="The draft is gone."
      leaves
      onDone={() => redirect('list', 'offers')}
    />
  );
}

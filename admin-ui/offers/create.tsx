import { addDays, type Day } from '../../server/domain/day.ts';
import { CreatePage } from '../forms/record-form.tsx';
import { today } from '../format/day.ts';
import { OfferFields } from './form/fields.tsx';
import { offerFromForm } from './form/from-form.ts';
import { StartFromPackage } from './form/start-from-package.tsx';
import { useOfferStart } from './form/use-offer-start.ts';

const USUAL_DAYS = 14;

/** Begins empty, or with what another page found: an answer that fits, a package, a sponsor. */
export function OfferCreate() {
  const start = useOfferStart();
  if (start === null) return null;
  return (
    <CreatePage
      key={String(start['packageId'] ?? '')}
      title="New offer"
      aside={<StartFromPackage />}
      transform={offerFromForm}
      saveLabel="Keep as a draft"
      defaults={{ lapsesOn: addDays(today() as Day, USUAL_DAYS), holdsInventory: true, years: 1, increasePercent: 0, priceVariesWith: 'nothing', ...start }}
    >
      <OfferFields />
    </CreatePage>
  );
}

import { EditPage } from '../forms/record-form.tsx';
import { OfferFields } from './form/fields.tsx';
import { offerFromForm, offerIntoForm } from './form/from-form.ts';
import type { Offer } from './types.ts';

export const OfferEdit = () => (
  <EditPage title={(offer: Offer) => `Change ${offer.title}`} transform={offerFromForm} expand={offerIntoForm}>
    <OfferFields />
  </EditPage>
);

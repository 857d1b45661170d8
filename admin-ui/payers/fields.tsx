import { FormGrid } from '../forms/form-grid.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';

export function PayerFields() {
  return (
    <FormGrid>
      <WordsInput source="name" label="Name on the invoice" longest={120} required />
      <PickInput source="sponsorId" reference="sponsors" label="Pays for the sponsor" />
      <WordsInput source="email" label="E-mail for invoices" longest={254} type="email" />
      <WordsInput source="address" label="Address" longest={300} lines={2} />
      <WordsInput source="exemptionNumber" label="Sales tax exemption number" longest={60} />
      <DayInput source="exemptionExpiresOn" label="Exemption ends" />
    </FormGrid>
  );
}

import { ExclusivityInputs } from '../../company/exclusivity-inputs.tsx';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { POLICIES } from '../../words/choices.ts';
import { BenefitsFields } from './benefits-fields.tsx';
import { BillingPlanFields } from './billing-plan-fields.tsx';
import { CommitmentsFields } from './commitments-fields.tsx';
import { ExceptionFields } from './exception-fields.tsx';
import { TermFields } from './term-fields.tsx';

export function ContractFields() {
  return (
    <>
      <WordsInput source="title" label="Title" longest={120} required helperText="Juniper & Pike Hardware, game balls 2026–27" />
      <FormGrid columns={3}>
        <PickInput source="sponsorId" reference="sponsors" label="Sponsor" required />
        <PickInput source="sellerId" reference="sellers" label="Seller of record" required />
        <PickInput source="payerId" reference="payers" label="Payer" required />
      </FormGrid>
      <ExceptionFields />
      <TermFields />
      <CommitmentsFields />
      <BenefitsFields />
      <ExclusivityInputs />
      <FlagInput source="isInKind" label="Paid in goods, not in money" defaultValue={false} />
      <BillingPlanFields />
      <FormPart title="The rest">
        <FormGrid>
          <ChoiceInput source="cancelledGamePolicy" label="When a game is cancelled" choices={POLICIES} defaultValue="credit" required />
          <WordsInput source="purchaseOrderNumber" label="Purchase order number" longest={60} />
          <WordsInput source="outsideId" label="Id in the file you import" longest={60} />
        </FormGrid>
        <WordsInput source="note" label="Note" longest={2000} lines={3} />
      </FormPart>
    </>
  );
}

import { BenefitsFields } from '../../contracts/form/benefits-fields.tsx';
import { ExclusivityInputs } from '../../company/exclusivity-inputs.tsx';
import { BillingPlanFields } from '../../contracts/form/billing-plan-fields.tsx';
import { CommitmentsFields } from '../../contracts/form/commitments-fields.tsx';
import { TermFields } from '../../contracts/form/term-fields.tsx';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { FlagInput } from '../../inputs/flag-input.tsx';
import { PickInput } from '../../inputs/pick-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import { POLICIES } from '../../words/choices.ts';
import { BlockedCategoryNote, VariesFields } from './cautions.tsx';
import { ValuesPreview } from './values-preview.tsx';
import { YearsFields } from './years-fields.tsx';

export function OfferFields() {
  return (
    <>
      <WordsInput source="title" label="Title" longest={120} required helperText="Juniper & Pike Hardware, game balls 2026–27" />
      <FormGrid columns={3}>
        <PickInput source="sponsorId" reference="sponsors" label="Sponsor" required />
        <PickInput source="sellerId" reference="sellers" label="Seller of record" required />
        <PickInput source="payerId" reference="payers" label="Payer" helperText="Can wait until it is signed" />
      </FormGrid>
      <BlockedCategoryNote />
      <TermFields />
      <YearsFields />
      <CommitmentsFields />
      <BenefitsFields />
      <ExclusivityInputs />
      <ValuesPreview />
      <FormPart title="Until when it holds" why="Through this day the sponsor may take it up, and while it holds its places nobody else can be promised them. The day after, it lapses by itself.">
        <FormGrid>
          <DayInput source="lapsesOn" label="Last day" required />
          <FlagInput source="holdsInventory" label="It holds its places in the season until then" defaultValue />
        </FormGrid>
      </FormPart>
      <BillingPlanFields />
      <FormPart title="The rest">
        <FormGrid>
          <ChoiceInput source="cancelledGamePolicy" label="When a game is cancelled" choices={POLICIES} defaultValue="credit" required />
        </FormGrid>
        <VariesFields />
        <WordsInput source="note" label="Note for the office" longest={2000} lines={3} />
      </FormPart>
    </>
  );
}

import { Box } from '@mui/material';
import { ArrayInput, SimpleFormIterator } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../../forms/add-row.tsx';
import { RemoveRow } from '../../forms/remove-row.tsx';
import { FormGrid, FormPart } from '../../forms/form-grid.tsx';
import { ChoiceInput } from '../../inputs/choice-input.tsx';
import { CountInput } from '../../inputs/count-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { PLANS } from '../billing-plan.ts';
import { InstallmentAmounts, RestOfThePrice } from './installment-amounts.tsx';

function Installments({ byAmount }: { byAmount: boolean }) {
  return (
    <>
      <ArrayInput source="term.billingPlan.installments" label={false} helperText={false}>
        <SimpleFormIterator addButton={<AddRow label="Add an installment" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth>
          <Box sx={{ flex: { sm: '1 1 170px' } }}><DayInput source="on" label="On" required /></Box>
          {byAmount ? (
            <Box sx={{ flex: { sm: '1 1 140px' } }}><MoneyInput source="amountCents" label="Amount" required /></Box>
          ) : (
            <Box sx={{ flex: { sm: '1 1 120px' } }}><CountInput source="share" label="Share" min={1} defaultValue={1} required helperText="Equal shares: 1 in each row" /></Box>
          )}
        </SimpleFormIterator>
      </ArrayInput>
      {byAmount ? <RestOfThePrice /> : <InstallmentAmounts />}
    </>
  );
}

/** When the price is put on invoices. */
export function BillingPlanFields() {
  const kind = useWatch({ name: 'term.billingPlan.kind' }) as string | undefined;
  if (useWatch({ name: 'isInKind' }) === true) return null;
  return (
    <FormPart title="Billing plan">
      <FormGrid>
        <ChoiceInput source="term.billingPlan.kind" label="Billed" choices={PLANS} defaultValue="inFull" required />
        {kind === 'inFull' && <DayInput source="term.billingPlan.on" label="On" required />}
      </FormGrid>
      {(kind === 'installments' || kind === 'amounts') && <Installments byAmount={kind === 'amounts'} />}
      {kind === 'perGame' && <p>Each announced home game of the regular season or the conference that the lines of this contract cover is billed once it was played. A cancelled game leaves its share to the others.</p>}
      {kind === 'monthly' && <p>Reads are billed once the month they were given in is over.</p>}
      {kind === 'depositAndArrears' && (
        <FormGrid>
          <MoneyInput source="term.billingPlan.depositCents" label="Deposit" required />
          <DayInput source="term.billingPlan.depositOn" label="Deposit on" required />
        </FormGrid>
      )}
    </FormPart>
  );
}

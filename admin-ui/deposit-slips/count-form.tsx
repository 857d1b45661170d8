import { Alert } from '@mui/material';
import { Form, SaveButton, useRedirect } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useSend } from '../api/command.ts';
import { FormError } from '../forms/form-error.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { MoneyInput } from '../inputs/money-input.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import { Figures } from '../show/figures.tsx';
import { count } from '../words/count.ts';
import { sumsOf } from './chosen.ts';
import type { DepositSlip, DrawerLine } from './types.ts';

/** Over or short while it is being counted. */
function OverOrShort({ expectedCents }: { expectedCents: number }) {
  const cashCents = useWatch({ name: 'cashCents' }) as unknown;
  if (typeof cashCents !== 'number' || cashCents === expectedCents) return null;
  const difference = cashCents - expectedCents;
  return (
    <Alert severity="warning" icon={false} role="status" sx={{ my: 1 }}>
      The cash is {moneyText(Math.abs(difference))} {difference > 0 ? 'over' : 'short'}. Count it once more; if it stays so, say in the note why, or that nobody knows. The books keep the difference in cash over and short.
    </Alert>
  );
}

/** What was counted, and the slip that comes of it. */
export function CountForm({ sellerId, lines }: { sellerId: string; lines: readonly DrawerLine[] }) {
  const { send, sending } = useSend();
  const redirect = useRedirect();
  const { checkCount, checkCents, cashCents } = sumsOf(lines);
  const submit = async (values: object) => {
    const { depositedOn, note, cashCents: counted } = values as { depositedOn: string; note?: string; cashCents?: number | null };
    const body = { sellerId, depositedOn, paymentIds: lines.map((line) => line.id), countedCents: checkCents + (counted ?? 0), ...(note ? { note } : {}) };
    const { answer, errors } = await send<DepositSlip>('/deposit-slips', { method: 'POST', body }, 'The deposit slip is made.', true);
    if (errors) return errors;
    redirect('show', 'deposit-slips', answer!.id);
    return undefined;
  };
  return (
    <Form onSubmit={submit} record={{}} defaultValues={{ depositedOn: today(), ...(cashCents === 0 ? { cashCents: 0 } : {}) }}>
      <Figures figures={[{ label: 'Checks', value: moneyText(checkCents), note: count(checkCount, 'check') }, { label: 'Cash expected', value: moneyText(cashCents) }, { label: 'In all', value: moneyText(checkCents + cashCents) }]} />
      <FormGrid>
        <MoneyInput source="cashCents" label="Cash counted" required />
        <DayInput source="depositedOn" label="Deposited on" required />
      </FormGrid>
      <OverOrShort expectedCents={cashCents} />
      <WordsInput source="note" label="Note" longest={500} />
      <FormError />
      <SaveButton label={sending ? 'Working…' : 'Make the deposit slip'} alwaysEnable={!sending && lines.length > 0} icon={<span />} sx={{ mt: 2, '& .MuiButton-startIcon': { display: 'none' } }} />
    </Form>
  );
}

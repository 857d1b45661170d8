import { Box } from '@mui/material';
import { ArrayInput, SimpleFormIterator } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { AddRow } from '../../forms/add-row.tsx';
import { CommandButton } from '../../forms/command-button.tsx';
import { RemoveRow } from '../../forms/remove-row.tsx';
import { moneyText } from '../../format/money.ts';
import { CountInput } from '../../inputs/count-input.tsx';
import { DayInput } from '../../inputs/day-input.tsx';
import { MoneyInput } from '../../inputs/money-input.tsx';
import { WordsInput } from '../../inputs/words-input.tsx';
import type { Goods } from './types.ts';

function Total({ priceCents }: { priceCents: number }) {
  const rows = (useWatch({ name: 'promises' }) ?? []) as { quantity?: unknown; unitCents?: unknown }[];
  const total = rows.reduce((sum, row) => sum + (typeof row?.quantity === 'number' && typeof row.unitCents === 'number' ? row.quantity * row.unitCents : 0), 0);
  return <p role="status">They come to {moneyText(total)}; the price is {moneyText(priceCents)}.</p>;
}

interface Row {
  what: string;
  quantity: number;
  unitCents: number;
  dueOn?: string | null;
}

/** Writes down what the sponsor pays with. */
export const PromiseButton = ({ goods }: { goods: Goods }) => (
  <CommandButton
    label={goods.promises.length === 0 ? 'Write down the goods' : 'Change the goods'}
    title="What the sponsor pays with"
    explains="Each kind of goods with how many and what one is worth when the contract is signed. Together they come to the price. Consult the business office about fair values."
    path={`/contracts/${goods.contractId}/goods-promises`}
    method="PUT"
    version={goods.version}
    defaults={{ promises: goods.promises.map(({ what, quantity, unitCents, dueOn }) => ({ what, quantity, unitCents, dueOn })) }}
    body={({ promises }) => ({ promises: ((promises ?? []) as Row[]).map(({ what, quantity, unitCents, dueOn }) => ({ what, quantity, unitCents, dueOn: dueOn || null })) })}
    confirmLabel="Save"
    success="The goods are written down."
    wide
  >
    <ArrayInput source="promises" label={false} helperText={false}>
      <SimpleFormIterator addButton={<AddRow label="Add goods" />} removeButton={<RemoveRow label="Take out" />} inline disableReordering disableClear fullWidth>
        <Box sx={{ flex: { sm: '3 1 220px' } }}><WordsInput source="what" label="What" longest={120} required /></Box>
        <Box sx={{ flex: { sm: '1 1 90px' } }}><CountInput source="quantity" label="How many" min={1} required /></Box>
        <Box sx={{ flex: { sm: '1 1 120px' } }}><MoneyInput source="unitCents" label="One is worth" required /></Box>
        <Box sx={{ flex: { sm: '1 1 150px' } }}><DayInput source="dueOn" label="Due on" /></Box>
      </SimpleFormIterator>
    </ArrayInput>
    <Total priceCents={goods.priceCents} />
  </CommandButton>
);

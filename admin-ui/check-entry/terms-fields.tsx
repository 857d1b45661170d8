import { MenuItem, TextField } from '@mui/material';
import { useState } from 'react';
import type { Drawer } from '../../server/domain/billing/payment.ts';
import { FormGrid } from '../forms/form-grid.tsx';
import { centsTyped, typedMoney } from '../format/money.ts';
import { AmountBox } from './amount-box.tsx';
import type { BatchTerms } from './batch.ts';

const DRAWERS: { id: Drawer; name: string }[] = [
  { id: 'undepositedReceipts', name: 'In the drawer' },
  { id: 'cash', name: 'At the bank' },
];

interface Props {
  terms: BatchTerms;
  sellers: readonly { id: string; name: string }[];
  /** once the first check stands there, these are its terms too */
  isBegun: boolean;
  onChange: (changes: Partial<BatchTerms>) => void;
}

/** What stays for the batch. */
export function TermsFields({ terms, sellers, isBegun, onChange }: Props) {
  const [tape, setTape] = useState(terms.tapeCents === null ? '' : typedMoney(terms.tapeCents));
  const tapeCents = centsTyped(tape);
  const isWrong = tape.trim() !== '' && tapeCents === undefined;
  return (
    <FormGrid columns={4}>
      <TextField select label="Seller of record" value={sellers.some(({ id }) => id === terms.sellerId) ? terms.sellerId : ''} disabled={isBegun} onChange={(event) => onChange({ sellerId: event.target.value })} margin="dense" required>
        {sellers.map(({ id, name }) => <MenuItem key={id} value={id}>{name}</MenuItem>)}
      </TextField>
      <TextField label="Received on" type="date" value={terms.receivedOn} disabled={isBegun} onChange={(event) => onChange({ receivedOn: event.target.value })} margin="dense" required slotProps={{ inputLabel: { shrink: true } }} />
      <TextField select label="The checks lie" value={terms.drawer} disabled={isBegun} onChange={(event) => onChange({ drawer: event.target.value as Drawer })} margin="dense">
        {DRAWERS.map(({ id, name }) => <MenuItem key={id} value={id}>{name}</MenuItem>)}
      </TextField>
      <AmountBox
        label="Total of the tape"
        value={tape}
        error={isWrong}
        helperText={isWrong ? 'Write an amount such as 1,250.00.' : 'What the adding machine says, if you ran it'}
        margin="dense"
        onChange={(event) => {
          setTape(event.target.value);
          onChange({ tapeCents: centsTyped(event.target.value) ?? null });
        }}
      />
    </FormGrid>
  );
}

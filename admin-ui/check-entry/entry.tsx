import { Alert, Box, TextField } from '@mui/material';
import { useEffect, useRef, useState, type KeyboardEvent } from 'react';
import { centsTyped } from '../format/money.ts';
import { AmountBox } from './amount-box.tsx';
import type { BatchCheck } from './batch.ts';
import { PayerBox } from './payer-box.tsx';
import { Proposal } from './proposal.tsx';
import { openInvoices, proposedFor, warningOf, type Proposed } from './proposed.ts';
import type { OpenPayer } from './types.ts';

export interface Written {
  payer: OpenPayer | null;
  reference: string;
  amount: string;
}

export const NOTHING_WRITTEN: Written = { payer: null, reference: '', amount: '' };

interface Props {
  payers: readonly OpenPayer[];
  sellerId: string;
  checks: readonly BatchCheck[];
  written: Written;
  onWrite: (written: Written) => void;
  onRecord: (check: Omit<BatchCheck, 'key' | 'state'>) => void;
}

/** Looks up what the check would pay, once payer, number and amount stand there. */
function useProposal({ sellerId, checks, written }: Props) {
  const [proposed, setProposed] = useState<Proposed | null>(null);
  const [error, setError] = useState<string | null>(null);
  const looking = useRef(false);
  const { payer, reference, amount } = written;
  const amountCents = centsTyped(amount);
  const look = async (): Promise<boolean> => {
    if (looking.current) return false;
    const missing = !payer ? 'Say whose check it is.' : reference.trim() === '' ? 'Write the number of the check.' : !amountCents ? 'Write an amount such as 1,250.00.' : null;
    setError(missing);
    if (missing) return false;
    looking.current = true;
    try {
      const open = await openInvoices(payer!.id, sellerId, checks);
      setProposed(proposedFor(amountCents!, open, new Set(), warningOf({ payerId: payer!.id, reference: reference.trim() }, checks)));
      return true;
    } catch (failure) {
      setError(failure instanceof Error ? `${failure.message} Enter tries again; nothing is lost.` : String(failure));
      return false;
    } finally {
      looking.current = false;
    }
  };
  const turn = (invoiceId: string) => {
    if (!proposed || !amountCents) return;
    const leftOut = new Set(proposed.leftOut.has(invoiceId) ? [...proposed.leftOut].filter((id) => id !== invoiceId) : [...proposed.leftOut, invoiceId]);
    setProposed(proposedFor(amountCents, proposed.open, leftOut, proposed.warning));
  };
  return { proposed, error, look, turn, forget: () => { setProposed(null); setError(null); }, amountCents };
}

/** One check, by keyboard alone: payer, number, amount, Enter for what it pays, Enter to record it. */
export function Entry(props: Props) {
  const { payers, written, onWrite, onRecord } = props;
  const { proposed, error, look, turn, forget, amountCents } = useProposal(props);
  const payerRef = useRef<HTMLInputElement>(null);
  const referenceRef = useRef<HTMLInputElement>(null);
  const amountRef = useRef<HTMLInputElement>(null);
  const recordRef = useRef<HTMLButtonElement>(null);
  useEffect(() => payerRef.current?.focus(), []);
  useEffect(() => {
    if (proposed) recordRef.current?.focus();
  }, [proposed?.open]);
  const write = (changes: Partial<Written>) => {
    forget();
    onWrite({ ...written, ...changes });
  };
  const onEnter = (act: () => void) => (event: KeyboardEvent) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    act();
  };
  const record = () => {
    const { payer, reference } = written;
    if (!proposed || !payer || !amountCents) return;
    onRecord({ payerId: payer.id, payerName: payer.name, reference: reference.trim(), amountCents, parts: proposed.parts });
    forget();
    payerRef.current?.focus();
  };
  const back = () => {
    forget();
    amountRef.current?.focus();
  };
  return (
    <>
      <Box sx={{ display: 'grid', columnGap: 2, gridTemplateColumns: { xs: '1fr', sm: '2fr 1fr 1fr' }, alignItems: 'start' }}>
        <PayerBox payers={payers} value={written.payer} inputRef={payerRef} onPick={(payer) => { write({ payer }); if (payer) referenceRef.current?.focus(); }} />
        <TextField label="Check number" value={written.reference} required inputRef={referenceRef} margin="dense" onChange={(event) => write({ reference: event.target.value })} onKeyDown={onEnter(() => amountRef.current?.focus())} slotProps={{ htmlInput: { maxLength: 80, autoComplete: 'off' } }} />
        <AmountBox label="Amount" value={written.amount} required inputRef={amountRef} margin="dense" onChange={(event) => write({ amount: event.target.value })} onKeyDown={onEnter(() => void look())} />
      </Box>
      {error && <Alert severity="error" role="alert" sx={{ mt: 1 }}>{error}</Alert>}
      {proposed && <Proposal proposed={proposed} recordRef={recordRef} onTurn={turn} onRecord={record} onBack={back} />}
    </>
  );
}

import { Button } from '@mui/material';
import { Go } from '../fields/go.tsx';
import { Tag } from '../fields/tag.tsx';
import { CommandButton } from '../forms/command-button.tsx';
import { today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { WordsInput } from '../inputs/words-input.tsx';
import { Rows } from '../lists/rows.tsx';
import type { BatchCheck } from './batch.ts';

interface Props {
  checks: readonly BatchCheck[];
  onTakenBack: (key: string) => void;
  onCorrect: (check: BatchCheck) => void;
  onLeaveOut: (key: string) => void;
}

function State({ check }: { check: BatchCheck }) {
  switch (check.state) {
    case 'recorded':
      return <Tag mood="good"><Go resource="payments" id={check.paymentId ?? null}>{check.number}</Go></Tag>;
    case 'takenBack':
      return <Tag mood="plain">{check.number} taken back</Tag>;
    case 'sending':
      return <>Being recorded…</>;
    case 'waiting':
      return <Tag mood="care">Not recorded yet, sent again by itself. {check.why}</Tag>;
    case 'refused':
      return <Tag mood="bad">{check.why}</Tag>;
  }
}

function TakeBack({ check, onTakenBack }: { check: BatchCheck; onTakenBack: (key: string) => void }) {
  return (
    <CommandButton
      label="Take back"
      title={`Take check ${check.reference} of ${check.payerName} back?`}
      explains={`Payment ${check.number} of ${moneyText(check.amountCents)} becomes one that was written down by mistake: what it paid is open again. It stays in the books with its number.`}
      path={`/payments/${check.paymentId}/return`}
      defaults={{ reason: 'Entered by mistake' }}
      body={(values) => ({ kind: 'mistake', returnedOn: today(), reason: values['reason'] })}
      success="It is taken back."
      variant="text"
      onDone={() => onTakenBack(check.key)}
    >
      <WordsInput source="reason" label="Why" longest={500} required />
    </CommandButton>
  );
}

/** The checks of this batch, the newest first. */
export function BatchRows({ checks, onTakenBack, onCorrect, onLeaveOut }: Props) {
  return (
    <Rows<BatchCheck>
      label="Checks of this batch"
      rows={[...checks].reverse()}
      keyOf={(check) => check.key}
      columns={[
        { label: 'From', show: (check) => check.payerName },
        { label: 'Check number', show: (check) => check.reference },
        { label: 'Pays', show: (check) => check.parts.map((part) => part.invoiceNumber).join(', ') || 'Kept as credit' },
        { label: 'Payment', show: (check) => <State check={check} /> },
        { label: 'Amount', numeric: true, show: (check) => moneyText(check.amountCents) },
        {
          label: 'Change',
          show: (check) =>
            check.state === 'recorded' ? <TakeBack check={check} onTakenBack={onTakenBack} />
            : check.state === 'refused' ? <><Button onClick={() => onCorrect(check)}>Correct</Button><Button onClick={() => onLeaveOut(check.key)}>Leave out</Button></>
            : '–',
        },
      ]}
    />
  );
}

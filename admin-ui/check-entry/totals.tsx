import { Alert, Box, Button } from '@mui/material';
import { Link } from 'react-router';
import { moneyText } from '../format/money.ts';
import { Figures } from '../show/figures.tsx';
import { count } from '../words/count.ts';
import { countedChecks, isOnItsWay, totalCents, type BatchCheck, type BatchTerms } from './batch.ts';

function Tape({ tapeCents, enteredCents }: { tapeCents: number; enteredCents: number }) {
  const left = tapeCents - enteredCents;
  const words = left === 0 ? 'The batch is what the tape says, to the cent.' : left > 0 ? `${moneyText(left)} of the tape’s ${moneyText(tapeCents)} is still to come.` : `${moneyText(-left)} more was entered than the tape’s ${moneyText(tapeCents)}.`;
  return <Alert severity={left === 0 ? 'success' : left > 0 ? 'info' : 'warning'} icon={false} role="status" sx={{ mb: 1 }}>{words}</Alert>;
}

/** How far the batch is, and what comes after it. */
export function Totals({ terms, checks, onBegin, onSendAgain }: { terms: BatchTerms; checks: readonly BatchCheck[]; onBegin: () => void; onSendAgain: () => void }) {
  const counted = countedChecks(checks);
  const enteredCents = totalCents(checks);
  const onItsWay = checks.filter(isOnItsWay);
  const recorded = checks.filter((check) => check.state === 'recorded');
  const given = { sellerId: terms.sellerId, paymentIds: recorded.map((check) => check.paymentId) };
  const isDone = onItsWay.length === 0 && recorded.length > 0;
  return (
    <>
      <Figures figures={[{ label: 'Entered', value: moneyText(enteredCents), note: count(counted.length, 'check') }, ...(terms.tapeCents === null ? [] : [{ label: 'Tape', value: moneyText(terms.tapeCents) }])]} />
      {terms.tapeCents !== null && <Tape tapeCents={terms.tapeCents} enteredCents={enteredCents} />}
      {checks.some((check) => check.state === 'waiting') && (
        <Alert severity="warning" icon={false} role="status" sx={{ mb: 1 }} action={<Button color="inherit" onClick={onSendAgain}>Send again now</Button>}>
          {count(checks.filter((check) => check.state === 'waiting').length, 'check')} could not be sent yet. Nothing is lost: each goes again by itself, and is recorded once.
        </Alert>
      )}
      <Box sx={{ display: 'flex', gap: 1, flexWrap: 'wrap', mb: 2 }}>
        {terms.drawer === 'undepositedReceipts' && isDone && <Button component={Link} to="/deposit-slips/create" state={given} variant="contained">Make the deposit slip of these</Button>}
        {isDone && <Button variant="outlined" onClick={onBegin}>Begin another batch</Button>}
      </Box>
    </>
  );
}

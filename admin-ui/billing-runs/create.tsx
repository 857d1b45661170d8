import { Alert, Box, Button, Paper } from '@mui/material';
import { useState } from 'react';
import { Form, Title, useRedirect } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useSend } from '../api/command.ts';
import { useServer } from '../api/use-server.ts';
import { FormError } from '../forms/form-error.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { dayText, today } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { DayInput } from '../inputs/day-input.tsx';
import { PickInput } from '../inputs/pick-input.tsx';
import { BackLink } from '../show/back-link.tsx';
import { Reading } from '../show/reading.tsx';
import { count } from '../words/count.ts';
import { PreviewSheets } from './preview.tsx';
import type { Preview, WholeBillingRun } from './types.ts';

interface Values {
  throughDay?: string;
  issuedOn?: string;
  sellerId?: string;
}

function Confirm({ preview, sending }: { preview: Preview; sending: boolean }) {
  const billed = preview.contracts.filter((one) => !one.isSkipped);
  if (billed.length === 0) return null;
  const sum = billed.reduce((all, one) => all + one.grossCents, 0);
  return (
    <Paper variant="outlined" sx={{ p: 2, mb: 2 }}>
      <Box component="p" sx={{ mt: 0 }}>
        This gives out {count(billed.length, 'number')} and asks for <strong>{moneyText(sum)}</strong>. An issued invoice is never changed; it can be voided while nothing is paid on it. Local rules and the business office decide about sales tax.
      </Box>
      <FormError />
      <Button type="submit" variant="contained" disabled={sending}>{sending ? 'Starting…' : `Issue ${count(billed.length, 'invoice')}`}</Button>
    </Paper>
  );
}

function Look({ sending }: { sending: boolean }) {
  const { throughDay, issuedOn, sellerId } = useWatch() as Values;
  const search = new URLSearchParams({ through: throughDay ?? '', issuedOn: issuedOn ?? '', ...(sellerId ? { sellerId } : {}) });
  const preview = useServer<Preview>(throughDay && issuedOn ? `/billing-runs/preview?${search}` : null);
  if (!throughDay || !issuedOn) return <Alert severity="info" icon={false}>Say through which day, and on which day the invoices are issued.</Alert>;
  return <Reading of={preview}>{(seen) => <>{throughDay > issuedOn && <Alert severity="warning" icon={false} sx={{ mb: 2 }}>What falls due through {dayText(throughDay)} falls due later than it is issued, on {dayText(issuedOn)}.</Alert>}<PreviewSheets preview={seen} /><Confirm preview={seen} sending={sending} /></>}</Reading>;
}

/** What would be billed is shown as the days are chosen; one press bills it. */
export function BillingRunCreate() {
  const [defaults] = useState({ throughDay: today(), issuedOn: today() });
  const { send, sending } = useSend();
  const redirect = useRedirect();
  const start = async (values: object) => {
    const { throughDay, issuedOn, sellerId } = values as Values;
    const { answer, errors } = await send<WholeBillingRun>('/billing-runs', { method: 'POST', body: { throughDay, issuedOn, ...(sellerId ? { sellerId } : {}) } }, 'The run has begun.', true);
    if (errors) return errors;
    redirect('show', 'billing-runs', answer!.id);
    return undefined;
  };
  return (
    <>
      <Title title="New billing run" />
      <BackLink />
      <Form onSubmit={start} defaultValues={defaults} record={{}}>
        <Paper variant="outlined" sx={{ p: { xs: 2, sm: 3 }, mb: 2 }}>
          <FormGrid columns={3}>
            <DayInput source="throughDay" label="Bill what is due through" required />
            <DayInput source="issuedOn" label="Invoices issued on" required />
            <PickInput source="sellerId" reference="sellers" label="Only this seller of record" helperText="Empty for all" />
          </FormGrid>
        </Paper>
        <Look sending={sending} />
      </Form>
    </>
  );
}

import { Alert, Paper } from '@mui/material';
import { Form, Title, useRedirect } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useServer } from '../api/use-server.ts';
import { CommandButton } from '../forms/command-button.tsx';
import { FormGrid } from '../forms/form-grid.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { DayInput } from '../inputs/day-input.tsx';
import { EmptyList } from '../lists/empty-list.tsx';
import { iMay } from '../session/rights.ts';
import { BackLink } from '../show/back-link.tsx';
import { Figures } from '../show/figures.tsx';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import { numberText } from '../words/count.ts';
import { LinesTable } from './lines-table.tsx';
import type { JournalBatch, JournalPreview, LayoutOfSeller } from './types.ts';

function MakeButton({ preview }: { preview: JournalPreview }) {
  const redirect = useRedirect();
  return (
    <CommandButton<JournalBatch>
      label="Make the batch"
      title={`Make a batch of ${preview.sellerName}?`}
      explains={`${numberText(preview.entryCount)} entries leave and are marked with this batch; none of them leaves again.${preview.reachesOpenMonth ? ' The month is still open: what is booked into it later leaves in the next batch.' : ''}`}
      path="/journal-batches"
      body={() => ({ sellerId: preview.sellerId, throughOn: preview.throughOn, allowsOpenMonth: preview.reachesOpenMonth })}
      success="The batch is made."
      variant="contained"
      leaves
      onDone={(batch) => redirect('show', 'journal-batches', batch.id)}
    />
  );
}

function Preview({ preview }: { preview: JournalPreview }) {
  const ready = preview.entryCount > 0 && preview.missing.length === 0;
  return (
    <Section title="What it would hold" actions={ready && iMay('journal-batches', 'create') && <MakeButton preview={preview} />}>
      {preview.reachesOpenMonth && preview.entryCount > 0 && (
        <Alert severity="warning" sx={{ mb: 2 }}>
          {preview.closedThrough ? `Only what is booked through ${dayText(preview.closedThrough)} is closed.` : 'No month is closed yet.'} Close the months first where the district wants final figures.
        </Alert>
      )}
      {preview.missing.length > 0 && (
        <Alert severity="error" sx={{ mb: 2 }}>
          The layout asks for what is not mapped yet:
          <ul>{preview.missing.map((one) => <li key={one}>{one}</li>)}</ul>
        </Alert>
      )}
      {preview.entryCount === 0 ? (
        <EmptyList>Nothing. Every entry through that day has left already.</EmptyList>
      ) : (
        <>
          <Figures figures={[{ label: 'Entries', value: numberText(preview.entryCount) }, { label: 'Lines', value: numberText(preview.lineCount) }, { label: 'Debits', value: moneyText(preview.debitCents) }, { label: 'Credits', value: moneyText(preview.debitCents) }]} />
          <LinesTable label="The first lines of the batch" headings={preview.headings} rows={preview.rows} />
        </>
      )}
    </Section>
  );
}

function Chosen() {
  const [sellerId, throughOn] = useWatch({ name: ['sellerId', 'throughOn'] }) as [string | undefined, string | undefined];
  const asked = useServer<JournalPreview>(sellerId && throughOn ? `/journal-batches/preview?sellerId=${sellerId}&throughOn=${throughOn}` : null);
  return sellerId && throughOn ? <Reading of={asked}>{(preview) => <Preview preview={preview} />}</Reading> : <EmptyList>Choose a seller of record and a day.</EmptyList>;
}

/** Looks at the next batch, then makes it. */
export function NextBatch() {
  const layouts = useServer<{ data: LayoutOfSeller[] }>('/journal-layouts');
  const first = useServer<JournalPreview>('/journal-batches/preview');
  return (
    <>
      <Title title="Next batch" />
      <BackLink />
      <Reading of={first}>
        {(preview) => (
          <Form defaultValues={{ sellerId: preview.sellerId ?? '', throughOn: preview.throughOn }}>
            <Paper variant="outlined" sx={{ p: { xs: 1.5, sm: 2.5 }, mb: 2 }}>
              <FormGrid>
                <ChoiceInput source="sellerId" label="Seller of record" choices={(layouts.data?.data ?? []).map((layout) => ({ id: layout.sellerId, name: layout.sellerName }))} required />
                <DayInput source="throughOn" label="Booked through" required />
              </FormGrid>
            </Paper>
            <Chosen />
          </Form>
        )}
      </Reading>
    </>
  );
}

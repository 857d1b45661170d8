import { Alert, Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { ask } from '../api/http.ts';
import { openPdf } from '../api/pdf.ts';
import { useServer } from '../api/use-server.ts';
import { dayText } from '../format/day.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { iMay } from '../session/rights.ts';
import { Reading } from '../show/reading.tsx';
import { Section } from '../show/section.tsx';
import type { ExemptionFileView } from '../../server/sponsorship/exemption-file.dto.ts';
import type { Payer } from './types.ts';

async function base64Of(file: File): Promise<string> {
  const bytes = new Uint8Array(await file.arrayBuffer());
  let text = '';
  for (let from = 0; from < bytes.length; from += 8192) text += String.fromCharCode(...bytes.subarray(from, from + 8192));
  return btoa(text);
}

function Attach({ payer, onFiled }: { payer: Payer; onFiled: () => void }) {
  const [refusal, setRefusal] = useState<string | null>(null);
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  const file = async (chosen: File | undefined) => {
    if (!chosen) return;
    setWorking(true);
    setRefusal(null);
    try {
      await ask(`/payers/${payer.id}/exemption-files`, { method: 'POST', body: { name: chosen.name, content: await base64Of(chosen) } });
      notify('The certificate is filed.', { type: 'success' });
      onFiled();
    } catch (error) {
      setRefusal((error as Error).message);
    } finally {
      setWorking(false);
    }
  };
  return (
    <>
      <Button component="label" variant="outlined" role={undefined} tabIndex={-1} disabled={working} sx={{ mt: 1.5, '&:focus-within': { outline: '3px solid', outlineColor: 'secondary.main', outlineOffset: 2 } }}>
        {working ? 'Filing…' : 'File a certificate'}
        <input type="file" accept=".pdf,.png,.jpg,.jpeg,application/pdf,image/png,image/jpeg" aria-label="A scan of the exemption certificate" onChange={(event) => { void file(event.target.files?.[0]); event.target.value = ''; }} style={{ position: 'absolute', opacity: 0, width: 1, height: 1 }} />
      </Button>
      {refusal && <Alert severity="error" role="alert" sx={{ my: 1 }}>{refusal}</Alert>}
    </>
  );
}

/** The papers behind an exemption from sales tax. */
export function Certificates({ payer }: { payer: Payer }) {
  const path = `/payers/${payer.id}/exemption-files`;
  const files = useServer<{ data: ExemptionFileView[] }>(iMay('invoices', 'list') ? path : null);
  const notify = useNotify();
  if (!iMay('invoices', 'list')) return null;
  return (
    <Section title="Exemption certificates" lead="A PDF, PNG or JPEG of up to 2 MB. The number and the day it ends stand above; the reason is printed on each invoice. Local rules and the business office decide; this is not tax advice.">
      <Reading of={files}>
        {({ data }) =>
          data.length === 0 ? (
            <EmptyList>No certificate is filed.</EmptyList>
          ) : (
            <Rows<ExemptionFileView>
              label="Certificates filed"
              rows={data}
              columns={[
                { label: 'File', show: (one) => <Button onClick={() => void openPdf(`${path}/${one.id}`, one.name).catch((error: Error) => notify(error.message, { type: 'error' }))}>{one.name}</Button> },
                { label: 'Filed', show: (one) => dayText(one.filedAt) },
                { label: 'By', show: (one) => one.filedByName ?? '–' },
              ]}
            />
          )
        }
      </Reading>
      {iMay('invoices', 'edit') && <Attach payer={payer} onFiled={() => void files.refetch()} />}
    </Section>
  );
}

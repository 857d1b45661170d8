import { Alert, Button, Dialog, DialogActions, DialogContent, DialogTitle, Typography } from '@mui/material';
import { useId } from 'react';
import { Form, useNotify } from 'react-admin';
import { useSend } from '../api/command.ts';
import { openPdf } from '../api/pdf.ts';
import { FormError } from '../forms/form-error.tsx';
import { WordsInput } from '../inputs/words-input.tsx';
import type { WhichLetter } from './send-button.tsx';
import type { LetterPreview } from './types.ts';

interface Props {
  which: WhichLetter;
  preview: LetterPreview;
  onClose: () => void;
}

const times = (count: number): string => (count === 1 ? 'once' : `${count} times`);

function Again({ preview }: { preview: LetterPreview }) {
  if (preview.writtenBefore === 0) return null;
  return (
    <>
      <Alert severity="warning" icon={false} sx={{ mb: 1 }}>This letter was written {times(preview.writtenBefore)} already. It goes once more only for a reason, which the log keeps.</Alert>
      <WordsInput source="reason" label="Why once more" longest={500} required />
    </>
  );
}

const PAPERS: Partial<Record<WhichLetter['kind'], (id: string) => string>> = {
  invoice: (id) => `/invoices/${id}/invoice.pdf`,
  reminder: (id) => `/invoices/${id}/invoice.pdf`,
  creditMemo: (id) => `/credit-memos/${id}/credit-memo.pdf`,
  receipt: (id) => `/receipts/${id}/receipt.pdf`,
};

/** The paper, to look at before it goes, where it is issued already. */
function Attached({ which, name }: { which: WhichLetter; name: string }) {
  const notify = useNotify();
  const path = PAPERS[which.kind]?.(which.aboutId);
  if (!path) return <>{name}</>;
  return <Button variant="text" onClick={() => void openPdf(path, name).catch((error: Error) => notify(error.message, { type: 'error' }))}>{name}</Button>;
}

/** The letter as it would go out; its words may be changed before. */
export function SendDialog({ which, preview, onClose }: Props) {
  const { send, sending } = useSend();
  const titleId = useId();
  const again = preview.writtenBefore > 0;
  const submit = async (values: object) => {
    const { toAddress, subject, body, reason } = values as Record<string, string>;
    const form = { ...which, toAddress, subject, body, ...(again ? { again: true, reason } : {}) };
    const { errors } = await send('/messages', { method: 'POST', body: form }, 'The letter is on its way. “Letters” shows what becomes of it.');
    if (errors) return errors;
    onClose();
    return undefined;
  };
  return (
    <Dialog open onClose={onClose} aria-labelledby={titleId} fullWidth maxWidth="md">
      <Form onSubmit={submit} defaultValues={{ toAddress: preview.toAddress ?? '', subject: preview.subject, body: preview.body }} record={{}}>
        <DialogTitle id={titleId}>Send this letter?</DialogTitle>
        <DialogContent>
          <Again preview={preview} />
          <WordsInput source="toAddress" label="To" type="email" longest={254} required helperText={preview.toAddress === null ? 'Nobody has an address yet. What you write here is used this once.' : ''} />
          <WordsInput source="subject" label="Subject" longest={200} required />
          <WordsInput source="body" label="Letter" longest={10_000} lines={10} required />
          {preview.attachments.length > 0 && <Typography sx={{ overflowWrap: 'anywhere' }}>Attached: <Attached which={which} name={preview.attachments.join(', ')} /></Typography>}
          <FormError />
        </DialogContent>
        <DialogActions sx={{ px: 3, pb: 2 }}>
          <Button onClick={onClose}>Do not</Button>
          <Button type="submit" variant="contained" disabled={sending}>
            {sending ? 'Sending…' : 'Send'}
          </Button>
        </DialogActions>
      </Form>
    </Dialog>
  );
}

import { Button } from '@mui/material';
import { useState } from 'react';
import { useNotify } from 'react-admin';
import { ask } from '../api/http.ts';
import { iMay } from '../session/rights.ts';
import { SendDialog } from './send-dialog.tsx';
import type { LetterPreview } from './types.ts';

export interface WhichLetter {
  kind: LetterPreview['kind'];
  aboutId: string;
  from?: string;
  to?: string;
}

/** Draws the letter up, shows it, and sends it when it is found good. */
export function SendButton({ label, which }: { label: string; which: WhichLetter }) {
  const [preview, setPreview] = useState<LetterPreview | null>(null);
  const [working, setWorking] = useState(false);
  const notify = useNotify();
  if (!iMay('messages', 'create')) return null;
  const open = async () => {
    setWorking(true);
    await ask<LetterPreview>('/messages/preview', { method: 'POST', body: which }).then(setPreview, (error: Error) => notify(error.message, { type: 'error' }));
    setWorking(false);
  };
  return (
    <>
      <Button variant="outlined" disabled={working} onClick={() => void open()}>
        {label}
      </Button>
      {preview && <SendDialog which={which} preview={preview} onClose={() => setPreview(null)} />}
    </>
  );
}

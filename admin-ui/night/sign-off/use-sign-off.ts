import { useRef, useState } from 'react';
import type { NightTidyView, SignOffDto } from '../../../server/night/closing/closing.dto.ts';
import { newId } from '../store/ids.ts';
import { ServerSaysNo, ask } from '../sync/server.ts';

export interface Signed {
  at: string;
  byName: string | null;
}

export type SignOffState = { is: 'open' } | { is: 'sending' } | { is: 'refused'; sentence: string } | { is: 'signed'; signed: Signed };

const WAITS = 'The server does not answer, so the night is not signed off. Nothing is lost: try again where there is a network, or let the office sign off tomorrow.';

/** Asks the server to sign off; an answer that was lost on the way is asked for again under the same key. */
export function useSignOff(nightId: string, onSigned: () => void) {
  const [state, setState] = useState<SignOffState>({ is: 'open' });
  const last = useRef<{ body: string; key: string } | null>(null);
  const tell = (signed: Signed): void => {
    setState({ is: 'signed', signed });
    onSigned();
  };
  /** Somebody else may have signed off, or we did and never heard of it. */
  const lookWhether = async (): Promise<Signed | null> => {
    const { signOff } = await ask<NightTidyView>(`/nights/${nightId}/tidy`);
    return signOff;
  };
  const look = async (): Promise<void> => {
    const signed = await lookWhether().catch(() => null);
    if (signed) setState({ is: 'signed', signed });
  };
  const send = async (form: Omit<SignOffDto, 'decisions' | 'overrideReason'>): Promise<void> => {
    const body = JSON.stringify(form);
    if (last.current?.body !== body) last.current = { body, key: newId() };
    setState({ is: 'sending' });
    try {
      const { signedOffAt, signedOffByName } = await ask<{ signedOffAt: string; signedOffByName: string }>(`/nights/${nightId}/sign-off`, form, last.current.key);
      tell({ at: signedOffAt, byName: signedOffByName });
    } catch (failure) {
      const { status, message } = failure as ServerSaysNo;
      const signed = status === 409 ? await lookWhether().catch(() => null) : null;
      if (signed) tell(signed);
      else setState({ is: 'refused', sentence: status === 0 ? WAITS : message });
    }
  };
  return { state, send, look };
}

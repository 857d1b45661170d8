import { useState } from 'react';
import { useNotify } from 'react-admin';
import { useSend } from '../../api/command.ts';
import { useServer } from '../../api/use-server.ts';
import { iMay } from '../../session/rights.ts';
import type { Night, NightTidy } from '../types.ts';

export type Answer = { answer: 'counts' | 'doesNotCount' | 'different' } | { answer: 'sameAs'; sameAsEntryId: string };

export interface Settling {
  /** null where nobody here may settle anything */
  settle: ((entryId: string, answer: Answer) => void) | null;
  isBusy: boolean;
}

/** The night as it is to be tidied, and the way to settle a thing. After sign-off that is an amendment and takes a reason. */
export function useTidy(night: Night) {
  const tidy = useServer<NightTidy>(`/nights/${night.id}/tidy`);
  const [reason, setReason] = useState('');
  const { send, sending } = useSend();
  const notify = useNotify();
  const isLate = night.state === 'signedOff';
  const settle = async (entryId: string, answer: Answer): Promise<void> => {
    const body = { entryId, ...answer, ...(isLate ? { reason: reason.trim() } : {}) };
    const { errors } = await send(`/nights/${night.id}/settle`, { method: 'POST', body }, isLate ? 'Settled, and booked at once.' : 'Settled.');
    if (errors) notify(sentenceIn(errors), { type: 'error' });
    await tidy.refetch();
  };
  const isAllowed = isLate ? iMay('amendments', 'edit') : iMay('log', 'edit');
  const settling: Settling = { settle: isAllowed ? (entryId, answer) => void settle(entryId, answer) : null, isBusy: sending || (isLate && reason.trim() === '') };
  return { tidy, settling, reason, setReason, asksReason: isLate && isAllowed };
}

function sentenceIn(errors: Record<string, unknown>): string {
  const { root } = errors as { root?: { serverError?: string } };
  return root?.serverError ?? Object.values(errors).map(String).join(' ');
}

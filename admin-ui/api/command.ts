import { useRef, useState } from 'react';
import { HttpError, useNotify, useRefresh } from 'react-admin';
import { ask, newKey, type Asked } from './http.ts';

/** What happens to a record: `POST /api/contracts/:id/sign`. */
export function command<T>(resource: string, id: string | number, verb: string, body: unknown, idempotencyKey: string): Promise<T> {
  return ask<T>(`/${resource}/${id}/${verb}`, { method: 'POST', body: body ?? {}, idempotencyKey });
}

export interface Done<T> {
  answer?: T;
  errors?: Record<string, unknown>;
}

/**
 * Sends a command and says how it went. The key is kept until it succeeds, so that a second press after a
 * broken connection is the same command. `leaves`: the page it was sent from is left, so nothing on it is read again.
 */
export function useSend() {
  const [sending, setSending] = useState(false);
  const key = useRef(newKey());
  const notify = useNotify();
  const refresh = useRefresh();
  const send = async <T,>(path: string, asked: Asked, success: string, leaves = false): Promise<Done<T>> => {
    setSending(true);
    try {
      const answer = await ask<T>(path, { ...asked, idempotencyKey: key.current });
      key.current = newKey();
      notify(success, { type: 'success' });
      if (!leaves) refresh();
      return { answer };
    } catch (error) {
      return { errors: errorsOf(error) };
    } finally {
      setSending(false);
    }
  };
  return { send, sending };
}

/** The errors of a refusal in the form's shape, with a sentence for the whole form where no field is to blame. */
export function errorsOf(error: unknown): Record<string, unknown> {
  const message = error instanceof Error ? error.message : String(error);
  const errors = error instanceof HttpError ? (error.body?.errors as Record<string, unknown> | undefined) : undefined;
  return errors && Object.keys(errors).length > 0 ? errors : { root: { serverError: message } };
}

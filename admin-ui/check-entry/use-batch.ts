import { useCallback, useEffect, useRef, useState } from 'react';
import { HttpError } from 'react-admin';
import { ask, newKey } from '../api/http.ts';
import { today } from '../format/day.ts';
import type { Payment } from '../payments/types.ts';
import { department, knownMe } from '../session/me.ts';
import { isUnheard, type Batch, type BatchCheck, type BatchTerms } from './batch.ts';

const AGAIN_MILLISECONDS = 3000;

const emptyBatch = (): Batch => ({ terms: { sellerId: '', receivedOn: today(), drawer: 'undepositedReceipts', tapeCents: null }, checks: [] });

/** Kept in this tab, so that a page that is loaded again has lost no check. */
function placeOfBatch(): string {
  return `check-entry ${department().id} ${knownMe()?.person.id ?? ''}`;
}

function remembered(): Batch {
  try {
    const kept = JSON.parse(sessionStorage.getItem(placeOfBatch()) ?? 'null') as Batch | null;
    if (!kept) return emptyBatch();
    return { ...kept, checks: kept.checks.map((check) => (check.state === 'sending' ? { ...check, state: 'waiting' } : check)) };
  } catch {
    return emptyBatch();
  }
}

function bodyOf({ sellerId, receivedOn, drawer }: BatchTerms, check: BatchCheck) {
  const applications = check.parts.map(({ invoiceId, amountCents }) => ({ invoiceId, amountCents }));
  return { sellerId, receivedOn, drawer, payerId: check.payerId, method: 'check', reference: check.reference, amountCents: check.amountCents, applications };
}

async function answerTo(terms: BatchTerms, check: BatchCheck): Promise<Partial<BatchCheck>> {
  try {
    const payment = await ask<Payment>('/payments', { method: 'POST', body: bodyOf(terms, check), idempotencyKey: check.key });
    return { state: 'recorded', paymentId: payment.id, number: payment.number };
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    return { state: error instanceof HttpError && !isUnheard(error.status) ? 'refused' : 'waiting', why };
  }
}

/** The checks of one sitting: each is sent at once and again until it is answered. */
export function useBatch(onRecorded: () => void) {
  const [batch, setBatch] = useState(remembered);
  const inFlight = useRef(new Set<string>());
  useEffect(() => sessionStorage.setItem(placeOfBatch(), JSON.stringify(batch)), [batch]);

  const change = useCallback((key: string, changes: Partial<BatchCheck>) => {
    setBatch((now) => ({ ...now, checks: now.checks.map((check) => (check.key === key ? { ...check, ...changes } : check)) }));
  }, []);

  const send = useCallback(async (terms: BatchTerms, check: BatchCheck) => {
    if (inFlight.current.has(check.key)) return;
    inFlight.current.add(check.key);
    const answer = await answerTo(terms, check);
    inFlight.current.delete(check.key);
    change(check.key, answer);
    if (answer.state === 'recorded') onRecorded();
  }, [change, onRecorded]);

  const { terms, checks } = batch;
  const sendWaiting = useCallback(() => {
    for (const check of checks.filter(({ state }) => state === 'waiting')) void send(terms, check);
  }, [terms, checks, send]);
  useEffect(() => {
    const timer = setTimeout(sendWaiting, AGAIN_MILLISECONDS);
    window.addEventListener('online', sendWaiting);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('online', sendWaiting);
    };
  }, [sendWaiting]);

  const add = (written: Omit<BatchCheck, 'key' | 'state'>) => {
    const check: BatchCheck = { ...written, key: newKey(), state: 'sending' };
    setBatch((now) => ({ ...now, checks: [...now.checks, check] }));
    void send(terms, check);
  };
  const setTerms = (changes: Partial<BatchTerms>) => setBatch((now) => ({ ...now, terms: { ...now.terms, ...changes } }));
  const leaveOut = (key: string) => setBatch((now) => ({ ...now, checks: now.checks.filter((check) => check.key !== key) }));
  const begin = () => setBatch((now) => ({ terms: { ...now.terms, tapeCents: null }, checks: [] }));
  return { terms, checks, add, change, leaveOut, setTerms, sendWaiting, begin };
}

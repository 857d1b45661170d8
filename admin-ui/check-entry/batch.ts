import type { Drawer } from '../../server/domain/billing/payment.ts';

/** What stays for all checks of a batch. */
export interface BatchTerms {
  sellerId: string;
  receivedOn: string;
  drawer: Drawer;
  /** what the adding machine said, if somebody ran it */
  tapeCents: number | null;
}

/** An invoice that a check pays, and how much of it. */
export interface Part {
  invoiceId: string;
  invoiceNumber: string;
  amountCents: number;
}

/** `waiting`: the server was not heard; the check is sent again under the same key. */
export type CheckState = 'sending' | 'waiting' | 'recorded' | 'refused' | 'takenBack';

export interface BatchCheck {
  /** the Idempotency-Key of this check, kept until it is answered */
  key: string;
  payerId: string;
  payerName: string;
  reference: string;
  amountCents: number;
  parts: Part[];
  state: CheckState;
  paymentId?: string;
  number?: string;
  why?: string;
}

export interface Batch {
  terms: BatchTerms;
  checks: BatchCheck[];
}

const COUNTS: readonly CheckState[] = ['sending', 'waiting', 'recorded'];

/** The checks that the batch is made of; refused ones and those taken back are none. */
export const countedChecks = (checks: readonly BatchCheck[]): BatchCheck[] => checks.filter((check) => COUNTS.includes(check.state));

export const totalCents = (checks: readonly BatchCheck[]): number => countedChecks(checks).reduce((sum, check) => sum + check.amountCents, 0);

/** What checks on their way already take of each invoice, so that the next proposal does not take it twice. */
export function claimedCents(checks: readonly BatchCheck[]): Map<string, number> {
  const claimed = new Map<string, number>();
  for (const check of checks.filter(({ state }) => state === 'sending' || state === 'waiting')) {
    for (const part of check.parts) claimed.set(part.invoiceId, (claimed.get(part.invoiceId) ?? 0) + part.amountCents);
  }
  return claimed;
}

export const isOnItsWay = (check: BatchCheck): boolean => check.state === 'sending' || check.state === 'waiting';

/** Whether an error leaves open what became of the check; what the server understood and refused does not. */
export const isUnheard = (status: number): boolean => status === 0 || status === 401 || status === 409 || status === 429 || status >= 500;

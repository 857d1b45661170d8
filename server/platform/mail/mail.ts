/** One letter to one address. Days, names and amounts are in its text already. */
export interface Mail {
  /** from it the Message-ID is made, so that a letter that goes out again is known as the same by whoever receives it */
  readonly id: string;
  readonly fromName: string;
  readonly replyTo: string | null;
  readonly to: string;
  readonly subject: string;
  readonly text: string;
  /** written by a clock and not by a person: no machine answers it (RFC 3834) */
  readonly isAutomatic: boolean;
  readonly attachments: readonly { readonly name: string; readonly bytes: Buffer }[];
}

/**
 * What became of it. `refused`: the mail server said no for good, and asking again is of no use. `failed`: another try may
 * do; `mayHaveArrived` where the connection was lost after the whole letter was handed over.
 */
export type MailOutcome =
  | { readonly kind: 'handedOver'; readonly detail: string }
  | { readonly kind: 'refused'; readonly detail: string }
  | { readonly kind: 'failed'; readonly detail: string; readonly mayHaveArrived: boolean };

/** @example messageIdOf('0190…', 'tamarack.example') === '<0190…@tamarack.example>' */
export function messageIdOf(id: string, domain: string): string {
  return `<${id}@${domain}>`;
}

export interface SmtpFailure extends Error {
  code?: string;
  responseCode?: number;
  response?: string;
}

/**
 * @source RFC 5321, 4.2.1: a reply of 5yz is final, one of 4yz is not. That our sign-in is refused (RFC 4954, 535) says
 * nothing about the letter, so it waits until somebody has put the sign-in right.
 *
 * @param wasRead whether the whole letter had been read by the connection when it failed
 */
export function outcomeOf(failure: SmtpFailure, wasRead: boolean): MailOutcome {
  const { code, responseCode } = failure;
  const detail = oneLine(failure.response ?? failure.message);
  if (code === 'EAUTH') return { kind: 'failed', detail: `The mail server does not let us in: ${detail}`, mayHaveArrived: false };
  if (responseCode !== undefined && responseCode >= 500) return { kind: 'refused', detail };
  if (responseCode !== undefined) return { kind: 'failed', detail, mayHaveArrived: false };
  if (code === 'EENVELOPE') return { kind: 'refused', detail };
  return { kind: 'failed', detail, mayHaveArrived: wasRead };
}

function oneLine(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f]+/g, ' ').trim().slice(0, 400);
}

import { LETTER_KINDS } from '../../domain/billing/letters/letter.ts';
import type { LetterKind } from '../../domain/billing/letters/letter.ts';
import { ChoiceField, DayField, EmailField, FlagField, IdField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { ListQuery } from '../../platform/http/lists.ts';
import type { MessageEventKind } from './message-event.entity.ts';

const OPEN = { optional: true, nullable: true };

export const MESSAGE_STATES = ['queued', 'sent', 'refused', 'bounced', 'givenUp'] as const;
export type MessageState = (typeof MESSAGE_STATES)[number];

/** Which letter: its kind and the document, sponsor or contract it is about. */
export class LetterDto {
  @ChoiceField(LETTER_KINDS) kind: LetterKind;
  @IdField() aboutId: string;
  /** the days a statement covers; without them, the fiscal year so far */
  @DayField(OPEN) from?: string | null;
  @DayField(OPEN) to?: string | null;
}

export class SendLetterDto extends LetterDto {
  /** without it, the address of the payer or the sponsor */
  @EmailField(OPEN) toAddress?: string | null;
  @OptionalTextField(200) subject?: string | null;
  @OptionalTextField(10_000) body?: string | null;
  /** a letter that was written already goes once more */
  @FlagField({ optional: true }) again?: boolean;
  @OptionalTextField(500) reason?: string | null;
}

export class BouncedDto {
  @TextField(1, 500) detail: string;
}

export class MessageListQuery extends ListQuery {
  @IdField({ optional: true }) sponsorId?: string;
  @IdField({ optional: true }) aboutId?: string;
  @ChoiceField(LETTER_KINDS, { optional: true }) kind?: LetterKind;
  @ChoiceField(MESSAGE_STATES, { optional: true }) state?: MessageState;
}

/** A letter before it is sent. */
export interface LetterPreview {
  kind: LetterKind;
  aboutId: string;
  /** null where nobody has an address */
  toAddress: string | null;
  subject: string;
  body: string;
  attachments: string[];
  /** how often it was written already */
  writtenBefore: number;
}

export interface MessageView {
  id: string;
  kind: LetterKind;
  aboutId: string;
  sponsorId: string | null;
  sponsorName: string | null;
  payerId: string | null;
  payerName: string | null;
  toAddress: string;
  subject: string;
  state: MessageState;
  /** how often handing it over failed */
  failedTries: number;
  recordedAt: string;
  /** null: written by the clock */
  writtenByName: string | null;
  againBecause: string | null;
}

export interface MessageEventView {
  id: string;
  kind: MessageEventKind;
  detail: string | null;
  recordedAt: string;
}

export interface WholeMessageView extends MessageView {
  fromName: string;
  replyTo: string | null;
  body: string;
  attachments: string[];
  events: MessageEventView[];
}

/** A reminder that would go out today, or why it would not. */
export interface ReminderView {
  id: string;
  number: string;
  payerId: string;
  payerName: string;
  sponsorName: string | null;
  dueOn: string;
  daysPastDue: number;
  /** which of the department’s reminders it is */
  days: number;
  balanceCents: number;
  toAddress: string | null;
  why: string | null;
}

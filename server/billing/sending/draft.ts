import type { Letter, LetterKind } from '../../domain/billing/letters/letter.ts';
import type { Attachment } from './message.entity.ts';

/** A letter ready to be written, and to whom it would go. */
export interface Draft extends Letter {
  readonly kind: LetterKind;
  readonly aboutId: string;
  readonly sponsorId: string | null;
  readonly payerId: string | null;
  /** whose address is meant, for the sentence when there is none */
  readonly toName: string;
  readonly toAddress: string | null;
  readonly fromName: string;
  readonly replyTo: string | null;
  readonly attachments: readonly Attachment[];
  /** tells two letters about one thing apart */
  readonly which: readonly (string | number)[];
}

/** The name of a paper made of a number: it holds nothing that a folder could misunderstand. */
export function paperName(number: string): string {
  return `${number.replace(/[^A-Za-z0-9-]/g, '-')}.pdf`;
}

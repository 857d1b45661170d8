import { OptionalTextField } from '../../platform/http/fields.ts';

export const DOCUMENT_KINDS = ['invoice', 'creditMemo', 'payment', 'receipt', 'depositSlip'] as const;
export type DocumentKind = (typeof DOCUMENT_KINDS)[number];

/** By what a document was found: the first that holds, in this order. */
export type FoundBy = 'number' | 'amount' | 'reference' | 'name';

export class DocumentQuery {
  /** without it, nothing is found */
  @OptionalTextField(100) q?: string | null;
}

export interface FoundDocument {
  kind: DocumentKind;
  id: string;
  number: string;
  /** issued, received, taken or deposited on */
  on: string;
  /** the payer, or the seller of a deposit slip */
  name: string;
  amountCents: number;
  /** a state of its kind */
  state: string;
  /** the number of the check, or another reference */
  reference: string | null;
  foundBy: FoundBy;
}

export interface FoundDocuments {
  data: FoundDocument[];
  total: number;
  /** the amount that was read out of what was typed; null when it is none */
  amountCents: number | null;
}

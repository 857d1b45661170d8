export type TemplateName = 'packet' | 'invoice' | 'statement' | 'account' | 'letter' | 'receipt' | 'depositSlip' | 'offer' | 'performance';

/** What the typesetter's worker is asked; without a template it only looks for characters the font lacks. */
export interface TypesetOrder {
  readonly id: number;
  readonly template: TemplateName | null;
  readonly data: unknown;
  readonly createdAtSeconds: number;
  /** only where the blocks stand is asked for, no paper */
  readonly isPlan?: boolean;
}

/** Where a block came to stand: physical pages, counted from 1. */
export interface BlockMark {
  readonly key: string;
  readonly page: number;
  readonly lastPage: number;
}

export interface TypesetAnswer {
  readonly id: number;
  readonly missing: readonly string[];
  readonly pdf: Uint8Array | null;
  readonly marks: readonly BlockMark[];
  readonly pageCount: number;
  readonly error: string | null;
}

export type TemplateName = 'packet' | 'invoice' | 'statement';

/** What the typesetter's worker is asked; without a template it only looks for characters the font lacks. */
export interface TypesetOrder {
  readonly id: number;
  readonly template: TemplateName | null;
  readonly data: unknown;
  readonly createdAtSeconds: number;
}

export interface TypesetAnswer {
  readonly id: number;
  readonly missing: readonly string[];
  readonly pdf: Uint8Array | null;
  readonly error: string | null;
}

import type { MarkKind } from './copy-mark.ts';

/** One row of a word table: the source of a pattern that is looked for in whole words, whatever its capitals. */
export interface WordRow {
  readonly kind: MarkKind;
  readonly words: string;
  /** the row holds nothing in a sentence in which this stands */
  readonly notWith?: RegExp;
}

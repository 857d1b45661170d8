import { CountField } from '../platform/http/fields.ts';

export class ReadingRateDto {
  /** Words a minute of the 75-word card; null for the department's own. */
  @CountField(60, 240, { nullable: true }) wordsPerMinute: number | null;
}

/** How fast somebody reads aloud. */
export interface ReadingRateView {
  /** null until the person has measured it here */
  wordsPerMinute: number | null;
  /** what packets are timed at for whoever has not */
  usualWordsPerMinute: number;
}

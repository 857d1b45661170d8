import type { DeskLine } from './desk-entry.ts';
import { standingLines } from './line-sentence.ts';

/** A second tap so soon is a bounce of the first; common practice, no source. */
export const BOUNCE_MILLISECONDS = 500;

/**
 * Whether a tap is a bounce of the one before it.
 *
 * @param lastMilliseconds when the one before it came, on the same clock; null where there was none
 */
export function isBounce(lastMilliseconds: number | null, nowMilliseconds: number): boolean {
  return lastMilliseconds !== null && nowMilliseconds - lastMilliseconds < BOUNCE_MILLISECONDS;
}

/** Whether one tap may take this line back. A hold is ended by its deliberate restart alone; what the server did not take is settled by a person. */
export function mayGoBackByOneTap(line: Pick<DeskLine, 'kind' | 'place'>): boolean {
  return line.kind !== 'takenBack' && line.kind !== 'hold' && line.place !== 'needsAttention';
}

/** What "Take back last" takes back: the last line of this device that stands, or null where that is a hold. It never reaches behind a hold. */
export function lastToTakeBack(lines: readonly DeskLine[]): DeskLine | null {
  const last = standingLines(lines).findLast((line) => line.isOwn && line.place !== 'needsAttention');
  return last && mayGoBackByOneTap(last) ? last : null;
}

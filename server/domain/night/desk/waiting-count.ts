import type { DeskLine } from './desk-entry.ts';

/**
 * How many entries the sign-off waits for: those that this device has not sent, taken over from a file or its own, and those
 * it could not even store. What needs attention is not waited for.
 */
export function waitingCount(lines: readonly Pick<DeskLine, 'place'>[], unstoredCount: number): number {
  return unstoredCount + lines.filter((line) => line.place === 'onDevice').length;
}

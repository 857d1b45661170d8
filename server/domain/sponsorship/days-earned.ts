import type { Day } from '../day.ts';
import { daysBetween } from '../day.ts';
import type { HappeningOf } from './happening.ts';
import type { LinePosition, Position } from './position.ts';
import { readsOfLine } from './slot-reads.ts';

/** Whether a line earns a share for each day that passes: a banner, a sign. */
export const earnsOverDays = ({ terms }: LinePosition): boolean => terms.kind === 'benefit' && terms.earns === 'overDays';

/**
 * What benefits over days have still to earn through a day; empty where nothing more has passed, or the contract is closed.
 *
 * @source ASC 606-10-25-27(a) and 25-31: what is used up as it is given is earned as time passes
 */
export function daysEarned({ lines, closed }: Position, throughOn: Day): HappeningOf<'benefitEarnedThrough'>[] {
  if (closed) return [];
  return lines.filter((line) => hasMoreToEarn(line, throughOn)).map((line) => ({ kind: 'benefitEarnedThrough', lineId: line.terms.lineId, throughOn }));
}

function hasMoreToEarn(line: LinePosition, throughOn: Day): boolean {
  const { terms, earnedThroughOn, slots } = line;
  if (terms.kind !== 'benefit' || terms.earns !== 'overDays' || terms.startsOn === undefined) return false;
  if (earnedThroughOn !== undefined && throughOn <= earnedThroughOn) return false;
  const counted = slots.reduce((sum, slot) => sum + slot.counted, 0);
  return readsOfLine(line).owed > 0 && daysBetween(terms.startsOn, throughOn) + 1 > counted;
}

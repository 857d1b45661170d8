import type { Mood } from '../fields/tag.tsx';
import type { Follows } from '../../server/domain/reports/what-follows.ts';
import { moneyText } from '../format/money.ts';
import { count } from '../words/count.ts';
import type { RenewalRow } from './types.ts';

/** What is still to be done is marked; what goes on is good. */
export const FOLLOW_MOODS: Readonly<Record<Follows, Mood>> = {
  signed: 'good', carriedOn: 'good', offered: 'plain', drafted: 'plain', yearsLeft: 'plain', declined: 'bad', lost: 'bad', nothing: 'care',
};

/** "15 of 18 reads given, 1 made good, 2 credited". */
export function givenText({ promised, given, madeGood, credited, owed }: RenewalRow): string {
  if (promised === 0) return 'No reads were promised';
  const parts: [number, string][] = [[madeGood, 'made good'], [credited, 'credited'], [owed, 'still owed']];
  return [`${given} of ${count(promised, 'read')} given`, ...parts.filter(([number]) => number > 0).map(([number, words]) => `${number} ${words}`)].join(', ');
}

export function paidText({ paid, openCents, overdueCents, toBillCents, isInKind }: RenewalRow): string {
  if (paid === 'overdue') return `${moneyText(overdueCents)} overdue`;
  if (paid === 'open') return `${moneyText(openCents)} open, not due yet`;
  if (paid === 'notBilled') return isInKind ? `Goods for ${moneyText(toBillCents)} are still to come` : `${moneyText(toBillCents)} not billed yet`;
  return isInKind ? 'All goods came' : 'Paid';
}

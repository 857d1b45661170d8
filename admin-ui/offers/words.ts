import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { COUNTING_WORDS, wordFor } from '../words/choices.ts';
import { count } from '../words/count.ts';
import type { Offer, OfferedLine, OfferedRead } from './types.ts';

/** A line of reads in a few words: "6 Sponsored game ball, over the whole term". */
export function askedText(line: OfferedRead): string {
  if (line.counting === 'onOccurrence') {
    const least = line.readsAtLeast ? `, at least ${line.readsAtLeast}` : '';
    const most = line.readsAtMost ? `, at most ${line.readsAtMost}` : '';
    return `${line.readKindName}, each time it happens${least}${most}`;
  }
  return `${line.reads} × ${line.readKindName}, ${wordFor(COUNTING_WORDS, line.counting).toLowerCase()}`;
}

export function offerPriceText({ pricing, priceCents, billAtLeastCents, billAtMostCents }: Pick<Offer, 'pricing' | 'priceCents' | 'billAtLeastCents' | 'billAtMostCents'>): string {
  if (pricing === 'fixed') return moneyText(priceCents);
  const least = billAtLeastCents === null ? '' : `, at least ${moneyText(billAtLeastCents)}`;
  const most = billAtMostCents === null ? '' : `, at most ${moneyText(billAtMostCents)}`;
  return `By the reads given${least}${most}`;
}

/** "Today is its last day", "3 more days, through Dec 11, 2026". */
export function lapsesText({ state, lapsesOn, lapsesInDays }: Pick<Offer, 'state' | 'lapsesOn' | 'lapsesInDays'>): string {
  if (state === 'lapsed') return `Lapsed on ${dayText(lapsesOn)}`;
  if (lapsesInDays === null) return dayText(lapsesOn);
  if (lapsesInDays === 0) return 'Today is its last day';
  return `${count(lapsesInDays, 'more day')}, through ${dayText(lapsesOn)}`;
}

const PER: Record<OfferedLine['per'], string> = { read: 'a read', game: 'a game', piece: 'a piece', day: 'a day' };

/** What each read of a line is worth: "$31.12 a read", "2 × $68.19, 4 × $68.18". */
export function eachText({ each, per }: OfferedLine): string {
  if (each.length === 0) return 'nothing yet';
  if (each.length === 1) return `${moneyText(each[0]!.cents)} ${PER[per]}`;
  return each.map((one) => `${one.count} × ${moneyText(one.cents)}`).join(', ');
}

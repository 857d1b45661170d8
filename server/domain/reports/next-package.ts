import { amountText, centsOf } from '../money.ts';
import { WEAK_BELIEF, learned } from '../planning/forecast.ts';
import type { Seen } from '../planning/forecast.ts';
import type { Counting } from '../sponsorship/contract-terms.ts';

/** Whose price a suggestion goes by: the next season's rate card, this season's, or what the contract said. */
export type RateFrom = 'nextSeason' | 'thisSeason' | 'contract';

/** A line of last term with its record. Counts are whole reads or pieces, amounts cents. */
export interface LineRecord {
  readKindId: string | null;
  name: string;
  /** null for a benefit */
  counting: Counting | null;
  /** reads a term, a game or a night; the least on occurrence; pieces of a benefit */
  quantity: number;
  /** the most on occurrence */
  atMost: number | null;
  /** what should have been given by now: all of it once the term is over */
  due: number;
  /** given and made good */
  given: number;
  games: number;
  /** what was counted, where it is read on occurrence */
  seen: Seen | null;
  rateCents: number;
  rateFrom: RateFrom;
}

export interface SuggestedLine {
  readKindId: string | null;
  name: string;
  counting: Counting | null;
  quantity: number;
  atMost: number | null;
  /** how many times the price of one it costs: reads over all games, or pieces */
  countAtRate: number;
  rateCents: number;
  rateFrom: RateFrom;
  worthCents: number;
  /** why, in one sentence without its full stop */
  words: string;
}

export interface PackageOnOffer {
  id: string;
  name: string;
  priceCents: number;
  /** what it carries, in words: "20 × Concession read, 1 × Banner" */
  carries: string;
}

export interface NextPackage {
  lines: SuggestedLine[];
  worthCents: number;
  package: { id: string; name: string; priceCents: number } | null;
  words: string;
}

/** From this share on, a promise that was missed by a read or two is promised again in full. Common practice, no source. */
const KEPT_SHARE = 9 / 10;

/**
 * What to put to a sponsor next: the lines of last term at the next prices, each as often as the record says it can really be
 * given. A line of which nine in ten were given is promised again; of one that fell shorter, only the share that was given. What
 * is read on occurrence is expected as often as the Gamma–Poisson posterior says, within its least and its most. Beside it stands
 * the package nearest in price, none below what the sponsor paid.
 *
 * @param lastPriceCents what last term cost @param packages those on offer for the season
 * @source common practice, no source; for the posterior see `learned`
 */
export function nextPackage(lines: readonly LineRecord[], lastPriceCents: number, packages: readonly PackageOnOffer[]): NextPackage {
  const all = lines.map(suggestedLine);
  const suggested = all.filter((line) => line.countAtRate > 0);
  const worthCents = suggested.reduce((sum, line) => sum + line.worthCents, 0);
  const found = nearestPackage(packages, worthCents, lastPriceCents);
  const sentences = [...all.map((line) => line.words), ...(suggested.length > 1 ? [`In all that is ${money(worthCents)}`] : []), ...(found ? [packageWords(found)] : [])];
  return {
    lines: suggested,
    worthCents,
    package: found && { id: found.id, name: found.name, priceCents: found.priceCents },
    words: sentences.length === 0 ? 'Last term promised nothing that could be offered again.' : `${sentences.join('. ')}.`,
  };
}

/** The nearest in price that is not below the floor; of two as near, the cheaper. Null where every package costs less. */
export function nearestPackage(packages: readonly PackageOnOffer[], aroundCents: number, floorCents: number): PackageOnOffer | null {
  const ofUse = packages.filter((one) => one.priceCents >= floorCents);
  const away = (one: PackageOnOffer) => Math.abs(one.priceCents - aroundCents);
  return ofUse.toSorted((one, other) => away(one) - away(other) || one.priceCents - other.priceCents)[0] ?? null;
}

function suggestedLine(line: LineRecord): SuggestedLine {
  const { quantity, countAtRate, why } = line.counting === 'onOccurrence' ? onOccurrence(line) : fromShare(line);
  const { readKindId, name, counting, atMost, rateCents, rateFrom } = line;
  const worthCents = countAtRate * rateCents;
  const words = countAtRate === 0 ? `${name}: ${why}` : `${name}: ${why} at ${money(rateCents)} is ${money(worthCents)}${FROM[rateFrom]}`;
  return { readKindId, name, counting, quantity, atMost, countAtRate, rateCents, rateFrom, worthCents, words };
}

interface HowMany {
  quantity: number;
  countAtRate: number;
  why: string;
}

function fromShare({ counting, quantity, due, given, games }: LineRecord): HowMany {
  const isEach = counting === 'perGame' || counting === 'perNight';
  const times = isEach ? games : 1;
  const each = counting === 'perGame' ? ' a game' : counting === 'perNight' ? ' a night' : '';
  const of = (count: number) => ({ quantity: count, countAtRate: count * times });
  const inAll = (count: number) => (isEach ? `${count}${each}, ${count * times} in all` : `${count}`);
  const again = `${inAll(quantity)}${isEach ? ',' : ''} again`;
  if (due <= 0) return { ...of(quantity), why: `nothing was due yet; ${again}` };
  const told = `${given} of ${due} given`;
  const count = given >= due * KEPT_SHARE ? quantity : Math.round((quantity * given) / due);
  if (count === quantity) return { ...of(quantity), why: `${told}; ${again}` };
  if (count === 0) return { ...of(0), why: `${told}; not again` };
  return { ...of(count), why: `${told}; ${inAll(count)}, as many as could be given,` };
}

function onOccurrence({ quantity, atMost, games, seen }: LineRecord): HowMany {
  if (!seen || seen.games === 0) return { quantity, countAtRate: quantity, why: `nothing was counted yet; ${quantity} again` };
  const { shape, rate } = learned(WEAK_BELIEF, seen);
  const expected = Math.round((shape / rate) * games);
  const count = Math.max(Math.min(quantity, expected), Math.min(expected, atMost ?? Infinity));
  return {
    quantity: Math.min(quantity, expected),
    countAtRate: count,
    why: `${seen.occurrences} in ${seen.games} ${seen.games === 1 ? 'game' : 'games'} let expect ${expected} in ${games}; ${count}`,
  };
}

const FROM: Readonly<Record<RateFrom, string>> = { nextSeason: '', thisSeason: ' by this season’s rate card', contract: ', the contract’s own price' };

const packageWords = ({ name, priceCents, carries }: PackageOnOffer) => `Package “${name}” at ${money(priceCents)} carries ${carries || 'nothing yet'}`;

const money = (cents: number) => `$${amountText(centsOf(cents))}`;

import type { BillingPlan } from '../../domain/billing/billing-plan.ts';
import { amountText, dayText, shareText } from './amount-text.ts';
import { billingPlanWords } from './billing-plan-words.ts';
import { whereAndWhen, windowWords } from './offer-line-words.ts';
import type { OfferedWhere } from './offer-line-words.ts';

export interface OfferSheetLine extends OfferedWhere {
  readonly name: string;
  /** null: another benefit */
  readonly counting: 'perTerm' | 'perGame' | 'perNight' | 'onOccurrence' | null;
  /** reads of the term, of each game or night; pieces of a benefit */
  readonly quantity: number;
  readonly readsAtLeast: number | null;
  readonly readsAtMost: number | null;
  /** what holds the value, and how much each of it is worth, the first first */
  readonly per: 'read' | 'game' | 'piece' | 'day';
  readonly each: readonly { readonly count: number; readonly cents: number }[];
  readonly valueCents: number;
  readonly isPricedByRead: boolean;
}

export interface OfferSheetExclusivity {
  readonly categoryName: string;
  readonly reach: 'season' | 'game' | 'window';
  readonly schoolName: string | null;
  readonly startsOn: string;
  readonly endsOn: string;
  readonly gameDays: readonly string[];
  readonly windowKinds: readonly string[];
}

/** Everything an offer shows that is put to a sponsor. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface OfferSheet {
  /** null: it was not put yet */
  readonly number: string | null;
  readonly title: string;
  readonly paper: 'letter' | 'a4';
  readonly locale: string;
  readonly currency: string;
  readonly departmentName: string;
  readonly sellerName: string;
  readonly sellerAddress: string | null;
  readonly sponsorName: string;
  readonly sponsorAddress: string | null;
  readonly seasonName: string;
  readonly startsOn: string;
  readonly endsOn: string;
  readonly putOn: string | null;
  readonly lapsesOn: string;
  readonly lines: readonly OfferSheetLine[];
  readonly pricing: 'fixed' | 'perRead';
  readonly priceCents: number;
  readonly billAtLeastCents: number | null;
  readonly billAtMostCents: number | null;
  readonly pricesOfYears: readonly number[];
  readonly increaseBasisPoints: number;
  readonly billingPlan: BillingPlan;
  readonly exclusivities: readonly OfferSheetExclusivity[];
  readonly cancelledGamePolicy: 'credit' | 'valueMovesOn';
  /** only on the department's own copy: what the sponsor is not given */
  readonly officeNotes: readonly string[] | null;
}

const ACKNOWLEDGMENT =
  'Reads are acknowledgments: they name the sponsor, where it is found and what it does. Words that praise or compare, name prices, recommend, or ask people to buy are not read as part of this offer. ' +
  'Nothing on this paper is tax advice.';
const POLICIES = {
  credit: 'If a game is cancelled, the reads counted for that game are credited.',
  valueMovesOn: 'If a game is cancelled, the value of its reads moves on to the reads that remain.',
};
const COUNTED = { perTerm: 'over the whole term', perGame: 'in each game', perNight: 'on each night', onOccurrence: 'each time it happens' };
const LATER_YEARS = 'What is offered is the first year’s; each later year carries the same, as its calendar has the games.';

export function offerTexts(sheet: OfferSheet): Record<string, unknown> {
  const day = (on: string): string => dayText(on, sheet.locale);
  const amount = (cents: number): string => amountText(cents, sheet.locale, sheet.currency);
  const lines = (text: string | null): string[] => (text ?? '').split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== '');
  return {
    heading: sheet.officeNotes === null ? 'Offer' : 'Offer, office copy',
    number: sheet.number ?? 'Draft',
    title: sheet.title,
    paper: sheet.paper === 'a4' ? 'a4' : 'us-letter',
    departmentName: sheet.departmentName,
    sellerName: sheet.sellerName,
    sellerAddress: lines(sheet.sellerAddress),
    sponsorName: sheet.sponsorName,
    sponsorAddress: lines(sheet.sponsorAddress),
    facts: [
      ['Season', sheet.seasonName],
      ['Term', sheet.startsOn === sheet.endsOn ? day(sheet.startsOn) : `${day(sheet.startsOn)} to ${day(sheet.endsOn)}`],
      ...(sheet.putOn === null ? [] : [['Offered on', day(sheet.putOn)]]),
      ['Holds until', day(sheet.lapsesOn)],
    ],
    lines: sheet.lines.map((line) => [line.name, countText(line), whereAndWhen(line, day).join(' · '), eachText(line, amount), line.counting === 'onOccurrence' && line.isPricedByRead ? 'as they come' : amount(line.valueCents)]),
    price: priceText(sheet, amount),
    billing: billingPlanWords(sheet.billingPlan, sheet.priceCents, day, amount),
    years: yearsText(sheet, amount),
    exclusivities: sheet.exclusivities.map((one) => exclusivityText(one, day)),
    policy: POLICIES[sheet.cancelledGamePolicy],
    acknowledgment: ACKNOWLEDGMENT,
    lapses: `This offer holds through ${day(sheet.lapsesOn)}. Signed by then, it becomes a contract.`,
    officeNotes: sheet.officeNotes,
  };
}

function countText({ counting, quantity, readsAtLeast, readsAtMost, per, each }: OfferSheetLine): string {
  if (counting === null) return per === 'day' ? `${quantity}, over ${sum(each)} days` : String(quantity);
  if (counting === 'onOccurrence') {
    const bounds = [readsAtLeast ? `at least ${readsAtLeast}` : '', readsAtMost === null ? '' : `at most ${readsAtMost}`].filter((bound) => bound !== '');
    return [COUNTED.onOccurrence, ...bounds].join(', ');
  }
  const inAll = counting === 'perTerm' ? '' : `, ${sum(each)} in all`;
  return `${quantity} ${COUNTED[counting]}${inAll}`;
}

const sum = (each: OfferSheetLine['each']): number => each.reduce((all, { count }) => all + count, 0);

function eachText({ each, per, counting, isPricedByRead }: OfferSheetLine, amount: (cents: number) => string): string {
  if (isPricedByRead && counting === 'onOccurrence') return `${amount(each[0]?.cents ?? 0)} a read`;
  if (each.length === 0) return '';
  if (per === 'day') return 'evenly by the day';
  const [only] = each;
  if (each.length === 1) return `${amount(only!.cents)} a ${per}`;
  return `${each.map(({ count, cents }) => `${count} × ${amount(cents)}`).join(', ')}`;
}

function priceText({ pricing, priceCents, billAtLeastCents, billAtMostCents }: OfferSheet, amount: (cents: number) => string): string {
  if (pricing === 'fixed') return amount(priceCents);
  const bounds = [billAtLeastCents === null ? '' : `at least ${amount(billAtLeastCents)}`, billAtMostCents === null ? '' : `at most ${amount(billAtMostCents)}`];
  return ['by the reads given', ...bounds.filter((bound) => bound !== ''), ...(priceCents > 0 ? [`and ${amount(priceCents)} for the rest`] : [])].join(', ');
}

function yearsText({ pricesOfYears, increaseBasisPoints, pricing }: OfferSheet, amount: (cents: number) => string): string | null {
  if (pricesOfYears.length < 2) return null;
  const years = `${pricesOfYears.length} years. `;
  const rise = increaseBasisPoints === 0 ? 'Each year costs the same.' : `Each year costs ${shareText(increaseBasisPoints)} more than the year before, rounded to the cent (half a cent up).`;
  const prices = pricing === 'fixed' ? `${pricesOfYears.map((cents, place) => `Year ${place + 1}: ${amount(cents)}`).join('; ')}. ` : '';
  return `${years}${prices}${rise} ${LATER_YEARS}`;
}

function exclusivityText({ categoryName, reach, schoolName, startsOn, endsOn, gameDays, windowKinds }: OfferSheetExclusivity, day: (on: string) => string): string {
  const whose = schoolName === null ? '' : ` of ${schoolName}`;
  const where = {
    season: `from ${day(startsOn)} to ${day(endsOn)}`,
    game: `in the games of ${gameDays.map(day).join(', ')}`,
    window: `${windowWords(windowKinds)}, from ${day(startsOn)} to ${day(endsOn)}`,
  }[reach];
  return `The only sponsor${whose} of the category ${categoryName} ${where}. This is about sponsors; it does not say what may be sold or used at the games.`;
}

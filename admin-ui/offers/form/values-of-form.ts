import type { Day } from '../../../server/domain/day.ts';
import { centsOf } from '../../../server/domain/money.ts';
import { Refused } from '../../../server/domain/refusals.ts';
import type { Counting, Pricing } from '../../../server/domain/sponsorship/contract-terms.ts';
import { offeredValues, type OfferedLine } from '../../../server/domain/sponsorship/offers/offered-values.ts';
import { termsOfDraft, type DraftBenefit, type DraftGame, type DraftRead } from '../../../server/domain/sponsorship/terms-of-draft.ts';
import type { Game } from '../../games/types.ts';
import type { ReadKind } from '../../read-kinds/types.ts';

export interface FormTerm {
  seasonId?: string;
  startsOn?: string;
  endsOn?: string;
  pricing?: Pricing;
  priceCents?: unknown;
}

export type FormLine = Record<string, unknown>;

const cents = (value: unknown) => centsOf(typeof value === 'number' && Number.isSafeInteger(value) ? value : 0);
const whole = (value: unknown): number => (Number.isSafeInteger(Number(value)) ? Math.max(0, Math.min(10_000, Number(value))) : 0);
const wholeOrNull = (value: unknown): number | null => (value === null || value === undefined || value === '' ? null : whole(value));
const dayOrNull = (value: unknown): Day | null => (typeof value === 'string' && value !== '' ? (value as Day) : null);
const list = <T>(value: unknown): T[] => (Array.isArray(value) ? (value as T[]) : []);

export function draftGameOf({ id, playedOn, movedFromOn, status, class: gameClass, level, announced, isHome, participants, nightIds }: Game): DraftGame {
  return { id, playedOn, movedFromOn, status, class: gameClass, level, announced, isHome, teamIds: participants.filter((one) => one.isOurs).map((one) => one.teamId), nightIds };
}

function readOf(line: FormLine, place: number, kinds: readonly ReadKind[]): DraftRead {
  return {
    id: `read ${place}`,
    readKindName: kinds.find((kind) => kind.id === line['readKindId'])?.name ?? 'Reads',
    counting: (line['counting'] ?? 'perTerm') as Counting,
    reads: whole(line['reads']),
    readsAtLeast: wholeOrNull(line['readsAtLeast']),
    readsAtMost: wholeOrNull(line['readsAtMost']),
    rateCents: cents(line['rateCents']),
    priceEachCents: typeof line['priceEachCents'] === 'number' ? cents(line['priceEachCents']) : null,
    isTaxed: true,
    startsOn: dayOrNull(line['startsOn']),
    endsOn: dayOrNull(line['endsOn']),
    teamIds: list(line['teamIds']),
    levels: list(line['levels']),
    blackoutDays: list(line['blackoutDays']),
  };
}

function benefitOf(line: FormLine, place: number): DraftBenefit {
  return {
    id: `benefit ${place}`,
    name: typeof line['name'] === 'string' && line['name'] !== '' ? line['name'] : 'Benefit',
    quantity: whole(line['quantity'] ?? 1),
    rateCents: cents(line['rateCents']),
    isTaxed: true,
    earns: line['earns'] === 'overDays' ? 'overDays' : 'onDelivery',
    startsOn: dayOrNull(line['startsOn']),
    endsOn: dayOrNull(line['endsOn']),
  };
}

/** The values of a form's lines, or in a sentence what is missing yet. */
export function valuesOfForm(term: FormTerm | undefined, reads: readonly FormLine[], benefits: readonly FormLine[], games: readonly Game[], kinds: readonly ReadKind[]): { values: OfferedLine[]; trouble: string | null } {
  const none = (trouble: string) => ({ values: [], trouble });
  const known = reads.filter((line) => line?.['readKindId']);
  const named = benefits.filter((line) => line?.['name']);
  if (!term?.startsOn || !term.endsOn) return none('Say from which day to which day the offer runs.');
  if (known.length + named.length === 0) return none('Add a line of reads or a benefit to see what each is worth.');
  const pricing = term.pricing ?? 'fixed';
  const priceCents = pricing === 'perRead' ? centsOf(0) : cents(term.priceCents);
  const of = { startsOn: term.startsOn as Day, endsOn: term.endsOn as Day, pricing, priceCents, billAtLeastCents: null, billAtMostCents: null };
  const draft = { dealId: 'form', term: of, reads: known.map((line, place) => readOf(line, place, kinds)), benefits: named.map(benefitOf), cancelledGamePolicy: 'credit' as const, isInKind: false };
  try {
    return { values: offeredValues(termsOfDraft(draft, games.map(draftGameOf))), trouble: null };
  } catch (refused) {
    if (refused instanceof Refused) return none(refused.message);
    throw refused;
  }
}

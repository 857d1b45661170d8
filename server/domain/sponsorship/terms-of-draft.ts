import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { refuse } from '../refusals.ts';
import type { BenefitLine, CancelledGamePolicy, ContractTerms, GameReads, LineTerms, Pricing, ReadLine } from './contract-terms.ts';
import { coveredGames } from './covered-games.ts';
import type { CommitmentTerms, CoveredGame } from './covered-games.ts';

/** A game of the season with the nights it is played on, first to last. */
export interface DraftGame extends CoveredGame {
  readonly nightIds: readonly string[];
}

/** The days and the price that a draft is written with. */
export interface DraftTerm {
  readonly startsOn: Day;
  readonly endsOn: Day;
  readonly pricing: Pricing;
  readonly priceCents: Cents;
  readonly billAtLeastCents: Cents | null;
  readonly billAtMostCents: Cents | null;
}

/** A commitment of a draft contract, or a read line of an offer. */
export interface DraftRead extends CommitmentTerms {
  readonly readKindName: string;
  readonly readsAtLeast: number | null;
  readonly readsAtMost: number | null;
  /** the rate card's price of one read */
  readonly rateCents: Cents;
  readonly priceEachCents: Cents | null;
  readonly isTaxed: boolean;
}

export interface DraftBenefit {
  readonly id: string;
  readonly name: string;
  readonly quantity: number;
  readonly rateCents: Cents;
  readonly isTaxed: boolean;
  readonly earns: 'onDelivery' | 'overDays';
  readonly startsOn: Day | null;
  readonly endsOn: Day | null;
}

/** What is written down of a deal before anybody has signed it. */
export interface Draft {
  readonly dealId: string;
  readonly term: DraftTerm;
  /** in their places */
  readonly reads: readonly DraftRead[];
  readonly benefits: readonly DraftBenefit[];
  readonly cancelledGamePolicy: CancelledGamePolicy;
  readonly isInKind: boolean;
}

/**
 * A draft as it is signed: its lines in their places, with the games or nights that the calendar has for them now.
 *
 * @param games of the season, in the order of play
 * @throws Refused `no-games-covered` when there is a price and nothing that could carry it
 * @throws Refused `price-beside-price-each`
 */
export function termsOfDraft({ dealId, term, reads, benefits, cancelledGamePolicy, isInKind }: Draft, games: readonly DraftGame[]): ContractTerms {
  const readLines = reads.map((read) => readLineOfDraft(read, term, games));
  const benefitLines = benefits.map(benefitLineOfDraft);
  const all: LineTerms[] = [...readLines, ...benefitLines];
  if (term.pricing === 'perRead' && term.priceCents > 0 && benefitLines.length === 0) refuse('price-beside-price-each');
  if (term.priceCents > 0 && all.length > 0 && readLines.length === all.length && readLines.every(coversNothing)) refuse('no-games-covered');
  return {
    contractId: dealId,
    priceCents: term.priceCents,
    ...(isInKind ? { inKindCents: term.priceCents } : {}),
    ...(term.billAtLeastCents === null ? {} : { billAtLeastCents: term.billAtLeastCents }),
    ...(term.billAtMostCents === null ? {} : { billAtMostCents: term.billAtMostCents }),
    cancelledGame: cancelledGamePolicy,
    lines: all,
  };
}

function coversNothing(line: ReadLine): boolean {
  if (line.counting === 'perGame' || line.counting === 'perNight') return line.games?.length === 0;
  return line.gamesPlanned === 0;
}

/** A read line as it enters the ledgers; it counts over its own days, or else its term's. */
export function readLineOfDraft(read: DraftRead, term: Omit<DraftTerm, 'priceCents' | 'billAtLeastCents' | 'billAtMostCents'>, games: readonly DraftGame[]): ReadLine {
  const { counting, readsAtLeast, readsAtMost, priceEachCents } = read;
  const covered = coveredGames({ ...read, startsOn: read.startsOn ?? term.startsOn, endsOn: read.endsOn ?? term.endsOn }, games);
  const earnsByGame = counting === 'onOccurrence' && term.pricing === 'fixed' && !readsAtLeast;
  return {
    kind: 'reads',
    lineId: read.id,
    name: read.readKindName,
    counting,
    pricing: term.pricing,
    reads: counting === 'onOccurrence' ? 0 : read.reads,
    ...(counting === 'perGame' || counting === 'perNight' ? { games: gamesOf(read, covered) } : {}),
    ...(counting === 'onOccurrence' && readsAtLeast !== null ? { readsAtLeast } : {}),
    ...(counting === 'onOccurrence' && readsAtMost !== null ? { readsAtMost } : {}),
    ...(earnsByGame ? { gamesPlanned: covered.length } : {}),
    rateCents: read.rateCents,
    ...(term.pricing === 'perRead' ? { priceEachCents: priceEachCents ?? read.rateCents } : {}),
    ...(read.isTaxed ? {} : { isTaxed: false as const }),
  };
}

/** Games, or nights by their ids; a game that has no night yet stands for one. */
function gamesOf({ counting, reads }: DraftRead, covered: readonly DraftGame[]): GameReads[] {
  if (counting === 'perGame') return covered.map((game) => ({ gameId: game.id, reads }));
  const nights = new Set(covered.map((game) => game.nightIds.at(-1) ?? game.id));
  return [...nights].map((nightId) => ({ gameId: nightId, reads }));
}

export function benefitLineOfDraft(benefit: DraftBenefit): BenefitLine {
  return {
    kind: 'benefit',
    lineId: benefit.id,
    name: benefit.name,
    quantity: benefit.quantity,
    rateCents: benefit.rateCents,
    earns: benefit.earns,
    ...(benefit.startsOn ? { startsOn: benefit.startsOn } : {}),
    ...(benefit.endsOn ? { endsOn: benefit.endsOn } : {}),
    ...(benefit.isTaxed ? {} : { isTaxed: false as const }),
  };
}

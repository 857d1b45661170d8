import type { Cents } from '../domain/money.ts';
import { NO_MONEY } from '../domain/money.ts';
import { refuse } from '../domain/refusals.ts';
import type { BenefitLine, ContractTerms, GameReads, LineTerms, ReadLine } from '../domain/sponsorship/contract-terms.ts';
import type { Benefit } from './benefit.entity.ts';
import type { Commitment } from './commitment.entity.ts';
import type { ContractRecord } from './contract-records.service.ts';
import { coveredBy } from './covered-games.service.ts';
import type { GameOfSeason } from './covered-games.service.ts';
import type { Term } from './term.entity.ts';

export interface ContractLines {
  commitments: readonly (Commitment & { readKindName: string })[];
  benefits: readonly Benefit[];
}

/**
 * A draft as it is signed: its lines in their places, with the games or nights that the calendar has for them now.
 *
 * @throws Refused `no-games-covered` when there is a price and nothing that could carry it
 * @throws Refused `price-beside-price-each`
 */
export function termsOfRows({ contract, term }: ContractRecord, lines: ContractLines, games: readonly GameOfSeason[]): ContractTerms {
  const readLines = lines.commitments.map((commitment) => readLineOf(commitment, term, games));
  const benefitLines = lines.benefits.map(benefitLineOf);
  const all: LineTerms[] = [...readLines, ...benefitLines];
  if (term.pricing === 'perRead' && term.priceCents > 0 && benefitLines.length === 0) refuse('price-beside-price-each');
  if (term.priceCents > 0 && all.length > 0 && readLines.length === all.length && readLines.every(coversNothing)) refuse('no-games-covered');
  return {
    contractId: contract.id,
    priceCents: term.priceCents,
    ...(contract.isInKind ? { inKindCents: term.priceCents } : {}),
    ...(term.billAtLeastCents === null ? {} : { billAtLeastCents: term.billAtLeastCents }),
    ...(term.billAtMostCents === null ? {} : { billAtMostCents: term.billAtMostCents }),
    cancelledGame: contract.cancelledGamePolicy,
    lines: all,
  };
}

function coversNothing(line: ReadLine): boolean {
  if (line.counting === 'perGame' || line.counting === 'perNight') return line.games?.length === 0;
  return line.gamesPlanned === 0;
}

/** A commitment as it enters the ledgers. */
export function readLineOf(commitment: ContractLines['commitments'][number], term: Term, games: readonly GameOfSeason[]): ReadLine {
  const { counting, readsAtLeast, readsAtMost, priceEachCents } = commitment;
  const covered = coveredBy({ ...commitment, seasonId: term.seasonId, termStartsOn: term.startsOn, termEndsOn: term.endsOn }, games);
  const earnsByGame = counting === 'onOccurrence' && term.pricing === 'fixed' && !readsAtLeast;
  return {
    kind: 'reads',
    lineId: commitment.id,
    name: commitment.readKindName,
    counting,
    pricing: term.pricing,
    reads: counting === 'onOccurrence' ? 0 : commitment.reads,
    ...(counting === 'perGame' || counting === 'perNight' ? { games: gamesOf(commitment, covered) } : {}),
    ...(counting === 'onOccurrence' && readsAtLeast !== null ? { readsAtLeast } : {}),
    ...(counting === 'onOccurrence' && readsAtMost !== null ? { readsAtMost } : {}),
    ...(earnsByGame ? { gamesPlanned: covered.length } : {}),
    rateCents: commitment.rateCents,
    ...(term.pricing === 'perRead' ? { priceEachCents: priceEachCents ?? commitment.rateCents } : {}),
    ...(commitment.isTaxed ? {} : { isTaxed: false }),
  };
}

/** Games, or nights by their ids; a game that has no night yet stands for one. */
function gamesOf({ counting, reads }: Pick<Commitment, 'counting' | 'reads'>, covered: readonly GameOfSeason[]): GameReads[] {
  if (counting === 'perGame') return covered.map((game) => ({ gameId: game.id, reads }));
  const nights = new Set(covered.map((game) => game.nightIds.at(-1) ?? game.id));
  return [...nights].map((nightId) => ({ gameId: nightId, reads }));
}

export function benefitLineOf(benefit: Benefit): BenefitLine {
  return {
    kind: 'benefit',
    lineId: benefit.id,
    name: benefit.name,
    quantity: benefit.quantity,
    rateCents: benefit.rateCents ?? (NO_MONEY as Cents),
    earns: benefit.earns,
    ...(benefit.startsOn ? { startsOn: benefit.startsOn } : {}),
    ...(benefit.endsOn ? { endsOn: benefit.endsOn } : {}),
    ...(benefit.isTaxed ? {} : { isTaxed: false }),
  };
}

import type { Cents } from '../domain/money.ts';
import { NO_MONEY } from '../domain/money.ts';
import type { BenefitLine, ContractTerms, ReadLine } from '../domain/sponsorship/contract-terms.ts';
import { benefitLineOfDraft, readLineOfDraft, termsOfDraft } from '../domain/sponsorship/terms-of-draft.ts';
import type { Benefit } from './benefit.entity.ts';
import type { Commitment } from './commitment.entity.ts';
import type { ContractRecord } from './contract-records.service.ts';
import type { GameOfSeason } from './covered-games.service.ts';
import type { Term } from './term.entity.ts';

export interface ContractLines {
  commitments: readonly (Commitment & { readKindName: string })[];
  benefits: readonly Benefit[];
}

/**
 * A draft as it is signed: its lines in their places, with the games or nights that the calendar has for them now.
 *
 * @throws Refused as `termsOfDraft` does
 */
export function termsOfRows({ contract, term }: ContractRecord, lines: ContractLines, games: readonly GameOfSeason[]): ContractTerms {
  const { cancelledGamePolicy, isInKind } = contract;
  const draft = { dealId: contract.id, term, reads: lines.commitments.map((one) => inSeason(one, term)), benefits: lines.benefits.map(priced), cancelledGamePolicy, isInKind };
  return termsOfDraft(draft, games);
}

/** A commitment as it enters the ledgers. */
export function readLineOf(commitment: ContractLines['commitments'][number], term: Term, games: readonly GameOfSeason[]): ReadLine {
  return readLineOfDraft(inSeason(commitment, term), term, games);
}

export function benefitLineOf(benefit: Benefit): BenefitLine {
  return benefitLineOfDraft(priced(benefit));
}

/** One that names no team counts over its term's season alone. */
function inSeason<Line>(line: Line, { seasonId }: Term): Line & { seasonId: string } {
  return { ...line, seasonId };
}

function priced(benefit: Benefit): Benefit {
  return { ...benefit, rateCents: benefit.rateCents ?? (NO_MONEY as Cents) };
}

import type { Cents } from '../money.ts';
import { splitEvenly } from '../money.ts';

/** What is known of where an amount of revenue was earned; each list of teams may be empty. */
export interface EarnedWhere {
  /** our teams in the game in which the read was given */
  gameTeamIds: readonly string[];
  /** the teams whose games the commitment names */
  lineTeamIds: readonly string[];
  /** the teams that any commitment of the contract names */
  contractTeamIds: readonly string[];
}

/** A part of an amount of revenue; without a team it is the department's as a whole. */
export interface IncomeShare {
  teamId: string | null;
  cents: Cents;
}

/**
 * The teams revenue belongs to: those of the game it was earned in; where it was earned in none (a banner, a fee, a
 * forfeit), those that its commitment names, else those that the contract names, each once.
 *
 * @source common practice, no source: the business office decides
 */
export function teamsEarning({ gameTeamIds, lineTeamIds, contractTeamIds }: EarnedWhere): string[] {
  const [found = []] = [gameTeamIds, lineTeamIds, contractTeamIds].filter((teamIds) => teamIds.length > 0);
  return [...new Set(found)];
}

/**
 * An amount of revenue by team, evenly, the earlier teams a cent larger where it does not go up; the parts always re-add
 * to the amount, and what takes back splits as the mirror of what it takes back.
 *
 * @param amountCents above zero what is earned, below zero what is taken back
 */
export function splitIncome(amountCents: Cents, teamIds: readonly string[]): IncomeShare[] {
  if (teamIds.length === 0) return [{ teamId: null, cents: amountCents }];
  const parts = splitEvenly(amountCents, teamIds.length);
  return teamIds.map((teamId, place) => ({ teamId, cents: parts[place]! }));
}

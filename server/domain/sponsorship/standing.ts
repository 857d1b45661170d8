import type { LinePosition, Position } from './position.ts';
import type { SlotReads } from './slot-reads.ts';
import { readsOfLine } from './slot-reads.ts';
import { lineOf } from './line-of.ts';

/** What the calendar and the log say of a commitment; both lie outside the contract. */
export interface PaceFacts {
  /** the commitment's games, all of the term */
  gamesInAll: number;
  /** those that were played by now */
  gamesPlayed: number;
  /** reads logged as given on nights that are not signed off, replacements among them */
  loggedNotSignedOff: number;
  /** of those, the replacements, by their makegood */
  loggedMakegoods?: ReadonlyMap<string, number>;
}

/** Where a commitment stands, for a screen or a statement. All in reads. */
export interface Standing extends SlotReads {
  /** what the games played so far should have carried */
  expectedByNow: number;
  /** expected and neither given, made good nor otherwise settled */
  behind: number;
  loggedNotSignedOff: number;
}

/** @throws Refused `unknown-line` */
export function standingOf(position: Position, lineId: string, facts: PaceFacts): Standing {
  const line = lineOf(position, lineId);
  const reads = readsOfLine(line);
  const occurrences = line.slots.reduce((sum, slot) => sum + slot.occurrences, 0);
  const expectedByNow = expectedReads(line, { ...facts, occurrences });
  const settled = reads.given + reads.madeGood + reads.credited + reads.released;
  return {
    ...reads,
    expectedByNow,
    behind: Math.max(0, Math.min(reads.owed, expectedByNow - settled - settledByLogged(line, facts))),
    loggedNotSignedOff: facts.loggedNotSignedOff,
  };
}

/** What is logged and not signed off, apart: reads as they were promised, and replacements by their makegood; more than were agreed are reads like any other. */
export function loggedApart(line: LinePosition, { loggedNotSignedOff, loggedMakegoods }: Pick<PaceFacts, 'loggedNotSignedOff' | 'loggedMakegoods'>) {
  const replacements = line.slots.flatMap((slot) => slot.makegoods).map((makegood) => ({ makegood, logged: Math.min(loggedMakegoods?.get(makegood.makegoodId) ?? 0, makegood.replacements - makegood.given) }));
  return { own: loggedNotSignedOff - replacements.reduce((sum, { logged }) => sum + logged, 0), replacements };
}

/** Promised reads that are settled once what is logged counts: missed read i of N by replacement ⌈i × M / N⌉ of M. */
function settledByLogged(line: LinePosition, facts: PaceFacts): number {
  const { own, replacements } = loggedApart(line, facts);
  return replacements.reduce((sum, { makegood: { missed, replacements: of, given, settled }, logged }) => sum + (logged === 0 ? 0 : Math.max(0, Math.floor(((given + logged) * missed) / of) - settled)), own);
}

/**
 * Even pace: the share of the promise that the share of games played should have carried, rounded down so that
 * nobody is called behind for a part of a read. On occurrence the shots that fell are what should have been read.
 *
 * @param by games of the term and those played, and what occurred, by the day that is asked for
 */
export function expectedReads(line: LinePosition, by: { readonly gamesInAll: number; readonly gamesPlayed: number; readonly occurrences: number }): number {
  const reads = readsOfLine(line);
  const promised = reads.promised - reads.carried;
  if (line.terms.kind === 'reads' && line.terms.counting === 'onOccurrence') {
    const atMost = line.slots.reduce((sum, slot) => sum + (slot.atMost ?? Infinity), 0);
    return Math.min(promised, atMost, by.occurrences);
  }
  if (by.gamesInAll <= 0) return 0;
  return Math.floor((promised * Math.min(by.gamesPlayed, by.gamesInAll)) / by.gamesInAll);
}

/** Standings of several commitments added up. */
export function sumOfStandings(standings: readonly Standing[]): Standing {
  const sum: Standing = {
    promised: 0,
    owed: 0,
    given: 0,
    madeGood: 0,
    credited: 0,
    released: 0,
    carried: 0,
    extra: 0,
    expectedByNow: 0,
    behind: 0,
    loggedNotSignedOff: 0,
  };
  for (const standing of standings) for (const name of Object.keys(sum) as (keyof Standing)[]) sum[name] += standing[name];
  return sum;
}

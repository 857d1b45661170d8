import { REASON_WORDS } from '../../domain/night/reason-words.ts';
import { AT_THE_TABLE, initialsOfPerson } from '../../domain/reports/at-the-table.ts';
import { missedReadOf } from '../../domain/reports/reads-that-stand.ts';
import type { ReadThatStands } from '../../domain/reports/reads-that-stand.ts';
import { windowHeading } from '../../domain/planning/words/window.ts';
import type { Day } from '../../domain/day.ts';
import type { Instant } from '../../domain/instant.ts';
import type { ReadGiven } from './fulfillment.dto.ts';
import type { PlannedRow } from './fulfillment-rows.service.ts';

/** A read or a mention as it stands in the log. */
export interface LoggedRead {
  entryId: string;
  nightId: string;
  gameId: string | null;
  commitmentId: string;
  kind: 'read' | 'mention';
  outcome: 'given' | 'cutShort' | 'notRead';
  reason: string | null;
  cueKey: string | null;
  occurrence: number;
  happeningEntryId: string | null;
  placementId: string | null;
  windowKey: string | null;
  at: Instant;
  copyTitle: string | null;
  copyVersionNumber: number | null;
  isTakenBack: boolean;
  byName: string | null;
  /** the occurrences that the ledger counts of it */
  counted: number[];
}

export interface MakegoodOfProof {
  id: string;
  commitmentId: string;
  missed: number;
  replacements: number;
  readKindName: string;
  missedGameOn: Day | null;
  /** the days of the missed reads, where they were put to the sponsor one by one */
  missedOn: Day[];
}

export interface ReadsContext {
  /** what stands in the ledger, by entry, first part first */
  stands: ReadonlyMap<string, readonly ReadThatStands[]>;
  /** every entry that the ledger ever counted */
  everCounted: ReadonlySet<string>;
  makegoods: ReadonlyMap<string, MakegoodOfProof>;
  /** what a commitment is called, by its id */
  kindNames: ReadonlyMap<string, string>;
  /** by entry and occurrence */
  disputes: ReadonlyMap<string, string>;
  isSignedOff: (nightId: string) => boolean;
}

export const disputeKey = (entryId: string, occurrence: number): string => `${entryId} ${occurrence}`;

/** What a read answers: two entries that answer the same are one read. */
function claimOf(row: LoggedRead): string {
  const cue = row.kind === 'mention' ? (row.happeningEntryId ?? row.entryId) : row.cueKey;
  return `${row.nightId} ${row.gameId} ${row.commitmentId} ${cue} ${row.occurrence}`;
}

/** The reads of the log as a statement shows them; doubles, and what was corrected at the table, are left out. */
export function readsOfLog(rows: readonly LoggedRead[], context: ReadsContext): { nightId: string; placementId: string | null; read: ReadGiven }[] {
  const voiced = new Set(rows.filter((row) => !row.isTakenBack && (row.counted.length > 0 || row.outcome === 'given')).map(claimOf));
  const shown = new Set<string>();
  return rows.flatMap((row) => {
    const { nightId, placementId } = row;
    if (row.counted.length > 0) return countedReads(row, context).map((read) => ({ nightId, placementId, read }));
    const what = uncountedAs(row, context);
    if (what === null) return [];
    const claim = `${what === 'takenBack' ? row.entryId : claimOf(row)}`;
    const isAnswered = (what === 'notRead' || what === 'cutShort') && voiced.has(claim);
    if (isAnswered || shown.has(claim)) return [];
    shown.add(claim);
    return [{ nightId, placementId, read: { ...readOf(row, row.occurrence, context), what, why: whyOf(row, what) } }];
  });
}

/** What an entry is that the ledger does not count; null where it is not worth a line. */
function uncountedAs(row: LoggedRead, { everCounted, isSignedOff }: ReadsContext): ReadGiven['what'] | null {
  if (everCounted.has(row.entryId)) return 'takenBack';
  if (row.isTakenBack) return null;
  if (row.outcome !== 'given') return row.outcome;
  return isSignedOff(row.nightId) ? null : 'logged';
}

function whyOf(row: LoggedRead, what: ReadGiven['what']): string | null {
  if (what === 'takenBack') return row.isTakenBack ? 'taken back after the night was signed off' : 'not counted after all';
  return what === 'notRead' || what === 'cutShort' ? reasonOf(row.reason) : null;
}

/** A reason of the list, never what was typed at the table: that may name somebody, and a sponsor reads this. */
function reasonOf(reason: string | null): string {
  return (REASON_WORDS as Readonly<Record<string, string>>)[reason ?? ''] ?? (reason === null ? 'no reason given' : REASON_WORDS.other);
}

function countedReads(row: LoggedRead, context: ReadsContext): ReadGiven[] {
  const parts = context.stands.get(row.entryId) ?? [];
  return row.counted.map((occurrence, place) => {
    const part = parts[place];
    const makegood = part?.makegoodId ? context.makegoods.get(part.makegoodId) : undefined;
    const read = readOf(row, occurrence, context);
    return { ...read, readKindName: makegood?.readKindName ?? read.readKindName, what: part?.what ?? 'given', forMissedOn: makegood && part?.replacement ? missedOnOf(makegood, part.replacement) : null };
  });
}

function missedOnOf(makegood: MakegoodOfProof, replacement: number): Day | null {
  return makegood.missedOn[missedReadOf(replacement, makegood.missed, makegood.replacements) - 1] ?? makegood.missedGameOn;
}

function readOf(row: LoggedRead, occurrence: number, { kindNames, disputes }: ReadsContext): ReadGiven {
  const { entryId, commitmentId, gameId, windowKey, at, copyTitle, copyVersionNumber } = row;
  return {
    entryId, occurrence, commitmentId, gameId, windowKey, at, copyTitle, copyVersionNumber,
    readKindName: kindNames.get(commitmentId) ?? '',
    windowName: windowKey === null ? null : windowHeading(windowKey),
    what: 'given', why: null,
    atTheTable: row.byName === null ? AT_THE_TABLE : initialsOfPerson(row.byName),
    forMissedOn: null,
    disputeId: disputes.get(disputeKey(entryId, occurrence)) ?? null,
  };
}

/** A planned read of a night signed off of which the log says nothing. */
export function unloggedRead({ commitmentId, makegoodId, gameId, windowKey }: PlannedRow, { kindNames, makegoods }: ReadsContext): ReadGiven {
  return {
    entryId: null, occurrence: 0, commitmentId, gameId, windowKey, at: null, copyTitle: null, copyVersionNumber: null,
    readKindName: (makegoodId === null ? undefined : makegoods.get(makegoodId)?.readKindName) ?? kindNames.get(commitmentId) ?? '',
    windowName: windowHeading(windowKey), what: 'notRead', why: 'nothing in the log', atTheTable: null, forMissedOn: null, disputeId: null,
  };
}

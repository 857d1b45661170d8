import { voicedOutcome } from './count-outcome.ts';
import type { CountOutcome, Decisions } from './count-outcome.ts';
import { inOrder } from './log-entry.ts';
import type { LogEntry } from './log-entry.ts';
import { mentionsToCount } from './mentions-to-count.ts';
import type { Occurrence, OccurrenceTerms, OpenQuestion, Settled } from './occurrences.ts';
import { standing } from './take-back.ts';

/** One sponsor read as sign-off sees it. Game, cue and occurrence make the claim within the night. */
export interface ReadToCount {
  readonly nightId: string;
  readonly gameId: string | null;
  readonly cueKey: string;
  /** 0 for a scheduled read, else the number of the happening in its game */
  readonly occurrence: number;
  readonly placementId: string | null;
  readonly commitmentId: string;
  readonly entryId: string;
  readonly outcome: CountOutcome;
}

export interface CountingRules {
  readonly decisions?: Decisions;
  readonly settled?: Settled;
  readonly occurrenceTerms?: readonly OccurrenceTerms[];
  readonly ourTeamIds?: readonly string[];
}

export interface NightCount {
  readonly reads: readonly ReadToCount[];
  /** happenings by commitment, for what on-occurrence commitments owe */
  readonly occurrences: ReadonlyMap<string, readonly Occurrence[]>;
  /** happenings that stand and that no mention answers, by commitment */
  readonly waiting: ReadonlyMap<string, readonly Occurrence[]>;
  /** happenings that may be one; they count as two until a person says otherwise */
  readonly open: readonly OpenQuestion[];
}

/**
 * What a night's log comes to: every sponsor read that stands, each with its outcome. One claim per
 * game, cue and occurrence: the first entry that counts holds it, later ones are doubles. Entries
 * without a commitment (the house's own announcements) are left out.
 */
export function countNight(entries: readonly LogEntry[], rules: CountingRules = {}): NightCount {
  const decisions = rules.decisions ?? new Map();
  const occurrences = new Map<string, readonly Occurrence[]>();
  const waiting = new Map<string, readonly Occurrence[]>();
  const open: OpenQuestion[] = [];
  const reads = scheduledReads(entries, decisions);
  for (const terms of rules.occurrenceTerms ?? []) {
    const counted = mentionsToCount(entries, terms, rules.ourTeamIds ?? [], rules.settled ?? new Map(), decisions);
    occurrences.set(terms.commitmentId, counted.occurrences);
    waiting.set(terms.commitmentId, counted.waiting);
    open.push(...counted.open);
    reads.push(...counted.reads);
  }
  return { reads, occurrences, waiting, open };
}

/** The reads of {@link countNight} alone. */
export function readsToCount(entries: readonly LogEntry[], rules: CountingRules = {}): readonly ReadToCount[] {
  return countNight(entries, rules).reads;
}

function scheduledReads(entries: readonly LogEntry[], decisions: Decisions): ReadToCount[] {
  const claimed = new Set<string>();
  return inOrder(standing(entries)).flatMap((entry) => {
    if (entry.kind !== 'read' || entry.commitmentId === null) return [];
    const read = {
      nightId: entry.nightId,
      gameId: entry.gameId,
      cueKey: entry.cueKey ?? `entry:${entry.id}`,
      occurrence: entry.occurrence ?? 0,
      placementId: entry.placementId,
      commitmentId: entry.commitmentId,
      entryId: entry.id,
    };
    const claim = claimOf(read);
    const voiced = voicedOutcome(entry, decisions);
    const outcome = voiced === 'counts' && claimed.has(claim) ? 'double' : voiced;
    if (outcome === 'counts') claimed.add(claim);
    return [{ ...read, outcome }];
  });
}

/** The claim a read makes within its night, as one text. */
export function claimOf(read: Pick<ReadToCount, 'gameId' | 'cueKey' | 'occurrence'>): string {
  return `${read.gameId} ${read.occurrence} ${read.cueKey}`;
}

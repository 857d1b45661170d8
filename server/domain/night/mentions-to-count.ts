import { voicedOutcome } from './count-outcome.ts';
import type { CountOutcome, Decisions } from './count-outcome.ts';
import { inOrder } from './log-entry.ts';
import type { LogEntry } from './log-entry.ts';
import { numberOccurrences } from './occurrences.ts';
import type { Occurrence, OccurrenceTerms, OpenQuestion, Settled } from './occurrences.ts';
import type { ReadToCount } from './reads-to-count.ts';
import { standing } from './take-back.ts';

/** Occurrences of mentions that a director counts without a happening are numbered far above the real ones. */
export const WITHOUT_HAPPENING = 100_000;

/**
 * Matches mentions with the happenings they answer. A mention that names its happenings answers those;
 * one that names none answers all that wait from before it, else the next that waits. With
 * `severalCountAsOne` it is one read however many it answers, otherwise one read for each.
 */
export function mentionsToCount(
  entries: readonly LogEntry[],
  terms: OccurrenceTerms,
  ourTeamIds: readonly string[],
  settled: Settled,
  decisions: Decisions,
): { reads: ReadToCount[]; occurrences: Occurrence[]; waiting: Occurrence[]; open: OpenQuestion[] } {
  const { occurrences, open } = numberOccurrences(entries, terms, ourTeamIds, settled);
  const mentions = inOrder(standing(entries)).filter(
    (entry) => entry.kind === 'mention' && entry.commitmentId === terms.commitmentId,
  );
  const answered = new Set<Occurrence>();
  const numberOf = new Map(entries.map((entry) => [entry.id, entry.number]));
  const reads = [...mentions.filter(namesHappening), ...mentions.filter((mention) => !namesHappening(mention))].flatMap(
    (mention) => {
      const voiced = voicedOutcome(mention, decisions);
      if (voiced !== 'counts') return [readOf(mention, terms, 0, voiced)];
      const named = happeningIdsOf(mention);
      const waiting = occurrences.filter((one) => one.stands && one.gameId === mention.gameId && !answered.has(one));
      const answers = named.length > 0 ? waiting.filter((one) => isNamed(one, named, settled)) : fromBefore(mention, waiting, numberOf);
      if (answers.length === 0) return [unanswered(mention, terms, occurrences, named, settled, decisions)];
      for (const one of answers) answered.add(one);
      const counted = terms.severalCountAsOne ? answers.slice(0, 1) : answers;
      return counted.map((one) => readOf(mention, terms, one.number, 'counts'));
    },
  );
  return { reads, occurrences, waiting: occurrences.filter((one) => one.stands && !answered.has(one)), open };
}

function fromBefore(mention: LogEntry, waiting: readonly Occurrence[], numberOf: ReadonlyMap<string, number>): Occurrence[] {
  const before = waiting.filter((one) => (numberOf.get(one.entryIds[0]!) ?? 0) < mention.number);
  return before.length > 0 ? before : waiting.slice(0, 1);
}

function unanswered(
  mention: LogEntry,
  terms: OccurrenceTerms,
  occurrences: readonly Occurrence[],
  named: readonly string[],
  settled: Settled,
  decisions: Decisions,
): ReadToCount {
  const theirs = occurrences.find((one) => one.stands && isNamed(one, named, settled));
  if (theirs) return readOf(mention, terms, theirs.number, 'double');
  const outcome = decisions.get(mention.id) === 'counts' ? 'counts' : 'noHappening';
  return readOf(mention, terms, WITHOUT_HAPPENING + mention.number, outcome);
}

function readOf(mention: LogEntry, terms: OccurrenceTerms, occurrence: number, outcome: CountOutcome): ReadToCount {
  return {
    nightId: mention.nightId,
    gameId: mention.gameId,
    // One key for all mentions of a commitment, so that two announcers in two windows cannot both count one shot.
    cueKey: `mention:${terms.commitmentId}`,
    occurrence,
    placementId: mention.placementId,
    commitmentId: terms.commitmentId,
    entryId: mention.id,
    outcome,
  };
}

function isNamed(one: Occurrence, named: readonly string[], settled: Settled): boolean {
  const known = named.map((id) => {
    const answer = settled.get(id);
    return typeof answer === 'object' ? answer.sameAs : id;
  });
  return one.entryIds.some((id) => known.includes(id));
}

function namesHappening(mention: LogEntry): boolean {
  return happeningIdsOf(mention).length > 0;
}

/** The happenings that a mention names. */
export function happeningIdsOf(mention: Pick<LogEntry, 'detail' | 'happeningEntryId'>): string[] {
  const several = mention.detail?.['happeningEntryIds'];
  const ids = Array.isArray(several) ? several.filter((id) => typeof id === 'string') : [];
  return mention.happeningEntryId === null ? ids : [mention.happeningEntryId, ...ids];
}

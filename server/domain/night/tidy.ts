import type { GameStatus } from '../season/game.ts';
import type { Decisions } from './count-outcome.ts';
import { inOrder } from './log-entry.ts';
import type { LogEntry } from './log-entry.ts';
import { WITHOUT_HAPPENING, happeningIdsOf } from './mentions-to-count.ts';
import { isAbout, sentenceOfTally, tallyOfNight } from './night-tally.ts';
import type { NightTally, PlannedCue } from './night-tally.ts';
import { reasonInWords } from './reason-words.ts';
import type { NightCount, ReadToCount } from './reads-to-count.ts';
import { standing } from './take-back.ts';

/** An entry with the window it names and what it says in one sentence. */
export interface EntryToTidy extends LogEntry {
  readonly windowKey: string | null;
  readonly sentence: string;
}

export interface PlannedRead extends PlannedCue {
  readonly placementId: string;
  readonly gameId: string;
  readonly commitmentId: string;
  readonly windowKey: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  readonly gameLabel: string;
}

export interface NightToTidy {
  readonly planned: readonly PlannedRead[];
  readonly games: readonly { readonly id: string; readonly status: GameStatus }[];
  readonly entries: readonly EntryToTidy[];
  readonly count: NightCount;
  /** what persons said of single entries */
  readonly decisions: Decisions;
  /** sponsor and kind of read, by commitment */
  readonly commitments: ReadonlyMap<string, { readonly sponsorName: string; readonly readKindName: string }>;
}

export type PlannedState = 'read' | 'readInAnotherWindow' | 'cutShort' | 'cutShortCounts' | 'notRead' | 'unlogged' | 'gameOff';

export interface PlannedLine extends PlannedRead {
  readonly state: PlannedState;
  readonly sentence: string;
  /** why it was not read in full, in words; null where it was */
  readonly why: string | null;
}

/** Something about one entry or two that a person may answer. */
export interface TidyMatter {
  readonly entryIds: readonly string[];
  readonly sentence: string;
  /** what a person said, or null */
  readonly answer: 'counts' | 'doesNotCount' | null;
  /** whether it counts as things stand */
  readonly counts: boolean;
}

export interface NightTidy {
  readonly tally: NightTally;
  readonly tallySentence: string;
  readonly planned: readonly PlannedLine[];
  /** the planned reads that are still owed because of this night */
  readonly leftOver: readonly PlannedLine[];
  readonly doubled: readonly TidyMatter[];
  readonly cutShort: readonly TidyMatter[];
  /** mentions for which no happening is logged */
  readonly withoutHappening: readonly TidyMatter[];
  /** happenings without a mention */
  readonly held: readonly (TidyMatter & { readonly commitmentId: string; readonly why: string })[];
  /** entries of two devices that may be one happening */
  readonly questions: readonly TidyMatter[];
  /** entries of two devices that were taken as one happening */
  readonly takenAsOne: readonly TidyMatter[];
  readonly book: readonly { readonly entryId: string; readonly period: string | null; readonly agrees: boolean; readonly sentence: string }[];
  readonly notes: readonly { readonly entryId: string; readonly sentence: string }[];
}

const OFF: ReadonlySet<GameStatus> = new Set(['cancelled', 'postponed']);

/**
 * What there is to tidy after a night: what was planned and what became of it, and whatever a person may still settle.
 * Nothing of it holds up a sign-off, and nothing is posted by looking.
 */
export function tidyOf(night: NightToTidy): NightTidy {
  const entries = inOrder(standing(night.entries));
  const off = new Set(night.games.filter((game) => OFF.has(game.status)).map((game) => game.id));
  const planned = night.planned.map((read) => plannedLine(read, entries, off.has(read.gameId), night.count.reads));
  const held = planned.filter((line) => line.state !== 'gameOff');
  const tally = tallyOfNight(held, night.entries);
  return {
    tally,
    tallySentence: sentenceOfTally(tally),
    planned,
    leftOver: held.filter((line) => line.state === 'notRead' || line.state === 'unlogged' || line.state === 'cutShort'),
    ...mattersOf(night, entries),
    ...happeningsOf(night, entries),
    book: entries.filter((entry) => entry.kind === 'book').map(({ id, period, detail, sentence }) => ({ entryId: id, period, agrees: detail?.['agrees'] === true, sentence })),
    notes: entries.filter((entry) => entry.kind === 'note').map(({ id, sentence }) => ({ entryId: id, sentence })),
  };
}

function plannedLine(read: PlannedRead, entries: readonly EntryToTidy[], isOff: boolean, counted: readonly ReadToCount[]): PlannedLine {
  const about = entries.filter((entry) => entry.kind === 'read' && isAbout(entry, read));
  const counts = new Set(counted.filter((one) => one.outcome === 'counts').map((one) => one.entryId));
  const given = about.find((entry) => entry.outcome === 'given');
  const cut = about.find((entry) => entry.outcome === 'cutShort');
  const isCounted = cut !== undefined && counts.has(cut.id);
  const missed = about.find((entry) => entry.outcome === 'notRead');
  const line = (state: PlannedState, words: string, why: string | null = null): PlannedLine => ({
    ...read, state, why, sentence: `${read.sponsorName}, ${read.readKindName}, ${read.gameLabel}: ${words}.`,
  });
  if (given) {
    const isElsewhere = given.windowKey !== null && given.windowKey !== read.windowKey;
    return isElsewhere ? line('readInAnotherWindow', 'read in another window') : line('read', 'read');
  }
  // What was not read in full of a game that was called off is owed with the game, not because of this night.
  if (isOff && !isCounted) return line('gameOff', 'the game was called off');
  if (cut) {
    const why = `cut short, ${reasonInWords(cut.reason, cut.detail)}`;
    return isCounted ? line('cutShortCounts', `${why}; it counts`, why) : line('cutShort', `${why}; it does not count`, why);
  }
  if (missed) return line('notRead', `not read, ${reasonInWords(missed.reason, missed.detail)}`, reasonInWords(missed.reason, missed.detail));
  return line('unlogged', 'nothing was logged', 'nothing was logged');
}

function mattersOf({ count, decisions }: NightToTidy, entries: readonly EntryToTidy[]): Pick<NightTidy, 'doubled' | 'cutShort' | 'withoutHappening'> {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const outcomes = new Map(count.reads.map((read) => [read.entryId, read.outcome]));
  const without = new Set(count.reads.filter((read) => read.occurrence >= WITHOUT_HAPPENING).map((read) => read.entryId));
  const matter = (ids: readonly string[], sentence: string): TidyMatter => {
    const id = ids.at(-1)!;
    return { entryIds: ids, sentence, answer: decisions.get(id) ?? null, counts: outcomes.get(id) === 'counts' };
  };
  const doubled = count.reads.filter((read) => read.outcome === 'double').flatMap((read) => {
    const entry = byId.get(read.entryId);
    const first = count.reads.find((one) => one.outcome === 'counts' && one.gameId === read.gameId && one.cueKey === read.cueKey && one.occurrence === read.occurrence);
    const other = first && byId.get(first.entryId);
    if (!entry) return [];
    return [matter([...(other ? [other.id] : []), entry.id], `${entry.sentence} Logged twice${other ? `, as entries ${other.number} and ${entry.number}` : ''}; it counts once.`)];
  });
  const cut = entries.filter((entry) => (entry.kind === 'read' || entry.kind === 'mention') && entry.outcome === 'cutShort' && entry.commitmentId !== null);
  const bare = entries.filter((entry) => entry.kind === 'mention' && entry.outcome === 'given' && without.has(entry.id));
  return {
    doubled,
    cutShort: cut.map((entry) => matter([entry.id], entry.sentence)),
    withoutHappening: bare.map((entry) => matter([entry.id], `${entry.sentence} Nothing is logged that it was for.`)),
  };
}

function happeningsOf(night: NightToTidy, entries: readonly EntryToTidy[]): Pick<NightTidy, 'held' | 'questions' | 'takenAsOne'> {
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const matter = (ids: readonly string[], sentence: string): TidyMatter => ({ entryIds: ids, sentence, answer: null, counts: true });
  const two = (ids: readonly string[]): string => ids.flatMap((id) => byId.get(id) ?? []).map((entry) => `entry ${entry.number}, “${entry.sentence.replace(/\.$/, '')}”`).join('; ');
  const asked = new Map(night.count.open.map(({ entryIds }) => [entryIds.join(' '), entryIds]));
  const one = new Map([...night.count.occurrences.values()].flat().filter(({ stands, entryIds }) => stands && entryIds.length > 1).map(({ entryIds }) => [entryIds.join(' '), entryIds]));
  const held = [...night.count.waiting].flatMap(([commitmentId, occurrences]) =>
    occurrences.flatMap(({ entryIds }) => {
      const happening = entryIds.map((id) => byId.get(id)).find((entry) => entry !== undefined);
      if (!happening) return [];
      const { sponsorName, readKindName } = night.commitments.get(commitmentId) ?? { sponsorName: 'the sponsor', readKindName: 'mention' };
      const why = whyHeld(entryIds, commitmentId, entries);
      return [{ ...matter(entryIds, `${happening.sentence} ${readKindName} for ${sponsorName}: ${why}.`), commitmentId, why }];
    }),
  );
  return {
    held,
    questions: [...asked.values()].map((ids) => matter(ids, `Two devices logged what may be one: ${two(ids)}. They count as two until somebody says so.`)),
    takenAsOne: [...one.values()].filter((ids) => ids.filter((id) => byId.has(id)).length > 1).map((ids) => matter(ids, `Taken as one: ${two(ids)}.`)),
  };
}

function whyHeld(entryIds: readonly string[], commitmentId: string, entries: readonly EntryToTidy[]): string {
  const answer = entries.find((entry) => entry.kind === 'mention' && entry.commitmentId === commitmentId && entry.outcome !== 'given' && happeningIdsOf(entry).some((id) => entryIds.includes(id)));
  if (!answer) return 'held, and never read';
  return `${answer.outcome === 'cutShort' ? 'cut short' : 'not read'}, ${reasonInWords(answer.reason, answer.detail)}`;
}

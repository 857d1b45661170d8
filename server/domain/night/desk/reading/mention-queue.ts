import type { Instant } from '../../../instant.ts';
import type { LogEntry } from '../../log-entry.ts';
import { mentionsToCount } from '../../mentions-to-count.ts';
import type { OccurrenceTerms } from '../../occurrences.ts';
import { standing } from '../../take-back.ts';
import type { DeskMention, DeskSettings, NightBundle } from '../bundle.ts';
import type { DeskLine } from '../desk-entry.ts';

/** The longest a mention may take at a dead ball, in seconds. @source common practice, no source */
export const DEAD_BALL_SECONDS = 4;

/** When a mention may be called. */
export type MentionMoment = 'atOnce' | 'deadBall' | 'held';

/** A mention that is owed and not yet given. */
export interface QueuedMention {
  readonly mention: DeskMention;
  readonly moment: MentionMoment;
  /** the happenings it answers, the first of them first; several where the contract counts them as one */
  readonly happeningEntryIds: readonly string[];
  /** those and the entries of the other devices that logged the same happenings */
  readonly sameEntryIds: readonly string[];
  /** who made them, as logged: a number and a team, nothing where neither was said */
  readonly shooters: readonly { readonly teamId: string | null; readonly playerNumber: string | null }[];
}

/** When the department has a mention called; what is too long for a dead ball is held. */
export function momentOf(mention: Pick<DeskMention, 'seconds'>, setting: DeskSettings['bankShotMention']): MentionMoment {
  if (setting === 'atOnce') return 'atOnce';
  return setting === 'deadBall' && mention.seconds <= DEAD_BALL_SECONDS ? 'deadBall' : 'held';
}

/** The terms of each commitment that owes a mention tonight, as sign-off counts them. */
export function occurrenceTermsOf(mentions: readonly DeskMention[]): OccurrenceTerms[] {
  const ids = [...new Set(mentions.map(({ commitmentId }) => commitmentId))];
  return ids.map((commitmentId) => {
    const own = mentions.filter((mention) => mention.commitmentId === commitmentId);
    const [{ happening, whose, severalCountAsOne }] = own as [DeskMention];
    return { commitmentId, happening, whose, severalCountAsOne, gameIds: own.map(({ gameId }) => gameId) };
  });
}

/** A line as the rules of counting read it: its place in this device's log stands for its number. */
function asEntry(line: DeskLine, place: number, nightId: string): LogEntry {
  return { ...line, nightId, number: place + 1, occurrence: null, playerId: null, occurredAt: line.occurredAt as Instant };
}

/** Happenings that somebody has answered with "cut short" or "not read": the table has spoken, and sign-off counts. */
function letGo(lines: readonly DeskLine[]): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const line of lines) {
    if (line.kind !== 'mention' || line.outcome === 'given') continue;
    const several = line.detail?.['happeningEntryIds'];
    const named = Array.isArray(several) ? several : [];
    for (const id of [line.happeningEntryId, ...named]) if (typeof id === 'string') ids.add(`${line.commitmentId} ${id}`);
  }
  return ids;
}

/**
 * The mentions that are owed and not yet given, in the order of their happenings: one for each, or one for several where the
 * contract says so. Happenings of two devices are one by the rule of sign-off.
 */
export function mentionQueue(bundle: Pick<NightBundle, 'nightId' | 'mentions' | 'games' | 'settings'>, lines: readonly DeskLine[]): QueuedMention[] {
  const relevant = lines.filter(({ kind }) => kind === 'happening' || kind === 'mention' || kind === 'takenBack');
  const entries = relevant.map((line, place) => asEntry(line, place, bundle.nightId));
  const byId = new Map(entries.map((entry) => [entry.id, entry]));
  const gone = letGo(standing(relevant));
  const ourTeamIds = bundle.games.flatMap((game) => game.ourTeamIds);
  const queued = occurrenceTermsOf(bundle.mentions).flatMap((terms) => {
    const { waiting } = mentionsToCount(entries, terms, ourTeamIds, new Map(), new Map());
    const open = waiting.filter(({ entryIds }) => !entryIds.some((id) => gone.has(`${terms.commitmentId} ${id}`)));
    const games = bundle.mentions.filter(({ commitmentId }) => commitmentId === terms.commitmentId);
    return games.flatMap((mention): QueuedMention[] => {
      const own = open.filter(({ gameId }) => gameId === mention.gameId).map(({ entryIds }) => entryIds);
      const groups = terms.severalCountAsOne ? (own.length > 0 ? [own] : []) : own.map((entryIds) => [entryIds]);
      return groups.map((group) => ({
        mention, moment: momentOf(mention, bundle.settings.bankShotMention), happeningEntryIds: group.map(([id]) => id!), sameEntryIds: group.flat(),
        shooters: group.map(([id]) => id!).map((id) => ({ teamId: byId.get(id)!.teamId, playerNumber: byId.get(id)!.playerNumber })),
      }));
    });
  });
  const placeOf = (one: QueuedMention): number => byId.get(one.happeningEntryIds[0]!)!.number;
  return queued.sort((one, other) => placeOf(one) - placeOf(other));
}

/** The mention at hand: whose it is and the happening it answers. */
export interface MentionAtHand {
  readonly cueKey: string;
  readonly happeningEntryId: string;
}

/**
 * The mention to give next: the one at hand until it is given, left or gone, whatever another device puts before it
 * meanwhile; else the first of the queue.
 */
export function mentionToGive(queue: readonly QueuedMention[], atHand: MentionAtHand | null): QueuedMention | null {
  const held = atHand && queue.find(({ mention, sameEntryIds }) => mention.cueKey === atHand.cueKey && sameEntryIds.includes(atHand.happeningEntryId));
  return held ?? queue[0] ?? null;
}

/** A button of the table: one kind of happening of one game, and the sponsors it owes a mention to. */
export interface HappeningButton {
  readonly gameId: string;
  readonly happening: string;
  readonly occurrence: string;
  /** whose shots owe anything: the visitors' do only where a sponsor asked for both */
  readonly whose: 'ours' | 'both';
  readonly mentions: readonly DeskMention[];
}

/** The happenings worth a button, in the order of the packet. */
export function happeningButtons(mentions: readonly DeskMention[]): HappeningButton[] {
  const keys = [...new Set(mentions.map(({ gameId, happening }) => `${gameId} ${happening}`))];
  return keys.map((key) => {
    const own = mentions.filter(({ gameId, happening }) => `${gameId} ${happening}` === key);
    const [{ gameId, happening, occurrence }] = own as [DeskMention];
    return { gameId, happening, occurrence, whose: own.some(({ whose }) => whose === 'both') ? 'both' : 'ours', mentions: own };
  });
}

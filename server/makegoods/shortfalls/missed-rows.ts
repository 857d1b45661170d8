import type { Day } from '../../domain/day.ts';
import type { MissedRead } from '../../domain/makegoods/missed-reads.ts';
import { reasonInWords } from '../../domain/night/reason-words.ts';
import { covers } from '../../domain/sponsorship/covered-games.ts';
import type { LinePosition, Position } from '../../domain/sponsorship/position.ts';
import type { PlannedGame } from '../../planning/planned-games.service.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import type { MentionsRow, NightAndGame, UnreadRow } from './shortfall-rows.service.ts';

interface NotReadInFull {
  outcome: 'given' | 'cutShort' | 'notRead' | null;
  reason: string | null;
  detail: Record<string, unknown> | null;
}

function whyUnread({ outcome, reason, detail }: NotReadInFull): string {
  if (outcome === null) return 'nothing was logged';
  if (outcome === 'given') return 'logged, and not counted';
  return outcome === 'cutShort' ? `cut short, ${reasonInWords(reason, detail)}` : reasonInWords(reason, detail);
}

/** Which of a line's counts a game belongs to: the game, its night, or the one count of the whole term. */
export function slotIdOf(line: LinePosition, gameId: string | null, nightId: string | null): string | null {
  const found = line.slots.find((slot) => slot.gameId !== undefined && (slot.gameId === gameId || slot.gameId === nightId));
  return found?.gameId ?? null;
}

/** Planned reads that were not counted on nights that are signed off. */
export function unreadOf(line: LinePosition, rows: readonly UnreadRow[]): MissedRead[] {
  return rows.map(({ gameId, nightId, heldOn, windowKey, placementId, ...entry }) => (
    { slotId: slotIdOf(line, gameId, nightId), nightId, gameId, windowKey, placementId, missedOn: heldOn, because: 'windowOver', why: whyUnread(entry) }
  ));
}

/** Shots that fell and whose mention never came, by night and game. */
export function unmentionedOf(line: LinePosition, position: Position, happened: ReadonlyMap<string, NightAndGame>, rows: readonly MentionsRow[]): MissedRead[] {
  const { lineId } = line.terms;
  const fell = new Map<string, NightAndGame & { times: number }>();
  for (const [id, occurrence] of Object.entries(position.occurrences)) {
    const at = happened.get(id.split('/')[0]!);
    if (occurrence.lineId !== lineId || !at) continue;
    const key = `${at.nightId} ${at.gameId}`;
    fell.set(key, { ...at, times: (fell.get(key)?.times ?? 0) + occurrence.times });
  }
  return [...fell.values()].flatMap(({ nightId, gameId, heldOn, times }) => {
    const mentions = rows.find((row) => row.nightId === nightId && row.gameId === gameId);
    return Array.from({ length: Math.max(0, times - (mentions?.counted ?? 0)) }, (_, place): MissedRead => {
      const unread = mentions?.unread[place];
      return { slotId: null, nightId, gameId, windowKey: null, placementId: null, missedOn: heldOn, because: 'windowOver', why: unread ? whyUnread(unread) : 'held, and never read' };
    });
  });
}

/** Names for reads of which the log has nothing: games that were called off, games over, and the end of the season. */
export function unloggedOf(line: LinePosition, commitment: SignedCommitment, games: readonly PlannedGame[], termEndsOn: Day) {
  const nothing = { windowKey: null, placementId: null };
  return (slotId: string | null, count: number): MissedRead[] => {
    const counted = slotId === null ? [] : games.filter((game) => game.id === slotId || game.nightId === slotId);
    if (slotId !== null) {
      const game = counted[0];
      const isOff = counted.length > 0 && counted.every((one) => one.status === 'cancelled');
      const missed: MissedRead = {
        ...nothing, slotId, nightId: game?.nightId ?? null, gameId: game?.id ?? null, missedOn: game?.playedOn ?? termEndsOn,
        because: isOff ? 'gameCancelled' : 'windowOver', why: isOff ? 'the game was called off' : 'it was never planned',
      };
      return Array.from({ length: count }, () => missed);
    }
    const isByShots = line.terms.kind === 'reads' && line.terms.counting === 'onOccurrence';
    const off = isByShots ? [] : games.filter((game) => game.status === 'cancelled' && covers(commitment, game));
    const last = games.filter((game) => game.status !== 'cancelled' && covers(commitment, game)).at(-1)?.playedOn;
    const why = isByShots ? 'it did not happen as often as was promised' : 'no game is left that could carry it';
    return [
      ...off.slice(0, count).map((game): MissedRead => ({ ...nothing, slotId, nightId: game.nightId, gameId: game.id, missedOn: game.playedOn, because: 'gameCancelled', why: 'the game was called off' })),
      ...Array.from({ length: Math.max(0, count - off.length) }, (): MissedRead => ({ ...nothing, slotId, nightId: null, gameId: null, missedOn: last ?? termEndsOn, because: 'seasonEnding', why })),
    ];
  };
}

import { changePlan } from '../../server/domain/planning/board/change.ts';
import type { BoardChange } from '../../server/domain/planning/board/change.ts';
import type { PlacedRead } from '../../server/domain/planning/season.ts';
import type { BoardReadView, BoardView, Change } from './types.ts';

const asMove = (change: Change): change is Change & BoardChange => change.kind === 'move' || change.kind === 'remove';

/** The board as it will look once the server has agreed; an addition waits for the server. */
export function expected(view: BoardView, changes: readonly Change[]): BoardView {
  const moves = changes.filter(asMove);
  const { spots } = changePlan(view.season, moves);
  const spotOf = new Map(moves.flatMap((move, index) => (move.kind === 'move' ? [[move.placementId, spots[index]!] as const] : [])));
  const pins = new Map(changes.flatMap((change) => (change.kind === 'pin' || change.kind === 'unpin' ? [[change.placementId, change.kind === 'pin'] as const] : [])));
  const gone = changes.flatMap((change) => (change.kind === 'remove' ? [change.placementId] : []));
  const touched = view.reads.flatMap((read) => {
    const spot = spotOf.get(read.id);
    const pin = pins.get(read.id);
    if (spot === undefined && pin === undefined) return [];
    return [{ ...read, ...(spot ? { gameId: spot.gameId, windowKey: spot.windowKey, place: spot.place } : {}), ...(pin === undefined ? {} : { isPinned: pin }) }];
  });
  return withReads(view, touched, gone);
}

/** The board with these reads as the server says they stand, and without those that are gone. */
export function withReads(view: BoardView, now: readonly BoardReadView[], gone: readonly string[]): BoardView {
  const locked = new Set(view.season.games.filter((game) => game.isLocked).map((game) => game.gameId));
  const byId = new Map(now.map((read) => [read.id, read]));
  const out = new Set(gone);
  const isNew = new Set(byId.keys());
  for (const read of view.reads) isNew.delete(read.id);
  const placed = ({ id, promiseId, gameId, windowKey, place, isPinned, isLogged }: BoardReadView): PlacedRead =>
    ({ placementId: id, promiseId, gameId, windowKey, place, isFixed: isPinned || isLogged || locked.has(gameId) });
  const fresh = now.filter((read) => isNew.has(read.id));
  return {
    ...view,
    reads: [...view.reads.filter((read) => !out.has(read.id)).map((read) => byId.get(read.id) ?? read), ...fresh],
    season: {
      ...view.season,
      placed: [
        ...view.season.placed.filter((read) => read.placementId === null || !out.has(read.placementId))
          .map((read) => (read.placementId !== null && byId.has(read.placementId) ? placed(byId.get(read.placementId)!) : read)),
        ...fresh.map(placed),
      ],
    },
  };
}

/** What takes the changes back, in the other order. */
export function inverse(view: BoardView, changes: readonly Change[], answered: readonly (BoardReadView | null)[]): Change[] {
  const before = new Map(view.reads.map((read) => [read.id, read]));
  return changes.flatMap((change, index): Change[] => {
    if (change.kind === 'add') return answered[index] ? [{ kind: 'remove', placementId: answered[index].id }] : [];
    const read = before.get(change.placementId);
    if (read === undefined) return [];
    const spot = { gameId: read.gameId, windowKey: read.windowKey, place: read.place };
    if (change.kind === 'move') return [{ kind: 'move', placementId: read.id, ...spot }];
    if (change.kind === 'remove') return [{ kind: 'add', promiseId: read.promiseId, ...spot, isPinned: read.isPinned, was: read.id }];
    return read.isPinned === (change.kind === 'pin') ? [] : [{ kind: change.kind === 'pin' ? 'unpin' : 'pin', placementId: read.id }];
  }).toReversed();
}

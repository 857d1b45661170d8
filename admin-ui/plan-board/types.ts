import type { BoardReadView } from '../../server/planning/board/board.dto.ts';
export type { BoardChangesView, BoardGameView, BoardReadView, BoardView } from '../../server/planning/board/board.dto.ts';

/** A read as a card, or the place that an open offer keeps. */
export interface Card extends Omit<BoardReadView, 'version' | 'besideCompetitorReason'> {
  /** kept for an open offer; the plan moves it, nobody's hand does */
  isHeld: boolean;
}

export interface Spot {
  gameId: string;
  windowKey: string;
}

/** What is done to reads on the board (`was`: the id under which an added read stood before it was taken out); the server learns their versions beside it. */
export type Change =
  | { kind: 'move'; placementId: string; gameId: string; windowKey: string; place?: number | undefined }
  | { kind: 'add'; promiseId: string; gameId: string; windowKey: string; place?: number | undefined; isPinned?: boolean; was?: string }
  | { kind: 'remove' | 'pin' | 'unpin'; placementId: string };

export const GAME_STATUSES = ['planned', 'underWay', 'suspended', 'played', 'postponed', 'cancelled'] as const;
export type GameStatus = (typeof GAME_STATUSES)[number];

export const GAME_CLASSES = ['regular', 'invitational', 'conference', 'stateSeries'] as const;
export type GameClass = (typeof GAME_CLASSES)[number];

export const LEVELS = ['varsity', 'juniorVarsity', 'sophomore', 'freshman', 'middleSchool'] as const;
export type Level = (typeof LEVELS)[number];

/** Levels as they stand inside a sentence. */
export const LEVEL_IN_SENTENCE: Readonly<Record<Level, string>> = {
  varsity: 'varsity', juniorVarsity: 'junior varsity', sophomore: 'sophomore', freshman: 'freshman', middleSchool: 'middle school',
};

export type GameMove = 'start' | 'suspend' | 'resume' | 'finish' | 'postpone' | 'reschedule' | 'cancel';

/**
 * The moves of a game: from which states, to which, and the code of the "no" from any other. A game
 * cancelled by mistake is entered anew, because its reads may have been credited on an issued memo.
 */
export const GAME_MOVES = {
  start: { from: ['planned'], to: 'underWay', refusal: 'game-cannot-start' },
  suspend: { from: ['underWay'], to: 'suspended', refusal: 'game-not-under-way' },
  resume: { from: ['suspended'], to: 'underWay', refusal: 'game-not-suspended' },
  finish: { from: ['planned', 'underWay', 'suspended'], to: 'played', refusal: 'game-cannot-finish' },
  postpone: { from: ['planned'], to: 'postponed', refusal: 'game-cannot-be-postponed' },
  reschedule: { from: ['planned', 'postponed'], to: 'planned', refusal: 'game-cannot-be-moved' },
  cancel: { from: ['planned', 'postponed', 'suspended'], to: 'cancelled', refusal: 'game-cannot-be-cancelled' },
} as const satisfies Record<GameMove, { from: readonly GameStatus[]; to: GameStatus; refusal: string }>;

export type GameRefusal = (typeof GAME_MOVES)[GameMove]['refusal'] | 'game-has-log';

/** What a move looks at. The server passes the row, the page passes the view. */
export interface GameMoved {
  readonly status: GameStatus;
  /** true when the table has logged anything for this game */
  readonly hasLog?: boolean;
}

/** Moves that would leave a log behind on a night that did not happen. */
const MOVES_WITHOUT_LOG: readonly GameMove[] = ['postpone', 'reschedule'];

/** Why a move is refused, or null where it may be made. The buttons and the server ask the same. */
export function whyNotMove(game: GameMoved, move: GameMove): GameRefusal | null {
  const rule = GAME_MOVES[move];
  if (!(rule.from as readonly GameStatus[]).includes(game.status)) return rule.refusal;
  return game.hasLog && MOVES_WITHOUT_LOG.includes(move) ? 'game-has-log' : null;
}

/** The state after a move that {@link whyNotMove} allows. */
export function statusAfter(move: GameMove): GameStatus {
  return GAME_MOVES[move].to;
}

export const canStart = (game: GameMoved): boolean => whyNotMove(game, 'start') === null;
export const canSuspend = (game: GameMoved): boolean => whyNotMove(game, 'suspend') === null;
export const canResume = (game: GameMoved): boolean => whyNotMove(game, 'resume') === null;
export const canFinish = (game: GameMoved): boolean => whyNotMove(game, 'finish') === null;
export const canPostpone = (game: GameMoved): boolean => whyNotMove(game, 'postpone') === null;
export const canReschedule = (game: GameMoved): boolean => whyNotMove(game, 'reschedule') === null;
export const canCancel = (game: GameMoved): boolean => whyNotMove(game, 'cancel') === null;

/** A game is deleted only while nothing happened in it: planned or postponed, and never with a log. */
export function whyNotDelete(game: GameMoved): 'game-has-log' | 'game-cannot-be-deleted' | null {
  if (game.hasLog) return 'game-has-log';
  return game.status === 'planned' || game.status === 'postponed' ? null : 'game-cannot-be-deleted';
}

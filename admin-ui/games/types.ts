import type { MovePreview } from '../../server/planning/moves/move-preview.dto.ts';

export type { GameView as Game, ParticipantView as Participant } from '../../server/season/game.dto.ts';
export type { MovedContract, MovedLineView as MovedLine, MovePreview, NightEffect } from '../../server/planning/moves/move-preview.dto.ts';

/** What is asked before a move is made. */
export interface MovePreviewForm {
  kind: MovePreview['kind'];
  to?: string;
  clock?: string;
}

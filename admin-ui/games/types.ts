export type { GameView as Game, ParticipantView as Participant } from '../../server/season/game.dto.ts';

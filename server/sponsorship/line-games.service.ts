import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { countsByGame, lineOf } from '../domain/sponsorship/line-of.ts';
import type { Position } from '../domain/sponsorship/position.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

/** Which of a commitment's counts a person means who names a commitment and perhaps a game. */
@Injectable()
export class LineGames {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `unknown-line`, `game-needed`; a commitment that is not counted by the game needs none */
  async of(position: Position, lineId: string, gameId?: string | null): Promise<{ lineId: string; gameId?: string }> {
    const line = lineOf(position, lineId);
    if (!countsByGame(line)) return { lineId };
    if (!gameId) return refuse('game-needed', {}, { gameId: 'is missing' });
    if (line.slots.some((slot) => slot.gameId === gameId)) return { lineId, gameId };
    const nights = await this.work.sql<{ nightId: string }>('select night_id as "nightId" from game_night where department_id = $1 and game_id = $2', [gameId]);
    const night = nights.find((one) => line.slots.some((slot) => slot.gameId === one.nightId));
    return { lineId, gameId: night?.nightId ?? gameId };
  }
}

import { Inject, Injectable } from '@nestjs/common';
import type { PlanSeason } from '../../domain/planning/season.ts';
import { refuse } from '../../domain/refusals.ts';
import { GameReader } from '../../season/game-reader.service.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import { MoveService } from '../move.service.ts';
import type { MovePreview, MovePreviewDto } from './move-preview.dto.ts';
import { movedContracts, nightEffects } from './moved-contracts.ts';
import { MoveTraces } from './move-traces.service.ts';

/** What a move that was tried did, and what there is to plan before and after it. */
export interface TriedMove {
  view: Omit<MovePreview, 'shortfall'>;
  seasonBefore: PlanSeason;
  seasonAfter: PlanSeason;
}

/** Moves a game by the very code that moves it, and tells what changed. The caller's unit is rolled back. */
@Injectable()
export class MoveTrying {
  constructor(
    @Inject(GameReader) private readonly reader: GameReader,
    @Inject(MoveService) private readonly moves: MoveService,
    @Inject(MoveTraces) private readonly traces: MoveTraces,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
  ) {}

  /** @throws Refused as the move itself */
  async try(gameId: string, form: MovePreviewDto): Promise<TriedMove> {
    const game = await this.reader.one(gameId);
    const before = await this.traces.of(gameId, game.seasonId, game.nightIds);
    const { season: seasonBefore } = await this.facts.load(game.seasonId, { offers: 'none' });
    await this.move(gameId, form);
    const moved = await this.reader.one(gameId);
    const after = await this.traces.of(gameId, game.seasonId, [...new Set([...game.nightIds, ...moved.nightIds])]);
    const { season: seasonAfter } = await this.facts.load(game.seasonId, { offers: 'none' });
    const keys = new Set([gameId, ...moved.nightIds]);
    return {
      view: {
        gameId, seasonId: game.seasonId, label: game.label, kind: form.kind,
        before: { status: game.status, playedOn: game.playedOn },
        after: { status: moved.status, playedOn: moved.playedOn },
        contracts: movedContracts(before, after, form.kind === 'cancel' ? new Set() : keys),
        nights: nightEffects(before, after),
      },
      seasonBefore,
      seasonAfter,
    };
  }

  private async move(id: string, { kind, to, clock, reason, on }: MovePreviewDto): Promise<void> {
    const because = reason ?? 'A preview';
    if (kind === 'reschedule' && !to) refuse('malformed', {}, { to: 'is missing' });
    if (kind === 'cancel') await this.moves.cancel(id, { reason: because, on: on ?? null });
    else if (kind === 'suspend') await this.moves.suspend(id, { reason: because });
    else await this.moves.postpone(id, { reason: because, ...(kind === 'reschedule' ? { to: to!, clock: clock ?? null } : {}) });
  }
}

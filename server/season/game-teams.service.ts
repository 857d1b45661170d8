import { Inject, Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { GameParticipant } from './game-participant.entity.ts';
import type { GameView, ScoreDto } from './game.dto.ts';
import { Team } from './team.entity.ts';

/** Who plays in a game. */
@Injectable()
export class GameTeams {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** The home team stands in place 1; scores of teams that stay are kept. */
  async put(gameId: string, seasonId: string, homeTeamId: string | null, visitorTeamIds: readonly string[]): Promise<void> {
    const teamIds = [...(homeTeamId ? [homeTeamId] : []), ...visitorTeamIds];
    if (new Set(teamIds).size < teamIds.length) refuse('team-plays-itself', {}, { visitorTeamIds: 'names a team twice' });
    if (teamIds.length < 2) refuse('malformed', {}, { visitorTeamIds: 'a game has two teams or more' });
    const teams = await this.work.find(Team, { id: In(teamIds) });
    if (teams.length < teamIds.length) refuse('unknown-team');
    if (teams.some((team) => team.seasonId !== seasonId)) refuse('team-of-another-season');
    const there = await this.work.find(GameParticipant, { gameId });
    const wanted = teamIds.map((teamId, place) => ({ gameId, teamId, place: place + 1, isHome: teamId === homeTeamId }));
    const same = wanted.length === there.length && wanted.every((row) => there.some((one) => one.teamId === row.teamId && one.place === row.place && one.isHome === row.isHome));
    if (same) return;
    if (there.length > 0) await this.work.remove(GameParticipant, { gameId });
    await this.work.insert(GameParticipant, wanted.map((row) => ({ ...row, score: there.find((one) => one.teamId === row.teamId)?.score ?? null })));
  }

  async score(game: GameView, scores: readonly ScoreDto[]): Promise<void> {
    for (const { teamId, score } of scores) {
      const participant = game.participants.find((one) => one.teamId === teamId) ?? refuse('unknown-team');
      if (participant.score !== score) await this.work.update(GameParticipant, participant.id, null, { score });
    }
  }
}

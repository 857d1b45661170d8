import { Inject, Injectable } from '@nestjs/common';
import type { GameToBill } from '../../domain/billing/game-lines.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { dayText } from '../../platform/typesetting/amount-text.ts';
import { CoveredGames, coveredBy } from '../../sponsorship/covered-games.service.ts';
import type { CommitmentOfTerm } from '../../sponsorship/covered-games.service.ts';
import type { Deal } from './deal.ts';

const COMMITMENTS = `select id, term_id as "termId", counting, reads, starts_on as "startsOn", ends_on as "endsOn", team_ids as "teamIds", levels,
    blackout_days as "blackoutDays"
  from commitment where department_id = $1 and term_id = any($2::uuid[]) order by place`;

const OPPONENTS = `select game.id, string_agg(school.short_name, ', ' order by participant.place) as names
  from game join game_participant as participant on participant.department_id = $1 and participant.game_id = game.id and not participant.is_home
    join team on team.department_id = $1 and team.id = participant.team_id
    join school on school.department_id = $1 and school.id = team.school_id
  where game.department_id = $1 and game.id = any($2::uuid[]) group by game.department_id, game.id`;

type CommitmentRow = Omit<CommitmentOfTerm, 'seasonId' | 'termStartsOn' | 'termEndsOn'> & { termId: string };

/**
 * The games that contracts billed by the game cover: those that any of their commitments counts over, cancelled ones
 * left out. A game is billed once its status says that it was played.
 */
@Injectable()
export class GamesToBill {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
  ) {}

  /** By the term's id; only terms billed by the game have any. */
  async of(deals: readonly Deal[]): Promise<Map<string, GameToBill[]>> {
    const byGame = deals.filter(({ billingPlan }) => billingPlan.kind === 'perGame');
    if (byGame.length === 0) return new Map();
    const commitments = await this.work.sql<CommitmentRow>(COMMITMENTS, [byGame.map(({ termId }) => termId)]);
    const games = await this.covered.ofReach(byGame.map(({ termId, seasonId }) => ({ seasonId, teamIds: commitments.filter((one) => one.termId === termId).flatMap((one) => one.teamIds) })));
    const opponents = new Map((await this.work.sql<{ id: string; names: string }>(OPPONENTS, [games.map((game) => game.id)])).map(({ id, names }) => [id, names]));
    return new Map(
      byGame.map((deal) => {
        const own = commitments.filter(({ termId }) => termId === deal.termId);
        const ids = new Set(own.flatMap((one) => coveredBy({ ...one, ...deal }, games)).map((game) => game.id));
        const toBill = games.filter((game) => ids.has(game.id)).map(({ id, playedOn, status }): GameToBill => {
          const against = opponents.get(id);
          return { gameId: id, playedOn, isPlayed: status === 'played', name: `Game of ${dayText(playedOn, deal.locale)}${against ? ` against ${against}` : ''}` };
        });
        return [deal.termId, toBill];
      }),
    );
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { newsSince, outlineOf } from '../../domain/planning/proposal/what-changed.ts';
import { whereItStands } from '../../domain/planning/proposal/where-it-stands.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Season } from '../../season/season.entity.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import type { ProposalOptions } from './plan-proposal.entity.ts';
import { ProposalViews } from './proposal-views.service.ts';
import type { LockedNight, SeasonPlanView } from './season-plan.dto.ts';

interface AcceptedRow {
  decidedAt: string;
  options: ProposalOptions;
  shortfallReads: number;
}

/** Where the plan of a season stands: what is owed, planned and at risk, and whether the plan knows of everything. */
@Injectable()
export class SeasonPlanViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
    @Inject(ProposalViews) private readonly proposals: ProposalViews,
  ) {}

  /** @throws Refused `not-found` */
  async of(seasonId: string): Promise<SeasonPlanView> {
    const { name } = await this.work.one(Season, seasonId);
    const { season, owed, version } = await this.facts.standing(seasonId);
    const promises = whereItStands(season, owed);
    const sum = (field: 'owed' | 'planned' | 'atRisk'): number => promises.reduce((all, one) => all + one[field], 0);
    const accepted = await this.accepted(seasonId);
    const news = accepted?.options.outline === undefined ? null : newsSince(accepted.options.outline, outlineOf(season));
    const changedSince = accepted === null ? null : (news ?? (sum('atRisk') > accepted.shortfallReads ? 'reads lost their place' : null));
    const [latestProposal = null] = (await this.proposals.list({ seasonId, perPage: 1 })).data;
    return {
      seasonId, seasonName: name, gamesToCome: season.games.length, owed: sum('owed'), planned: sum('planned'), atRisk: sum('atRisk'), promises,
      isCurrent: accepted !== null && changedSince === null, changedSince, acceptedAt: accepted?.decidedAt ?? null,
      lockedNights: await this.lockedNights(season.games.filter((game) => game.isLocked)), latestProposal, version,
    };
  }

  private async accepted(seasonId: string): Promise<AcceptedRow | null> {
    const [row] = await this.work.sql<AcceptedRow>(
      `select decided_at as "decidedAt", options, (result->>'shortfallReads')::int as "shortfallReads" from plan_proposal
        where department_id = $1 and season_id = $2 and state = 'accepted' order by decided_at desc limit 1`,
      [seasonId],
    );
    return row ?? null;
  }

  private async lockedNights(games: readonly { nightId: string; label: string; playedOn: string }[]): Promise<LockedNight[]> {
    const locks = await this.work.sql<{ nightId: string; why: 'issued' | 'person'; note: string | null }>(
      'select night_id as "nightId", why, note from night_lock where department_id = $1 and night_id = any($2::uuid[])',
      [games.map((game) => game.nightId)],
    );
    return locks
      .map((lock) => {
        const own = games.filter((game) => game.nightId === lock.nightId);
        return { ...lock, heldOn: own[0]!.playedOn, label: own.map((game) => game.label).join(' and ') };
      })
      .sort((one, other) => (one.heldOn < other.heldOn ? -1 : 1));
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { whatChanged, outlineOf } from '../../domain/planning/proposal/what-changed.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { SeasonFacts } from '../facts/season-facts.service.ts';
import type { Facts } from '../facts/season-facts.service.ts';
import type { PlanProposalLine, PlanProposalListQuery, PlanProposalView } from './plan-proposal.dto.ts';
import type { PlanProposal, ProposalOptions, ProposalState } from './plan-proposal.entity.ts';

/** Time to read and to write, beside the seconds of a solve. */
const GRACE_SECONDS = 60;

const LINE = `plan_proposal.id, plan_proposal.season_id as "seasonId", season.name as "seasonName", plan_proposal.kind, plan_proposal.because, plan_proposal.state,
    plan_proposal.asked_at as "askedAt", asker.name as "askedByName", plan_proposal.decided_at as "decidedAt", decider.name as "decidedByName",
    plan_proposal.result->>'headline' as headline, plan_proposal.failure, plan_proposal.options`;

const FROM = `from plan_proposal
    join season on season.department_id = plan_proposal.department_id and season.id = plan_proposal.season_id
    left join person as asker on asker.id = plan_proposal.asked_by_person_id
    left join person as decider on decider.id = plan_proposal.decided_by_person_id`;

const SORTS = { askedAt: 'plan_proposal.asked_at', state: 'plan_proposal.state', seasonName: 'season.name collate "und-x-icu"' };

type Row = PlanProposalLine & { options: ProposalOptions };

/** Proposals as they are read. A solve that nobody goes on with reads as failed. */
@Injectable()
export class ProposalViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonFacts) private readonly facts: SeasonFacts,
  ) {}

  async list(query: PlanProposalListQuery): Promise<Listed<PlanProposalLine>> {
    const { parameters, where } = new Conditions('plan_proposal.department_id').add('plan_proposal.season_id = ?', query.seasonId).add('plan_proposal.id = any(?::uuid[])', query.id);
    const rows = await this.work.sql<Row>(`select ${LINE} ${FROM} where ${where} ${pageOf({ ...query, sort: query.sort ?? '-askedAt' }, SORTS, 'plan_proposal.id')}`, parameters);
    const [count] = await this.work.sql<{ total: number }>(`select count(*)::int as total from plan_proposal where ${where}`, parameters);
    return { data: rows.map(({ options, ...row }) => ({ ...row, ...standing({ ...row, options }) })), total: count!.total };
  }

  /** @throws Refused `not-found` */
  async one(id: string): Promise<PlanProposalView> {
    const [row] = isId(id) ? await this.work.sql<Row & Pick<PlanProposalView, 'gameId' | 'gameLabel' | 'solvedAt' | 'result'>>(
      `select ${LINE}, plan_proposal.game_id as "gameId", plan_proposal.solved_at as "solvedAt", plan_proposal.result,
         (select string_agg(school.nickname, ' and ' order by game_participant.place) from game_participant
            join team on team.department_id = $1 and team.id = game_participant.team_id join school on school.department_id = $1 and school.id = team.school_id
            where game_participant.department_id = $1 and game_participant.game_id = plan_proposal.game_id) as "gameLabel"
       ${FROM} where plan_proposal.department_id = $1 and plan_proposal.id = $2`, [id]) : [];
    if (row === undefined) return refuse('not-found');
    const { options, ...rest } = row;
    const stands = standing(row);
    const now = await this.facts.load(row.seasonId, { offers: 'open' });
    const { seconds, withSeconds } = options;
    return { ...rest, ...stands, seconds, withSeconds, outOfDateBecause: stands.state === 'proposed' ? outOfDate(options, now) : null, version: now.version };
  }
}

/** What changed since the plan was worked out; null while nothing has. */
export function outOfDate(options: ProposalOptions, now: Facts): string | null {
  if (options.digest === now.digest) return null;
  return options.outline === undefined ? 'the season changed' : whatChanged(options.outline, outlineOf(now.season));
}

/** The state as it is read: a server that stopped meanwhile leaves a solve behind that nobody finishes. */
export function standing(row: Pick<PlanProposal, 'state' | 'failure' | 'askedAt' | 'options'>): { state: ProposalState; failure: string | null } {
  const { state, failure, askedAt, options } = row;
  const isLeft = state === 'solving' && Date.now() - Date.parse(askedAt) > (options.seconds + GRACE_SECONDS) * 1000;
  return isLeft ? { state: 'failed', failure: 'The server stopped while this plan was worked out. Ask for it again.' } : { state, failure };
}

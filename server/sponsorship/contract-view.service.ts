import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { amountsOf } from '../domain/sponsorship/contract-amounts.ts';
import type { Position } from '../domain/sponsorship/position.ts';
import { standingOf, sumOfStandings } from '../domain/sponsorship/standing.ts';
import type { PaceFacts, Standing } from '../domain/sponsorship/standing.ts';
import { isId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { DealCompanyViews } from './company/deal-company-views.service.ts';
import { CoveredGames } from './covered-games.service.ts';
import type { ContractListQuery } from './contract.dto.ts';
import { BENEFITS, COMMITMENTS, CONTRACT, CONTRACT_FROM, CONTRACT_SORTS } from './contract-view.sql.ts';
import type { BenefitView, CommitmentRow, CommitmentView, ContractRow, ContractStanding, ContractView } from './contract-view.ts';
import { TermLedger } from './term-ledger.service.ts';

const NO_FACTS: PaceFacts = { gamesInAll: 0, gamesPlayed: 0, loggedNotSignedOff: 0 };

/** Contracts as they are shown: rows, and where they stand by their ledgers, the calendar and the log. */
@Injectable()
export class ContractViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(CoveredGames) private readonly covered: CoveredGames,
    @Inject(DealCompanyViews) private readonly company: DealCompanyViews,
  ) {}

  async list(query: ContractListQuery): Promise<Listed<ContractView>> {
    const on = conditionsOf(query);
    if (query.behind === undefined) {
      const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${CONTRACT_FROM} where ${on.where}`, on.parameters);
      const rows = await this.work.sql<ContractRow>(`select ${CONTRACT} ${CONTRACT_FROM} where ${on.where} ${pageOf(query, CONTRACT_SORTS, 'contract.id')}`, on.parameters);
      return { data: await this.viewsOf(rows), total: count?.total ?? 0 };
    }
    // Who is behind is worked out from ledger, calendar and log, so all are asked before a page is cut.
    const order = pageOf({ ...query, page: 1, perPage: 10_000 }, CONTRACT_SORTS, 'contract.id');
    const all = await this.viewsOf(await this.work.sql<ContractRow>(`select ${CONTRACT} ${CONTRACT_FROM} where ${on.where} ${order}`, on.parameters));
    const kept = all.filter((view) => view.standing.behind > 0 === query.behind);
    const perPage = query.perPage ?? 25;
    const from = ((query.page ?? 1) - 1) * perPage;
    return { data: kept.slice(from, from + perPage), total: kept.length };
  }

  async one(id: string): Promise<ContractView> {
    if (!isId(id)) return refuse('not-found');
    const rows = await this.work.sql<ContractRow>(`select ${CONTRACT} ${CONTRACT_FROM} where contract.department_id = $1 and contract.id = $2`, [id]);
    const [view] = await this.viewsOf(rows);
    return view ?? refuse('not-found');
  }

  private async viewsOf(rows: readonly ContractRow[]): Promise<ContractView[]> {
    if (rows.length === 0) return [];
    const ids = rows.map((row) => row.id);
    const commitments = await this.work.sql<CommitmentRow>(COMMITMENTS, [ids]);
    const benefits = await this.work.sql<BenefitView>(BENEFITS, [ids]);
    const company = await this.company.of(ids);
    const positions = await this.terms.positions(rows.map((row) => row.term.id));
    const terms = new Map(rows.map((row) => [row.id, row.term]));
    const facts = await this.covered.paceOf(
      commitments.map((one) => {
        const term = terms.get(one.contractId)!;
        return { ...one, seasonId: term.seasonId, termStartsOn: term.startsOn, termEndsOn: term.endsOn };
      }),
    );
    return rows.map(({ receivableCents, ...row }) => {
      const position = positions.get(row.term.id);
      const own = commitments
        .filter((one) => one.contractId === row.id)
        .map((one): CommitmentView => ({ ...one, standing: standingIn(position, one.id, facts.get(one.id) ?? NO_FACTS) }));
      return {
        ...row,
        commitments: own,
        benefits: benefits.filter((one) => one.contractId === row.id),
        ...company(row.id),
        standing: contractStanding(position, own.map((one) => one.standing), receivableCents),
      };
    });
  }
}

function conditionsOf(query: ContractListQuery): Conditions {
  return new Conditions('contract.department_id')
    .add('contract.id = any(?::uuid[])', query.id)
    .add('contract.sponsor_id = ?', query.sponsorId)
    .add('contract.seller_id = ?', query.sellerId)
    .add('contract.payer_id = ?', query.payerId)
    .add('term.season_id = ?', query.seasonId)
    .add('term.state = ?', query.state)
    .add('(contract.title ilike ? or contract.number ilike ? or sponsor.name ilike ?)', contains(query.q));
}

function standingIn(position: Position | undefined, lineId: string, facts: PaceFacts): Standing {
  const isThere = position?.lines.some((line) => line.terms.lineId === lineId);
  return position && isThere ? standingOf(position, lineId, facts) : { ...sumOfStandings([]), loggedNotSignedOff: facts.loggedNotSignedOff };
}

function contractStanding(position: Position | undefined, standings: readonly Standing[], receivableCents: number): ContractStanding {
  const amounts = position ? amountsOf(position) : null;
  return {
    ...sumOfStandings(standings),
    priceCents: amounts?.priceCents ?? 0,
    billedCents: amounts?.billedCents ?? 0,
    toBillCents: amounts?.toBillCents ?? 0,
    earnedCents: amounts?.revenueCents ?? 0,
    contractBalanceCents: amounts?.contractBalanceCents ?? 0,
    receivableCents,
  };
}

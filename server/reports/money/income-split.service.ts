import { Inject, Injectable } from '@nestjs/common';
import { IncomeTeams } from '../../billing/income/income-teams.service.ts';
import { splitIncome } from '../../domain/billing/income-split.ts';
import { MONEY } from '../../domain/ledger/account.ts';
import { centsOf } from '../../domain/money.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ReportScope } from './report-scope.service.ts';
import type { IncomeAmounts, IncomeLine, IncomeSplitView, SpanQuery } from './report.dto.ts';

interface EarnedRow {
  eventId: string;
  account: string;
  cents: number;
}

interface TeamRow {
  teamId: string;
  teamName: string;
  schoolId: string;
  schoolName: string;
  seasonName: string;
}

const COLUMN: Readonly<Record<string, Exclude<keyof IncomeAmounts, 'totalCents'>>> = {
  [MONEY.sponsorshipRevenue]: 'sponsorshipCents',
  [MONEY.inKindRevenue]: 'inKindCents',
  [MONEY.unreadRevenue]: 'unreadCents',
  [MONEY.allowances]: 'allowancesCents',
};

const ACCOUNTS = Object.keys(COLUMN);

const side = (account: string, sign: string) => `
  select event_id, ${account} as account, ${sign}amount as amount from posting
   where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on between $3 and $4 and ${account} = any($5::text[])`;

const EARNED = `select event_id as "eventId", account, sum(amount) as cents from (${side('from_account', '')} union all ${side('to_account', '-')}) as moved
  group by event_id, account having sum(amount) <> 0 order by event_id, account`;

const TEAMS = `select team.id as "teamId", team.name as "teamName", school.id as "schoolId", school.name as "schoolName", season.name as "seasonName"
  from team join school on school.department_id = team.department_id and school.id = team.school_id
    join season on season.department_id = team.department_id and season.id = team.season_id
  where team.department_id = $1 and team.id = any($2::uuid[]) order by school.name collate "und-x-icu", season.starts_on, team.name collate "und-x-icu"`;

/** Whose teams earned what in a span; the sums are those of the trial balance. */
@Injectable()
export class IncomeByTeam {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReportScope) private readonly scope: ReportScope,
    @Inject(IncomeTeams) private readonly teams: IncomeTeams,
  ) {}

  /** @throws Refused `unknown-seller`, `ends-before-it-starts` */
  async report(query: SpanQuery): Promise<IncomeSplitView> {
    const seller = await this.scope.seller(query.sellerId);
    const { from, to } = await this.scope.span(query);
    const earned = await this.work.sql<EarnedRow>(EARNED, [seller?.id ?? null, from, to, ACCOUNTS]);
    const amounts = await this.byTeam(earned);
    const named = await this.work.sql<TeamRow>(TEAMS, [[...amounts.keys()].filter((teamId) => teamId !== null)]);
    const lines: IncomeLine[] = named.map((team) => ({ ...team, ...amounts.get(team.teamId)! }));
    const department = amounts.get(null);
    if (department) lines.push({ teamId: null, teamName: null, schoolId: null, schoolName: null, seasonName: null, ...department });
    const total = lines.reduce(added, { ...NOTHING });
    return { sellerId: seller?.id ?? null, sellerName: seller?.name ?? null, from, to, lines, total };
  }

  private async byTeam(earned: readonly EarnedRow[]): Promise<Map<string | null, IncomeAmounts>> {
    const teams = await this.teams.ofEvents(earned.map((row) => row.eventId));
    const amounts = new Map<string | null, IncomeAmounts>();
    for (const { eventId, account, cents } of earned) {
      for (const share of splitIncome(centsOf(cents), teams.get(eventId) ?? [])) {
        const line = amounts.get(share.teamId) ?? { ...NOTHING };
        line[COLUMN[account]!] += share.cents;
        line.totalCents += share.cents;
        amounts.set(share.teamId, line);
      }
    }
    return amounts;
  }
}

const NOTHING: IncomeAmounts = { sponsorshipCents: 0, inKindCents: 0, unreadCents: 0, allowancesCents: 0, totalCents: 0 };

function added(sum: IncomeAmounts, line: IncomeAmounts): IncomeAmounts {
  const names = Object.keys(NOTHING) as (keyof IncomeAmounts)[];
  return Object.fromEntries(names.map((name) => [name, sum[name] + line[name]])) as unknown as IncomeAmounts;
}

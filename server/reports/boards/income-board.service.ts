import { Inject, Injectable } from '@nestjs/common';
import { IncomeTeams } from '../../billing/income/income-teams.service.ts';
import type { Day } from '../../domain/day.ts';
import { fiscalYearOf, firstOfMonth } from '../../domain/day.ts';
import { monthsFrom } from '../../domain/ledger/month.ts';
import { addedIncome, incomeByMonth, incomeByTeam, incomeTotal, isNoIncome, teamsOfContract } from '../../domain/reports/income-board.ts';
import type { IncomeAmount, IncomeColumn, IncomeFigures, LineReach } from '../../domain/reports/income-board.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { BY_DAYS, BY_SEASON, CASH, OUR_TEAMS, REACHES, SELLERS, agreed, applied, billed, earned } from './income-queries.ts';
import type { AmountRow } from './income-queries.ts';
import { IncomeSpans } from './income-span.service.ts';
import type { SpanAsked } from './income-span.service.ts';
import type { IncomeBoardQuery, IncomeBoardView, IncomeOfMonth, IncomeOfSchool, IncomeOfTeam } from './income.dto.ts';

interface TeamRow {
  id: string;
  name: string;
  level: string;
  seasonId: string;
  seasonName: string;
  schoolId: string;
  schoolName: string;
  accountCode: string | null;
}

/** What was signed, billed, earned and collected: by month, by team and by school, for one seller of record. */
@Injectable()
export class IncomeBoard {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(IncomeSpans) private readonly spans: IncomeSpans,
    @Inject(IncomeTeams) private readonly teams: IncomeTeams,
  ) {}

  /** @throws Refused `unknown-seller`, `not-found` for a season that is none of ours */
  async report(query: IncomeBoardQuery): Promise<IncomeBoardView> {
    const { fiscalYearStartsInMonth, ...span } = await this.spans.asked(query);
    const sellers = await this.work.sql<{ id: string; name: string }>(SELLERS);
    const seller = query.sellerId === undefined ? (sellers[0] ?? null) : (sellers.find((one) => one.id === query.sellerId) ?? refuse('unknown-seller'));
    const rows = await this.rows(span);
    const ours = await this.work.sql<TeamRow>(OUR_TEAMS);
    const amounts = await this.withTeams(rows.filter((row) => row.sellerId === seller?.id), ours);
    const months = monthsOf(amounts, span, fiscalYearStartsInMonth);
    const teams = teamLines(incomeByTeam(amounts), ours);
    return {
      ...span,
      sellerId: seller?.id ?? null,
      sellerName: seller?.name ?? null,
      monthsToCome: span.to === null ? 0 : monthsFrom(span.from!, span.to).filter((month) => month > span.today && !months.some((one) => one.month === month)).length,
      months,
      fiscalYears: fiscalYearsOf(months),
      teams,
      schools: schoolLines(teams, ours),
      sellers: sellers.map(({ id, name }) => ({ sellerId: id, sellerName: name, ...incomeTotal(rows.filter((row) => row.sellerId === id).map(amountOf)) })),
      total: incomeTotal(amounts),
    };
  }

  /** Every amount of every seller: four statements, and a fifth for the cash that belongs to no contract. */
  private async rows({ over, seasonId, from, to }: Pick<SpanAsked, 'over' | 'seasonId' | 'from' | 'to'>): Promise<AmountRow[]> {
    if (over === 'season' && seasonId === null) return [];
    const [chosen, asked] = over === 'season' ? [BY_SEASON, [seasonId]] : [BY_DAYS, [from, to]];
    const rows: AmountRow[] = [];
    for (const query of [agreed, billed, earned, applied]) rows.push(...(await this.work.sql<AmountRow>(query(chosen), asked)));
    return over === 'season' ? rows : [...rows, ...notOfContracts(rows, await this.work.sql<AmountRow>(CASH, asked))];
  }

  private async withTeams(rows: readonly AmountRow[], ours: readonly TeamRow[]): Promise<IncomeAmount[]> {
    const ofEvents = await this.teams.ofEvents(rows.flatMap((row) => row.eventId ?? []));
    const contractIds = [...new Set(rows.flatMap((row) => row.contractId ?? []))];
    const reaches = contractIds.length === 0 ? [] : await this.work.sql<LineReach & { contractId: string; seasonId: string }>(REACHES, [contractIds]);
    const ofContracts = new Map(
      contractIds.map((id) => {
        const lines = reaches.filter((line) => line.contractId === id);
        return [id, teamsOfContract(lines, ours.filter((team) => team.seasonId === lines[0]?.seasonId))];
      }),
    );
    return rows.map((row) => ({ ...amountOf(row), teamIds: (row.eventId === null ? ofContracts.get(row.contractId ?? '') : ofEvents.get(row.eventId)) ?? [] }));
  }
}

const amountOf = ({ column, month, cents }: AmountRow) => ({ column: column as IncomeColumn, month: month as Day, cents });

/** Cash that no contract was paid with: credit not applied yet, charges, refunds, what the bank kept. */
function notOfContracts(rows: readonly AmountRow[], cash: readonly AmountRow[]): AmountRow[] {
  const rest = new Map(cash.map((row) => [`${row.sellerId} ${row.month}`, { ...row }]));
  for (const row of rows.filter((one) => one.column === 'collected')) {
    const key = `${row.sellerId} ${row.month}`;
    const left = rest.get(key) ?? { ...row, contractId: null, cents: 0 };
    rest.set(key, { ...left, cents: left.cents - row.cents });
  }
  return [...rest.values()].filter((row) => row.cents !== 0);
}

/** A year's months up to this one, a season's from its first amount to its last; later ones where something is booked in them. */
function monthsOf(amounts: readonly IncomeAmount[], { from, to, today }: Pick<SpanAsked, 'from' | 'to' | 'today'>, startsInMonth: number): IncomeOfMonth[] {
  const booked = amounts.map((amount) => amount.month).toSorted();
  const first = from ?? booked[0];
  const untilNow = to === null || firstOfMonth(today) < to ? firstOfMonth(today) : firstOfMonth(to);
  const last = [booked.at(-1), from === null ? undefined : untilNow].flatMap((month) => month ?? []).toSorted().at(-1);
  if (first === undefined || last === undefined || (booked.length === 0 && last < first)) return [];
  return incomeByMonth(amounts, first, last).map(({ month, figures }) => ({ month, fiscalYear: fiscalYearOf(month, startsInMonth), ...figures }));
}

function fiscalYearsOf(months: readonly IncomeOfMonth[]): (IncomeFigures & { fiscalYear: number })[] {
  const years = [...new Set(months.map((one) => one.fiscalYear))];
  return years.length < 2 ? [] : years.map((fiscalYear) => ({ fiscalYear, ...addedIncome(months.filter((one) => one.fiscalYear === fiscalYear)) }));
}

function teamLines(sums: ReadonlyMap<string | null, IncomeFigures>, ours: readonly TeamRow[]): IncomeOfTeam[] {
  const lines = ours.flatMap(({ id, name, seasonName, schoolName }): IncomeOfTeam[] => {
    const figures = sums.get(id);
    return figures === undefined || isNoIncome(figures) ? [] : [{ teamId: id, teamName: name, seasonName, schoolName, ...figures }];
  });
  const rest = addedIncome([...sums].filter(([teamId]) => teamId === null || !ours.some((team) => team.id === teamId)).map(([, figures]) => figures));
  return isNoIncome(rest) ? lines : [...lines, { teamId: null, teamName: null, seasonName: null, schoolName: null, ...rest }];
}

function schoolLines(teams: readonly IncomeOfTeam[], ours: readonly TeamRow[]): IncomeOfSchool[] {
  const schools = new Map(ours.map((team) => [team.schoolId, team]));
  const ofSchool = (schoolId: string | null) => teams.filter((line) => (ours.find((team) => team.id === line.teamId)?.schoolId ?? null) === schoolId);
  const lines = [...schools].map(([schoolId, { schoolName, accountCode }]): IncomeOfSchool => ({ schoolId, schoolName, accountCode, ...addedIncome(ofSchool(schoolId)) }));
  return [...lines, { schoolId: null, schoolName: null, accountCode: null, ...addedIncome(ofSchool(null)) }].filter((line) => !isNoIncome(line));
}

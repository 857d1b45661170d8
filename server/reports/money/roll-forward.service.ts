import { Inject, Injectable } from '@nestjs/common';
import { ROLL_COLUMNS, rollForwardOf } from '../../domain/billing/roll-forward.ts';
import type { BalanceMove, RollForward } from '../../domain/billing/roll-forward.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ReportScope } from './report-scope.service.ts';
import type { RollForwardLine, RollForwardView, SpanQuery } from './report.dto.ts';

interface BalanceRow {
  contractId: string;
  contractNumber: string | null;
  contractTitle: string;
  sponsorName: string;
  openingCents: number;
  closingCents: number;
}

/** Unearned revenue is what the contract balance is credited, so a credit counts as a plus. */
const UNEARNED = `case when from_account = '2100' then amount else -amount end`;
const OF_BALANCE = `department_id = $1 and seller_id = $2 and journal = 'money' and (from_account = '2100' or to_account = '2100')`;

const BALANCES = `select balance.*, contract.number as "contractNumber", contract.title as "contractTitle", sponsor.name as "sponsorName"
  from (select contract_id as "contractId", coalesce(sum(${UNEARNED}) filter (where effective_on < $3), 0) as "openingCents", sum(${UNEARNED}) as "closingCents"
      from posting where ${OF_BALANCE} and effective_on <= $4 group by contract_id) as balance
    join contract on contract.department_id = $1 and contract.id = balance."contractId"
    join sponsor on sponsor.department_id = $1 and sponsor.id = contract.sponsor_id
  order by sponsor.name collate "und-x-icu", contract.number`;

const revenue = (accounts: string) =>
  `sum(case when from_account in (${accounts}) then amount else 0 end - case when to_account in (${accounts}) then amount else 0 end)`;

/** Moves by contract and kind of happening. Revenue is read event by event, because one event can earn and credit at once. */
const MOVES = `select moved.contract_id as "contractId", event.happening ->> 'kind' as kind, sum(moved.cents) as "changeCents",
    coalesce(sum(revenue.earned), 0) as "earnedCents", coalesce(sum(revenue.kept), 0) as "keptCents"
  from (select contract_id, event_id, sum(${UNEARNED}) as cents from posting where ${OF_BALANCE} and effective_on between $3 and $4 group by contract_id, event_id) as moved
    join ledger_event as event on event.department_id = $1 and event.id = moved.event_id
    left join (select event_id, ${revenue(`'4000', '4010'`)} as earned, ${revenue(`'4050'`)} as kept from posting
        where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on between $3 and $4
          and (from_account in ('4000', '4010', '4050') or to_account in ('4000', '4010', '4050')) group by event_id) as revenue on revenue.event_id = moved.event_id
  group by moved.contract_id, event.happening ->> 'kind'`;

/** What became of unearned revenue from one day to another, contract by contract. */
@Injectable()
export class UnearnedRollForward {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReportScope) private readonly scope: ReportScope,
  ) {}

  /** @throws Refused `unknown-seller`, `ends-before-it-starts` */
  async report(query: SpanQuery): Promise<RollForwardView> {
    const seller = await this.scope.seller(query.sellerId);
    const { from, to } = await this.scope.span(query);
    const asked = [seller?.id ?? null, from, to];
    const balances = await this.work.sql<BalanceRow>(BALANCES, asked);
    const moves = await this.work.sql<BalanceMove & { contractId: string }>(MOVES, asked);
    const lines = balances
      .map(({ openingCents, closingCents, ...contract }): RollForwardLine => ({
        ...contract,
        ...rollForwardOf(openingCents, moves.filter((move) => move.contractId === contract.contractId), closingCents),
      }))
      .filter((line) => line.openingCents !== 0 || line.closingCents !== 0 || ROLL_COLUMNS.some((column) => line[column] !== 0));
    return { sellerId: seller?.id ?? null, sellerName: seller?.name ?? null, from, to, lines, total: totalOf(lines) };
  }
}

function totalOf(lines: readonly RollForward[]): RollForward {
  const names = ['openingCents', ...ROLL_COLUMNS, 'closingCents', 'differenceCents'] as const;
  return Object.fromEntries(names.map((name) => [name, lines.reduce((sum, line) => sum + line[name], 0)])) as unknown as RollForward;
}

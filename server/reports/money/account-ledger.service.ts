import { Inject, Injectable } from '@nestjs/common';
import { StatementNames } from '../../billing/statements/statement-names.service.ts';
import type { EventRow } from '../../billing/statements/statement-names.service.ts';
import { MONEY } from '../../domain/ledger/account.ts';
import { refuse } from '../../domain/refusals.ts';
import { AccountNames } from '../../ledger/account-names.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ReportScope } from './report-scope.service.ts';
import type { AccountLedgerQuery, AccountLedgerView, LedgerLine } from './report.dto.ts';

interface LedgerRow extends EventRow {
  id: string;
  cents: number;
  against: string;
  contractId: string | null;
  contractTitle: string | null;
}

const MOST_LINES = { json: 2_000, file: 50_000 };

const SIGNED = 'case when to_account = $3 then amount else -amount end';
const OF_ACCOUNT = `department_id = $1 and seller_id = $2 and journal = 'money' and (to_account = $3 or from_account = $3)`;

const SUMS = `select coalesce(sum(${SIGNED}) filter (where effective_on < $4), 0) as "openingCents", coalesce(sum(${SIGNED}), 0) as "closingCents",
    count(*) filter (where effective_on >= $4) as count
  from posting where ${OF_ACCOUNT} and effective_on <= $5`;

const LINES = `select posting.id, ${SIGNED} as cents, case when to_account = $3 then from_account else to_account end as against,
    posting.contract_id as "contractId", contract.title as "contractTitle", event.id as "eventId", event.happening, event.cause,
    event.cause_id as "causeId", event.occurred_on as "occurredOn", event.booked_on as "bookedOn"
  from (select * from posting where ${OF_ACCOUNT} and effective_on between $4 and $5) as posting
    join ledger_event as event on event.department_id = $1 and event.id = posting.event_id
    left join contract on contract.department_id = $1 and contract.id = posting.contract_id
  order by event.booked_on, event.recorded_at, event.id, posting.id limit $6`;

/** One account of one seller of record, posting by posting, with what stands behind each. */
@Injectable()
export class AccountLedger {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReportScope) private readonly scope: ReportScope,
    @Inject(AccountNames) private readonly accounts: AccountNames,
    @Inject(StatementNames) private readonly names: StatementNames,
  ) {}

  /** @throws Refused `unknown-seller`, `not-found` where the chart has no such account */
  async report(query: AccountLedgerQuery): Promise<AccountLedgerView> {
    const accounts = await this.accounts.list();
    const account = accounts.find((one) => one.code === (query.account ?? MONEY.receivable)) ?? refuse('not-found');
    const seller = await this.scope.seller(query.sellerId);
    const { from, to } = await this.scope.span(query);
    const most = query.format === 'csv' || query.format === 'xlsx' ? MOST_LINES.file : MOST_LINES.json;
    const asked = [seller?.id ?? null, account.code, from, to];
    const [sums] = await this.work.sql<{ openingCents: number; closingCents: number; count: number }>(SUMS, asked);
    const rows = await this.work.sql<LedgerRow>(LINES, [...asked, most]);
    return {
      sellerId: seller?.id ?? null,
      sellerName: seller?.name ?? null,
      account: account.code,
      name: account.name,
      from,
      to,
      openingCents: sums!.openingCents,
      lines: await this.lines(rows, sums!.openingCents),
      closingCents: sums!.closingCents,
      leftOff: Math.max(0, sums!.count - rows.length),
      accounts: accounts.map(({ code, name }) => ({ code, name })),
    };
  }

  private async lines(rows: readonly LedgerRow[], openingCents: number): Promise<LedgerLine[]> {
    const told = await this.names.tell(null, rows);
    let balanceCents = openingCents;
    return rows.map(({ id, cents, against, contractId, contractTitle, eventId, occurredOn, bookedOn }) => {
      balanceCents += cents;
      const sides = { debitCents: Math.max(0, cents), creditCents: Math.max(0, -cents) };
      return { id, bookedOn, occurredOn, ...told.get(eventId)!, contractId, contractTitle, against, ...sides, balanceCents };
    });
  }
}

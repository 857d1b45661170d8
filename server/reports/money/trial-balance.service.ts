import { Inject, Injectable } from '@nestjs/common';
import { AccountNames } from '../../ledger/account-names.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ReportScope } from './report-scope.service.ts';
import type { AsOfQuery, TrialBalanceView } from './report.dto.ts';

/** Pairs of accounts are few however many postings there are: one pass over them, and each pair counts on both sides. */
const MOVED = `select from_account as "from", to_account as "to", sum(amount) as cents from posting
  where department_id = $1 and seller_id = $2 and journal = 'money' and effective_on <= $3 group by from_account, to_account`;

/** What each account comes to at the end of a day, by the day it was booked. */
@Injectable()
export class TrialBalance {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ReportScope) private readonly scope: ReportScope,
    @Inject(AccountNames) private readonly accounts: AccountNames,
  ) {}

  async report(query: AsOfQuery): Promise<TrialBalanceView> {
    const seller = await this.scope.seller(query.sellerId);
    const on = await this.scope.day(query.on);
    const balances = new Map<string, number>();
    const moved = seller ? await this.work.sql<{ from: string; to: string; cents: number }>(MOVED, [seller.id, on]) : [];
    for (const { from, to, cents } of moved) {
      balances.set(from, (balances.get(from) ?? 0) - cents);
      balances.set(to, (balances.get(to) ?? 0) + cents);
    }
    const lines = (await this.accounts.list()).flatMap(({ code, name, outsideCode }) => {
      const cents = balances.get(code) ?? 0;
      return cents === 0 ? [] : [{ account: code, name, outsideCode, debitCents: Math.max(0, cents), creditCents: Math.max(0, -cents) }];
    });
    const sum = (side: 'debitCents' | 'creditCents') => lines.reduce((total, line) => total + line[side], 0);
    return { sellerId: seller?.id ?? null, sellerName: seller?.name ?? null, on, lines, debitCents: sum('debitCents'), creditCents: sum('creditCents') };
  }
}

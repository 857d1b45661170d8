import { Inject, Injectable } from '@nestjs/common';
import { CHART } from '../domain/ledger/account.ts';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import type { AccountDto, AccountView } from './account.dto.ts';
import { AccountRow } from './account.entity.ts';

/** The accounts of the money journal under the department's own names, with the codes of the books they go to. */
@Injectable()
export class AccountNames {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** All money accounts in the order of the chart. */
  async list(): Promise<AccountView[]> {
    const rows = new Map((await this.work.find(AccountRow)).map((row) => [row.code, row]));
    return CHART.money.map(({ code, name }) => {
      const row = rows.get(code);
      return { id: code, code, name: row?.name ?? name, chartName: name, outsideCode: row?.outsideCode ?? null, version: row?.version ?? 0 };
    });
  }

  async byCode(): Promise<Map<string, AccountView>> {
    return new Map((await this.list()).map((account) => [account.code, account]));
  }

  /** @throws Refused `not-found` when the chart has no such money account */
  async one(code: string): Promise<AccountView> {
    return (await this.byCode()).get(code) ?? refuse('not-found');
  }

  /** @param version zero where the department has not named the account yet */
  async name(code: string, version: number, form: AccountDto): Promise<AccountView> {
    await this.one(code);
    const row = await this.work.first(AccountRow, { code });
    if ((row?.version ?? 0) !== version) refuse('stale-version');
    const outsideCode = form.outsideCode ?? null;
    if (row) await this.work.update(AccountRow, row.id, version, { name: form.name, outsideCode });
    else await this.work.insert(AccountRow, { code, name: form.name, outsideCode });
    return this.one(code);
  }
}

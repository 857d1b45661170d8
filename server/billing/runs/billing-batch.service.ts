import { Inject, Injectable } from '@nestjs/common';
import { Refused } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { refusedByDatabase } from '../../platform/http/database-refusals.ts';
import { InvoiceIssuing } from '../invoices/invoice-issuing.service.ts';
import type { BillingRunLine } from './billing-run-line.entity.ts';
import type { BillingRun } from './billing-run.entity.ts';
import { whySkipped } from './why-skipped.ts';

type LineRow = Omit<BillingRunLine, 'departmentId'>;

/** Some contracts of a run in one transaction: the invoices and what the run says of them, together or not at all. */
@Injectable()
export class BillingBatch {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(InvoiceIssuing) private readonly issuing: InvoiceIssuing,
  ) {}

  /** Opens its own units. Where the batch is refused, its contracts go one by one, and the refused ones are skipped with their sentence. */
  async bill(run: BillingRun, contractIds: readonly string[]): Promise<void> {
    try {
      await this.work.run(() => this.billTogether(run, contractIds));
    } catch (failure) {
      const refused = refusalIn(failure);
      if (!refused) throw failure;
      const [only, ...others] = contractIds;
      if (only === undefined) return;
      if (others.length === 0) return this.skipOnce(run, only, refused.message);
      for (const contractId of contractIds) await this.bill(run, [contractId]);
    }
  }

  private async billTogether(run: BillingRun, contractIds: readonly string[]): Promise<void> {
    const planned = await this.issuing.lock(contractIds, { through: run.throughDay, on: run.issuedOn });
    // After the lock: another process may have dealt with some of them.
    const dealt = await this.dealtWith(run, contractIds);
    const left = planned.filter(({ deal }) => !dealt.has(deal.contractId));
    const issued = await this.issuing.issueAll(left.filter((one) => whySkipped(one) === null), run.issuedOn);
    const invoiced = issued.map(({ invoiceId, planned: { deal, amounts, why } }) =>
      lineRow(run, deal.contractId, { outcome: 'issued', invoiceId, netCents: amounts.netCents, grossCents: amounts.grossCents, why }),
    );
    const skipped = left.flatMap((one) => {
      const why = whySkipped(one);
      return why === null ? [] : [lineRow(run, one.deal.contractId, { why })];
    });
    await this.work.add('billing_run_line', [...invoiced, ...skipped]);
  }

  /** Two processes may skip the same contract at once; the second has nothing to say. */
  private async skipOnce(run: BillingRun, contractId: string, why: string): Promise<void> {
    await this.work.run(() => this.skip(run, contractId, why)).catch((failure: unknown) => {
      if (refusalIn(failure)?.code !== 'contract-in-run-already') throw failure;
    });
  }

  private async skip(run: BillingRun, contractId: string, why: string): Promise<void> {
    if ((await this.dealtWith(run, [contractId])).has(contractId)) return;
    await this.work.add('billing_run_line', [lineRow(run, contractId, { why })]);
  }

  private async dealtWith({ id }: BillingRun, contractIds: readonly string[]): Promise<Set<string>> {
    const rows = await this.work.sql<{ contractId: string }>(
      'select contract_id as "contractId" from billing_run_line where department_id = $1 and billing_run_id = $2 and contract_id = any($3::uuid[])',
      [id, contractIds],
    );
    return new Set(rows.map(({ contractId }) => contractId));
  }
}

/** A rule said no, or a constraint that bears a refusal's name. Busy books say nothing of a contract: the run breaks off and is gone on with. */
function refusalIn(failure: unknown): Refused | null {
  if (failure instanceof Refused) return failure.code === 'busy' ? null : failure;
  if (failure instanceof RangeError) return new Refused('contract-does-not-add-up');
  const code = refusedByDatabase(failure);
  return code && code !== 'busy' ? new Refused(code) : null;
}

function lineRow({ id }: BillingRun, contractId: string, rest: Pick<LineRow, 'why'> & Partial<LineRow>): LineRow {
  return { id: newId(), billingRunId: id, contractId, outcome: 'skipped', invoiceId: null, netCents: 0, grossCents: 0, ...rest };
}

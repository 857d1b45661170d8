import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { foresee } from '../../domain/billing/effect-words.ts';
import type { Foreseen } from '../../domain/billing/effect-words.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { newId } from '../../platform/database/ids.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import type { ContractRecord } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { CreditedView } from './contract-credits.dto.ts';
import { MemoIssue } from './memo-issue.service.ts';
import { MemoUse } from './memo-use.service.ts';

/** Asks for one happening, once it is known how the contract stands. */
export interface Asked {
  /** the happening, from the position it meets */
  happening: (position: Position, memoId: string) => Happening | Promise<Happening>;
  reason?: string | null;
  on?: string | null;
  /** gives money back, which a trade deal does only where somebody insists */
  givesBack?: boolean;
  insists?: boolean;
}

/** Credits, allowances, forfeits, releases and minimums of one contract: first what would happen, then the happening. */
@Injectable()
export class ContractCredits {
  constructor(
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(MemoIssue) private readonly memos: MemoIssue,
    @Inject(MemoUse) private readonly use: MemoUse,
  ) {}

  /** Changes nothing. @throws Refused as booking it would be */
  async preview(contractId: string, asked: Asked): Promise<Foreseen> {
    const record = await this.records.load(contractId);
    const { foreseen } = await this.foreseen(record, asked);
    return foreseen;
  }

  /** Books it on both ledgers and writes the credit memo where something billed is credited. */
  async book(contractId: string, asked: Asked): Promise<CreditedView> {
    const record = await this.records.lock(contractId);
    const on = (asked.on ?? (await this.departments.today())) as Day;
    const { foreseen, happening } = await this.foreseen(record, asked);
    const booked = await this.terms.happen(record.term.id, [{ happening, because: { cause: 'contract', causeId: contractId, occurredOn: on } }]);
    const creditMemoIds = await this.memos.issue(contractId, [happening], booked, on, asked.reason);
    return { ...foreseen, creditMemoIds };
  }

  private async foreseen({ contract, term }: ContractRecord, { happening, reason, givesBack, insists }: Asked): Promise<{ foreseen: Foreseen; happening: Happening }> {
    const position = (await this.terms.position(term.id)) ?? refuse('contract-not-signed');
    if (givesBack && contract.isInKind && !insists) refuse('makegood-before-credit', {}, { insists: 'is not said' });
    const made = await happening(position, newId());
    const told = reason ? ({ ...made, reason } as Happening) : made;
    const standings = await this.use.standingsOf(position.documents.map((one) => one.invoiceId));
    const openCents = new Map([...standings].map(([id, standing]) => [id, standing.balanceCents + standing.writtenOffCents]));
    return { foreseen: foresee(position, told, openCents), happening: told };
  }
}

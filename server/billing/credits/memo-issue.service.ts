import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import type { Day } from '../../domain/day.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import { refuse } from '../../domain/refusals.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { Booked } from '../../sponsorship/term-ledger.service.ts';

interface MemoParties {
  sellerId: string;
  sellerName: string;
  numberPrefix: string;
  payerId: string;
  payerName: string;
  sponsorName: string;
  contractNumber: string | null;
}

const PARTIES = `select seller.id as "sellerId", seller.name as "sellerName", seller.number_prefix as "numberPrefix", payer.id as "payerId", payer.name as "payerName",
    sponsor.name as "sponsorName", contract.number as "contractNumber"
  from contract
    join seller on seller.department_id = contract.department_id and seller.id = contract.seller_id
    join payer on payer.department_id = contract.department_id and payer.id = contract.payer_id
    join sponsor on sponsor.department_id = contract.department_id and sponsor.id = contract.sponsor_id
  where contract.department_id = $1 and contract.id = $2`;

/** The paper of what the books credited: where reads that were billed are credited, a numbered memo stands for them. */
@Injectable()
export class MemoIssue {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** Writes a memo for each one that these happenings made, in the same unit. */
  async issue(contractId: string, happenings: readonly Happening[], booked: Booked, issuedOn: Day): Promise<void> {
    const known = new Set(booked.before?.memos.map((memo) => memo.memoId));
    for (const { memoId, netCents, taxCents, parts } of booked.position.memos) {
      const [first] = parts;
      if (known.has(memoId) || !first) continue;
      const [parties] = await this.work.sql<MemoParties>(PARTIES, [contractId]);
      const { sellerId, payerId, numberPrefix } = parties ?? refuse('not-found');
      const fiscalYear = fiscalYearOf(issuedOn, (await this.departments.here()).fiscalYearStartsInMonth);
      const seriesNumber = await this.numbers.next('creditMemo', sellerId, fiscalYear);
      const number = documentNumber(`${numberPrefix}-CM`, fiscalYear, seriesNumber);
      const place = happenings.findIndex((happening) => 'memoId' in happening && happening.memoId === memoId);
      const snapshot = { ...parties, kind: 'creditMemo', number, issuedOn, parts, reason: 'Reads of a game that was not held as promised.' };
      await this.work.sql(
        `insert into credit_memo (department_id, id, number, fiscal_year, series_number, seller_id, payer_id, invoice_id, issued_on,
           net_cents, tax_cents, gross_cents, snapshot, event_id, issued_by_person_id)
         values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10, $11, $12, $13, $14, $15)`,
        [
          memoId,
          number,
          fiscalYear,
          seriesNumber,
          sellerId,
          payerId,
          first.invoiceId,
          issuedOn,
          netCents,
          taxCents,
          netCents + taxCents,
          JSON.stringify(snapshot),
          booked.eventIds[place] ?? null,
          this.work.scope.personId,
        ],
      );
    }
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../access/department.service.ts';
import { NumberService } from '../access/number.service.ts';
import { documentNumber } from '../domain/billing/document-number.ts';
import type { Day } from '../domain/day.ts';
import { fiscalYearOf } from '../domain/day.ts';
import type { Seller } from '../sponsorship/seller.entity.ts';

/** What stands between the seller's prefix and the year: `TR-P-2027-0001`. */
const LETTERS = { payment: 'P', receipt: 'R', depositSlip: 'D' } as const;

export interface Numbered {
  number: string;
  fiscalYear: number;
  seriesNumber: number;
}

/** Numbers of what is taken in, without a gap per seller of record, kind and fiscal year. */
@Injectable()
export class DocumentNumbers {
  constructor(
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** Locks the series until the unit ends, so it is asked for last. */
  async next(kind: keyof typeof LETTERS, seller: Seller, on: Day): Promise<Numbered> {
    const fiscalYear = fiscalYearOf(on, (await this.departments.here()).fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next(kind, seller.id, fiscalYear);
    return { number: documentNumber(`${seller.numberPrefix}-${LETTERS[kind]}`, fiscalYear, seriesNumber), fiscalYear, seriesNumber };
  }
}

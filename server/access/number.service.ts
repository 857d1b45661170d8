import { Inject, Injectable } from '@nestjs/common';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';

export type NumberKind = 'contract' | 'invoice' | 'creditMemo' | 'payment' | 'receipt' | 'depositSlip' | 'journalBatch' | 'offer';

/** Business numbers without a gap: the counter is the last row a unit locks, and moves in the same transaction. */
@Injectable()
export class NumberService {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** The next number of a series: per department, seller of record, kind of document and fiscal year. */
  async next(kind: NumberKind, sellerId: string | null, fiscalYear: number): Promise<number> {
    const [row] = await this.work.sql<{ number: number }>(
      `insert into number_series (department_id, id, seller_id, kind, fiscal_year, last_number) values ($1, $2, $3, $4, $5, 1)
       on conflict (department_id, seller_id, kind, fiscal_year)
       do update set last_number = number_series.last_number + 1, version = number_series.version + 1
       returning last_number as number`,
      [newId(), sellerId, kind, fiscalYear],
    );
    return row!.number;
  }

  /** The next `count` numbers of a series in one go, first to last. */
  async nextMany(kind: NumberKind, sellerId: string | null, fiscalYear: number, count: number): Promise<number[]> {
    if (count === 0) return [];
    const [row] = await this.work.sql<{ last: number }>(
      `insert into number_series (department_id, id, seller_id, kind, fiscal_year, last_number) values ($1, $2, $3, $4, $5, $6)
       on conflict (department_id, seller_id, kind, fiscal_year)
       do update set last_number = number_series.last_number + $6, version = number_series.version + 1
       returning last_number as last`,
      [newId(), sellerId, kind, fiscalYear, count],
    );
    return Array.from({ length: count }, (_, place) => row!.last - count + 1 + place);
  }
}

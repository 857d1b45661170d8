import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';

/** What a payer has to their credit with one seller of record: a payment received, or a credit memo. */
export interface Credit {
  kind: 'payment' | 'creditMemo';
  id: string;
  number: string;
  sellerId: string;
  payerId: string;
  amountCents: number;
  /** whose memo it is; a payment is no contract's alone */
  contractId: string | null;
  /** stands for what was paid before the books began */
  isOpening: boolean;
}

const CREDIT = `select 'payment' as kind, id, number, seller_id as "sellerId", payer_id as "payerId", amount_cents as "amountCents", null::uuid as "contractId", method = 'opening' as "isOpening"
    from payment where department_id = $1 and id = $2
  union all
  select 'creditMemo', id, number, seller_id, payer_id, gross_cents, contract_id, false from credit_memo where department_id = $1 and id = $2`;

/** Payments and credit memos alike, as credits that can be used on invoices or given back. */
@Injectable()
export class Credits {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `not-found` */
  async one(id: string): Promise<Credit> {
    const [credit] = isId(id) ? await this.work.sql<Credit>(CREDIT, [id]) : [];
    return credit ?? refuse('not-found');
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { isGoodsLate, openOf } from '../../domain/billing/goods.ts';
import type { GoodsPromise } from '../../domain/billing/goods.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { GoodsDeliveryView, GoodsView } from './goods.dto.ts';

const PROMISES = `select promise.id, promise.what, promise.quantity, promise.unit_cents as "unitCents", promise.due_on as "dueOn", coalesce(sum(delivery.quantity), 0)::int as received
  from goods_promise as promise left join goods_delivery as delivery on delivery.department_id = promise.department_id and delivery.goods_promise_id = promise.id
  where promise.department_id = $1 and promise.contract_id = $2
  group by promise.id, promise.what, promise.quantity, promise.unit_cents, promise.due_on, promise.place order by promise.place`;

const DELIVERIES = `select delivery.id, promise.id as "promiseId", promise.what, delivery.received_on as "receivedOn", delivery.quantity, delivery.proof,
    coalesce((event.happening ->> 'amountCents')::bigint, 0) as "amountCents"
  from goods_delivery as delivery join goods_promise as promise on promise.department_id = delivery.department_id and promise.id = delivery.goods_promise_id
  left join ledger_event as event on event.department_id = delivery.department_id and event.id = delivery.event_id
  where delivery.department_id = $1 and promise.contract_id = $2 order by delivery.received_on desc, delivery.recorded_at desc`;

/** What a sponsor promised in goods, and what of it came. */
@Injectable()
export class GoodsViews {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async promises(contractId: string): Promise<GoodsPromise[]> {
    return this.work.sql<GoodsPromise>(PROMISES, [contractId]);
  }

  /** @throws Refused `not-found` */
  async one(contractId: string): Promise<GoodsView> {
    const { contract, term } = await this.records.load(contractId);
    const position = await this.terms.position(term.id);
    const today = await this.departments.today();
    const promises = await this.promises(contractId);
    return {
      contractId,
      isInKind: contract.isInKind,
      isSigned: term.state !== 'draft',
      priceCents: term.priceCents,
      receivedCents: position?.goodsCents ?? 0,
      openCents: position && contract.isInKind ? openOf(position) : 0,
      version: term.version,
      promises: promises.map((promise) => ({ ...promise, missing: promise.quantity - promise.received, isLate: isGoodsLate(promise, today) })),
      deliveries: await this.work.sql<GoodsDeliveryView>(DELIVERIES, [contractId]),
    };
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { assertGoodsMeetPrice, goodsRoomOf, valueOfDelivery } from '../../domain/billing/goods.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';
import { ContractRecords } from '../../sponsorship/contract-records.service.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { GoodsDelivery } from './goods-delivery.entity.ts';
import { GoodsPromiseRow } from './goods-promise.entity.ts';
import { GoodsViews } from './goods-view.service.ts';
import type { GoodsDeliveryDto, GoodsPromisesDto } from './goods.dto.ts';

/** Goods as a counted promise: written down with the contract, received piece by piece. */
@Injectable()
export class GoodsService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(GoodsViews) private readonly views: GoodsViews,
  ) {}

  /**
   * Writes down what is promised, while the contract is a draft; on a signed one only where nothing was written down yet.
   *
   * @throws Refused `not-in-kind`, `contract-not-a-draft`, `goods-miss-the-price`, `amount-too-large`
   */
  async promise(contractId: string, version: number, { promises }: GoodsPromisesDto): Promise<void> {
    const { contract, term } = await this.records.lock(contractId);
    if (!contract.isInKind) refuse('not-in-kind');
    const isThere = (await this.work.count(GoodsPromiseRow, { contractId })) > 0;
    if (term.state !== 'draft' && (isThere || term.state !== 'signed')) refuse('contract-not-a-draft');
    checkSize(promises);
    if (promises.length > 0) assertGoodsMeetPrice(promises.map((one) => ({ ...one, unitCents: centsOf(one.unitCents) })), term.priceCents);
    await this.work.update(Term, term.id, version, {});
    await this.work.remove(GoodsPromiseRow, { contractId });
    const rows = promises.map(({ what, quantity, unitCents, dueOn }, place) => ({ contractId, place: place + 1, what, quantity, unitCents: centsOf(unitCents), dueOn: dueOn ?? null }));
    await this.work.insert(GoodsPromiseRow, rows);
  }

  /** @throws Refused `contract-not-signed`, `unknown-goods-promise`, `more-goods-than-promised`, and as receiving goods does */
  async receive(contractId: string, { promiseId, receivedOn, quantity, proof }: GoodsDeliveryDto): Promise<void> {
    const { contract, term } = await this.records.lock(contractId);
    if (!contract.isInKind) refuse('not-in-kind');
    await this.work.lock(Term, [term.id]);
    const position = (await this.terms.position(term.id)) ?? refuse('contract-not-signed');
    const promises = await this.views.promises(contractId);
    const amountCents = valueOfDelivery(promises, promiseId, quantity, goodsRoomOf(position));
    const id = newId();
    const what = `${quantity} × ${promises.find((promise) => promise.id === promiseId)!.what}`;
    const told = amountCents > 0 ? [{ happening: { kind: 'goodsReceived' as const, goodsId: id, amountCents, what }, because: { cause: 'contract', causeId: contractId, occurredOn: receivedOn } }] : [];
    const { eventIds } = told.length > 0 ? await this.terms.happen(term.id, told) : { eventIds: [] };
    await this.work.insert(GoodsDelivery, { id, goodsPromiseId: promiseId, receivedOn, quantity, proof, eventId: eventIds[0] ?? null, recordedByPersonId: this.work.personId });
  }
}

/** Beyond the largest price nothing is multiplied to the cent. */
function checkSize(promises: GoodsPromisesDto['promises']): void {
  const total = promises.reduce((sum, { quantity, unitCents }) => sum + quantity * unitCents, 0);
  if (total > MOST_CENTS) refuse('amount-too-large', {}, { promises: 'These goods come to more than any price can be.' });
}

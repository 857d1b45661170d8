import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../domain/day.ts';
import { centsOf } from '../domain/money.ts';
import { refuse } from '../domain/refusals.ts';
import type { Happening } from '../domain/sponsorship/happening.ts';
import { newId } from '../platform/database/ids.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { BenefitDelivery } from './benefit-delivery.entity.ts';
import { Benefit } from './benefit.entity.ts';
import { ContractRecords } from './contract-records.service.ts';
import type { DeliveryDto, GoodsDto } from './contract.dto.ts';
import { ContractSigning } from './contract-signing.service.ts';
import type { Signature } from './contract-signing.service.ts';
import { Term } from './term.entity.ts';
import { TermLedger } from './term-ledger.service.ts';

/** What happens to a contract by a person's decision: signing, delivering. Each is booked on both ledgers. */
@Injectable()
export class ContractHappenings {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(ContractRecords) private readonly records: ContractRecords,
    @Inject(ContractSigning) private readonly signing: ContractSigning,
    @Inject(TermLedger) private readonly terms: TermLedger,
  ) {}

  async sign(contractId: string, signature: Signature): Promise<void> {
    const { term, terms } = await this.signing.prepare(contractId, signature);
    await this.happen(contractId, term.id, signature.signedOn, { kind: 'signed', terms });
  }

  async deliver(contractId: string, benefitId: string, form: DeliveryDto): Promise<void> {
    const term = await this.termOfBenefit(contractId, benefitId);
    const deliveryId = newId();
    const { quantity } = form;
    await this.work.insert(BenefitDelivery, { ...form, id: deliveryId, benefitId, recordedByPersonId: this.work.personId });
    await this.happen(contractId, term.id, form.deliveredOn as Day, { kind: 'benefitDelivered', deliveryId, lineId: benefitId, quantity });
  }

  async earnThrough(contractId: string, benefitId: string, throughOn: Day): Promise<void> {
    const term = await this.termOfBenefit(contractId, benefitId);
    await this.happen(contractId, term.id, throughOn, { kind: 'benefitEarnedThrough', lineId: benefitId, throughOn });
  }

  /**
   * Goods of a contract for which none were written down piece by piece.
   *
   * @throws Refused `goods-are-counted`, and as receiving goods does
   */
  async receiveGoods(contractId: string, { receivedOn, what, amountCents }: GoodsDto): Promise<void> {
    const { term } = await this.records.lock(contractId);
    if ((await this.work.sql('select 1 from goods_promise where department_id = $1 and contract_id = $2 limit 1', [contractId])).length > 0) refuse('goods-are-counted');
    await this.happen(contractId, term.id, receivedOn as Day, { kind: 'goodsReceived', goodsId: newId(), amountCents: centsOf(amountCents), what });
  }

  private async termOfBenefit(contractId: string, benefitId: string): Promise<Term> {
    const { term } = await this.records.lock(contractId);
    const benefit = await this.work.one(Benefit, benefitId);
    return benefit.termId === term.id ? term : refuse('not-found');
  }

  private async happen(contractId: string, termId: string, occurredOn: Day, happening: Happening): Promise<void> {
    await this.terms.happen(termId, [{ happening, because: { cause: 'contract', causeId: contractId, occurredOn } }]);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { checkReceipt } from '../../domain/billing/receipt.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { DocumentNumbers } from '../document-numbers.service.ts';
import { PaymentService } from '../payments/payment.service.ts';
import type { ReceiptDto } from './receipt.dto.ts';
import { Receipt } from './receipt.entity.ts';

/** Money handed over: a payment that lies in the drawer, and the slip that says so. */
@Injectable()
export class ReceiptService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PaymentService) private readonly payments: PaymentService,
    @Inject(DocumentNumbers) private readonly numbers: DocumentNumbers,
  ) {}

  /** @throws Refused `check-number-missing`, `seller-keeps-own-books`, `unknown-seller`, `unknown-payer` */
  async take(form: ReceiptDto): Promise<string> {
    checkReceipt(form);
    const { sellerId, payerId, fromWhom, takenOn, method, reference, amountCents, whatFor = null } = form;
    const seller = (await this.work.first(Seller, { id: sellerId })) ?? refuse('unknown-seller');
    const id = form.id ?? newId();
    const paymentId = await this.payments.receive({ sellerId, payerId, receivedOn: takenOn, method, reference: reference ?? null, amountCents, note: whatFor, drawer: 'undepositedReceipts' });
    const numbered = await this.numbers.next('receipt', seller, takenOn as Day);
    const taken = { takenOn, takenByName: form.takenByName ?? (await this.myName()), takenByPersonId: this.work.personId };
    await this.work.insert(Receipt, { ...numbered, ...taken, id, sellerId, paymentId, fromWhom, whatFor });
    return id;
  }

  private async myName(): Promise<string> {
    const [person] = await this.work.sqlEverywhere<{ name: string }>('select name from person where id = $1', [this.work.personId]);
    return person?.name ?? refuse('not-found');
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { paymentReceived } from '../../domain/billing/payment.ts';
import { checkDrawer } from '../../domain/billing/receipt.ts';
import type { Day } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import { DocumentLocks } from '../document-locks.ts';
import { ApplicationService } from './application.service.ts';
import { DocumentNumbers } from '../document-numbers.service.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import type { PaymentDto } from './payment.dto.ts';
import { Payment } from './payment.entity.ts';
import type { PaymentHappening } from './payment-happening.ts';

/** Money received. What is not applied at once stays a credit of the payer with that seller. */
@Injectable()
export class PaymentService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(DocumentNumbers) private readonly numbers: DocumentNumbers,
    @Inject(DocumentLocks) private readonly locks: DocumentLocks,
    @Inject(ApplicationService) private readonly applications: ApplicationService,
  ) {}

  /** @throws Refused `seller-keeps-own-books`, `drawer-holds-cash-and-checks`, `applied-twice`, and as applying does */
  async receive(form: PaymentDto): Promise<string> {
    const { applications = [], drawer = 'cash', ...received } = form;
    const seller = (await this.work.first(Seller, { id: form.sellerId })) ?? refuse('unknown-seller');
    if (!seller.keepsBooksHere) refuse('seller-keeps-own-books');
    checkDrawer(form.method, drawer);
    if (new Set(applications.map((one) => one.invoiceId)).size < applications.length) refuse('applied-twice');
    const id = form.id ?? newId();
    // Documents first, the number series last: the order in which everybody locks.
    await this.locks.take([id, ...applications.map((one) => one.invoiceId)]);
    const numbered = await this.numbers.next('payment', seller, form.receivedOn as Day);
    const { number } = numbered;
    const eventId = newId();
    const row = { ...received, ...numbered, id, drawer, eventId, recordedByPersonId: this.work.personId };
    await this.work.insert(Payment, row as Partial<Payment>);
    const amountCents = centsOf(form.amountCents);
    const happening: PaymentHappening = { kind: 'paymentReceived', paymentId: id, number, method: form.method, amountCents };
    await this.ledger.book({
      id: eventId,
      cause: 'payment',
      causeId: id,
      occurredOn: form.receivedOn as Day,
      happening,
      postings: paymentReceived(id, amountCents, drawer),
      contractId: await this.onlyContract(applications.map((one) => one.invoiceId)),
      sellerId: seller.id,
    });
    // What came before its invoice pays it on the day of the invoice.
    await this.applications.apply(id, applications, null, form.receivedOn as Day);
    return id;
  }

  /** A payment for one contract shows on that contract's statement; one for several is nobody's alone. */
  private async onlyContract(invoiceIds: readonly string[]): Promise<string | null> {
    const contracts = new Set<string | null>();
    for (const id of invoiceIds) contracts.add((await this.work.first(Invoice, { id }))?.contractId ?? null);
    const [only, ...others] = contracts;
    return others.length === 0 ? (only ?? null) : null;
  }
}

import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { PaymentService } from '../payments/payment.service.ts';
import { Reopening } from '../payments/reopening.service.ts';
import { WriteOffs } from './write-off.service.ts';
import type { RecoverDto } from './write-off.dto.ts';

/** Money that comes after all: the invoice is open again, and the payment pays it. Without a payment its contract, if it was closed, is open again too. */
@Injectable()
export class Recoveries {
  constructor(
    @Inject(WriteOffs) private readonly writeOffs: WriteOffs,
    @Inject(PaymentService) private readonly payments: PaymentService,
    @Inject(Reopening) private readonly reopening: Reopening,
  ) {}

  /** @throws Refused as reversing a write-off and receiving a payment do */
  async recover(invoiceId: string, { amountCents, recoveredOn, reason, method, reference }: RecoverDto): Promise<void> {
    const invoice = await this.writeOffs.reverse(invoiceId, amountCents, recoveredOn as Day, reason);
    if (!method) {
      await this.reopening.open([invoice.contractId], { cause: 'invoice', causeId: invoiceId, occurredOn: recoveredOn as Day });
      return;
    }
    const { sellerId, payerId } = invoice;
    await this.payments.receive({ sellerId, payerId, receivedOn: recoveredOn, method, amountCents, reference: reference ?? null, note: reason, applications: [{ invoiceId, amountCents }] });
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { PaymentReturns } from '../payments/payment-return.service.ts';
import type { ReturnDto } from '../payments/payment-return.dto.ts';
import { ChargeIssuing } from './charge.service.ts';

/** A payment that comes back, and the fee for it passed on to the payer, in one unit. */
@Injectable()
export class ReturnedChecks {
  constructor(
    @Inject(PaymentReturns) private readonly returns: PaymentReturns,
    @Inject(ChargeIssuing) private readonly charges: ChargeIssuing,
  ) {}

  /** @throws Refused as a payment's coming back and a charge do */
  async comeBack(paymentId: string, form: ReturnDto): Promise<void> {
    const { payment, contractId } = await this.returns.comeBack(paymentId, form);
    const { chargeCents = 0, returnedOn } = form;
    if (chargeCents === 0) return;
    const { sellerId, payerId, method, reference, number } = payment;
    const what = method === 'check' && reference ? `check ${reference}` : `payment ${number}`;
    await this.charges.issue({ sellerId, payerId, contractId, description: `Fee for returned ${what}`, amountCents: chargeCents, issuedOn: returnedOn });
  }
}

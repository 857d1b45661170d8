import { Inject, Injectable } from '@nestjs/common';
import { Takers } from '../receipts/takers.service.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { PaymentReturns } from '../payments/payment-return.service.ts';
import type { ReturnDto } from '../payments/payment-return.dto.ts';
import { ChargeIssuing } from './charge.service.ts';

/** The contract, while it is paid by this payer or for the same sponsor; handed on since, the fee is not its new owner's. */
const STILL_PAID_BY = `select 1 from contract join payer on payer.department_id = $1 and payer.id = $3
  where contract.department_id = $1 and contract.id = $2 and (contract.payer_id = payer.id or contract.sponsor_id = payer.sponsor_id)`;

/** A payment that comes back, and the fee for it passed on to the payer, in one unit. */
@Injectable()
export class ReturnedChecks {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(PaymentReturns) private readonly returns: PaymentReturns,
    @Inject(ChargeIssuing) private readonly charges: ChargeIssuing,
    @Inject(Takers) private readonly takers: Takers,
  ) {}

  /** @throws Refused `taker-may-not-post` where the taker says it was a mistake, and as a payment's coming back and a charge do */
  async comeBack(paymentId: string, form: ReturnDto): Promise<void> {
    const { payment, contractId } = await this.returns.comeBack(paymentId, form);
    // What the bank sends back anybody may record; that money never came in, not who took it.
    if (form.kind === 'mistake') await this.takers.check([payment.id]);
    const { chargeCents = 0, returnedOn } = form;
    if (chargeCents === 0) return;
    const { sellerId, payerId, method, reference, number } = payment;
    const what = method === 'check' && reference ? `check ${reference}` : `payment ${number}`;
    const charged = contractId !== null && (await this.work.sql(STILL_PAID_BY, [contractId, payerId])).length > 0 ? contractId : null;
    await this.charges.issue({ sellerId, payerId, contractId: charged, description: `Fee for returned ${what}`, amountCents: chargeCents, issuedOn: returnedOn }, { returnedPaymentId: paymentId });
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { ReceiptSheet } from '../../platform/typesetting/receipt-sheet.ts';
import { Typesetter } from '../../platform/typesetting/typesetter.ts';

const SHEET = `select receipt.number, department.name as "departmentName", department.locale, department.currency, seller.name as "sellerName", seller.address as "sellerAddress",
    payer.name as "payerName", receipt.from_whom as "fromWhom", receipt.what_for as "whatFor", receipt.taken_on as "takenOn", receipt.taken_by_name as "takenByName",
    payment.method, payment.reference, payment.amount_cents as "amountCents",
    exists (select from payment_return where payment_return.department_id = $1 and payment_return.payment_id = receipt.payment_id) as "isTakenOut"
  from receipt
    join department on department.id = receipt.department_id
    join payment on payment.department_id = receipt.department_id and payment.id = receipt.payment_id
    join seller on seller.department_id = receipt.department_id and seller.id = receipt.seller_id
    join payer on payer.department_id = receipt.department_id and payer.id = payment.payer_id
  where receipt.department_id = $1 and receipt.id = $2`;

/** Reads in a short unit, closes it, and only then sets the page. */
@Injectable()
export class ReceiptPrinting {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Typesetter) private readonly typesetter: Typesetter,
  ) {}

  async pdf(id: string): Promise<{ bytes: Buffer; name: string }> {
    const [sheet] = isId(id) ? await this.work.run(() => this.work.sql<ReceiptSheet>(SHEET, [id])) : [];
    if (!sheet) return refuse('not-found');
    return { bytes: await this.typesetter.pdf('receipt', sheet), name: `${sheet.number.replace(/[^A-Za-z0-9-]/g, '-')}.pdf` };
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { NumberService } from '../../access/number.service.ts';
import { chargeInvoiced } from '../../domain/billing/charge.ts';
import { documentNumber } from '../../domain/billing/document-number.ts';
import { dueOn } from '../../domain/billing/invoice.ts';
import type { Day } from '../../domain/day.ts';
import { fiscalYearOf } from '../../domain/day.ts';
import { centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { LedgerService } from '../../ledger/ledger.service.ts';
import { isId, newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Contract } from '../../sponsorship/contract.entity.ts';
import { InvoiceLine } from '../invoices/invoice-line.entity.ts';
import { Invoice } from '../invoices/invoice.entity.ts';
import type { PaymentHappening } from '../payments/payment-happening.ts';
import { CHARGE_PARTIES, chargeSnapshot, checkContractOf } from './charge-parties.ts';
import type { ChargeParties } from './charge-parties.ts';
import type { ChargeDto } from './charge.dto.ts';

/** An invoice that no contract agreed upon: the fee of a check that came back, passed on. It is numbered among the invoices. */
@Injectable()
export class ChargeIssuing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LedgerService) private readonly ledger: LedgerService,
    @Inject(NumberService) private readonly numbers: NumberService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** @throws Refused `unknown-seller`, `unknown-payer`, `unknown-contract`, `seller-keeps-own-books`, `contract-of-another-seller`, `contract-of-another-payer`, `contract-closed` */
  async issue(form: ChargeDto, tracedTo: { returnedPaymentId?: string } = {}): Promise<string> {
    const issuedOn = (form.issuedOn ?? (await this.departments.today())) as Day;
    if (isId(form.contractId)) await this.work.lock(Contract, [form.contractId]);
    const parties = await this.partiesOf(form);
    const amountCents = centsOf(form.amountCents);
    const invoiceId = newId();
    const fiscalYear = fiscalYearOf(issuedOn, (await this.departments.here()).fiscalYearStartsInMonth);
    const seriesNumber = await this.numbers.next('invoice', form.sellerId, fiscalYear);
    const number = documentNumber(parties.numberPrefix, fiscalYear, seriesNumber);
    const fallsDueOn = dueOn(issuedOn, parties.termsDays);
    const happening: PaymentHappening = { kind: 'charged', invoiceId, invoiceNumber: number, description: form.description, amountCents };
    const eventId = await this.ledger.book({
      cause: 'invoice', causeId: invoiceId, occurredOn: issuedOn, happening, postings: chargeInvoiced(invoiceId, amountCents), contractId: parties.contractId, sellerId: form.sellerId,
    });
    const { payerId, sponsorId, contractId, sellerId } = parties;
    const amounts = { netCents: amountCents, taxCents: centsOf(0), grossCents: amountCents };
    await this.work.insert(Invoice, {
      id: invoiceId, kind: 'charge', number, fiscalYear, seriesNumber, sellerId, payerId, sponsorId, contractId, termId: null, purchaseOrderNumber: null, issuedOn, dueOn: fallsDueOn,
      ...amounts, taxBasisPoints: 0, eventId, issuedByPersonId: this.work.personId,
      snapshot: chargeSnapshot(parties, { number, issuedOn, dueOn: fallsDueOn, description: form.description, amountCents }) as never,
    });
    await this.work.insert(InvoiceLine, { invoiceId, place: 1, description: form.description, quantity: 1, unitCents: null, amountCents, commitmentId: null, tracedTo: tracedTo as never });
    return invoiceId;
  }

  private async partiesOf({ sellerId, payerId, contractId }: ChargeDto): Promise<ChargeParties> {
    const [row] = await this.work.sql<ChargeParties>(CHARGE_PARTIES, [sellerId, payerId, contractId ?? null]);
    if (!row?.sellerId) return refuse('unknown-seller');
    if (!row.payerId) return refuse('unknown-payer');
    if (contractId && !row.contractId) return refuse('unknown-contract');
    if (!row.keepsBooksHere) refuse('seller-keeps-own-books');
    checkContractOf(row);
    if (row.contractIsClosed) refuse('contract-closed');
    return row;
  }
}

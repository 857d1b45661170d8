import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { invoiceState } from '../../domain/billing/invoice.ts';
import type { Day } from '../../domain/day.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Seller } from '../../sponsorship/seller.entity.ts';
import type { CreditOfSponsor, DollarsWithSeller, InvoiceOfSponsor, MoneyOfSponsorView, PaymentOfSponsor } from './money-of-sponsor.dto.ts';
import { CREDITS, INVOICES, PAYMENTS } from './own-documents.sql.ts';

type InvoiceRow = Omit<InvoiceOfSponsor, 'state'> & { isVoid: boolean; appliedCents: number; discountCents: number; writtenOffCents: number; paidCents: number; creditedCents: number };

/** A sponsor's dollars in plain words, each seller of record apart. */
@Injectable()
export class MoneyOfSponsor {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async of(sponsorId: string): Promise<MoneyOfSponsorView> {
    const today = await this.departments.today();
    const invoices = await this.work.sql<InvoiceRow>(INVOICES, [sponsorId]);
    const credits = await this.work.sql<CreditOfSponsor>(CREDITS, [sponsorId]);
    const payments = await this.work.sql<PaymentOfSponsor>(PAYMENTS, [sponsorId]);
    const dealtWith = new Set([...invoices, ...credits, ...payments].map((one) => one.sellerId));
    const sellers = (await this.work.find(Seller)).filter((seller) => dealtWith.has(seller.id));
    return {
      sellers: sellers.map((seller) => dollarsWith(seller, own(invoices, seller), [...own(credits, seller), ...own(payments, seller)], today)),
      invoices: invoices.map((row) => shown(row, today)),
      credits,
      payments,
    };
  }
}

const own = <Row extends { sellerId: string }>(rows: readonly Row[], seller: Seller): Row[] => rows.filter((row) => row.sellerId === seller.id);

function dollarsWith(seller: Seller, invoices: readonly InvoiceRow[], credits: readonly { leftCents: number }[], today: Day): DollarsWithSeller {
  const valid = invoices.filter((invoice) => !invoice.isVoid);
  const sum = (centsOf: (invoice: InvoiceRow) => number): number => valid.reduce((cents, invoice) => cents + centsOf(invoice), 0);
  return {
    sellerId: seller.id,
    sellerName: seller.name,
    remitTo: seller.remitTo,
    keepsBooksHere: seller.keepsBooksHere,
    invoicedCents: sum((invoice) => invoice.grossCents),
    taxCents: sum((invoice) => invoice.taxCents),
    paidCents: sum((invoice) => invoice.paidCents),
    creditedCents: sum((invoice) => invoice.creditedCents),
    takenOffCents: sum((invoice) => invoice.discountCents + invoice.writtenOffCents),
    openCents: sum((invoice) => invoice.balanceCents),
    overdueCents: sum((invoice) => (invoice.dueOn < today ? invoice.balanceCents : 0)),
    unusedCents: credits.reduce((cents, credit) => cents + credit.leftCents, 0),
  };
}

function shown(row: InvoiceRow, today: Day): InvoiceOfSponsor {
  const { id, number, kind, sellerId, contractTitle, issuedOn, dueOn, taxCents, grossCents, balanceCents } = row;
  return { id, number, kind, sellerId, contractTitle, issuedOn, dueOn, taxCents, grossCents, balanceCents, state: invoiceState(row, today) };
}

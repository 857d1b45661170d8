import { InvoiceIssuing } from '../server/billing/invoices/invoice-issuing.service.ts';
import { Invoice } from '../server/billing/invoices/invoice.entity.ts';
import { PaymentService } from '../server/billing/payments/payment.service.ts';
import type { PaymentDto } from '../server/billing/payments/payment.dto.ts';
import type { Day } from '../server/domain/day.ts';
import { UnitOfWork } from '../server/platform/database/unit-of-work.ts';
import type { Agreement, Agreements } from './contracts.ts';
import type { Market } from './sponsors.ts';
import type { Story } from './story.ts';

type Paid = Pick<PaymentDto, 'method' | 'reference' | 'amountCents'> & { on: Day; applyCents?: number; note?: string };

/** The bookkeeper's desk: what is billed and what comes in. */
export class Desk {
  constructor(
    private readonly story: Story,
    private readonly market: Market,
  ) {}

  async bill({ contractId }: Agreement, issuedOn: Day): Promise<string> {
    return this.story.on(issuedOn, () => this.story.of(InvoiceIssuing).issue({ contractId, throughDay: issuedOn, issuedOn }), 'bookkeeper');
  }

  /** Applies the payment to the invoice, the whole of it unless `applyCents` says less. */
  async pay(seller: keyof Market['sellers'], { sponsor }: Agreement, invoiceId: string, { on, applyCents, ...paid }: Paid): Promise<string> {
    const applications = [{ invoiceId, amountCents: applyCents ?? paid.amountCents }];
    const form = { ...paid, sellerId: this.market.sellers[seller], payerId: this.market.payers[sponsor], receivedOn: on, applications };
    return this.story.on(on, () => this.story.of(PaymentService).receive(form), 'bookkeeper');
  }

  /** The invoice that came along with a contract that was taken over. */
  async openingInvoice({ contractId }: Agreement): Promise<string> {
    const { calendar } = this.story;
    const [invoice] = await this.story.on(calendar.today, () => this.story.of(UnitOfWork).find(Invoice, { contractId, kind: 'opening' }), 'bookkeeper');
    return invoice!.id;
  }
}

/** At the start of the season: three invoices paid, one with more than it asked, and one that nobody pays. */
export async function tellFirstInvoices(story: Story, desk: Desk, deals: Agreements): Promise<void> {
  const { calendar } = story;
  const start = calendar.seasonStartsOn;
  const juniper = await desk.bill(deals.juniper, start);
  await desk.pay('athletics', deals.juniper, juniper, { on: calendar.gameDay(-10), method: 'check', reference: '2231', amountCents: 140_000 });
  const copperline = await desk.bill(deals.copperline, start);
  await desk.pay('athletics', deals.copperline, copperline, { on: calendar.gameDay(-11), method: 'transfer', reference: 'ACH 88-104', amountCents: 30_000 });
  const okafor = await desk.bill(deals.okafor, start);
  await desk.pay('athletics', deals.okafor, okafor, { on: calendar.gameDay(-9), method: 'card', reference: 'terminal 4', amountCents: 18_000 });
  const mirabel = await desk.bill(deals.mirabel, start);
  const note = 'A round two hundred; the rest stands as a credit for next season.';
  await desk.pay('boosters', deals.mirabel, mirabel, { on: calendar.gameDay(-8), method: 'check', reference: '0417', amountCents: 20_000, applyCents: 15_000, note });
  await desk.bill(deals.halvorsen, start);
  const opening = await desk.openingInvoice(deals.pinyon);
  await desk.pay('athletics', deals.pinyon, opening, { on: calendar.gameDay(-7), method: 'check', reference: '1180', amountCents: 15_000 });
}

/** What the accounts office goes on with after mid-season: the ids of invoices and of payments. */
export interface LaterInvoices {
  lantern: string;
  pinyon: string;
  okafor: string;
  okaforPayment: string;
}

/** In mid-season: one partly paid, two open, and what the season's reads have earned so far. */
export async function tellLaterInvoices(story: Story, desk: Desk, deals: Agreements): Promise<LaterInvoices> {
  const { calendar } = story;
  const okafor = await desk.bill(deals.okafor, calendar.gameDay(-4));
  const okaforPayment = await desk.pay('athletics', deals.okafor, okafor, { on: calendar.gameDay(-3), method: 'check', reference: '5512', amountCents: 18_000 });
  const snowmelt = await desk.bill(deals.snowmelt, calendar.gameDay(-3));
  await desk.bill(deals.copperline, calendar.gameDay(-3));
  await desk.pay('athletics', deals.snowmelt, snowmelt, { on: calendar.gameDay(-1), method: 'cash', reference: 'Receipt at the counter', amountCents: 30_000 });
  const lantern = await desk.bill(deals.lantern, calendar.gameDay(-2));
  const pinyon = await desk.bill(deals.pinyon, calendar.gameDay(-2));
  return { lantern, pinyon, okafor, okaforPayment };
}

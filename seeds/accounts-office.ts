import { ReturnedChecks } from '../server/billing/charges/returned-check.service.ts';
import { GoodsService } from '../server/billing/goods/goods.service.ts';
import { GoodsViews } from '../server/billing/goods/goods-view.service.ts';
import { ApplicationService } from '../server/billing/payments/application.service.ts';
import { DepositSlipService } from '../server/billing/receipts/deposit-slip.service.ts';
import type { ReceiptDto } from '../server/billing/receipts/receipt.dto.ts';
import { ReceiptService } from '../server/billing/receipts/receipt.service.ts';
import { Receipt } from '../server/billing/receipts/receipt.entity.ts';
import { MessageService } from '../server/billing/sending/message.service.ts';
import type { Day } from '../server/domain/day.ts';
import { firstOfMonth } from '../server/domain/day.ts';
import { MonthClosing } from '../server/ledger/month-closing.service.ts';
import { UnitOfWork } from '../server/platform/database/unit-of-work.ts';
import { MonthsService } from '../server/reports/months/months.service.ts';
import type { Agreements } from './contracts.ts';
import type { LaterInvoices } from './money.ts';
import type { Market } from './sponsors.ts';
import type { Story } from './story.ts';

/** What a sponsor hands over at the table or at the counter; the announcer writes the receipt. Answers the payment's id. */
async function takeReceipt(story: Story, form: ReceiptDto): Promise<string> {
  return story.on(form.takenOn as Day, async () => {
    const id = await story.of(ReceiptService).take(form);
    return (await story.of(UnitOfWork).one(Receipt, id)).paymentId;
  }, 'announcer');
}

/** One hand-over is at the bank and paid its invoice, another still lies in the drawer. */
async function tellReceipts(story: Story, market: Market, invoices: LaterInvoices): Promise<void> {
  const { calendar } = story;
  const handedOver = await takeReceipt(story, {
    ...{ sellerId: market.sellers.athletics, payerId: market.payers.pinyon, fromWhom: 'Ruben Castellane', takenOn: calendar.gameDay(-2) },
    ...{ method: 'cash', amountCents: 10_000, whatFor: 'On the invoice for the quarter breaks' },
  });
  const depositedOn = calendar.gameDay(-1);
  await story.on(depositedOn, async () => {
    await story.of(DepositSlipService).deposit({ sellerId: market.sellers.athletics, depositedOn, paymentIds: [handedOver], countedCents: 10_000 });
    await story.of(ApplicationService).apply(handedOver, [{ invoiceId: invoices.pinyon, amountCents: 10_000 }], depositedOn, depositedOn);
  }, 'bookkeeper');
  await takeReceipt(story, {
    ...{ sellerId: market.sellers.boosters, payerId: market.payers.lantern, fromWhom: 'Hank Delacroix-Wynn', takenOn: depositedOn },
    ...{ method: 'check', reference: '3316', amountCents: 4_500, whatFor: 'Time-outs so far' },
  });
}

/** Programs for reads: a thousand promised, the first boxes are here. */
async function tellGoods(story: Story, { programs }: Agreements): Promise<void> {
  const { calendar } = story;
  const [promise] = await story.on(calendar.gameDay(-1), () => story.of(GoodsViews).promises(programs.contractId));
  const delivery = { promiseId: promise!.id, receivedOn: calendar.gameDay(-1), quantity: 400, proof: 'Two boxes, taken in by the front office' };
  await story.on(delivery.receivedOn, () => story.of(GoodsService).receive(programs.contractId, delivery), 'bookkeeper');
}

/** The accounts office in mid-season: money in the drawer and at the bank, a check that came back, goods, a letter, a month that is closed. */
export async function tellAccountsOffice(story: Story, market: Market, deals: Agreements, invoices: LaterInvoices): Promise<void> {
  const { calendar } = story;
  await tellReceipts(story, market, invoices);
  await tellGoods(story, deals);
  const returnedOn = calendar.gameDay(-1);
  const returned = { kind: 'returned', returnedOn, bankFeeCents: 1_200, chargeCents: 1_200, reason: 'The bank sent it back: not enough on the account.' } as const;
  await story.on(returnedOn, () => story.of(ReturnedChecks).comeBack(invoices.okaforPayment, returned), 'bookkeeper');
  await story.on(calendar.gameDay(-2), () => story.of(MessageService).send({ kind: 'invoice', aboutId: invoices.lantern }), 'bookkeeper');
  const month = firstOfMonth(calendar.seasonStartsOn);
  await story.on(calendar.today, () => story.of(MonthClosing).close(month, true, () => story.of(MonthsService).lateNights(month)), 'bookkeeper');
}

import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, field, figuresAre, open, press, settled, write } from '../support/browser-page.ts';
import { theGoldenContract } from '../support/golden-contract.ts';
import type { GoldenContract } from '../support/golden-contract.ts';

const TITLE = 'Game balls and concession reads';
const dialog = (page: Page): Locator => page.getByRole('dialog');

/** Somebody of the office at a page of its own, working on the golden contract. */
class Clerk {
  constructor(
    readonly page: Page,
    private readonly golden: GoldenContract,
  ) {}

  /** From elsewhere, so that the page reads what others did meanwhile. */
  async contract(tab = ''): Promise<void> {
    await open(this.page, '/', 'Home');
    await open(this.page, `/contracts/${this.golden.contractId}/show${tab && `?tab=${tab}`}`, TITLE);
  }

  async invoice(id: string): Promise<void> {
    await open(this.page, `/invoices/${id}/show`, /^(Invoice|Charge) TR-/);
  }

  async bill(day: string): Promise<string> {
    await this.contract();
    await press(this.page, 'Issue an invoice');
    await write(dialog(this.page), { 'Due through': day, 'Issued on': day });
    await press(dialog(this.page), 'Issue the invoice');
    await this.page.getByRole('heading', { level: 1, name: /^Invoice TR/ }).waitFor();
    return /\/invoices\/([0-9a-f-]+)\/show/.exec(this.page.url())![1]!;
  }

  /** Records a payment from the invoice's page, all of it or a part on the invoice. Answers the payment's id. */
  async receive(invoiceId: string, on: string, method: string, amount: string, applied: string): Promise<string> {
    await this.invoice(invoiceId);
    await this.page.getByRole('link', { name: 'Record a payment' }).click();
    await settled(this.page, 'Record a payment');
    await choose(this.page, { By: method });
    await write(this.page, { Amount: amount, 'Received on': on, 'Of it': applied });
    await press(this.page, 'Record the payment');
    await this.page.getByRole('heading', { level: 1, name: /^Payment / }).waitFor();
    return /\/payments\/([0-9a-f-]+)\/show/.exec(this.page.url())![1]!;
  }

  async closeMonth(month: string, name: string): Promise<void> {
    await open(this.page, `/months/${month}/show`, name);
    await press(this.page, `Close ${name}`);
    await press(dialog(this.page), `Close ${name}`);
    await this.page.getByText(`${name} is closed.`).waitFor();
  }

  /** Each account that has a balance: debits above zero. */
  async trialBalance(on: string): Promise<string[]> {
    await open(this.page, `/trial-balance?sellerId=${this.golden.season.sellerId}&on=${on}`, 'Trial balance');
    const rows = this.page.getByRole('region', { name: 'Trial balance' }).getByRole('row');
    await rows.first().waitFor();
    return (await rows.allInnerTexts()).map((row) => row.replace(/\s+/g, ' ').trim());
  }
}

// LEDGER.md, section 5: K1 as the people of the office work it. Nights are logged and signed off by the routes of the desk, whose pages have tests of their own.
test('the golden contract comes to the cent and to the read after each of its steps through the pages of the office', { timeout: 300_000 }, async () => {
  const golden = await theGoldenContract();
  const { department } = golden;
  const director = new Clerk(await aPage({ visitor: department.director }), golden);
  const bookkeeper = new Clerk(await aPage({ visitor: department.bookkeeper }), golden);
  const stands = async (...row: unknown[]) => expect(await golden.row()).toEqual(row);

  await director.contract();
  await press(director.page, 'Sign');
  await write(dialog(director.page), { 'Signed on': '2024-11-20', 'Who signed for the sponsor': 'Hazel Juniper' });
  await press(dialog(director.page), 'Sign');
  await figuresAre(director.page, { Promised: '14', 'Still owed': '14' });
  await stands('6/0/0', '8/0/0/0', 70_000, 0, 0, 0, 0, 0, 0);

  const first = await bookkeeper.bill('2024-11-23');
  await figuresAre(bookkeeper.page, { 'To pay': '$367.50', Unpaid: '$367.50' });
  await stands('6/0/0', '8/0/0/0', 35_000, -35_000, 36_750, 0, -1_750, 0, 0);
  await golden.night('2024-12-01', [1, 1]);
  await bookkeeper.receive(first, '2024-12-05', 'Check', '367.50', '367.50');
  await stands('5/1/0', '7/1/0/0', 35_000, -24_544, 0, 0, -1_750, 36_750, -10_456);
  const eighth = await golden.night('2024-12-08', [1, 1]);
  await golden.night('2024-12-15', [1, 0], { notRead: 1 });
  await golden.night('2024-12-18', [1, 2]);
  await stands('2/4/0', '4/4/0/0', 35_000, 6_820, 0, 0, -1_750, 36_750, -41_820);

  await bookkeeper.closeMonth('2024-11', 'November 2024');
  await bookkeeper.closeMonth('2024-12', 'December 2024');
  await golden.takeBack(eighth.nightId, eighth.entries[1]!.id);
  await stands('2/4/0', '5/3/0/0', 35_000, 3_184, 0, 0, -1_750, 36_750, -38_184);
  expect(await bookkeeper.trialBalance('2024-12-31')).toEqual([
    'Account Debit Credit', '1000 Cash $367.50 –', '2100 Contract balance $68.20 –', '2200 Sales tax payable – $17.50', '4000 Sponsorship revenue – $418.20', 'Total $435.70 $435.70',
  ]);

  await director.contract();
  await press(director.page, 'Change the contract');
  await director.page.getByRole('menuitem', { name: 'Amend' }).click();
  await settled(director.page, `Amend ${TITLE}`);
  const line = director.page.getByRole('group', { name: 'Concession read' });
  await field(line, 'How many more').fill('4');
  await choose(line, { Price: 'Adds to the price' });
  await write(line, { By: '120' });
  await write(director.page, { 'As of': '2025-01-06' });
  await director.page.getByText('The agreed price rises by 120.00: 120.00 more is to be billed.').waitFor();
  await press(director.page, 'Amend');
  await director.page.getByText('The contract is amended.').waitFor();
  await stands('2/4/0', '9/3/0/0', 47_000, 3_184, 0, 0, -1_750, 36_750, -38_184);

  await golden.night('2025-01-08', [1, 2]);
  const second = await bookkeeper.bill('2025-01-15');
  await stands('1/5/0', '7/5/0/0', 0, -30_290, 49_350, 0, -4_100, 36_750, -51_710);
  await bookkeeper.receive(second, '2025-01-20', 'Check', '300.00', '300.00');
  await stands('1/5/0', '7/5/0/0', 0, -30_290, 19_350, 0, -4_100, 66_750, -51_710);

  const icy = await golden.game('2025-01-22');
  await department.director.make(`/api/games/${icy.gameId}/cancel`, { reason: 'Ice' });
  await director.contract('credits');
  await press(director.page, 'Agree a makegood');
  await choose(dialog(director.page), { Reads: 'Sponsored game ball: 1 owed', 'Read instead': 'Concession read' });
  await write(dialog(director.page), { 'How many instead': '2', 'Agreed on': '2025-01-25', 'Agreed with': 'Hazel Juniper' });
  await press(dialog(director.page), 'Agree it');
  await director.page.getByText('0 of 2 given, 0 placed; 0 of 1 settled').waitFor();
  const makegoodId = (await department.director.look(`/api/contracts/${golden.contractId}/makegoods`)).data[0].id as string;

  await golden.night('2025-01-29', [0, 3], { makegoodId });
  await stands('1/5/0', '4/8/0/0', 0, -20_230, 19_350, 0, -4_100, 66_750, -61_770);
  await bookkeeper.closeMonth('2025-01', 'January 2025');
  await golden.night('2025-02-05', [0, 2], { makegoodId });
  await stands('0/5/1', '2/10/0/0', 0, -6_706, 19_350, 0, -4_100, 66_750, -75_294);
  expect(await bookkeeper.trialBalance('2025-01-31')).toEqual([
    'Account Debit Credit', '1000 Cash $667.50 –', '1100 Accounts receivable $193.50 –', '2100 Contract balance – $202.30', '2200 Sales tax payable – $41.00', '4000 Sponsorship revenue – $617.70',
    'Total $861.00 $861.00',
  ]);

  await bookkeeper.contract('credits');
  await press(bookkeeper.page, 'Credit reads');
  await choose(dialog(bookkeeper.page), { Reads: 'Concession read: 2 owed' });
  await write(dialog(bookkeeper.page), { 'How many': '2', On: '2025-02-15', Why: 'Two reads were not given' });
  await dialog(bookkeeper.page).getByText('A credit memo is written on invoice TR-2025-0002: $67.06 and $3.35 tax, $70.41 in all.').waitFor();
  await press(dialog(bookkeeper.page), 'Credit reads');
  await bookkeeper.page.getByText('The reads are credited.').waitFor();
  await stands('0/5/1', '0/10/2/0', 0, 0, 12_309, 0, -3_765, 66_750, -75_294);

  const check = await bookkeeper.receive(second, '2025-02-18', 'Check', '150.00', '123.09');
  await figuresAre(bookkeeper.page, { 'Credit left': '$26.91' });
  await stands('0/5/1', '0/10/2/0', 0, 0, 0, -2_691, -3_765, 81_750, -75_294);
  await golden.night('2025-02-19', [0, 1]);
  await stands('0/5/1', '0/10/2/1', 0, 0, 0, -2_691, -3_765, 81_750, -75_294);

  await open(bookkeeper.page, `/payments/${check}/show`, /^Payment /);
  await press(bookkeeper.page, 'It came back');
  await write(dialog(bookkeeper.page), { 'Came back on': '2025-02-24', 'The bank took': '12.00', 'Charge the payer': '12.00', Why: 'Not enough in the account' });
  await press(dialog(bookkeeper.page), 'It came back');
  await bookkeeper.page.getByText('The payment came back. What it paid is open again.').waitFor();
  await stands('0/5/1', '0/10/2/1', 0, 0, 13_509, 0, -3_765, 65_550, -75_294);

  const transfer = await bookkeeper.receive(second, '2025-03-02', 'Bank transfer', '140.00', '123.09');
  await press(bookkeeper.page, 'Apply to an invoice');
  await choose(dialog(bookkeeper.page), { Invoice: /^TR-2025-0003: \$12\.00 unpaid/ });
  await write(dialog(bookkeeper.page), { Amount: '12.00', 'Applied on': '2025-03-02' });
  await press(dialog(bookkeeper.page), 'Apply it');
  await figuresAre(bookkeeper.page, { 'Credit left': '$4.91' });
  await stands('0/5/1', '0/10/2/1', 0, 0, 0, -491, -3_765, 79_550, -75_294);

  await press(bookkeeper.page, 'Refund');
  await write(dialog(bookkeeper.page), { 'Paid back on': '2025-03-05' });
  await press(dialog(bookkeeper.page), 'Record the refund');
  await bookkeeper.page.getByText('The refund is recorded.').waitFor();
  expect((await department.bookkeeper.look(`/api/payments/${transfer}`)).unappliedCents).toBe(0);

  await director.contract();
  await press(director.page, 'Change the contract');
  await director.page.getByRole('menuitem', { name: 'Close', exact: true }).click();
  await settled(director.page, `Close ${TITLE}`);
  await write(director.page, { 'As of': '2025-03-05' });
  await expect.poll(() => director.page.getByRole('button', { name: 'Close', exact: true }).isEnabled(), { timeout: 10_000 }).toBe(true);
  await press(director.page, 'Close');
  await director.page.getByText('The contract is closed.').waitFor();
  await settled(director.page, TITLE);
  await figuresAre(director.page, { 'Still owed': '0', Unpaid: '$0.00' });
  await stands('0/5/1', '0/10/2/1', 0, 0, 0, 0, -3_765, 79_059, -75_294);
  expect(await bookkeeper.trialBalance('2025-03-31')).toEqual([
    'Account Debit Credit', '1000 Cash $790.59 –', '2200 Sales tax payable – $37.65', '4000 Sponsorship revenue – $752.94', '4200 Fees and interest – $12.00', '5200 Bank charges $12.00 –', 'Total $802.59 $802.59',
  ]);
});

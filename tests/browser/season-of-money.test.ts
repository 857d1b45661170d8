import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, figuresAre, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aSeasonThatIsOver } from '../support/season.ts';
import type { Season } from '../support/season.ts';

type Key = 'full' | 'parts' | 'deposit' | 'game' | 'monthly' | 'goods';

interface Deal {
  sponsor: string;
  seller: 'TR' | 'KB';
  title: string;
  price: number;
  plan: Record<string, unknown>;
  more?: Record<string, unknown>;
  line?: Record<string, unknown>;
  term?: Record<string, unknown>;
}

/** One contract of each plan, half of them the boosters'. */
const DEALS: Record<Key, Deal> = {
  full: { sponsor: 'Snowmelt Creamery', seller: 'TR', title: 'At the stand', price: 40_000, plan: { kind: 'inFull', on: '2024-11-25' } },
  parts: { sponsor: 'Copperline Credit Union', seller: 'TR', title: 'Three parts', price: 60_000, plan: { kind: 'installments', installments: ['2024-11-25', '2024-12-31', '2025-02-10'].map((on) => ({ on, amountCents: 20_000 })) } },
  deposit: { sponsor: 'Halvorsen Orthodontics', seller: 'TR', title: 'A deposit first', price: 32_000, plan: { kind: 'depositAndArrears', depositCents: 10_000, depositOn: '2024-11-25' } },
  game: { sponsor: 'Okafor Family Insurance', seller: 'KB', title: 'By the game', price: 24_000, plan: { kind: 'perGame' } },
  monthly: { sponsor: 'Blue Lantern Tire', seller: 'KB', title: 'By the month', price: 0, plan: { kind: 'perReadInArrears', monthly: true }, line: { priceEachCents: 2_500 }, term: { pricing: 'perRead', billAtLeastCents: 15_000, billAtMostCents: 30_000 } },
  goods: { sponsor: 'Pinyon Print Works', seller: 'KB', title: 'Programs for reads', price: 24_000, plan: { kind: 'inFull', on: '2024-11-25' }, more: { isInKind: true } },
};

const NIGHTS = ['2024-12-06', '2024-12-13', '2025-01-10', '2025-02-07'];
const dialog = (page: Page): Locator => page.getByRole('dialog');

class Season2024 {
  readonly device = new TableDevice();
  readonly contracts = {} as Record<Key, { id: string; lineId: string; payerId: string }>;
  sellers!: Record<'TR' | 'KB', string>;

  constructor(
    readonly department: Department,
    readonly season: Season,
    readonly office: Page,
    readonly books: Page,
  ) {}

  /** Draws up and signs what is sold, and schedules the home games. */
  async sell(): Promise<void> {
    const { director } = this.department;
    const { season } = this;
    const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
    this.sellers = { TR: season.sellerId, KB: boosters.id };
    for (const playedOn of NIGHTS) {
      await director.make('/api/games', { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn, startsAtClock: '19:00', venueId: season.venueId });
    }
    for (const [key, deal] of Object.entries(DEALS) as [Key, Deal][]) {
      const sponsor = await director.make('/api/sponsors', { name: deal.sponsor, categoryId: season.categoryId });
      const payer = await director.make('/api/payers', { name: deal.sponsor, sponsorId: sponsor.id });
      const draft = await director.make('/api/contracts', {
        sponsorId: sponsor.id, sellerId: this.sellers[deal.seller], payerId: payer.id, title: deal.title, ...deal.more,
        term: { seasonId: season.seasonId, startsOn: '2024-11-20', endsOn: '2025-03-13', pricing: 'fixed', priceCents: deal.price, billingPlan: deal.plan, ...deal.term },
        commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4_000, ...deal.line }],
        benefits: [],
      });
      if (key === 'goods') await director.put(`/api/contracts/${draft.id}/goods-promises`, { promises: [{ what: 'Box of printed programs', quantity: 8, unitCents: 3_000, dueOn: '2025-01-31' }] }, { version: draft.term.version });
      await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2024-11-20', signedByName: `${deal.sponsor}, its owner` });
      this.contracts[key] = { id: draft.id, lineId: draft.commitments[0].id, payerId: payer.id };
    }
  }

  /** Plays a home night on which every sponsor but those named is read twice, and signs it off. */
  async play(playedOn: string, without: Key[] = []): Promise<void> {
    const { director, announcer } = this.department;
    const game = (await director.look(`/api/games?perPage=50&seasonId=${this.season.seasonId}`)).data.find((one: any) => one.playedOn === playedOn);
    const lines = (Object.keys(DEALS) as Key[]).filter((key) => !without.includes(key)).map((key) => this.contracts[key].lineId);
    const entries = lines.flatMap((line, place) => [this.device.read(line, game.id, 10 + 2 * place), this.device.read(line, game.id, 11 + 2 * place)]);
    await announcer.make(`/api/nights/${game.nightIds[0]}/log`, { deviceId: this.device.deviceId, entries });
    await director.make(`/api/games/${game.id}/play`, { scores: [{ teamId: this.season.teamId, score: 58 }, { teamId: this.season.opponentTeamId, score: 51 }] });
    await director.make(`/api/nights/${game.nightIds[0]}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    await this.balances();
  }

  /** Both sellers' trial balances as the page shows them: what stands on the left is what stands on the right. */
  async balances(): Promise<void> {
    for (const seller of ['TR', 'KB'] as const) {
      await open(this.books, `/trial-balance?sellerId=${this.sellers[seller]}&on=2025-12-31`, 'Trial balance');
      const sums = this.books.getByRole('region', { name: 'Trial balance' }).getByRole('row').last();
      const empty = this.books.getByText(/stands at zero/);
      await sums.or(empty).first().waitFor();
      if (await empty.count()) continue;
      const [, debit, credit] = (await sums.innerText()).split(/[\t\n]+/);
      expect(debit, seller).toMatch(/^\$[\d,]+\.\d\d$/);
      expect(credit, seller).toBe(debit);
    }
  }

  /** Bills both sellers through a day in one run, as the preview foretells. Answers what is asked for in all. */
  async run(day: string, invoices: number): Promise<string> {
    const page = this.office;
    await open(page, '/billing-runs/create', 'New billing run');
    await write(page, { 'Bill what is due through': day, 'Invoices issued on': day });
    const button = page.getByRole('button', { name: `Issue ${invoices} invoice${invoices === 1 ? '' : 's'}`, exact: true });
    await button.waitFor();
    const foretold = (await page.getByText(/^This gives out/).locator('strong').innerText()).trim();
    await button.click();
    await settled(page, /^Billing run through/);
    await figuresAre(page, { Invoices: String(invoices), 'To pay': foretold });
    await this.balances();
    return foretold;
  }

  async invoicesOf(key: Key): Promise<any[]> {
    return (await this.department.bookkeeper.look(`/api/invoices?contractId=${this.contracts[key].id}&sort=issuedOn`)).data;
  }

  /** Pays what is open on an invoice, by check, from its page. */
  async pay(invoiceId: string, on: string, amount?: string): Promise<string> {
    const page = this.office;
    await open(page, `/invoices/${invoiceId}/show`, /^(Invoice|Charge) /);
    await page.getByRole('link', { name: 'Record a payment' }).click();
    await settled(page, 'Record a payment');
    await write(page, { 'Received on': on, ...(amount ? { Amount: amount, 'Of it': amount } : {}) });
    await press(page, 'Record the payment');
    await page.getByRole('heading', { level: 1, name: /^Payment / }).waitFor();
    await this.balances();
    return /\/payments\/([0-9a-f-]+)\/show/.exec(page.url())![1]!;
  }

  async contract(key: Key, tab = ''): Promise<void> {
    await open(this.office, `/contracts/${this.contracts[key].id}/show${tab && `?tab=${tab}`}`, DEALS[key].title);
  }

  async close(month: string, name: string): Promise<void> {
    const page = this.office;
    await open(page, `/months/${month}/show`, name);
    await press(page, `Close ${name}`);
    await press(dialog(page), `Close ${name}`);
    await page.getByText(`${name} is closed.`).waitFor();
    await this.balances();
  }
}

async function theSeason(): Promise<Season2024> {
  const department = await aDepartment();
  const season = await aSeasonThatIsOver(department);
  const both = new Season2024(department, season, await aPage({ visitor: department.bookkeeper }), await aPage({ visitor: department.bookkeeper }));
  await both.sell();
  return both;
}

/** A hand-over at the table, written by the announcer, banked and applied by the bookkeeper. */
async function bringCash(told: Season2024, invoiceNumber: string): Promise<void> {
  const table = await aPage({ visitor: told.department.announcer, width: 360 });
  await open(table, '/receipts/create', 'Write a receipt');
  await choose(table, { Payer: DEALS.full.sponsor, 'Seller of record': 'Tamarack Ridge Athletics', In: 'Cash' });
  await write(table, { Amount: '150.00', 'Taken on': '2024-11-29' });
  await press(table, 'Write the receipt');
  await table.getByRole('heading', { level: 1, name: /^Receipt TR-/ }).waitFor();
  const page = told.office;
  await open(page, '/deposit-slips/create', 'Make a deposit slip');
  await write(page, { 'Cash counted': '150.00', 'Deposited on': '2024-11-29' });
  await press(page, 'Make the deposit slip');
  await settled(page, /^Deposit slip /);
  const [payment] = (await told.department.bookkeeper.look('/api/payments')).data;
  await open(page, `/payments/${payment.id}/show`, /^Payment /);
  await press(page, 'Apply to an invoice');
  await choose(dialog(page), { Invoice: new RegExp(`^${invoiceNumber}`) });
  await write(dialog(page), { 'Applied on': '2024-11-30' });
  await press(dialog(page), 'Apply it');
  await figuresAre(page, { 'Credit left': '$0.00' });
  await told.balances();
}

async function creditTwo(told: Season2024): Promise<void> {
  const page = told.office;
  await told.contract('full', 'credits');
  await press(page, 'Credit reads');
  await choose(dialog(page), { Reads: 'Concession read: 2 owed' });
  await write(dialog(page), { 'How many': '2', On: '2025-01-15', Why: 'The stand was shut' });
  await dialog(page).getByText(/A credit memo is written on invoice TR-2025-0001: \$100\.00 and \$5\.00 tax/).waitFor();
  await press(dialog(page), 'Credit reads');
  await page.getByText('The reads are credited.').waitFor();
  await told.balances();
}

/** What the printer did not bring by the end of the season. */
async function letGo(told: Season2024): Promise<void> {
  const director = await aPage({ visitor: told.department.director });
  await open(director, `/contracts/${told.contracts.goods.id}/show?tab=goods`, DEALS.goods.title);
  await press(director, 'Let it go');
  await write(dialog(director), { On: '2025-02-28' });
  await press(dialog(director), 'Let it go');
  await director.getByText('It is let go.').waitFor();
  await told.balances();
}

async function endEarly(told: Season2024): Promise<void> {
  const director = await aPage({ visitor: told.department.director });
  await open(director, `/contracts/${told.contracts.game.id}/end`, `End ${DEALS.game.title} early`);
  await write(director, { 'As of': '2025-01-15', Why: 'The agency moves away' });
  const button = director.getByRole('button', { name: 'End early', exact: true });
  await expect.poll(() => button.isEnabled(), { timeout: 10_000 }).toBe(true);
  await button.click();
  await director.getByText('The contract has ended.').waitFor();
  await told.balances();
}

async function closeContract(told: Season2024, key: Key): Promise<void> {
  const director = await aPage({ visitor: told.department.director });
  await open(director, `/contracts/${told.contracts[key].id}/close`, `Close ${DEALS[key].title}`);
  await write(director, { 'As of': '2025-03-01' });
  const button = director.getByRole('button', { name: 'Close', exact: true });
  await expect.poll(() => button.isEnabled(), { timeout: 10_000 }).toBe(true);
  await button.click();
  await director.getByText('The contract is closed.').waitFor();
  await settled(director, DEALS[key].title);
  await figuresAre(director, { 'Still owed': '0', Unpaid: '$0.00' });
  const { standing, term } = await told.department.director.look(`/api/contracts/${told.contracts[key].id}`);
  expect([term.state, standing.owed, standing.toBillCents, standing.contractBalanceCents, standing.receivableCents]).toEqual(['closed', 0, 0, 0, 0]);
}

test('a season of two sellers is billed by every plan, paid in part, credited, returned, ended early and closed month by month on the pages of the office', { timeout: 300_000 }, async () => {
  const told = await theSeason();
  const page = told.office;

  expect(await told.run('2024-11-30', 3)).toBe('$735.00');
  const [stand] = await told.invoicesOf('full');
  await bringCash(told, stand.number);
  await told.close('2024-11', 'November 2024');

  await told.play('2024-12-06');
  await told.play('2024-12-13');
  // Two reads a night for all six: the second part, 160.00 less the deposit of 100.00, two of four games; the month of December waits until it is over.
  await told.run('2024-12-30', 2);
  await told.run('2024-12-31', 2);
  expect((await told.invoicesOf('monthly')).map((one) => one.grossCents)).toEqual([10_000]);
  expect((await told.invoicesOf('game')).map((one) => one.grossCents)).toEqual([12_000]);
  expect((await told.invoicesOf('deposit')).map((one) => one.netCents)).toEqual([10_000, 6_000]);

  const [firstPart, secondPart] = await told.invoicesOf('parts');
  const check = await told.pay(firstPart.id, '2024-12-31');
  await told.pay(secondPart.id, '2024-12-31', '80.00');
  await told.close('2024-12', 'December 2024');
  await open(page, `/payments/${check}/show`, /^Payment /);
  await press(page, 'It came back');
  await write(dialog(page), { 'Came back on': '2025-01-06', 'The bank took': '12.00', 'Charge the payer': '12.00', Why: 'The account was closed' });
  await press(dialog(page), 'It came back');
  await page.getByText('The payment came back. What it paid is open again.').waitFor();
  await told.balances();
  expect((await told.invoicesOf('parts')).map((one) => one.balanceCents)).toContain(21_000);

  await told.contract('goods', 'goods');
  await press(page, 'Record delivery');
  await write(dialog(page), { 'Received on': '2025-01-08', 'How many': '5', Proof: 'Five boxes at the front office' });
  await press(dialog(page), 'Record delivery');
  await figuresAre(page, { Price: '$240.00', Received: '$150.00', 'Still to come': '$90.00' });
  await told.balances();
  await told.play('2025-01-10', ['deposit']);
  await creditTwo(told);
  await endEarly(told);
  await told.run('2025-01-31', 2);
  await told.close('2025-01', 'January 2025');
  await told.play('2025-02-07', ['game', 'full']);
  await told.run('2025-02-28', 3);
  await letGo(told);
  for (const key of ['full', 'deposit'] as const) {
    for (const invoice of await told.invoicesOf(key)) if (invoice.balanceCents > 0) await told.pay(invoice.id, '2025-02-28');
  }
  await told.close('2025-02', 'February 2025');
  await closeContract(told, 'full');
  await told.balances();
});

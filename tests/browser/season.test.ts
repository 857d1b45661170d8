import { hash } from '@node-rs/argon2';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { addDays, dayOf } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { aPage, choose, figuresAre, open, paperFrom, press, settled, write } from '../support/browser-page.ts';
import { baseUrl, ownerPool } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { readPaper } from './paper.ts';

const PASSWORD = 'kestrels over the ridge';

/** Today on the department's clock: a night may be signed off on its day. */
const today = dayOf(new Intl.DateTimeFormat('en-CA', { timeZone: 'America/Denver' }).format(Date.now()));
const shown = (day: Day): string => new Intl.DateTimeFormat('en-US', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' }).format(Date.parse(day));

const section = (page: Page, title: string): Locator => page.getByRole('heading', { level: 2, name: title, exact: true }).locator('xpath=ancestor::section[1]');
const dialog = (page: Page): Locator => page.getByRole('dialog');
const dollars = (amountCents: number): string => (amountCents / 100).toLocaleString('en-US', { style: 'currency', currency: 'USD' });

/** What stands before the first sitting: the schools, the floor, the season, the teams, what can be sold. */
async function aDepartmentBeforeItsSeason(): Promise<{ department: Department; email: string }> {
  const department = await aDepartment();
  const { director } = department;
  const make = async (path: string, body: unknown): Promise<any> => director.make(path, body);
  const school = await make('/api/schools', { name: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', isOurs: true, firstColour: '#1F5C3A', secondColour: '#B8632A' });
  const herons = await make('/api/schools', { name: 'Port Ansel High School', shortName: 'Port Ansel', nickname: 'Herons', firstColour: '#14213D', secondColour: '#C9A227' });
  await make('/api/venues', { name: 'Alder Fieldhouse', isOurs: true, floors: [{ name: 'the Perch' }], exitsText: 'North doors and south doors.', evacuationText: 'Please walk to the nearest exit.' });
  const season = await make('/api/seasons', { name: 'Basketball', sport: 'basketball', startsOn: addDays(today, -30), endsOn: addDays(today, 100) });
  for (const schoolId of [school.id, herons.id]) await make('/api/teams', { seasonId: season.id, schoolId, name: 'Varsity boys', level: 'varsity' });
  for (const name of ['Credit union', 'Food']) await make('/api/sponsor-categories', { name });
  await make('/api/sellers', { name: 'Tamarack Ridge Athletics', numberPrefix: 'TR', taxBasisPoints: 500, address: '1 Kestrel Way', taxIdentity: '00-0000000' });
  await make('/api/read-kinds', { name: 'Sponsored game ball', timing: 'scheduled', windows: ['pregame'] });
  await make('/api/read-kinds', { name: 'Concession read', timing: 'scheduled', windows: ['halftime', 'timeOut'], sponsorsPerGame: 3 });
  await make('/api/read-kinds', { name: 'Bank-shot mention', timing: 'onOccurrence', windows: ['timeOut'], occurrence: 'bank shot', sponsorsPerGame: 1 });
  const passwordHash = await hash(PASSWORD, { memoryCost: 19_456, timeCost: 2, parallelism: 1 });
  await ownerPool.query('update person set password_hash = $1 where id = $2', [passwordHash, director.personId]);
  return { department, email: `${director.personId}@tamarack.example` };
}

const ROSTERS = '\uFEFFteam;number;name;say as;announce;starter\r\nVarsity boys;3;Łukasz Wren;WOO-kash ren;name;yes\r\nVarsity boys;00;"Nguyễn Tam";nwin tahm;name;yes\r\nVarsity boys;12;Xochitl Marlowe;SO-cheel MAR-low;silence;\r\n';
const SCHEDULE = `venue,date,time,opponent,team,home/away,id\n${[0, 7, 14].map((days, at) => `Alder Fieldhouse,${addDays(today, days)},7:00 PM,Port Ansel,Varsity boys,H,G-${at + 1}`).join('\n')}\n`;
const CONTRACTS = 'contract number,sponsor,category,read kind,count,price,seller\nK-7,Snowmelt Creamery,Food,Concession read,3,"$1,240.00",Tamarack Ridge Athletics\n';

/** Reads a file, shows what it would do, writes it; the same file again has nothing to write. */
async function importFile(page: Page, kind: string, csv: string, adds: number): Promise<void> {
  await open(page, '/', 'Home');
  await open(page, '/imports', 'Imports');
  await choose(page, { 'What the file holds': kind, Season: 'Basketball' });
  await page.getByLabel('Choose a file').last().setInputFiles({ name: 'file.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
  await press(page, 'Show what would happen');
  await figuresAre(section(page, 'What would happen'), { 'To add': String(adds) });
  await press(page, 'Write it');
  await page.getByText('The file is written.').waitFor();
  await figuresAre(section(page, 'What was done'), { Added: String(adds) });
  await press(page, 'Show what would happen');
  await page.getByText('There is nothing to write. Everything in the file is here already.').waitFor();
}

async function signIn(page: Page, email: string): Promise<void> {
  await page.goto(baseUrl);
  await write(page, { 'E-mail': email, Password: PASSWORD });
  await press(page, 'Sign in');
  await settled(page, 'Home');
}

/** A sponsor, who pays for it, its words and its contract, each by its form. */
async function promiseReads(page: Page): Promise<void> {
  await open(page, '/sponsors/create', 'Add a sponsor');
  await write(page, { Name: 'Copperline Credit Union' });
  await choose(page, { Category: 'Credit union' });
  await press(page, 'Add');
  await settled(page, 'Copperline Credit Union');
  await open(page, '/payers/create', 'Add a payer');
  await write(page, { 'Name on the invoice': 'Copperline Accounts Payable' });
  await choose(page, { 'Pays for the sponsor': 'Copperline Credit Union' });
  await press(page, 'Add');
  await settled(page, 'Copperline Accounts Payable');
  await open(page, '/copies/create', 'Add copy');
  await choose(page, { Sponsor: 'Copperline Credit Union', 'Read kind': 'Concession read' });
  await write(page, { Title: 'At the half', 'Words to be read': 'Copperline Credit Union, on Spruce Street since 1961.', 'Neutral line': 'We thank Copperline Credit Union.' });
  await press(page, 'Add');
  await settled(page, 'At the half');
  await press(page, 'Record the approval');
  await write(dialog(page), { 'Who agreed': 'Nadia Ferreira' });
  await press(dialog(page), 'Record the approval');
  await page.getByText('Approved by Nadia Ferreira').waitFor();
}

async function drawUpContract(page: Page): Promise<void> {
  await open(page, '/sponsors', 'Sponsors');
  await page.getByRole('link', { name: 'Copperline Credit Union' }).click();
  await page.getByRole('link', { name: 'New contract' }).click();
  await settled(page, 'New contract');
  await write(page, { Title: 'Copperline at the Perch' });
  await choose(page, { 'Seller of record': 'Tamarack Ridge Athletics', Payer: 'Copperline Accounts Payable', Season: 'Basketball' });
  await write(page, { 'First day': addDays(today, -1), 'Last day': addDays(today, 90), 'Price of the whole term': '1,000.00' });
  await press(page, 'Add a line of reads');
  await choose(page, { 'Read kind': 'Sponsored game ball' });
  await write(page, { 'Reads in all': '3', 'Rate-card price of one': '100' });
  await press(page, 'Add a line of reads');
  await choose(page, { 'Read kind': 'Concession read' });
  await write(page, { 'Reads in all': '6', 'Rate-card price of one': '50' });
  await press(page, 'Add a line of reads');
  await choose(page, { 'Read kind': 'Bank-shot mention', Counted: 'Each time it happens' });
  await write(page, { 'At least': '2', 'Rate-card price of one': '100' });
  await press(page, 'Add a benefit');
  await write(page, { What: 'Banner on the north rail', 'Rate-card price of one': '200' });
  await choose(page, { Billed: 'In installments, by days and shares' });
  for (const days of [0, 30]) {
    await press(page, 'Add an installment');
    await write(page, { On: addDays(today, days), Share: '1' });
  }
  await page.getByText(`${shown(today)}: $500.00 · ${shown(addDays(today, 30))}: $500.00`).waitFor();
  await press(page, 'Keep as a draft');
  await settled(page, 'Copperline at the Perch');
  await press(page, 'Sign');
  await write(dialog(page), { 'Who signed for the sponsor': 'Nadia Ferreira' });
  await press(dialog(page), 'Sign');
  await page.getByText('The contract is signed. Its reads are owed.').waitFor();
}

/** Plans the season, opens tonight, issues its packet and reads the paper back. */
async function printTonight(page: Page): Promise<string[]> {
  await open(page, '/seasons', 'Seasons');
  await page.getByRole('link', { name: 'Basketball' }).click();
  await press(page, 'Plan the season');
  await press(dialog(page), 'Work it out');
  await page.getByRole('button', { name: 'Accept this plan' }).waitFor();
  await figuresAre(page, { 'Placed by the plan': '9', 'Without a place': '0' });
  await press(page, 'Accept this plan');
  await press(dialog(page), 'Accept it');
  await page.getByText('The plan is accepted.').waitFor();
  await page.getByRole('navigation', { name: 'Rooms' }).getByRole('link', { name: 'Nights' }).click();
  await settled(page, 'Nights');
  await page.getByRole('rowheader').first().getByRole('link').click();
  await page.getByRole('heading', { name: 'Before you print' }).waitFor();
  await press(page, 'Issue the packet');
  await press(dialog(page), 'Issue the packet');
  const { name, path } = await paperFrom(page, 'Download packet 1 (PDF)');
  expect(name).toContain(today);
  return readPaper(path);
}

const row = (page: Page, label: string, place: number): Locator => page.getByRole('region', { name: label }).getByRole('row').nth(place + 1);

async function giveReason(page: Page, reason: string): Promise<void> {
  await choose(dialog(page), { Why: reason });
  await press(dialog(page), 'Log it');
  await dialog(page).waitFor({ state: 'hidden' });
}

/** Given, cut short, not read; a bank shot and its mention; one entry taken back; signed off. */
async function logTonight(page: Page): Promise<void> {
  await page.getByRole('tab', { name: 'Log' }).click();
  const reads = section(page, 'Planned sponsor reads');
  await reads.getByRole('button', { name: /^Given: .*game ball/i }).click();
  await reads.getByRole('button', { name: /^Take back: .*game ball/i }).click();
  await reads.getByRole('button', { name: /^Given: .*game ball/i }).click();
  await reads.getByRole('button', { name: /^Take back: .*game ball/i }).waitFor();
  await reads.getByRole('button', { name: /^Cut short: .*concession/i }).first().click();
  await giveReason(page, 'Play resumed');
  await reads.getByText('Cut short: Play resumed').waitFor();
  await reads.getByRole('button', { name: /^Not read: .*concession/i }).first().click();
  await giveReason(page, 'The equipment failed');
  await reads.getByText('Not read: The equipment failed').waitFor();
  await write(page, { 'Shooter’s number': '3' });
  await press(page, 'Log the bank shot');
  await press(page, 'Mention given');
  await section(page, 'Bank shots').getByText('Mention given').waitFor();
  expect(await section(page, 'Everything logged').locator('s').count()).toBe(1);
  await page.getByRole('tab', { name: 'Tidy up' }).click();
  await page.getByRole('button', { name: 'Sign off the night' }).waitFor();
  await figuresAre(page, { Read: '1', 'Cut short': '1', 'Not read': '1', Mentions: '1' });
  await press(page, 'Sign off the night');
  await press(dialog(page), 'Sign off the night');
  await page.getByLabel('Why something is changed now').waitFor();
}

test('a director takes a department from three files to a signed contract, a printed packet, a logged night, a proven number and an invoice half paid', { timeout: 240_000 }, async () => {
  const { department, email } = await aDepartmentBeforeItsSeason();
  const page = await aPage();
  const contract = () => department.director.look('/api/contracts?q=Copperline').then((list) => department.director.look(`/api/contracts/${list.data[0].id}`));

  await signIn(page, email);
  await importFile(page, 'Rosters', ROSTERS, 3);
  await importFile(page, 'Schedule', SCHEDULE, 3);
  await importFile(page, 'Sponsors and contracts', CONTRACTS, 2);

  await promiseReads(page);
  await drawUpContract(page);
  await figuresAre(page, { Promised: '11', 'Still owed': '11', Given: '0', Unpaid: '$0.00' });
  const contractPage = new URL(page.url()).hash.slice(1);

  const packet = await printTonight(page);
  expect(packet[0]).toMatch(/table card/i);
  const words = packet.join(' ');
  for (const said of ['Copperline Credit Union, on Spruce Street since 1961.', 'Łukasz Wren', 'Nguyễn Tam', 'WOO-kash ren', 'Port Ansel']) expect(words).toContain(said);
  expect(words).not.toMatch(/Marlowe|MAR-low/);

  await logTonight(page);

  await open(page, contractPage, 'Copperline at the Perch');
  const { standing } = await contract();
  await figuresAre(page, { Given: '3', 'Still owed': '8', Earned: dollars(standing.earnedCents) });
  await page.getByRole('tab', { name: 'Delivery statement' }).click();
  await row(page, 'Delivery statement', 0).getByRole('link').click();
  await page.getByRole('heading', { name: 'Everything logged' }).waitFor();
  await page.goBack();
  await settled(page, 'Copperline at the Perch');
  const happened = await page.getByRole('region', { name: 'Delivery statement' }).getByRole('rowheader').allTextContents();
  expect(happened.at(-1)).toMatch(/sign/i);
  expect(happened.length).toBeGreaterThanOrEqual(4);

  await press(page, 'Issue an invoice');
  await dialog(page).getByText('to pay $525.00').waitFor();
  await press(dialog(page), 'Issue the invoice');
  await page.getByRole('heading', { level: 1, name: /^Invoice TR/ }).waitFor();
  const number = (await page.getByRole('heading', { level: 1 }).innerText()).replace('Invoice ', '');
  const invoicePage = new URL(page.url()).hash.slice(1);
  const invoice = (await department.director.look('/api/invoices')).data[0];
  const { path, name } = await paperFrom(page, 'Download (PDF)');
  expect(name).toContain(number);
  // The fields of a proper invoice: 5 CFR 1315.9(b).
  const paper = (await readPaper(path)).join(' ');
  const issued = (day: string) => new Intl.DateTimeFormat('en-US', { day: 'numeric', month: 'long', year: 'numeric', timeZone: 'UTC' }).format(Date.parse(day));
  for (const said of [number, 'Tamarack Ridge Athletics', '1 Kestrel Way', '00-0000000', 'Copperline Accounts Payable', 'Copperline at the Perch', '500.00', '25.00', '525.00', issued(invoice.issuedOn), issued(invoice.dueOn)]) {
    expect(paper).toContain(said);
  }

  await page.getByRole('link', { name: 'Record a payment' }).click();
  await settled(page, 'Record a payment');
  await write(page, { Amount: '200.00', 'Check number or reference': '1187', 'Of it': '200.00' });
  await press(page, 'Record the payment');
  await page.getByRole('heading', { level: 1, name: /^Payment / }).waitFor();
  await open(page, invoicePage, `Invoice ${number}`);
  await page.getByText('Partly paid').waitFor();
  await figuresAre(page, { 'To pay': '$525.00', 'Paid and credited': '$200.00', Unpaid: '$325.00' });

  await open(page, `${contractPage}?tab=account`, 'Copperline at the Perch');
  await figuresAre(page, { Unpaid: '$325.00' });
  await row(page, 'Account statement', 0).getByText('$325.00').waitFor();
  await row(page, 'Account statement', 0).getByRole('link').click();
  await page.getByRole('heading', { level: 1, name: /^Payment / }).waitFor();
  await open(page, '/', 'Home');
  await page.getByRole('region', { name: 'Unpaid invoices' }).getByText('$325.00').waitFor();
});

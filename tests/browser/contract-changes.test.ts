import { expect, test } from 'vitest';
import { aPage, choose, field, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aContract, aSeason } from '../support/season.ts';

test('a director ends a contract early: the page shows both ledgers before and after and what will be posted, and then it is so', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  const draft = await aContract(department, season, {
    title: 'Concession reads', priceCents: 120_000, billingPlan: { kind: 'inFull', on: '2026-11-23' },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5000 }],
  });
  await director.make(`/api/contracts/${draft.id}/opening`, { givenByCommitment: [{ commitmentId: draft.commitments[0].id, given: 10 }], billedCents: 0, paidCents: 0, asOf: '2026-11-20' });
  await bookkeeper.make('/api/invoices', { contractId: draft.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${draft.id}/show`, 'Concession reads');
  await press(page, 'Change the contract');
  await page.getByRole('menuitem', { name: 'End early' }).click();
  await settled(page, 'End Concession reads early');
  await write(page, { 'Fee for ending early': '150', Why: 'The store closes' });
  await page.getByText('150.00 is added to unbilled receivable and to unread revenue.').waitFor();
  const rows = async (label: string) => (await page.getByRole('region', { name: label }).getByRole('row').allInnerTexts()).map((row) => row.replaceAll('\t', ' '));
  expect(await rows('Reads of Concession reads before and after')).toEqual(
    ['Reads Before After', 'Concession read: promised 24 10', 'Concession read: still owed 14 0', 'Concession read: given 10 10', 'Concession read: to be earned $700.00 $0.00'],
  );
  expect(await rows('Dollars of Concession reads before and after')).toEqual([
    'Dollars Before After', 'Price $1,200.00 $650.00', 'Billed $1,200.00 $500.00', 'To bill $0.00 $150.00', 'Earned $500.00 $650.00', 'Unearned revenue $700.00 $0.00',
    'Unbilled receivable $0.00 $150.00', 'Unpaid on invoices $1,260.00 $525.00',
  ]);
  await page.getByText('A credit memo of $735.00 ($700.00 and $35.00 tax) is written. It credits $735.00 of invoice TR-2027-0001.').waitFor();
  await press(page, 'End early');
  await page.getByText('The contract has ended.').waitFor();
  await settled(page, 'Concession reads');
  expect((await director.look(`/api/contracts/${draft.id}`)).standing).toMatchObject({ owed: 0, priceCents: 65_000, toBillCents: 15_000, receivableCents: 52_500 });

  await open(page, `/contracts/${draft.id}/close`, 'Close Concession reads');
  await page.getByText('Still open: TR-2027-0001 (525.00). Take in, credit or write off what is left of these invoices first.').waitFor();
  expect(await page.getByRole('button', { name: 'Close', exact: true }).isDisabled()).toBe(true);
});

test('two lines are amended on one page, with a new line of reads and a benefit, and reads are swapped without a mouse', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director } = department;
  await director.make('/api/read-kinds', { name: 'Half-court shot', timing: 'scheduled', windows: ['halftime'] });
  const draft = await aContract(department, season);
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${draft.id}/amend`, `Amend ${draft.title}`);
  const ball = page.getByRole('group', { name: 'Sponsored game ball' });
  const concession = page.getByRole('group', { name: 'Concession read' });
  await field(ball, 'How many more').fill('2');
  await field(concession, 'How many more').fill('4');
  await choose(concession, { Price: 'Adds to the price' });
  await write(concession, { By: '120' });
  await page.getByText('The agreed price rises by 270.00: 270.00 more is to be billed.').waitFor();
  await press(page, 'Add a line of reads');
  await choose(page, { 'Read kind': 'Half-court shot' });
  await write(page, { 'Reads in all': '2', 'Rate-card price of one': '30', 'Adds to the price': '60' });
  await page.getByText('The agreed price rises by 330.00: 330.00 more is to be billed.').waitFor();
  await press(page, 'Add a benefit');
  await write(page, { What: 'Banner at the Perch', 'Rate-card price of one': '100', 'Adds to the price': '80' });
  await page.getByText('The agreed price rises by 410.00: 410.00 more is to be billed.').waitFor();
  await press(page, 'Amend');
  await page.getByText('The contract is amended.').waitFor();
  const { standing, commitments, benefits } = await director.look(`/api/contracts/${draft.id}`);
  expect([standing.priceCents, ...commitments.map((one: any) => one.reads), ...benefits.map((one: any) => one.name)]).toEqual([111_000, 8, 12, 2, 'Banner at the Perch']);

  await open(page, `/contracts/${draft.id}/swap`, `Swap reads of ${draft.title}`);
  await field(page, 'Give up').fill('2');
  await choose(page, { Of: 'Concession read' });
  await field(page, 'Take').fill('1');
  await choose(page, { 'Of these instead': 'Sponsored game ball' });
  await page.getByText('Concession read: 2 fewer promised, 2 fewer owed.').waitFor();
  const confirm = page.getByRole('button', { name: 'Swap reads', exact: true });
  await expect.poll(() => confirm.isEnabled(), { timeout: 10_000 }).toBe(true);
  await confirm.focus();
  await page.keyboard.press('Enter');
  await page.getByText('The reads are swapped.').waitFor();
});

test('a bookkeeper reads why the figures are what they are: the bridge stands as a sum, with who decides about revenue beside it', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const draft = await aContract(department, season);
  await department.director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  await department.bookkeeper.make('/api/invoices', { contractId: draft.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, `/contracts/${draft.id}/show`, draft.title);
  await page.getByRole('tab', { name: 'Explain the figures' }).click();
  const rows = async (label: string) => (await page.getByRole('region', { name: label, exact: true }).getByRole('row').allInnerTexts()).map((row) => row.replace(/\s+/g, ' ').trim());
  await page.getByText('Sponsored game ball: 6 promised = 0 given + 6 still owed.').waitFor();
  expect(await rows('The agreed price')).toEqual(['What Amount', 'Sponsored game ball 1 × 68.19, 5 × 68.18 $409.09', 'Concession read 3 × 36.37, 5 × 36.36 $290.91', 'Price as it stands $700.00']);
  expect(await rows('The bridge of the two ledgers')).toEqual(['What Amount', 'To bill $350.00', 'Plus unearned revenue $350.00', 'Value of the 14 reads still owed $700.00']);
  expect(await page.getByText('Consult the business office: ASC 606 for clubs and private schools, GASB for public districts.').count()).toBe(2);
  expect(await page.getByRole('button', { name: 'Change the contract' }).count()).toBe(0);
});

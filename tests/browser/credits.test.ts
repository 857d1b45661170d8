import { expect, test } from 'vitest';
import { aPage, choose, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { picture } from '../support/pictures.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

test('a director agrees a makegood and credits a read: the form says in words what it does, and the memo shows where it went', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { director, bookkeeper } = department;
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 4_000 }];
  const contract = await aSignedContract(department, season, { title: 'Concession reads', commitments, priceCents: 16_000, billingPlan: { kind: 'inFull', on: '2026-11-23' } });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${contract.id}/show?tab=credits`, 'Concession reads');

  await press(page, 'Agree a makegood');
  const dialog = page.getByRole('dialog');
  await choose(dialog, { Reads: 'Concession read: 4 owed' });
  await dialog.getByRole('combobox', { name: 'Read instead' }).click();
  await page.getByRole('option', { name: 'Concession read' }).click();
  await write(dialog, { 'How many instead': '2', 'Agreed with': 'Hazel Juniper' });
  await picture(page, 'makegood');
  await press(dialog, 'Agree it');
  await page.getByText('0 of 2 given, 0 placed; 0 of 1 settled').waitFor();

  await press(page, 'Credit reads');
  await choose(dialog, { Reads: 'Concession read: 4 owed' });
  await dialog.getByText('A credit memo is written on invoice TR-2027-0001: $40.00 and $2.00 tax, $42.00 in all.').waitFor();
  await write(dialog, { Why: 'The fire alarm ended the game early' });
  await picture(page, 'credit');
  expect((await director.look('/api/credit-memos')).total).toBe(0);
  await press(dialog, 'Credit reads');
  await page.getByText('The reads are credited.').waitFor();
  const memoNumber = (await director.look('/api/credit-memos')).data[0].number as string;
  await page.getByRole('link', { name: memoNumber }).waitFor();
  await picture(page, 'credits-tab');
  await page.getByRole('link', { name: memoNumber }).click();
  await settled(page, `Credit memo ${memoNumber}`);
  await page.getByText('The fire alarm ended the game early').waitFor();
  expect(await page.getByRole('link', { name: invoice.number }).count()).toBe(2);
  await picture(page, 'memo');
  await open(page, '/credit-memos', 'Credit memos');
  await picture(page, 'memos');
});

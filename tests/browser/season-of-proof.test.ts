import { expect, test } from 'vitest';
import { WIDTHS, aPage, open, press } from '../support/browser-page.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { aShortContract, giveReplacements } from '../support/short-contract.ts';

// CHECKS.md, section 7, fulfillment vectors: 40 at 25.00, 33 given, 4 made good: 37 fulfilled, 3 short, credit 75.00, earned 925.00.
test('forty reads are promised, 33 given, four made good and three credited, and the office, the sponsor’s page and the paper say the same', { timeout: 240_000 }, async () => {
  const short = await aShortContract(await aDepartment());
  const { department, contractId, season } = short;
  const { director } = department;
  const office = await aPage({ visitor: director });
  const issue = async () => director.make(`/api/contracts/${contractId}/performance-statements`, { throughOn: season.endsOn });
  const paper = async ({ id }: { id: string }) => (await pagesOfPdf((await director.bytes(`/api/performance-statements/${id}/statement.pdf`)).bytes)).join(' ');
  const first = await issue();

  const missed = (await short.shortfall()).missed.filter((one: { isOpen: boolean }) => one.isOpen).map((one: { key: string }) => one.key);
  await short.propose({ remedy: 'otherKind', replacementReadKindId: season.readKinds.gameBall, replacementReads: 2, isShown: true, answerBy: '2099-12-31' }, missed.slice(0, 4));
  const { token } = await director.make(`/api/sponsors/${season.sponsorId}/links`, { label: 'Hazel', expiresAt: '2099-01-01T00:00:00.000Z' });
  const phone = await aPage({ width: WIDTHS.phone });
  await phone.goto(`${baseUrl}/#/for-sponsors/${token}`);
  await press(phone, 'Start');
  const remedy = phone.getByRole('article').filter({ hasText: 'For what we missed' });
  await remedy.getByLabel(/Your name/).fill('Hazel Juniper');
  await press(remedy, 'Accept');
  await phone.getByText('It is agreed.').waitFor();
  await giveReplacements(short, 2);

  const credit = await short.propose({ remedy: 'credit' });
  expect((await short.accept(credit.body)).body).toMatchObject({ standing: 'settled', settledReads: 3 });
  expect(await short.standing()).toMatchObject({ promised: 40, given: 33, madeGood: 4, credited: 3, owed: 0, earnedCents: 92_500 });

  await open(office, `/contracts/${contractId}/show?tab=fulfillment`, 'Game balls and concession reads');
  await office.getByText(/40 reads promised: 33 given, 4 made good, 3 credited/).waitFor();
  await phone.reload();
  await phone.getByText('37 of 40 promised reads were given. 3 were credited. Nothing is still to come.').waitFor();
  // 75.00 and the 5 % of sales tax that were billed with it
  await phone.getByText('$78.75').first().waitFor();
  const second = await issue();
  const words = await paper(second);
  for (const said of ['Concession read 40 33 4 3 0', 'Makegood for Dec 4, 2026', '$78.75', 'Statement 2 of contract', 'Page 1 of 3']) expect([said, words.includes(said)]).toEqual([said, true]);
  expect(await paper(first)).toContain('Replaced by statement 2');

  await open(office, '/performance-statements', 'Statements');
  await office.getByText(/Replaced by statement 2/).first().waitFor();
  const links = `/api/sponsors/${season.sponsorId}/links`;
  await director.make(`${links}/${(await director.look(links)).data[0].id}/revoke`);
  await phone.reload();
  await phone.getByRole('heading', { level: 1, name: 'This link does not open' }).waitFor();
});

import { expect, test } from 'vitest';
import { aPage, choose, open, press, settled } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';

test('a director issues a statement from the contract, sees it verified, then issues those of all sponsors and finds which one has nothing new', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season);
  await aSignedContract(department, season, { title: 'Concession reads of the winter' });
  const device = new TableDevice();
  for (const [place, { gameId, nightId }] of season.games.entries()) {
    const [a, b] = contract.commitments.map((one: { id: string }) => one.id) as [string, string];
    await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.read(a, gameId, 1), device.read(b, gameId, 2, ...(place === 1 ? ['notRead', 'noTime'] : ['given']) as [string, string?])] });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  }
  await director.make(`/api/nights/${season.games[0]!.nightId}/attendance`, { attendance: 412, how: 'tickets' });
  const page = await aPage({ visitor: director });
  await open(page, `/contracts/${contract.id}/show?tab=performance`, contract.title);
  await page.getByText('None is issued yet.').waitFor();
  await press(page, 'Issue a statement…');
  await page.getByRole('dialog').getByLabel('Told through').fill('2027-03-13');
  await page.getByRole('dialog').getByRole('button', { name: 'Issue', exact: true }).click();
  await settled(page, 'Statement 1, Juniper & Pike Hardware');
  await page.getByText('Verified against the books').waitFor();
  const said = await page.locator('main').innerText();
  for (const words of ['Stands', 'Night by night', 'Not read: no time', 'An estimate: 824 audience contacts', 'not recorded', 'Local rules and the business office decide']) expect(said).toContain(words);
  await open(page, '/performance-statements', 'Statements');
  await press(page, 'Issue for all sponsors…');
  await choose(page.getByRole('dialog'), { Season: 'Basketball 2026-27' });
  await page.getByRole('dialog').getByLabel('Told through').fill('2027-03-13');
  await page.getByRole('dialog').getByRole('button', { name: 'Issue', exact: true }).click();
  await settled(page, 'Statements of Basketball 2026-27');
  await page.getByText(/Done$/).waitFor();
  expect(await page.locator('main').innerText()).toContain('Nothing has changed since statement 1. It stands.');
  await open(page, '/performance-statements', 'Statements');
  expect(await page.getByRole('row').count()).toBe(3);
});

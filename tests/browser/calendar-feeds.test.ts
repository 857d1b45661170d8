import { expect, test } from 'vitest';
import { aPage, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

test('the director makes a calendar for the families, copies its address once and revokes it', async () => {
  const department = await aDepartment();
  await aSeason(department, 1);
  const page = await aPage({ visitor: department.director });
  await open(page, '/calendar-feeds', 'Calendar feeds');
  await press(page, 'Make a public calendar');
  await write(page, { 'For whom': 'The school’s website' });
  await page.getByRole('dialog').getByRole('button', { name: 'Make a public calendar' }).click();
  const address = (await page.getByLabel('Address of the calendar').textContent())!.trim();
  expect(await page.getByRole('link', { name: 'Subscribe on this device' }).getAttribute('href')).toBe(address.replace(/^http:/, 'webcal:'));
  expect(await (await fetch(address)).text()).toContain('SUMMARY:Herons at Kestrels\\, varsity basketball');
  await press(page, 'Done');
  expect(await page.content()).not.toContain(address);
  await page.getByRole('button', { name: 'Revoke' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Revoke' }).click();
  await page.getByRole('row', { name: /The school’s website/ }).getByText('Revoked').waitFor();
  expect((await fetch(address)).status).toBe(404);
});

test('on the morning after, the director corrects how many came, and both numbers stand', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { nightId } = season.games[0]!;
  await department.director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night', attendance: 400 });
  const page = await aPage({ visitor: department.director });
  await open(page, `/nights/${nightId}/show?tab=tidy`, 'Herons at Kestrels');
  await press(page, 'Correct how many came');
  await page.getByLabel('How that is known').click();
  await page.getByRole('option', { name: 'From the tickets' }).click();
  await write(page, { 'People who came': '412' });
  await page.getByRole('dialog').getByRole('button', { name: 'Record', exact: true }).click();
  await page.getByText('412, from the tickets').waitFor();
  expect(await page.getByText('400, said at sign-off').count()).toBe(1);
});

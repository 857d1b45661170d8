import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aNightInDays } from '../support/season.ts';
import { atTheDesk, countsAre, faultsOf, logNotes } from './desk.ts';

const shot = (page: Page, name: string) => (process.env['PICTURES'] ? page.screenshot({ path: `${process.env['PICTURES']}/${name}.png` }) : undefined);

/** Makes a link on the page of the night, as a director would, and reads what is shown once. */
async function givenOut(office: Page, forWhom: string): Promise<{ address: string; pin: string }> {
  await press(office, 'Give out a link');
  const form = office.getByRole('dialog');
  await write(form, { 'For whom': forWhom });
  await press(form, 'Give out a link');
  const address = (await office.getByLabel('Address of the link', { exact: true }).textContent())!.trim();
  const pin = (await office.getByLabel('PIN', { exact: true }).textContent())!.trim();
  return { address, pin };
}

test('the link is shown once with its PIN and a square for the camera, and prints as half a page', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, 2);
  const { title } = await department.director.look(`/api/nights/${nightId}`);
  const office = await aPage({ visitor: department.director });
  await open(office, `/nights/${nightId}/show?tab=table`, title);
  await office.getByText('No link was given out yet').waitFor();
  const { address, pin } = await givenOut(office, 'Odell Brandvold, substitute');
  expect(address).toMatch(/^http.*\/night\/#link\/[\w-]{43}$/);
  expect(pin).toMatch(/^\d{6}$/);
  const dialog = office.getByRole('dialog', { name: /The link for Odell/ });
  await dialog.getByRole('img', { name: /camera/ }).waitFor();
  await dialog.getByText(/It opens on/).waitFor();
  for (const width of [WIDTHS.desk, WIDTHS.tablet, WIDTHS.phone]) {
    await office.setViewportSize({ width, height: 900 });
    expect([width, await faultsOf(office)]).toEqual([width, []]);
    await shot(office, `dialog-${width}`);
  }
  await office.setViewportSize({ width: WIDTHS.desk, height: 900 });
  await office.emulateMedia({ media: 'print' });
  const paper = office.locator('.half-page');
  expect(await paper.innerText()).toContain('For the substitute at the table');
  expect(await paper.innerText()).not.toContain(pin);
  expect(await office.getByRole('heading', { level: 1 }).isVisible()).toBe(false);
  await office.emulateMedia({ media: 'screen' });
  await dialog.getByLabel('Print the PIN on it too').check();
  await dialog.getByText('Whoever finds this paper').waitFor();
  await office.emulateMedia({ media: 'print' });
  expect(await paper.innerText()).toContain(pin);
  await shot(office, 'paper');
  if (process.env['PICTURES']) await office.pdf({ path: `${process.env['PICTURES']}/paper.pdf`, format: 'Letter' });
  await office.emulateMedia({ media: 'screen' });
  await press(dialog, 'Done');
  const row = office.getByRole('row', { name: /Odell Brandvold/ });
  await row.getByText('Not open yet').waitFor();
  expect(await office.locator('body').innerText()).not.toContain(pin);
  for (const width of [WIDTHS.desk, WIDTHS.phone]) {
    await office.setViewportSize({ width, height: 900 });
    expect([width, await faultsOf(office)]).toEqual([width, []]);
    await shot(office, `tab-${width}`);
  }
  await office.setViewportSize({ width: WIDTHS.desk, height: 900 });
  await row.getByRole('button', { name: 'Revoke' }).click();
  await press(office.getByRole('dialog'), 'Revoke');
  await row.getByText('Revoked').waitFor();
  await open(office, '/', 'Home');
  const desk = office.getByRole('link', { name: `Open the desk: ${title}` });
  expect(await desk.getAttribute('href')).toBe(`/night/#open/${nightId}`);
  await shot(office, 'home');
  await open(office, '/nights', 'Nights');
  await office.getByRole('link', { name: `Open the desk: ${title}` }).waitFor();
  await shot(office, 'nights');
});

test('a substitute works the table by link and PIN, and what comes after the link is taken back stays on the device', { timeout: 180_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, 0);
  const { title } = await department.director.look(`/api/nights/${nightId}`);
  const office = await aPage({ visitor: department.director });
  await open(office, `/nights/${nightId}/show?tab=table`, title);
  const { address, pin } = await givenOut(office, 'Odell Brandvold, substitute');
  await press(office.getByRole('dialog'), 'Done');

  const phone = await aPage({ width: WIDTHS.phone });
  const asked: string[] = [];
  phone.on('request', (request) => asked.push(request.url()));
  await phone.goto(address);
  await phone.getByLabel('PIN').waitFor();
  expect(await faultsOf(phone)).toEqual([]);
  await phone.getByLabel('PIN').fill('000000' === pin ? '000001' : '000000');
  await press(phone, 'Start');
  await phone.getByRole('alert').getByText('does not open anything').waitFor();
  await phone.getByLabel('PIN').fill(pin);
  await press(phone, 'Start');
  await atTheDesk(phone);
  const token = address.split('/').at(-1)!;
  expect(phone.url()).not.toContain(token);
  expect(asked.filter((url) => url.includes(token) && !url.includes('#'))).toEqual([]);

  await logNotes(phone, 'Doors open');
  await countsAre(phone, [0, 1, 0]);
  await open(office, `/nights/${nightId}/show?tab=log`, title);
  await office.getByText('Odell Brandvold, substitute').first().waitFor();

  await open(office, `/nights/${nightId}/show?tab=table`, title);
  await office.getByRole('row', { name: /Odell Brandvold/ }).getByRole('button', { name: 'Revoke' }).click();
  await press(office.getByRole('dialog'), 'Revoke');
  await office.getByRole('row', { name: /Odell Brandvold/ }).getByText('Revoked').waitFor();

  await logNotes(phone, 'Tip-off');
  await countsAre(phone, [0, 1, 1]);
  await phone.locator('.desk-counts').click();
  await phone.getByText('has taken this link back').first().waitFor();
  await shot(phone, 'revoked');
  await phone.reload();
  await atTheDesk(phone);
  await countsAre(phone, [0, 1, 1]);
  expect((await department.director.look(`/api/nights/${nightId}/log`)).entries).toHaveLength(1);
});

import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { theBrowser } from '../support/browser.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aNightInDays } from '../support/season.ts';
import { aDevice, countsAre, faultsOf, openDesk } from './desk.ts';

const SHOTS = process.env['DESK_SHOTS'];

/** Looked at in both looks and at three widths; nothing that axe finds and nothing wider than the screen. */
async function looksRight(page: Page, name: string, widths: readonly (readonly [string, number])[] = [['gym', 360], ['field', 768]]): Promise<void> {
  for (const [look, width] of widths) {
    await page.evaluate((chosen) => void (document.documentElement.dataset['look'] = chosen), look);
    await page.setViewportSize({ width, height: 800 });
    expect(await faultsOf(page), `${name}, ${look} at ${width} px`).toEqual([]);
    if (!SHOTS) continue;
    mkdirSync(SHOTS, { recursive: true });
    await page.screenshot({ path: `${SHOTS}/requests-${name}-${look}-${width}.png` });
  }
}

async function somebodysPhone(address: string): Promise<Page> {
  const context = await (await theBrowser()).newContext({ viewport: { width: 360, height: 740 } });
  context.setDefaultTimeout(20_000);
  const page = await context.newPage();
  await page.goto(`${baseUrl}${address}`);
  return page;
}

test('a car is told of by the public form, approved at the table and read with its plate spelled twice', { timeout: 240_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, 0);
  const { address } = await department.director.make(`/api/nights/${nightId}/request-form/open`);
  const desk = await openDesk(await aDevice(baseUrl, department.announcer), baseUrl, nightId);
  await desk.keyboard.press('q');
  const sheet = desk.getByRole('dialog', { name: 'Requests' });
  await looksRight(desk, 'nothing');

  const phone = await somebodysPhone(address);
  await phone.getByText('Someone at the table decides what is read.').waitFor();
  await looksRight(phone, 'ask');
  await phone.getByRole('button', { name: 'Vehicle notice' }).click();
  await phone.getByRole('button', { name: 'Send to the table' }).click();
  await phone.getByText('License plate is missing.').waitFor();
  await phone.getByLabel('Color and make').fill('orange Jeep');
  await phone.getByLabel('Where it is parked').fill('by the north gate');
  await phone.getByLabel('License plate').fill('kO0 12b');
  await phone.getByRole('button', { name: 'the lights are on' }).click();
  await looksRight(phone, 'ask-form');
  await phone.getByRole('button', { name: 'Send to the table' }).click();
  await phone.getByText('Your request is at the table.').waitFor();
  await looksRight(phone, 'ask-sent');
  await department.director.make(`/api/nights/${nightId}/request-form/close`);
  await phone.reload();
  await phone.getByText('The form is closed. Please come to the scorer’s table.').waitFor();
  await looksRight(phone, 'ask-closed');
  await phone.context().close();

  const waiting = sheet.getByRole('region', { name: 'Waiting for approval' });
  await waiting.getByText('orange Jeep · by the north gate · plate KO012B · the lights are on').waitFor({ timeout: 40_000 });
  await looksRight(desk, 'waiting');
  // From here on the server is not there.
  await desk.context().setOffline(true);
  await waiting.getByRole('button', { name: 'Approve' }).click();
  const toRead = sheet.getByRole('region', { name: 'To be read' });
  const said = (await toRead.locator('.desk-request-said').allTextContents()).join(' ');
  expect(said.match(/K, oh, zero, 1, 2, B/g)).toHaveLength(2);
  expect(said).toContain('an orange Jeep, parked by the north gate');
  await looksRight(desk, 'to-read', [['gym', 360], ['field', 768], ['gym', 1440], ['field', 360]]);
  await toRead.getByRole('button', { name: 'Read', exact: true }).click();
  await sheet.getByRole('region', { name: 'Ended' }).getByText('Read', { exact: true }).waitFor();
  await countsAre(desk, [2, 0, 0]);
  await desk.context().setOffline(false);
  await countsAre(desk, [0, 2, 0], 60_000);
  expect((await department.director.look(`/api/nights/${nightId}/requests`)).data).toMatchObject([{ source: 'public', state: 'read' }]);
});

test('two taps bring the form of a car; a name asks for the director, a child has fixed words, a slip is taken back', { timeout: 240_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, 0);
  const desk = await openDesk(await aDevice(baseUrl, department.announcer), baseUrl, nightId);
  await desk.getByRole('button', { name: /^Requests/ }).first().click();
  const sheet = desk.getByRole('dialog', { name: 'Requests' });
  await sheet.getByRole('button', { name: /^Vehicle notice/ }).click();
  expect(await sheet.getByLabel('Color and make').evaluate((input) => input === document.activeElement)).toBe(true);
  await looksRight(desk, 'form');
  await sheet.getByRole('button', { name: 'Leave' }).click();

  await sheet.getByRole('button', { name: 'Something else' }).click();
  await sheet.getByLabel('The words to be read').fill('Happy birthday to Coach Ruiz.');
  await sheet.getByRole('button', { name: 'Keep for later' }).click();
  const waiting = sheet.getByRole('region', { name: 'Waiting for approval' });
  await waiting.getByRole('button', { name: 'Approve' }).click();
  await waiting.getByRole('alert').getByText('the director has to allow it').waitFor();
  await looksRight(desk, 'name');
  await waiting.getByLabel('A person may be named. Who allowed it?').fill('Ms. Okafor');
  await waiting.getByRole('button', { name: 'Approve' }).click();
  const toRead = sheet.getByRole('region', { name: 'To be read' });
  await toRead.getByText('Happy birthday to Coach Ruiz.').waitFor();
  await toRead.getByRole('button', { name: 'Not approved after all' }).click();
  await waiting.getByText('Happy birthday to Coach Ruiz.').waitFor();
  await waiting.getByRole('button', { name: 'Decline…' }).click();
  await looksRight(desk, 'decline');
  await waiting.getByRole('button', { name: 'No time left tonight' }).click();
  await sheet.getByRole('region', { name: 'Ended' }).getByText('Declined: No time left tonight').waitFor();

  await sheet.getByRole('button', { name: 'A child is waiting' }).click();
  expect(await sheet.getByRole('textbox').count()).toBe(0);
  await looksRight(desk, 'child');
  await sheet.getByRole('button', { name: 'Approve, to be read' }).click();
  await toRead.getByText('Someone is waiting for their family').waitFor();
});

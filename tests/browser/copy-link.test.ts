import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

/** Levels A and AA of WCAG 2.2, as far as axe-core can decide them, and nothing wider than the screen. */
async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: page as never }).setLegacyMode().withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  const width = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return [...violations.filter(({ impact }) => impact === 'serious' || impact === 'critical').map(({ id }) => id), ...(width > 0 ? [`${width} px too wide`] : [])];
}

test('a director gives out a link, and the sponsor approves its words on a phone', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const copy = await department.director.make('/api/copies', {
    sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Opening night', fallbackText: 'Juniper & Pike Hardware.', text: 'Juniper & Pike Hardware, on Third Street.',
  });
  const office = await aPage({ visitor: department.director });
  await open(office, `/copies/${copy.id}/show`, 'Opening night');
  await press(office, 'Give out a link');
  await write(office.getByRole('dialog'), { 'For whom': 'Hazel Juniper, owner' });
  await press(office.getByRole('dialog'), 'Give out a link');
  const address = (await office.getByLabel('Address of the link').textContent())!.trim();
  expect(address).toMatch(/\/#\/for-sponsors\/[\w-]{43}$/);

  const phone = await aPage({ width: WIDTHS.phone });
  const asked: string[] = [];
  phone.on('request', (request) => asked.push(request.url()));
  await phone.goto(address);
  await phone.getByRole('button', { name: 'Start' }).waitFor();
  expect(await faultsOf(phone)).toEqual([]);
  await press(phone, 'Start');
  await phone.getByRole('heading', { level: 1, name: 'Juniper & Pike Hardware' }).waitFor();
  expect(phone.url()).not.toContain(address.split('/').at(-1));
  expect(asked.filter((url) => url.includes(address.split('/').at(-1)!) && !url.includes('#'))).toEqual([]);
  await phone.getByText('on Third Street').waitFor();
  expect(await faultsOf(phone)).toEqual([]);

  await press(phone, 'Approve these words');
  await phone.getByText('Write your name').waitFor();
  await phone.getByLabel(/Your name/).fill('Hazel Juniper');
  await press(phone, 'Approve these words');
  await phone.getByText('is approved.').waitFor();
  await phone.getByText('Nothing waits for you').waitFor();

  await open(office, '/copies', 'Copy');
  await open(office, `/copies/${copy.id}/show`, 'Opening night');
  await office.getByText(/Approved by Hazel Juniper on .*, by link/).waitFor();
});

test('words are marked while they are typed, and a revoked link opens nothing', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const office = await aPage({ visitor: department.director });
  await open(office, '/copies/create', 'Add copy');
  await write(office, { 'Words to be read': 'The finest tools, 20% off.' });
  const check = office.getByRole('region', { name: 'Copy check' });
  await check.getByText('Reads as an advertisement').waitFor();
  expect((await check.locator('mark').allTextContents()).map((text) => text.trim())).toEqual(['finest1', '20% off2']);
  await write(office, { 'Words to be read': 'Juniper & Pike Hardware, on Third Street.' });
  await check.getByText('Reads as an acknowledgment').waitFor();
  await check.getByText(/not tax advice/).waitFor();

  const links = `/api/sponsors/${season.sponsorId}/links`;
  const link = await department.director.make(links, { label: 'Hazel', expiresAt: '2099-01-01T00:00:00.000Z' });
  await department.director.make(`${links}/${link.id}/revoke`);
  const phone = await aPage({ width: WIDTHS.phone });
  await phone.goto(`${department.director.baseUrl}/#/for-sponsors/${link.token}`);
  await press(phone, 'Start');
  await phone.getByText('does not open anything').waitFor();
});

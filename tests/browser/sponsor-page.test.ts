import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, press } from '../support/browser-page.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { aSponsorProof, fiveHundredNights } from '../support/sponsor-proof.ts';

/** All that axe finds at levels A and AA of WCAG 2.2, and nothing wider than the screen. */
async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: page as never }).setLegacyMode().withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  const width = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return [...violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`), ...(width > 0 ? [`${width} px too wide`] : [])];
}

async function opened(token: string, width: number): Promise<Page> {
  const page = await aPage({ width });
  await page.goto(`${baseUrl}/#/for-sponsors/${token}`);
  await press(page, 'Start');
  await page.getByRole('heading', { level: 1, name: 'Juniper & Pike Hardware' }).waitFor();
  await page.getByRole('link', { name: /^Invoice .* \(PDF\)$/ }).waitFor();
  await page.getByRole('article', { name: /Dec 18, 2026/ }).waitFor();
  return page;
}

test('a sponsor reads on its phone what was promised, given, planned and paid, at every width without a fault', { timeout: 180_000 }, async () => {
  const department = await aDepartment();
  const { token, invoiceNumber } = await aSponsorProof(department);
  for (const [name, width] of Object.entries(WIDTHS)) {
    const page = await opened(token, width);
    expect([name, await faultsOf(page)]).toEqual([name, []]);
    if (name !== 'phone') continue;
    const said = (await page.getByRole('main').textContent())!;
    for (const words of ['Still to come', '3 of 6 given', 'Not read: no time', 'Planned: 1 × Concession read', 'Proof: Photograph of November 30', `Invoice ${invoiceNumber} (PDF)`, 'Paid in part', '555-0142', 'Questions about tax: ask your adviser', 'It has not happened yet']) expect([words, said.includes(words)]).toEqual([words, true]);
    for (const jargon of ['owed', 'Owed', 'commitment', 'undefined', 'NaN', 'null']) expect([jargon, said.includes(jargon)]).toEqual([jargon, false]);
  }
});

test('a month folds and unfolds by the keyboard, and on paper every night stands', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const { token } = await aSponsorProof(department);
  const page = await opened(token, WIDTHS.desk);
  const december = page.getByRole('button', { name: /^December 2026/ });
  await december.focus();
  await page.keyboard.press('Enter');
  expect(await december.getAttribute('aria-expanded')).toBe('false');
  expect(await page.getByRole('article', { name: /Dec 18, 2026/ }).count()).toBe(0);
  const paper = (await pagesOfPdf(await page.pdf({ format: 'Letter' }))).join(' ');
  for (const words of ['Dec 4, 2026', 'Dec 18, 2026', 'Still to come', 'As of', '555-0142']) expect([words, paper.includes(words)]).toEqual([words, true]);
  for (const words of ['Approve these words', 'Print or save', 'Start']) expect([words, paper.includes(words)]).toEqual([words, false]);
});

test('a link that was revoked while its page was open tells whom to call, and nothing of the sponsor', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const { token, season } = await aSponsorProof(department);
  const page = await opened(token, WIDTHS.phone);
  const links = `/api/sponsors/${season.sponsorId}/links`;
  await department.director.make(`${links}/${(await department.director.look(links)).data[0].id}/revoke`);
  await page.reload();
  await page.getByRole('heading', { level: 1, name: 'This link does not open' }).waitFor();
  const said = (await page.getByRole('main').textContent())!;
  expect(said).toContain(department.name);
  expect(said).toContain('555-0142');
  expect(said).not.toContain('Juniper');
  expect(await faultsOf(page)).toEqual([]);
});

test('five hundred nights stay folded by the month, and one that is sought is two presses away', { timeout: 180_000 }, async () => {
  const department = await aDepartment();
  const { token, season, contract } = await aSponsorProof(department);
  await fiveHundredNights(department, season, contract.commitments[1].id);
  const page = await opened(token, WIDTHS.phone);
  const nights = page.getByRole('region', { name: 'Night by night' }).getByRole('article');
  expect(await nights.count()).toBeLessThan(40);
  await press(page, /^October 2025/);
  await page.getByRole('article', { name: /Oct 31, 2025/ }).waitFor();
  expect(await faultsOf(page)).toEqual([]);
});

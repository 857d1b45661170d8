import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, press } from '../support/browser-page.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { aShortContract } from '../support/short-contract.ts';
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

test('a sponsor approves its words, accepts what is put to it for missed reads, and asks about a read, on a phone', { timeout: 180_000 }, async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  await director.make('/api/copies', { sponsorId: short.season.sponsorId, readKindId: short.season.readKinds.concession, title: 'At the concession stand', fallbackText: 'Juniper & Pike.', text: 'Juniper & Pike Hardware, now also on Mill Lane.' });
  await short.propose({ remedy: 'otherKind', replacementReadKindId: short.season.readKinds.gameBall, isShown: true, answerBy: '2099-12-31' });
  const { token } = await director.make(`/api/sponsors/${short.season.sponsorId}/links`, { label: 'Hazel', expiresAt: '2099-01-01T00:00:00.000Z' });
  const page = await aPage({ width: WIDTHS.phone });
  await page.goto(`${baseUrl}/#/for-sponsors/${token}`);
  await press(page, 'Start');

  const proposal = page.getByRole('article').filter({ hasText: 'For what we missed' });
  await press(proposal, 'Accept');
  await proposal.getByText('Write your name').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await proposal.getByLabel(/Your name/).fill('Hazel Juniper');
  await press(proposal, 'Accept');
  await page.getByText('It is agreed.').waitFor();
  await page.getByRole('region', { name: 'For what we missed' }).getByText(/Accepted by Hazel Juniper/).waitFor();

  await page.getByLabel(/Your name/).fill('Hazel Juniper');
  await press(page, 'Approve these words');
  await page.getByText('is approved.').waitFor();
  await page.getByRole('heading', { name: 'Nothing waits for you' }).waitFor();

  const night = page.getByRole('article', { name: /Dec 4, 2026/ });
  await night.getByRole('button', { name: /^Ask about this read/ }).first().click();
  expect(await night.getByLabel(/Your name/).inputValue()).toBe('Hazel Juniper');
  await night.getByLabel(/What you would like to know/).fill('Was the microphone on?');
  expect(await faultsOf(page)).toEqual([]);
  await press(night, 'Send the question');
  const questions = page.getByRole('region', { name: 'Your questions' });
  await questions.getByText('“Was the microphone on?”').waitFor();
  await night.getByText('You asked about this read').first().waitFor();
  const { data: [asked] } = await director.look('/api/read-disputes?state=open');
  await director.post(`/api/read-disputes/${asked.id}/answer`, { outcome: 'stands', answer: 'It was; the recording has it.' }, { version: asked.version });
  await page.reload();
  await questions.getByText('It was; the recording has it.').waitFor();
});

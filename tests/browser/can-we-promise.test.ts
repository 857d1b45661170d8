import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, field, open } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** Six games; eleven of the eighteen places at halftime are promised. */
async function aSeasonToSell(): Promise<{ department: Department; season: Season }> {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 6);
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 11, rateCents: 4_000, windowKinds: ['halftime'] }] });
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.concession, priceCents: 2_500 });
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7_500 });
  return { department, season };
}

const look = async (page: Page, name: string): Promise<void> => {
  const folder = process.env['SHOTS'];
  if (!folder) return;
  for (const width of [360, 768, 1440]) {
    await page.setViewportSize({ width, height: 900 });
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${folder}/${name}-${width}.png`, fullPage: true });
  }
};

test('the answer stands beside the form as it is filled in: a no with what is full, then a yes with its plan, which becomes an offer', { timeout: 120_000 }, async () => {
  const { department } = await aSeasonToSell();
  const page = await aPage({ visitor: department.director });
  await open(page, '/can-we-promise', 'Can we promise this?');
  await page.getByText('The answer comes as you fill them in').waitFor();
  await look(page, 'empty');
  await page.setViewportSize({ width: 1440, height: 900 });
  await choose(page, { 'Read kind': 'Concession read' });
  await field(page, 'Reads in all').fill('8');
  await page.getByText('Which games and windows, how often in one').click();
  await choose(page, { 'Only in these windows': /Halftime/ });
  await page.keyboard.press('Escape');
  const answer = page.getByRole('region', { name: 'Answer' });
  await answer.getByText('Seven of the eight reads fit, and no plan holds more.').waitFor();
  await answer.getByText('Halftime of the six games from Dec 4 to Jan 8 is full: Juniper & Pike Hardware and this offer together need 19 places there, 18 exist.').waitFor();
  await look(page, 'no');
  await page.setViewportSize({ width: 1440, height: 900 });
  await field(page, 'Reads in all').fill('7');
  await answer.getByText('All seven reads fit, and everything promised before stays whole.').waitFor();
  await expect.poll(() => answer.getByRole('row', { name: /^Total/ }).innerText()).toMatch(/6\s+7$/);
  await look(page, 'yes');
  await answer.getByRole('button', { name: 'Make this an offer' }).click();
  await expect.poll(() => page.url()).toContain('#/offers/create');
});

test('what is left to sell is told by month and kind, by window on opening a row, with what would earn the most', { timeout: 120_000 }, async () => {
  const { department } = await aSeasonToSell();
  const page = await aPage({ visitor: department.bookkeeper });
  await open(page, '/left-to-sell', 'Left to sell');
  await page.getByRole('heading', { name: 'December 2150' }).waitFor();
  await page.getByText(/at the rate card\.$/).waitFor();
  await page.getByRole('button', { name: 'Windows of Concession read in January 2151' }).click();
  const windows = page.getByRole('region', { name: 'Concession read in January 2151 by window' });
  await windows.getByRole('row', { name: /^Halftime/ }).waitFor();
  await look(page, 'left');
});

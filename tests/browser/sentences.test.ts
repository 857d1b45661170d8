import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, field, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';

/** The words that belong to a field, as a screen reader finds them. */
async function under(page: Page, label: string): Promise<string> {
  const id = await field(page, label).last().getAttribute('aria-describedby');
  return id ? page.locator(`[id="${id}"]`).innerText() : '';
}

test('a form that is not filled in says so under each field that is needed, and nothing is sent', async () => {
  const { director } = await aDepartment();
  const page = await aPage({ visitor: director });
  await open(page, '/sponsors/create', 'Add a sponsor');
  await press(page, 'Add');
  await expect.poll(() => under(page, 'Name')).toBe('This is needed.');
  expect(await under(page, 'Category')).toContain('This is needed.');
  expect((await director.look('/api/sponsors')).total).toBe(0);
});

test('what the server refuses stands as its sentence under the field it is about', async () => {
  const { director } = await aDepartment();
  const refused = await director.post('/api/seasons', { name: 'Basketball', sport: 'basketball', startsOn: '2027-03-13', endsOn: '2026-11-20' });
  expect([refused.status, refused.body.errors.endsOn]).toEqual([422, 'The last day lies before the first.']);
  const page = await aPage({ visitor: director });
  await open(page, '/seasons/create', 'Add a season');
  await write(page, { Name: 'Basketball', 'First day': '2027-03-13', 'Last day': '2026-11-20' });
  await choose(page, { Sport: 'Basketball' });
  await press(page, 'Add');
  await expect.poll(() => under(page, 'Last day')).toBe(refused.body.errors.endsOn);
  await write(page, { 'Last day': '2027-04-13' });
  await press(page, 'Add');
  await settled(page, 'Basketball');
});

test('a change made from an older state is refused in a sentence, and the newer state stays', async () => {
  const { director } = await aDepartment();
  const category = await director.make('/api/sponsor-categories', { name: 'Hardware' });
  const page = await aPage({ visitor: director });
  await open(page, `/sponsor-categories/${category.id}`, 'Change Hardware');
  await write(page, { Name: 'Tools' });
  await director.patch(`/api/sponsor-categories/${category.id}`, { name: 'Hardware stores' }, { version: category.version });
  const stale = await director.patch(`/api/sponsor-categories/${category.id}`, { name: 'Tools' }, { version: category.version });
  expect(stale.status).toBe(412);
  await press(page, 'Save');
  await page.getByText(stale.body.detail).first().waitFor();
  expect((await director.look(`/api/sponsor-categories/${category.id}`)).name).toBe('Hardware stores');
});

test('a department with nothing in it yet is told on every page what to do next', async () => {
  const { director } = await aDepartment();
  const page = await aPage({ visitor: director });
  await open(page, '/', 'Home');
  await page.getByText('No night is coming. Import the schedule or add a game').waitFor();
  const empty: [path: string, heading: string, sentence: string, next: string | null][] = [
    ['/nights', 'Nights', 'It is made by itself when you add or import a home game.', null],
    ['/games', 'Games', '', 'Add a game'],
    ['/teams', 'Teams', '', 'Add a team'],
    ['/schools', 'Schools', '', 'Add a school'],
    ['/venues', 'Venues', '', 'Add a venue'],
    ['/seasons', 'Seasons', '', 'Add a season'],
    ['/contracts', 'Contracts', 'Signing it makes the reads owed.', 'New contract'],
    ['/sponsors', 'Sponsors', 'Add one, or import sponsors with their contracts from a file.', 'Add a sponsor'],
    ['/copies', 'Copy', 'Until a version is approved, the packet carries the neutral line.', 'Add copy'],
    ['/invoices', 'Invoices', 'Open a signed contract and press “Issue an invoice”', null],
    ['/payments', 'Payments', 'Record one when the check arrives', 'Record a payment'],
  ];
  for (const [path, heading, sentence, next] of empty) {
    await open(page, path, heading);
    const main = page.getByRole('main');
    if (sentence) await main.getByText(sentence).waitFor();
    if (next) await main.getByRole('link', { name: next }).waitFor();
  }
});

import { execFileSync } from 'node:child_process';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, choose, field, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import { readPaper } from './paper.ts';

const dialog = (page: Page): Locator => page.getByRole('dialog');
const part = async (page: Page, name: string): Promise<void> => page.getByRole('tab', { name }).click();

/** The pages of a PDF as Poppler reads them, where it is installed; else as PDF.js does. Neither wrote it. */
async function readElsewhere(path: string): Promise<string[]> {
  try {
    const text = execFileSync('pdftotext', ['-raw', path, '-'], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return text.split('\f').slice(0, -1).map((page) => page.replace(/\s+/g, ' ').normalize('NFC'));
  } catch {
    return readPaper(path);
  }
}

/** Issues through the dialog, which says what it will do, and takes the paper that comes of it. */
async function issue(page: Page, button: string, confirm: string): Promise<{ says: string; name: string; pages: string[] }> {
  await press(page, button);
  await dialog(page).getByText(/printed, as packet/).waitFor({ timeout: 60_000 });
  const says = await dialog(page).innerText();
  const [download] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), press(dialog(page), confirm)]);
  return { says, name: download.suggestedFilename(), pages: await readElsewhere(await download.path()) };
}

const labelOf = (text: string): string => /page (\d+[a-z]*) of \d+/.exec(text)?.[1] ?? 'none';

test('a director edits a script, mends what is missing, issues, changes a roster and prints the two or three pages that differ', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { games: [first], teamId } = await aSeason(department, 2);
  const night = await director.look(`/api/nights/${first!.nightId}`);
  const nightPage = `/nights/${night.id}/show`;
  const page = await aPage({ visitor: director });

  const welcome = (await director.look('/api/scripts?moment=welcome')).data[0];
  await open(page, `/scripts/${welcome.id}`, /^Change /);
  await field(page, 'Words').last().fill('Good evening from {{ venue }}, where the kettle corn is warm. [[pause 2]]\n\nPlease find your seats.');
  await press(page, 'Save');
  await page.getByRole('heading', { level: 1, name: /^Change / }).waitFor({ state: 'hidden' });

  await open(page, nightPage, night.title);
  await page.getByText('Nobody is down to announce.').waitFor();
  await part(page, 'People');
  await press(page, 'Edit the people');
  await press(page, 'Add a person');
  await choose(page, { 'Does what': 'Announcer' });
  await write(page, { Name: 'Casimir Thornquist', 'Say it as': 'KAZ-uh-meer THORN-kwist' });
  await press(page, 'Save the people');
  await page.getByText('Casimir Thornquist').first().waitFor();
  await part(page, 'Packet');
  await page.getByText('Nobody is down to announce.').waitFor({ state: 'hidden' });

  const whole = await issue(page, 'Issue the packet', 'Issue the packet');
  expect(whole.says).toContain(`All ${whole.pages.length} pages are printed, as packet 1.`);
  expect(whole.name).toBe(`packet-${night.heldOn}-1.pdf`);
  const text = whole.pages.join(' ');
  for (const said of ['Good evening from Alder Fieldhouse, where the kettle corn is warm.', 'Casimir Thornquist', 'Łukasz Wren', 'Nguyễn Tam', 'Version 1']) expect(text).toContain(said);
  expect(text).not.toMatch(/Marlowe|Odile Fenwick/);

  await open(page, `/teams/${teamId}/show`, /Varsity/);
  await press(page, 'Edit the roster');
  await press(page, 'Add a player');
  await write(page, { Number: '21', Name: 'Odile Fenwick' });
  await press(page, 'Save the roster');
  await page.getByText('Odile Fenwick').first().waitFor();

  await open(page, nightPage, night.title);
  await page.getByText('Something changed since packet 1 was issued.').waitFor();
  const changes = await issue(page, 'Issue it again', 'Issue and print what changed');
  expect(changes.says).toMatch(/A change set of \d pages? and its cover is printed, as packet 2\. Swap page/);
  expect(changes.name).toBe(`change-set-${night.heldOn}-2.pdf`);
  const [cover, ...sent] = changes.pages;
  expect(cover).toMatch(/Change set.*Swap these pages/);
  expect(sent.length).toBeGreaterThan(0);
  expect(sent.length).toBeLessThan(6);
  for (const one of sent) expect([cover!.includes(labelOf(one)), one.includes('Version 2')]).toEqual([true, true]);
  expect(sent.join(' ')).toContain('Odile Fenwick');
  // What is not in the change set is what lies in the binder already.
  const kept = whole.pages.filter((one) => !sent.some((other) => labelOf(other) === labelOf(one)));
  expect(kept.join(' ')).not.toContain('Fenwick');

  await settled(page, night.title);
  const issues = page.getByRole('region', { name: 'Issues of the packet' });
  await issues.getByText('Packet 2', { exact: true }).waitFor();
  await issues.getByText('Current', { exact: false }).waitFor();
  const [again] = await Promise.all([page.waitForEvent('download', { timeout: 60_000 }), press(page, 'Whole packet 1')]);
  expect(await readElsewhere(await again.path())).toEqual(whole.pages);
}, 240_000);

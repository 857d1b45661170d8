import { mkdirSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, choose, figuresAre, open, press, write } from '../support/browser-page.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aNightInDays, aSeason, aSignedContract } from '../support/season.ts';
import { aDevice, countsAre, faultsOf, logNotes, openDesk } from './desk.ts';

const PICTURES = process.env['KEEP_PICTURES'];

/** Keeps what a person would see, where somebody asked for it. */
async function keep(page: Page, name: string): Promise<void> {
  if (!PICTURES) return;
  mkdirSync(PICTURES, { recursive: true });
  for (const [width, height] of [[WIDTHS.phone, 780], [WIDTHS.tablet, 1024], [WIDTHS.desk, 900]] as const) {
    await page.setViewportSize({ width, height });
    await page.waitForTimeout(300);
    await page.screenshot({ path: `${PICTURES}/${name}-${width}.png`, fullPage: true });
  }
}

/** Two planned reads, mentions, two devices that saw the same and not the same. */
async function aNightToTidy(department: Department) {
  const { director, announcer } = department;
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season, {
    priceCents: 60_000,
    commitments: [
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 10_000 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 2, readsAtMost: 9, rateCents: 1000 },
    ],
  });
  const { gameId, nightId } = season.games[0]!;
  const [concession, bankShots] = contract.commitments.map((one: { id: string }) => one.id) as [string, string];
  const planned: { id: string; cueKey: string }[] = [];
  for (const windowKey of ['halftime', 'timeOut1', 'timeOut2']) planned.push(await director.make('/api/placements', { commitmentId: concession, gameId, windowKey }));
  const [tablet, phone] = [new TableDevice(), new TableDevice()];
  const read = (device: TableDevice, place: number, more = {}) =>
    device.entry({ kind: 'read', outcome: 'given', placementId: planned[place]!.id, commitmentId: concession, gameId, cueKey: planned[place]!.cueKey, ...more });
  const shot = (device: TableDevice, clock: string | null) => device.entry({ kind: 'happening', gameId, teamId: season.teamId, playerNumber: '3', period: '2nd quarter', clock, detail: { happening: 'bankShot' } });
  const mention = (device: TableDevice, happeningEntryId: string) => device.entry({ kind: 'mention', outcome: 'given', gameId, commitmentId: bankShots, happeningEntryId });
  const [one, other, third] = [shot(tablet, '4:10'), shot(phone, null), shot(tablet, '0:31')];
  const send = (device: TableDevice, entries: unknown[]) => announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  await send(tablet, [read(tablet, 0), read(tablet, 1, { outcome: 'cutShort', reason: 'playResumed' }), one, mention(tablet, one.id), third, tablet.entry({ kind: 'book', gameId, period: '1st quarter', detail: { agrees: true } })]);
  await send(phone, [read(phone, 0), other, mention(phone, other.id), phone.entry({ kind: 'note', reason: 'The scoreboard froze for a minute' })]);
  return { nightId, contractId: contract.id as string };
}

test('the office tidies a night up before and after its sign-off, and every answer reaches the books', { timeout: 240_000 }, async () => {
  const department = await aDepartment();
  const { nightId, contractId } = await aNightToTidy(department);
  const page = await aPage({ visitor: department.director });
  const { title } = await department.director.look(`/api/nights/${nightId}`);
  await open(page, `/nights/${nightId}/show?tab=tidy`, title);
  await page.getByText('3 reads planned: 1 read, 1 cut short, 1 without an entry. 2 mentions.').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await keep(page, 'tidy-open');
  await page.setViewportSize({ width: WIDTHS.desk, height: 900 });
  await press(page, /^It does not count: .*cut short/);
  await page.getByText('Does not count, as somebody said').waitFor();

  await press(page, 'Sign off the night');
  const dialog = page.getByRole('dialog');
  await write(dialog, { 'Why before its day': 'the test does not wait for the night', Attendance: '412', 'What differs': 'One foul less on number 3' });
  await choose(dialog, { 'The sheet and the official scorer’s book': 'It differs' });
  await press(dialog, 'Sign off the night');
  await page.getByText('They differ: One foul less on number 3').waitFor();
  expect((await department.director.look(`/api/contracts/${contractId}`)).standing).toMatchObject({ given: 3 });

  await expect.poll(() => page.getByRole('button', { name: /^The same:/ }).isDisabled()).toBe(true);
  await write(page, { 'Why something is changed now': 'The video shows one shot' });
  await press(page, /^The same: Two devices/);
  await page.getByText('1 question settled: 1 read taken out of the count.').waitFor();
  expect((await department.director.look(`/api/contracts/${contractId}`)).standing).toMatchObject({ given: 2 });
  await page.getByText('Juniper & Pike Hardware, Concession read: 2 reads missed').waitFor();
  await figuresAre(page, { Planned: '3', Read: '1', 'Cut short': '1' });
  expect(await faultsOf(page)).toEqual([]);
  await keep(page, 'tidy-signed-off');
});

test('at the table an adult signs off with one tap, once everything logged there is on the server', { timeout: 240_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightInDays(department, 0);
  const device = await aDevice(baseUrl, department.announcer);
  const page = await openDesk(device, baseUrl, nightId);
  await logNotes(page, 'Doors open');
  await countsAre(page, [0, 1, 0]);
  await page.route('**/api/**', (route) => route.abort());
  await logNotes(page, 'The band is late');
  await page.keyboard.press('o');
  const sheet = page.getByRole('dialog', { name: 'Sign-off' });
  await sheet.getByText('1 entry is still on this device.').waitFor();
  expect(await sheet.getByRole('button', { name: /Waits for the entries/ }).isDisabled()).toBe(true);
  expect(await faultsOf(page)).toEqual([]);
  await keep(page, 'desk-waits');
  await page.setViewportSize({ width: WIDTHS.desk, height: 900 });

  await page.unroute('**/api/**');
  const signOff = sheet.getByRole('button', { name: /^Sign off the night/ });
  await signOff.waitFor({ timeout: 60_000 });
  await page.route('**/sign-off', (route) => route.abort());
  await sheet.getByLabel('Attendance, if somebody counted').fill('412');
  await sheet.getByLabel('It agrees').check();
  await signOff.click();
  await sheet.getByText(/The server does not answer, so the night is not signed off/).waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await page.unroute('**/sign-off');

  // The answer is lost after the night was signed off: the page is told by the log itself.
  await page.route('**/sign-off', async (route) => {
    await route.fetch();
    await route.abort();
  });
  await signOff.click();
  await sheet.getByText(/^Signed off at .* by announcer/).waitFor();
  await sheet.getByText('Nothing more is logged here.').waitFor();
  expect(await faultsOf(page)).toEqual([]);
  await keep(page, 'desk-signed');
  const rows = await department.ask('select attendance, book_agrees from sign_off where department_id = $1', [department.id]);
  expect(rows).toEqual([{ attendance: 412, book_agrees: true }]);
});

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import type { NightBundle } from '../../server/domain/night/desk/bundle.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import { aDevice, countsAre, faultsOf, openDesk } from './desk.ts';

/** Longer than the bounce of a finger, which the desk does not take for a second tap. */
const BETWEEN_TAPS_MILLISECONDS = 550;

const DECEMBER = { overrideReason: 'the test does not wait for the night' };

/** Three at halftime, two in each time-out. */
const CONCESSION_WINDOWS = ['halftime', 'halftime', 'halftime', ...[1, 2, 3, 4].flatMap((one) => [`timeOut${one}`, `timeOut${one}`])];

async function aSoldNight(department: Department) {
  const season = await aSeason(department, 1);
  const { gameBall, concession, bankShot } = season.readKinds;
  const contract = await aSignedContract(department, season, {
    pricing: 'perRead', priceCents: 0,
    billingPlan: { kind: 'perReadInArrears' },
    commitments: [
      { readKindId: gameBall, counting: 'perTerm', reads: 1, rateCents: 7500 },
      { readKindId: concession, counting: 'perTerm', reads: 11, rateCents: 4000 },
      { readKindId: bankShot, counting: 'onOccurrence', readsAtLeast: 0, readsAtMost: 9, rateCents: 1000 },
    ],
  });
  const { gameId, nightId } = season.games[0]!;
  const [ball, concessions] = contract.commitments as { id: string }[];
  await department.director.make('/api/placements', { commitmentId: ball!.id, gameId, windowKey: 'pregame' });
  for (const windowKey of CONCESSION_WINDOWS) await department.director.make('/api/placements', { commitmentId: concessions!.id, gameId, windowKey });
  const bundle = (await department.announcer.look(`/api/nights/${nightId}/bundle`)) as NightBundle;
  return { contract, nightId, bundle };
}

const heading = (page: Page) => page.locator('.desk-now-head');
const codeNow = async (page: Page): Promise<string> => ((await heading(page).locator('.desk-now-code').textContent({ timeout: 1000 }).catch(() => null)) ?? 'end').trim();
const stateOf = (page: Page, code: string) => page.locator('.desk-coming-cue', { has: page.locator(`.desk-coming-code:text-is("${code}")`) }).getAttribute('data-state');

/** Presses a key as the last thing before the next cue comes. */
async function pressFor(page: Page, ...keys: string[]): Promise<void> {
  const before = await codeNow(page);
  for (const key of keys) await page.keyboard.press(key);
  await expect.poll(() => codeNow(page)).not.toBe(before);
  await page.waitForTimeout(BETWEEN_TAPS_MILLISECONDS);
}

async function readUpTo(page: Page, code: string): Promise<void> {
  while ((await codeNow(page)) !== code) await pressFor(page, 'r');
}

/** Presses Tab until the named control has the focus. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    const found = await page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? (document.activeElement as HTMLInputElement | null)?.labels?.[0]?.textContent ?? document.activeElement?.textContent);
    if (found?.trim().startsWith(name)) return;
  }
  throw new Error(`Tab never came to “${name}”`);
}

async function logShot(page: Page, number: string | null): Promise<void> {
  await page.keyboard.press('u');
  await page.getByRole('group', { name: 'Bank shot: whose' }).waitFor();
  if (number === null) await page.keyboard.press('0');
  else {
    await tabTo(page, `Number ${number}`);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('status').filter({ hasText: 'Bank shot' }).waitFor();
  await page.waitForTimeout(BETWEEN_TAPS_MILLISECONDS);
}

/** Owed and given of each commitment, and what has been earned in cents, as the journals add up. */
async function booksOf(department: Department, commitmentIds: readonly string[]) {
  const rows = await department.ask<{ journal: string; commitmentId: string; account: string; amount: number }>(
    `select journal, commitment_id as "commitmentId", account, sum(amount) as amount from (
       select journal, commitment_id, to_account as account, amount from posting where department_id = $1
       union all select journal, commitment_id, from_account, -amount from posting where department_id = $1) as moved
     group by journal, commitment_id, account`,
    [department.id],
  );
  const sum = (journal: string, account: string, id?: string): number =>
    rows.filter((row) => row.journal === journal && row.account === account && (!id || row.commitmentId === id)).reduce((total, row) => total + Number(row.amount), 0);
  return [...commitmentIds.map((id) => `${sum('reads', 'owed', id)}/${sum('reads', 'given', id)}`), -sum('money', '4000')];
}

test('a night of 24 cues is logged by keyboard alone and comes to the read and the cent in both ledgers', { timeout: 300_000 }, async () => {
  const department = await aDepartment();
  const { contract, nightId, bundle } = await aSoldNight(department);
  const run = bundle.cues.filter((cue) => cue.windowKey !== null && cue.moment !== 'mention');
  expect(run).toHaveLength(24);
  const page = await openDesk(await aDevice(baseUrl, department.director), baseUrl, nightId);

  expect(await codeNow(page)).toBe('P1');
  await page.getByRole('button', { name: /^Read/ }).dblclick();
  await expect.poll(() => codeNow(page)).toBe('P2');
  await page.waitForTimeout(BETWEEN_TAPS_MILLISECONDS);
  expect([await codeNow(page), await stateOf(page, 'P1'), await stateOf(page, 'P2')]).toEqual(['P2', 'read', 'open']);

  await readUpTo(page, 'T2');
  await logShot(page, '3');
  await page.keyboard.press('m');
  await page.getByText('Mentions owed: 0').waitFor();
  await pressFor(page, 'x', 'c', '2');
  await pressFor(page, 'x', '1');
  await pressFor(page, 'r');
  await page.keyboard.press('z');
  await expect.poll(() => stateOf(page, 'T4')).toBe('open');
  expect([await stateOf(page, 'T2'), await stateOf(page, 'T3')]).toEqual(['cutShort', 'notRead']);

  await logShot(page, null);
  await page.getByText('Mentions owed: 1').waitFor();
  await page.keyboard.press('h');
  await page.getByRole('dialog', { name: 'Hold everything' }).waitFor();
  await page.keyboard.press('1');
  await page.getByRole('dialog', { name: 'The hold is on' }).waitFor();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^Hold is on/ }).waitFor();
  await page.keyboard.press('r');
  await page.keyboard.press('m');
  expect([await codeNow(page), await stateOf(page, 'T5')]).toEqual(['T5', 'open']);
  await page.getByText('Mentions owed: 1').waitFor();
  await page.keyboard.press('h');
  await tabTo(page, 'The officials or the administrator');
  await page.keyboard.press('Space');
  await tabTo(page, 'End the hold');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Play has gone on/ }).waitFor();
  await page.keyboard.press('r');
  await page.getByRole('button', { name: /^Read/ }).waitFor();
  await page.waitForTimeout(BETWEEN_TAPS_MILLISECONDS);

  await readUpTo(page, 'H1');
  await page.keyboard.press('m');
  await page.getByText('Mentions owed: 0').waitFor();
  await readUpTo(page, 'end');
  await page.getByText(/1 read still open/).waitFor();
  await countsAre(page, [0, 32, 0]);

  await page.route('**/sign-off', (route) => route.continue({ postData: JSON.stringify({ ...route.request().postDataJSON(), ...DECEMBER }) }));
  await page.keyboard.press('o');
  await page.getByRole('dialog', { name: 'Sign-off' }).getByRole('button', { name: /^Sign off the night/ }).press('Enter');
  await page.getByText(/^Signed off at .* by director/).waitFor();
  // Of 11 concession reads T3 was not read and T4 taken back; T2, cut short, counts by the department's setting: 9 at $40.
  // The game ball at $75, two mentions at $10.
  expect(await booksOf(department, contract.commitments.map((one: { id: string }) => one.id))).toEqual(['0/1', '2/9', '0/2', 45_500]);
  const { standing } = await department.director.look(`/api/contracts/${contract.id}`);
  expect(standing).toMatchObject({ promised: 14, owed: 2, given: 12, extra: 0, earnedCents: 45_500, toBillCents: 45_500 });
});

test('every state of reading can be read by everybody, in a dim gym and on a bright field', { timeout: 300_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aSoldNight(department);
  const page = await openDesk(await aDevice(baseUrl, department.announcer), baseUrl, nightId);
  const shows = async (state: string, width = 1440): Promise<void> => {
    await page.setViewportSize({ width, height: 900 });
    for (const look of ['gym', 'field'] as const) {
      await page.evaluate((chosen) => void (document.documentElement.dataset['look'] = chosen), look);
      expect(await faultsOf(page), `${state}, ${look}, ${width} px`).toEqual([]);
    }
  };
  await shows('now and coming');
  await shows('now', 360);
  await readUpTo(page, 'P6');
  await page.keyboard.press('x');
  await shows('the reasons');
  await page.keyboard.press('Escape');
  await page.keyboard.press('u');
  await shows('the shooter');
  await page.keyboard.press('0');
  await page.getByText('Mentions owed: 1').waitFor();
  await shows('a mention owed', 360);
  for (const [key, title] of [['t', 'Times tonight'], ['y', 'A tally kept on paper'], ['h', 'Hold everything']] as const) {
    await page.keyboard.press(key);
    await page.getByRole('dialog', { name: title }).waitFor();
    if (key === 'y') await page.getByRole('textbox', { name: 'The tally' }).fill('T1 x2, H9');
    await shows(title, key === 'h' ? 1440 : 360);
    if (key !== 'h') await page.keyboard.press('Escape');
    await page.setViewportSize({ width: 1440, height: 900 });
  }
  await page.keyboard.press('3');
  await page.getByRole('timer').first().waitFor();
  await shows('the hold is on');
  await page.keyboard.press('Escape');
  await shows('behind the hold');
  await page.keyboard.press('?');
  await page.getByRole('radio', { name: /^Tally/ }).check();
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: /^T1, Juniper/ }).waitFor();
  await shows('the tally');
});

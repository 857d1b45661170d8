import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, field, open, press, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

interface Staged {
  department: Department;
  season: Season;
  path: string;
}

/** Three Fridays; Snowmelt Creamery and Mirabel's Kitchen, both food, and Juniper & Pike, with a few reads in their places. */
async function aStage(): Promise<Staged> {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department);
  const food = await director.make('/api/sponsor-categories', { name: 'Food' });
  const hardware = await aSignedContract(department, season);
  const promised = async (name: string, reads: number) => {
    const sponsor = await director.make('/api/sponsors', { name, categoryId: food.id });
    const signed = await aSignedContract(department, { ...season, sponsorId: sponsor.id }, { title: `Reads of ${name}`, priceCents: 20_000, commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads, rateCents: 4_000 }] });
    return signed.commitments[0].id as string;
  };
  const [creamery, kitchen] = [await promised('Snowmelt Creamery', 4), await promised("Mirabel's Kitchen", 3)];
  const place = (commitmentId: string, game: number, windowKey: string) => director.make('/api/placements', { commitmentId, gameId: season.games[game]!.gameId, windowKey });
  await place(hardware.commitments[0].id, 0, 'pregame');
  await place(hardware.commitments[1].id, 1, 'timeOut1');
  await place(creamery, 0, 'timeOut1');
  await place(creamery, 1, 'halftime');
  await place(kitchen, 0, 'timeOut2');
  return { department, season, path: `/plan?season=${season.seasonId}` };
}

const cell = (page: Page, { season }: Staged, game: number, windowKey: string): Locator => page.locator(`[data-spot="${season.games[game]!.gameId} ${windowKey}"]`);
const card = (scope: Page | Locator, name: string): Locator => scope.getByRole('button', { name: new RegExp(`^${name}, `) });
const said = (page: Page): Locator => page.locator('[data-said]');
const readsOf = async ({ department, season }: Staged) => (await department.director.look(`/api/seasons/${season.seasonId}/board`)).reads as any[];

async function dragOver(page: Page, from: Locator, to: Locator): Promise<void> {
  const [start, end] = [(await from.boundingBox())!, (await to.boundingBox())!];
  await page.mouse.move(start.x + 40, start.y + 12);
  await page.mouse.down();
  await page.mouse.move(start.x + 46, start.y + 18, { steps: 3 });
  await page.mouse.move(end.x + 60, end.y + 20, { steps: 6 });
}

const seriousOn = async (page: Page): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page: page as never }).setLegacyMode().options({ resultTypes: ['violations'] }).withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 160)}`));
};

test('a read is dragged to another game with the mouse and undone; what a move would break is said beside the window, and the director may say why competitors stand together', { timeout: 120_000 }, async () => {
  const stage = await aStage();
  const page = await aPage({ visitor: stage.department.director });
  await open(page, stage.path, 'Plan board');
  const target = cell(page, stage, 2, 'halftime');
  await dragOver(page, card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery'), target);
  await page.locator('[data-verdict=good]').waitFor();
  await page.mouse.up();
  await card(target, 'Snowmelt Creamery').waitFor();
  await expect.poll(async () => (await readsOf(stage)).some((read) => read.gameId === stage.season.games[2]!.gameId && read.windowKey === 'halftime')).toBe(true);
  await press(page, 'Undo');
  await card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery').waitFor();
  await expect.poll(async () => (await readsOf(stage)).filter((read) => read.gameId === stage.season.games[0]!.gameId)).toHaveLength(3);
  expect(await seriousOn(page)).toEqual([]);

  const creamery = card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery');
  await dragOver(page, creamery, cell(page, stage, 0, 'pregame'));
  await page.locator('[data-verdict=bad]', { hasText: 'The concession read of Snowmelt Creamery is not read in pregame.' }).waitFor();
  await page.mouse.up();
  await said(page).filter({ hasText: 'Not moved.' }).waitFor();
  await dragOver(page, creamery, cell(page, stage, 0, 'timeOut2'));
  await page.locator('[data-verdict=bad]', { hasText: "Snowmelt Creamery and Mirabel's Kitchen would stand next to each other in the 2nd time-out." }).waitFor();
  await page.mouse.up();
  await write(page.getByRole('dialog'), { 'Why competitors may stand there': 'Both owners asked for it' });
  await press(page.getByRole('dialog'), 'Put it there');
  await card(cell(page, stage, 0, 'timeOut2'), 'Snowmelt Creamery').waitFor();
  await expect.poll(async () => (await readsOf(stage)).find((read) => read.besideCompetitorReason)?.besideCompetitorReason).toBe('Both owners asked for it');
});

test('the keyboard alone picks a read up, carries it past what refuses it, puts it down, pins it, locks its night and takes it all back', { timeout: 120_000 }, async () => {
  const stage = await aStage();
  const page = await aPage({ visitor: stage.department.director });
  await open(page, stage.path, 'Plan board');
  const key = (name: string) => page.keyboard.press(name);
  await card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery').focus();
  await key('Enter');
  await page.getByRole('status').filter({ hasText: 'Snowmelt Creamery is in hand.' }).waitFor();
  await key('ArrowRight');
  await page.getByRole('status').filter({ hasText: 'the 1st time-out, Herons at Kestrels. It fits.' }).waitFor();
  await key('Escape');
  await key(' ');
  await key('ArrowRight');
  await key('ArrowRight');
  await key('Enter');
  await card(cell(page, stage, 2, 'timeOut1'), 'Snowmelt Creamery').waitFor();
  await expect.poll(() => page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? '')).toMatch(/^Snowmelt Creamery/);
  await key('p');
  await said(page).filter({ hasText: 'Snowmelt Creamery is not pinned any more.' }).waitFor();
  await key('u');
  await said(page).filter({ hasText: 'Undone' }).waitFor();
  await expect.poll(async () => (await readsOf(stage)).every((read) => read.isPinned)).toBe(true);
  await key('u');
  await card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery').waitFor();

  await card(cell(page, stage, 0, 'timeOut1'), 'Snowmelt Creamery').focus();
  await key('l');
  await page.getByRole('button', { name: /^Unlock the night of Herons at Kestrels/ }).first().waitFor();
  await key('Enter');
  await said(page).filter({ hasText: 'This night is locked: nothing is planned into or out of it.' }).waitFor();
  await key('u');
  await page.getByRole('button', { name: /^Lock the night of Herons at Kestrels/ }).first().waitFor();
  await expect.poll(() => page.getByRole('button', { name: /^Unlock the night/ }).count()).toBe(0);
});

test('several reads are moved and taken out at once and every step is undone; the address filters by sponsor and month, and a read without a place is placed from the totals', { timeout: 120_000 }, async () => {
  const stage = await aStage();
  const page = await aPage({ visitor: stage.department.director });
  await open(page, stage.path, 'Plan board');
  await press(page, 'Choose several');
  for (const [name, game, windowKey] of [['Snowmelt Creamery', 0, 'timeOut1'], ["Mirabel's Kitchen", 0, 'timeOut2']] as const) await card(cell(page, stage, game, windowKey), name).click();
  await press(page, 'Move to a game…');
  const dialog = page.getByRole('dialog');
  await field(dialog, 'Game').selectOption({ index: 2 });
  await dialog.getByText('2 reads find room there.').waitFor();
  await press(dialog, 'Move 2');
  await said(page).filter({ hasText: '2 reads moved to Herons at Kestrels.' }).waitFor();
  await expect.poll(async () => (await readsOf(stage)).filter((read) => read.gameId === stage.season.games[2]!.gameId)).toHaveLength(2);
  await press(page, 'Choose several');
  await card(page, 'Juniper & Pike Hardware').first().click();
  await press(page.getByRole('group', { name: 'Chosen reads' }), 'Take out');
  await expect.poll(async () => (await readsOf(stage)).length).toBe(4);
  await press(page, 'Undo');
  await expect.poll(async () => (await readsOf(stage)).length).toBe(5);
  await press(page, 'Undo');
  await expect.poll(async () => (await readsOf(stage)).filter((read) => read.gameId === stage.season.games[0]!.gameId)).toHaveLength(3);

  await field(page, 'Sponsor').selectOption({ label: 'Snowmelt Creamery' });
  await expect.poll(() => card(page, "Mirabel's Kitchen").count()).toBe(0);
  expect(page.url()).toContain('sponsor=');
  const address = page.url();
  await page.goto('about:blank');
  await page.goto(address);
  await cell(page, stage, 0, 'timeOut2').getByText('1 other read').waitFor();
  await field(page, 'Month').selectOption({ index: 1 });
  await field(page, 'Sponsor').selectOption({ index: 0 });
  await page.getByRole('button', { name: "Place a read of Mirabel's Kitchen, Concession read" }).click();
  const placing = page.getByRole('dialog');
  await field(placing, 'Game').selectOption({ index: 2 });
  await placing.getByLabel(/^Halftime/).check();
  await press(placing, 'Place it');
  await card(cell(page, stage, 2, 'halftime'), "Mirabel's Kitchen").waitFor();
});

test('on a phone the plan is a list in which a read is moved, pinned and taken out by buttons', { timeout: 120_000 }, async () => {
  const stage = await aStage();
  const page = await aPage({ visitor: stage.department.director, width: WIDTHS.phone });
  await open(page, stage.path, 'Plan board');
  await page.getByRole('button', { name: /^Move Snowmelt Creamery, 1st time-out/ }).click();
  const dialog = page.getByRole('dialog');
  await field(dialog, 'Game').selectOption({ index: 2 });
  await dialog.getByLabel(/^2nd time-out/).check();
  await press(dialog, 'Move it');
  await page.getByRole('button', { name: /^Unpin Snowmelt Creamery, 2nd time-out/ }).click();
  await page.getByRole('button', { name: /^Pin Snowmelt Creamery, 2nd time-out/ }).waitFor();
  await page.getByRole('button', { name: /^Take out Snowmelt Creamery, 2nd time-out/ }).click();
  await expect.poll(async () => (await readsOf(stage)).length).toBe(4);
  expect(await seriousOn(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth)).toBe(true);
});

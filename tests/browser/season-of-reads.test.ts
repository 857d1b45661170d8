import type { Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { WIDTHS, aPage, choose, field, open, press, settled, write } from '../support/browser-page.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const dialog = (page: Page): Locator => page.getByRole('dialog');
const cell = (page: Page, gameId: string, windowKey: string): Locator => page.locator(`[data-spot="${gameId} ${windowKey}"]`);
const card = (scope: Page | Locator, name: string): Locator => scope.getByRole('button', { name: new RegExp(`^${name}, `) });

async function dragTo(page: Page, from: Locator, to: Locator): Promise<void> {
  await from.scrollIntoViewIfNeeded();
  const [start, end] = [(await from.boundingBox())!, (await to.boundingBox())!];
  await page.mouse.move(start.x + 40, start.y + 12);
  await page.mouse.down();
  await page.mouse.move(start.x + 46, start.y + 18, { steps: 3 });
  await page.mouse.move(end.x + 60, end.y + 20, { steps: 6 });
  await page.locator('[data-verdict=good]').waitFor();
  await page.mouse.up();
}

interface Read {
  id: string;
  promiseId: string;
  sponsorName: string;
  gameId: string;
  windowKey: string;
}

/** Six home games hold 66 concession reads at halftime and in the time-outs; 28 of them and six game balls are signed. */
class SeasonOfReads {
  private constructor(
    readonly department: Department,
    readonly season: Season,
    readonly office: Page,
  ) {}

  static async begin(): Promise<SeasonOfReads> {
    const department = await aDepartment();
    const season = await aLaterSeason(department, 6);
    await aSignedContract(department, season);
    await department.director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.concession, priceCents: 4_000 });
    for (const name of ['Snowmelt Creamery', 'Okafor Family Insurance']) {
      const category = await department.director.make('/api/sponsor-categories', { name: `Category of ${name}` });
      const sponsor = await department.director.make('/api/sponsors', { name, categoryId: category.id });
      const payer = await department.director.make('/api/payers', { name, sponsorId: sponsor.id });
      if (name !== 'Snowmelt Creamery') continue;
      const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 20, rateCents: 4_000 }];
      await aSignedContract(department, { ...season, sponsorId: sponsor.id, payerId: payer.id }, { title: 'At the concession stand', priceCents: 80_000, commitments });
    }
    return new SeasonOfReads(department, season, await aPage({ visitor: department.director }));
  }

  async reads(): Promise<Read[]> {
    return (await this.department.director.look(`/api/seasons/${this.season.seasonId}/board`)).reads;
  }

  async at(gameId: string): Promise<Read[]> {
    return (await this.reads()).filter((read) => read.gameId === gameId);
  }

  /** Asks for a plan on a page that offers it, and accepts it. */
  async planAndAccept(button: string, headline: RegExp): Promise<void> {
    await press(this.office, button);
    await press(dialog(this.office), 'Work it out');
    await settled(this.office, /^Plan of /);
    await this.office.getByRole('heading', { name: headline }).waitFor();
    await press(this.office, 'Accept this plan');
    await press(dialog(this.office), 'Accept it');
    await this.office.getByText('The plan is accepted.').waitFor();
  }
}

test('a season is sold and planned: refused beyond its places, offered at what fits, planned, moved by mouse and keys and on a phone, and replanned with the fewest moves', { timeout: 300_000 }, async () => {
  const story = await SeasonOfReads.begin();
  const { department, season, office } = story;
  const { director } = department;

  await open(office, '/can-we-promise', 'Can we promise this?');
  await choose(office, { Sponsor: 'Okafor Family Insurance', 'Read kind': 'Concession read' });
  await write(office, { 'Reads in all': '60' });
  const answer = office.getByRole('region', { name: 'Answer' });
  await answer.getByText('No', { exact: true }).waitFor();
  await answer.getByText(/38/).first().waitFor();
  await press(office, 'Make this an offer');
  await settled(office, 'New offer');
  await write(office, { Title: 'Time at the microphone', 'Price of the whole term': '1200', 'Rate-card price of one': '40' });
  await press(office, 'Keep as a draft');
  await settled(office, 'Time at the microphone');

  await press(office, 'Put to the sponsor');
  await press(dialog(office), 'Put it');
  await dialog(office).getByText(/need 88 places there, 66 exist/).waitFor();
  await press(dialog(office), 'Do not');
  await press(office, 'Set down to what fits');
  await press(dialog(office), 'Set it down');
  await expect.poll(async () => (await director.look('/api/offers')).data[0].readLines[0].reads).toBe(38);
  await press(office, 'Put to the sponsor');
  await press(dialog(office), 'Put it');
  await office.getByText('The offer lies with the sponsor now.').waitFor();

  await open(office, `/plan?season=${season.seasonId}`, 'Plan board');
  await story.planAndAccept('Plan the season', /^All 72 reads have a place/);
  const planned = await story.reads();
  expect(planned).toHaveLength(34);

  await open(office, `/plan?season=${season.seasonId}`, 'Plan board');
  const [first, second] = season.games as [Season['games'][0], Season['games'][0]];
  const creamery = planned.find((read) => read.gameId === first.gameId && read.sponsorName === 'Snowmelt Creamery')!;
  await card(cell(office, first.gameId, creamery.windowKey), 'Snowmelt Creamery').first().focus();
  await office.keyboard.press('p');
  await office.locator('[data-said]').filter({ hasText: 'Snowmelt Creamery is pinned' }).waitFor();

  const [third, fourth] = season.games.slice(2) as [Season['games'][0], Season['games'][0]];
  const [loose] = planned.filter((read) => read.gameId === third.gameId && read.sponsorName === 'Juniper & Pike Hardware');
  await dragTo(office, card(cell(office, third.gameId, loose!.windowKey), 'Juniper & Pike Hardware').first(), cell(office, fourth.gameId, loose!.windowKey));
  const said = (words: RegExp): Promise<void> => office.locator('[data-said]').filter({ hasText: words }).waitFor();
  await said(/^Juniper & Pike Hardware is now in/);
  expect((await story.reads()).find((read) => read.id === loose!.id)?.gameId).toBe(fourth.gameId);
  await press(office, 'Undo');
  await said(/^Undone/);
  await expect.poll(async () => (await story.reads()).find((read) => read.id === loose!.id)?.gameId).toBe(third.gameId);
  await card(cell(office, third.gameId, loose!.windowKey), 'Juniper & Pike Hardware').first().focus();
  for (const key of ['Enter', 'ArrowRight', 'Enter']) await office.keyboard.press(key);
  await said(/^Juniper & Pike Hardware is now in/);
  expect((await story.reads()).find((read) => read.id === loose!.id)?.gameId).toBe(fourth.gameId);
  await office.keyboard.press('u');
  await said(/^Undone/);
  await expect.poll(async () => (await story.reads()).find((read) => read.id === loose!.id)?.gameId).toBe(third.gameId);

  await open(office, `/games/${second.gameId}/show`, /at Kestrels/);
  await press(office, 'Cancel the game');
  await write(dialog(office), { Why: 'The boiler of the fieldhouse was out.' });
  await dialog(office).getByText(/planned read/).first().waitFor();
  const before = await story.reads();
  await press(dialog(office), 'Cancel the game');
  await open(office, `/games/${second.gameId}/show`, /at Kestrels/);
  await story.planAndAccept('Replan the season', /reads/);
  const after = await story.reads();
  const stayed = before.filter((read) => read.gameId !== second.gameId);
  const moved = stayed.filter((read) => !after.some((one) => one.id === read.id && one.gameId === read.gameId));
  expect(moved).toEqual([]);
  expect(after).toHaveLength(before.length);

  const phone = await aPage({ visitor: director, width: WIDTHS.phone });
  await open(phone, `/plan?season=${season.seasonId}`, 'Plan board');
  await phone.getByRole('button', { name: /^Unpin Snowmelt Creamery/ }).first().click();
  await phone.getByRole('button', { name: /^Take out Snowmelt Creamery/ }).first().click();
  await expect.poll(async () => (await story.reads()).length).toBe(after.length - 1);

  await open(office, '/offers', 'Offers');
  await office.getByRole('link', { name: 'Time at the microphone' }).click();
  await settled(office, 'Time at the microphone');
  await press(office, 'Sign');
  await field(dialog(office), 'Who signed for the sponsor').fill('Chidi Okafor');
  await press(dialog(office), 'Sign');
  await office.getByText('The contract is signed. Its reads are owed.').waitFor();
});

import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aDevice, aNightAtTheTable, countsAre, faultsOf, openDesk } from './desk.ts';

/** The night's desk on a laptop, the visitors' list pasted at the last minute. */
async function aGame() {
  const department = await aDepartment();
  const { nightId } = await aNightAtTheTable(department);
  const desk = await openDesk(await aDevice(baseUrl, department.announcer), baseUrl, nightId);
  const teams = desk.getByRole('region', { name: 'The game' }).locator('.desk-team');
  const [visitors, home] = [teams.nth(0), teams.nth(1)];
  await visitors.waitFor();
  return { department, nightId, desk, visitors, home, names: await teams.evaluateAll((all) => all.map((one) => one.getAttribute('aria-label')!)) };
}

const call = (desk: Page) => desk.locator('.desk-call-text').textContent();
const calls = (desk: Page, text: string) => expect.poll(() => call(desk), { timeout: 15_000 }).toBe(text);

/** By keyboard: what, then the number of a team, then Enter. */
async function keyed(desk: Page, what: string, team: '[' | ']', number: string): Promise<void> {
  await desk.keyboard.press(what);
  await desk.keyboard.press(team);
  await desk.keyboard.type(number);
  await desk.keyboard.press('Enter');
}

async function paste(desk: Page, list: string): Promise<void> {
  await desk.keyboard.press('w');
  const sheet = desk.getByRole('dialog', { name: 'Who wears what tonight' });
  await sheet.getByLabel(/paste a list/).fill(list);
  await sheet.getByRole('button', { name: 'Take the list' }).click();
  await sheet.getByText('It begins with no number.').waitFor();
  expect(await faultsOf(desk)).toEqual([]);
  await desk.keyboard.press('Escape');
  await sheet.waitFor({ state: 'detached' });
}

test('a pasted list is called by name, five fouls are the limit and two shots, and a taken back one never was', { timeout: 180_000 }, async () => {
  const { desk, visitors, names, department, nightId } = await aGame();
  const [theirs, ours] = names as [string, string];
  await paste(desk, '41 Łukasz Wren (WOO-kahsh ren)\nCoach Arkwright');
  const number = visitors.getByRole('button', { name: /^41/ });
  await number.waitFor();
  for (let foul = 1; foul <= 4; foul += 1) {
    await desk.getByRole('button', { name: /^Foul( F)?$/ }).click();
    await number.click();
    await desk.getByText(`${foul} team foul${foul === 1 ? '' : 's'}, next: ${foul < 4 ? 'no shots' : 'two shots'}`).waitFor();
  }
  await keyed(desk, 'f', '[', '41');
  await calls(desk, `Foul on the ${theirs}, number 41, Łukasz Wren. Two shots for the ${ours}.`);
  await desk.getByText('Say: WOO-kahsh ren').waitFor();
  await desk.getByText(/5th on number 41, the team’s 5th of the quarter. That is the limit/).waitFor();
  expect(await faultsOf(desk)).toEqual([]);
  await desk.getByRole('button', { name: 'Take back', exact: true }).click();
  await calls(desk, `Foul on the ${theirs}, number 41, Łukasz Wren.`);
  await countsAre(desk, [0, 7, 0]);
  const rows = await department.ask<{ kind: string }>('select kind from log_entry where department_id = $1 and night_id = $2 order by number', [department.id, nightId]);
  expect(rows.map((row) => row.kind)).toEqual(['worn', 'foul', 'foul', 'foul', 'foul', 'foul', 'takenBack']);
});

test('fouls carry into overtime, time-outs grow by one, and the book agrees or differs in words', { timeout: 180_000 }, async () => {
  const { desk, names } = await aGame();
  const [theirs, ours] = names as [string, string];
  for (let period = 1; period <= 3; period += 1) {
    await desk.keyboard.press('e');
    await expect.poll(() => desk.getByLabel('Period').inputValue()).toBe(String(period + 1));
    await desk.waitForTimeout(550);
  }
  for (let foul = 1; foul <= 4; foul += 1) await keyed(desk, 'f', '[', String(foul));
  await desk.getByText('4 team fouls, next: two shots').waitFor();
  await desk.keyboard.press('g');
  await desk.getByRole('region', { name: theirs, exact: true }).getByRole('button', { name: /no number/ }).click();
  await calls(desk, `Time-out, ${theirs}. Full.`);
  await desk.getByText('Left: 2 full, 2 thirty').waitFor();
  await desk.keyboard.press('e');
  await calls(desk, `End of the 4th quarter. ${theirs} 0, ${ours} 0.`);
  await expect.poll(() => desk.getByLabel('Period').inputValue()).toBe('5');
  await desk.getByText('Left: 3 full, 2 thirty').waitFor();
  await keyed(desk, 'f', '[', '5');
  await calls(desk, `Foul on the ${theirs}, number 5. Two shots for the ${ours}.`);
  await keyed(desk, '3', ']', '99');
  await desk.waitForTimeout(550);
  await desk.keyboard.press('e');
  await calls(desk, `Final score: ${theirs} 0, ${ours} 3.`);
  await desk.keyboard.press('a');
  await desk.getByText('overtime agrees').waitFor();
  await desk.keyboard.press('d');
  await desk.getByLabel(/What differs/).fill('number 99 has two');
  await desk.keyboard.press('Enter');
  await desk.getByText('overtime differs: number 99 has two').waitFor();
  for (const look of ['field', 'gym']) {
    await desk.evaluate((chosen) => void (document.documentElement.dataset['look'] = chosen), look);
    expect(await faultsOf(desk), look).toEqual([]);
  }
  const tap = await desk.evaluate(() => [...document.querySelectorAll('.desk-what, .desk-number')].map((one) => one.getBoundingClientRect()).filter((box) => Math.min(box.width, box.height) < 48).length);
  expect(tap).toBe(0);
});

import { mkdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aDevice, aNightAtTheTable, countsAre, faultsOf, logNotes, notesOnServer, openDesk } from './desk.ts';

const SHOTS = process.env['DESK_SHOTS'];

test('a night is opened by its announcer, logged, and seen as what it is at three widths and in both looks', { timeout: 180_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightAtTheTable(department);
  const device = await aDevice(baseUrl, department.announcer);
  const list = await device.newPage();
  await list.goto(`${baseUrl}/night/`);
  await list.getByRole('heading', { name: 'Nights on this device' }).waitFor();
  expect(await faultsOf(list)).toEqual([]);
  const desk = await openDesk(device, baseUrl, nightId);
  await logNotes(desk, 'The clock was off for a minute.', 'The band came late.');
  await countsAre(desk, [0, 2, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['The clock was off for a minute.', 'The band came late.']);
  for (const look of ['field', 'gym'] as const) {
    await desk.evaluate((chosen) => void (document.documentElement.dataset['look'] = chosen), look);
    for (const width of [360, 768, 1440]) {
      await desk.setViewportSize({ width, height: 800 });
      expect(await faultsOf(desk), `${look} at ${width} px`).toEqual([]);
      if (SHOTS) {
        mkdirSync(SHOTS, { recursive: true });
        await desk.screenshot({ path: `${SHOTS}/desk-${look}-${width}.png` });
      }
    }
    for (const [key, name] of [['l', 'The log'], ['?', 'More']] as const) {
      await desk.keyboard.press(key);
      await desk.getByRole('dialog', { name }).waitFor();
      expect(await faultsOf(desk), `${name} ${look}`).toEqual([]);
      if (SHOTS) await desk.screenshot({ path: `${SHOTS}/desk-${look}-${name.replace(/ /g, '-')}.png` });
      await desk.keyboard.press('Escape');
    }
    await desk.getByRole('button', { name: /Show what waits/ }).click();
    await desk.getByRole('dialog', { name: 'Where the entries are' }).waitFor();
    expect(await faultsOf(desk)).toEqual([]);
    if (SHOTS) await desk.screenshot({ path: `${SHOTS}/desk-${look}-held.png` });
    await desk.keyboard.press('Escape');
  }
});

test('what the office changes is offered to a night that is open, and taken when somebody says so', { timeout: 120_000 }, async () => {
  const department = await aDepartment();
  const { nightId } = await aNightAtTheTable(department);
  const device = await aDevice(baseUrl, department.announcer);
  const desk = await openDesk(device, baseUrl, nightId);
  const title = desk.getByRole('heading', { level: 1 });
  const before = await title.textContent();
  await logNotes(desk, 'Doors open.');
  const { version } = await department.director.look(`/api/nights/${nightId}`);
  expect((await department.director.patch(`/api/nights/${nightId}`, { title: 'Whiteout night' }, { version })).status).toBe(200);

  await desk.goto(`${baseUrl}/night/#open/${nightId}`);
  await desk.reload();
  await desk.getByRole('button', { name: 'The office has changed something' }).click();
  expect(await title.textContent()).toBe(before);
  const more = desk.getByRole('dialog', { name: 'More' });
  expect(await faultsOf(desk)).toEqual([]);
  await more.getByRole('button', { name: 'Take the new one' }).click();
  await expect.poll(() => title.textContent()).toBe('Whiteout night');
  await more.getByText('The office has changed something for tonight.').waitFor({ state: 'detached' });
  await countsAre(desk, [0, 1, 0]);
});

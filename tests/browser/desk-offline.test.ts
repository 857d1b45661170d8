import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect, onTestFinished, test } from 'vitest';
import { anApplication, baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aDevice, aNightAtTheTable, atTheDesk, countsAre, countsOf, logNotes, notesOnServer, openDesk } from './desk.ts';

const LOG = /\/api\/nights\/[^/]+\/log$/;

async function atATable() {
  const department = await aDepartment();
  const { nightId } = await aNightAtTheTable(department);
  const device = await aDevice(baseUrl, department.announcer);
  const desk = await openDesk(device, baseUrl, nightId);
  return { department, nightId, device, desk };
}

/** The page anew from what the device has stored. */
async function again(page: Page): Promise<void> {
  await page.reload();
  await atTheDesk(page);
}

test('with the network cut the desk opens from the device, logs, says so, and sends it all when the network is back', { timeout: 120_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  await device.setOffline(true);
  await logNotes(desk, 'one', 'two');
  await countsAre(desk, [2, 0, 0]);
  await desk.getByText('No connection.').waitFor();
  await again(desk);
  await countsAre(desk, [2, 0, 0]);
  await logNotes(desk, 'three');
  expect(await notesOnServer(department, nightId)).toEqual([]);
  await device.setOffline(false);
  await countsAre(desk, [0, 3, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['one', 'two', 'three']);
});

test('a tab that is killed between the tap and the sending has lost nothing', { timeout: 120_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  await desk.route(LOG, (route) => route.abort());
  await logNotes(desk, 'just before the end');
  const session = await device.newCDPSession(desk);
  const crashed = desk.waitForEvent('crash');
  session.send('Page.crash').catch(() => {});
  await crashed;
  const next = await device.newPage();
  await next.goto(`${baseUrl}/night/#night/${nightId}`);
  await countsAre(next, [0, 1, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['just before the end']);
});

test('an answer that is lost after the entry was stored leaves it there once', { timeout: 120_000 }, async () => {
  const { department, nightId, desk } = await atATable();
  let lost = 0;
  await desk.route(LOG, async (route) => {
    await route.fetch();
    lost += 1;
    await (lost <= 2 ? route.abort() : route.continue());
  });
  await logNotes(desk, 'heard twice', 'heard once');
  await countsAre(desk, [0, 2, 0]);
  expect(lost).toBeGreaterThan(2);
  expect(await notesOnServer(department, nightId)).toEqual(['heard twice', 'heard once']);
});

test('two tabs of one device share the queue, number their entries in one row and see each other’s', { timeout: 120_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  const other = await device.newPage();
  await other.goto(`${baseUrl}/night/#night/${nightId}`);
  await atTheDesk(other);
  await device.setOffline(true);
  await logNotes(desk, 'first tab');
  await logNotes(other, 'second tab');
  await countsAre(desk, [2, 0, 0]);
  await countsAre(other, [2, 0, 0]);
  // The tab that was sending is gone; the one that is left sends for both.
  await desk.close();
  await device.setOffline(false);
  await countsAre(other, [0, 2, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['first tab', 'second tab']);
  const rows = await department.ask<{ sequence: number }>('select sequence from log_entry where department_id = $1 order by number', [department.id]);
  expect(rows.map((row) => row.sequence)).toEqual([1, 2]);
});

test('two devices at one night see each other’s entries', { timeout: 120_000 }, async () => {
  const { department, nightId, desk } = await atATable();
  const spotter = await openDesk(await aDevice(baseUrl, department.director), baseUrl, nightId);
  await logNotes(desk, 'from the announcer');
  await spotter.keyboard.press('l');
  await spotter.getByText('Note: from the announcer').waitFor();
  await spotter.getByText('from another device').waitFor();
  expect(await countsOf(spotter)).toEqual([0, 0, 0]);
});

test('a store without room keeps the entry on the screen, and everything that was there', { timeout: 120_000 }, async () => {
  const { department, nightId, desk } = await atATable();
  await logNotes(desk, 'before');
  // As the browser answers when the device is full; its own limit cannot be set so low that a short note meets it.
  await desk.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    Object.assign(window, { thereIsRoom: () => (IDBObjectStore.prototype.add = add) });
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await desk.keyboard.press('l');
  await desk.getByRole('textbox', { name: 'Note' }).fill('no room for this');
  await desk.getByRole('button', { name: 'Log the note' }).click();
  await desk.keyboard.press('Escape');
  await desk.getByText(/^1 entry is not stored/).waitFor();
  await desk.getByText('This device has no room left').first().waitFor();
  await desk.evaluate(() => (window as unknown as { thereIsRoom(): void }).thereIsRoom());
  await desk.getByRole('button', { name: 'Try again' }).click();
  await countsAre(desk, [0, 2, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['before', 'no room for this']);
});

test('who is signed out in mid-game goes on by the table’s link and notices nothing', { timeout: 120_000 }, async () => {
  const { department, nightId, desk } = await atATable();
  await department.pool.query('delete from session where person_id = $1', [department.announcer.personId]);
  await logNotes(desk, 'after the session ended');
  await countsAre(desk, [0, 1, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['after the session ended']);
});

test('who is shut out altogether loses nothing: the queue waits until they are let in again', { timeout: 120_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  const cookies = await device.cookies();
  await device.clearCookies();
  await logNotes(desk, 'nobody knows me');
  await desk.getByText('The server asks who you are.').waitFor();
  await countsAre(desk, [1, 0, 0]);
  await device.addCookies(cookies);
  await desk.getByRole('button', { name: 'What to do' }).click();
  await desk.getByRole('button', { name: 'I am signed in again' }).click();
  await countsAre(desk, [0, 1, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['nobody knows me']);
});

test('a clock that is hours wrong changes neither the order nor the number of entries', { timeout: 120_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  await logNotes(desk, 'by the right clock');
  await countsAre(desk, [0, 1, 0]);
  await device.clock.setSystemTime(new Date('2019-03-03T03:03:03Z'));
  await logNotes(desk, 'by a clock of years ago');
  await countsAre(desk, [0, 2, 0]);
  await device.clock.setSystemTime(new Date('2031-03-03T03:03:03Z'));
  await logNotes(desk, 'by a clock of years to come');
  await countsAre(desk, [0, 3, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['by the right clock', 'by a clock of years ago', 'by a clock of years to come']);
});

test('a device that comes back after sign-off loses nothing: what the server no longer takes is held, explained and handed on as a file', { timeout: 180_000 }, async () => {
  const { department, nightId, device, desk } = await atATable();
  await device.setOffline(true);
  await logNotes(desk, 'left in the bag');
  await countsAre(desk, [1, 0, 0]);
  await desk.close();
  expect(await notesOnServer(department, nightId)).toEqual([]);
  const signed = await department.director.post(`/api/nights/${nightId}/sign-off`, { overrideReason: 'The game is over.' });
  expect(signed.status).toBe(200);
  await device.setOffline(false);
  const later = await device.newPage();
  await later.goto(`${baseUrl}/night/#night/${nightId}`);
  await countsAre(later, [0, 0, 1]);
  await later.getByRole('button', { name: /Show what waits/ }).click();
  await later.getByText(/signed off/).first().waitFor();
  const [download] = await Promise.all([later.waitForEvent('download'), later.getByRole('button', { name: 'Save what is not on the server' }).click()]);
  const file = JSON.parse(readFileSync(await download.path(), 'utf8'));
  expect(file).toMatchObject({ nightId, entries: [{ kind: 'note', reason: 'left in the bag', sequence: 1 }] });

  const other = await openDesk(await aDevice(baseUrl, department.director), baseUrl, nightId);
  await other.getByRole('button', { name: /Show what waits/ }).click();
  await other.getByLabel('Take over a file of entries').setInputFiles(await download.path());
  await other.getByText('1 entry is taken over').waitFor();
  await countsAre(other, [0, 0, 1]);
});

test('the server is stopped for real in mid-game and started again: each entry is there once', { timeout: 180_000 }, async () => {
  const application = await anApplication();
  const department = await aDepartment({ baseUrl: application.baseUrl, pool: application.webPool, checksBooks: false });
  const { nightId } = await aNightAtTheTable(department);
  const device = await aDevice(application.baseUrl, department.announcer);
  const desk = await openDesk(device, application.baseUrl, nightId);
  await logNotes(desk, 'with a server');
  await countsAre(desk, [0, 1, 0]);
  onTestFinished(() => application.stop());
  const startAgain = await application.stopServer();
  await logNotes(desk, 'without one');
  await countsAre(desk, [1, 1, 0]);
  await again(desk);
  await logNotes(desk, 'still without');
  await countsAre(desk, [2, 1, 0]);
  await startAgain();
  await countsAre(desk, [0, 3, 0]);
  expect(await notesOnServer(department, nightId)).toEqual(['with a server', 'without one', 'still without']);
});

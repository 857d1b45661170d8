import { AxeBuilder } from '@axe-core/playwright';
import type { BrowserContext, Page } from 'playwright-core';
import { expect, onTestFinished } from 'vitest';
import { theBrowser } from '../support/browser.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import type { Visitor } from '../support/visitor.ts';

/** A browser of its own at the table: one device, with as many tabs as are opened in it. */
export async function aDevice(baseUrl: string, visitor: Visitor, width = 1440): Promise<BrowserContext> {
  const context = await (await theBrowser()).newContext({ viewport: { width, height: 900 }, acceptDownloads: true, timezoneId: 'America/New_York', locale: 'en-US' });
  context.setDefaultTimeout(20_000);
  const [name, value] = visitor.cookie.split('=') as [string, string];
  await context.addCookies([{ name, value, url: baseUrl, httpOnly: true, sameSite: 'Lax' }]);
  onTestFinished(() => context.close());
  return context;
}

/** A tab with the night's desk open and stored, its service worker at work. */
export async function openDesk(device: BrowserContext, baseUrl: string, nightId: string): Promise<Page> {
  const page = await device.newPage();
  await page.goto(`${baseUrl}/night/#open/${nightId}`);
  await atTheDesk(page);
  await page.evaluate(async () => void (await navigator.serviceWorker.ready));
  return page;
}

export const atTheDesk = (page: Page): Promise<void> => page.getByRole('navigation', { name: 'Parts of the desk', includeHidden: true }).waitFor({ state: 'attached' });

/** The three counts as they stand on the screen: on this device, on the server, needs attention. */
export async function countsOf(page: Page): Promise<number[]> {
  const texts = await page.locator('.desk-counts b').allTextContents();
  return texts.map(Number);
}

export const countsAre = (page: Page, counts: number[], timeout = 30_000): Promise<void> => expect.poll(() => countsOf(page), { timeout }).toEqual(counts);

/** Types notes into the log, as a person does; each is on this device before the next is typed. */
export async function logNotes(page: Page, ...notes: string[]): Promise<void> {
  await page.keyboard.press('l');
  const sheet = page.getByRole('dialog', { name: 'The log' });
  for (const words of notes) {
    await sheet.getByRole('textbox', { name: 'Note' }).fill(words);
    await sheet.getByRole('button', { name: 'Log the note' }).click();
    await sheet.getByText(`Note: ${words}`, { exact: true }).waitFor();
  }
  await page.keyboard.press('Escape');
  await sheet.waitFor({ state: 'detached' });
}

/** What the server's log says, notes alone, in its order. */
export async function notesOnServer(department: Department, nightId: string): Promise<string[]> {
  const rows = await department.ask<{ reason: string }>(`select reason from log_entry where department_id = $1 and night_id = $2 and kind = 'note' order by number`, [department.id, nightId]);
  return rows.map((row) => row.reason);
}

export async function aNightAtTheTable(department: Department): Promise<{ season: Season; nightId: string }> {
  const season = await aSeason(department, 1);
  return { season, nightId: season.games[0]!.nightId };
}

/** Levels A and AA of WCAG 2.2, as far as axe-core can decide them, and nothing wider than the screen. */
export async function faultsOf(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page: page as never }).setLegacyMode().withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa']).analyze();
  const width = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  return [...violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html.slice(0, 120)).join(' | ')}`), ...(width > 0 ? [`${width} px too wide`] : [])];
}

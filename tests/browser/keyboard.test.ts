import { hash } from '@node-rs/argon2';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { aPage, open, settled } from '../support/browser-page.ts';
import { baseUrl, ownerPool } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';

const PASSWORD = 'kestrels over the ridge';

/** What has the focus: its name, and whether a ring or a thicker edge shows it (WCAG 2.2, success criterion 2.4.7). */
const focused = (page: Page): Promise<{ name: string; isShown: boolean }> =>
  page.evaluate(() => {
    const element = document.activeElement as HTMLElement;
    const labels = (element as HTMLInputElement).labels;
    const name = element.getAttribute('aria-label') ?? labels?.[0]?.textContent ?? element.textContent ?? '';
    const ring = getComputedStyle(element);
    const edge = element.closest('.MuiInputBase-root')?.querySelector('fieldset');
    const isRinged = ring.outlineStyle !== 'none' && Number.parseFloat(ring.outlineWidth) >= 2;
    const isEdged = edge ? Number.parseFloat(getComputedStyle(edge).borderTopWidth) >= 2 : false;
    const isMarked = element.closest('.MuiSwitch-root, .MuiCheckbox-root') !== null && element.closest('.Mui-focusVisible') !== null;
    return { name: name.replace(/\s*\*$/, '').trim(), isShown: isRinged || isEdged || isMarked || element.id === 'page' };
  });

/** Presses Tab until the named thing has the focus; every stop on the way shows that it has it. */
async function tabTo(page: Page, name: string): Promise<void> {
  const stops: string[] = [];
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    const stop = await focused(page);
    expect(stop).toEqual({ name: stop.name, isShown: true });
    if (stop.name === name) return;
    stops.push(stop.name);
  }
  throw new Error(`Tab never came to “${name}”, only to ${stops.join(', ')}`);
}

test('a director without a mouse signs in, skips the rooms, and adds a category', async () => {
  const { director } = await aDepartment();
  await ownerPool.query('update person set password_hash = $1 where id = $2', [await hash(PASSWORD, { memoryCost: 19_456, timeCost: 2, parallelism: 1 }), director.personId]);
  const page = await aPage();
  await page.goto(baseUrl);
  await settled(page, /Every name you promised/);
  await tabTo(page, 'E-mail');
  await page.keyboard.type(`${director.personId}@tamarack.example`);
  await tabTo(page, 'Password');
  await page.keyboard.type(PASSWORD);
  await tabTo(page, 'Sign in');
  await page.keyboard.press('Enter');
  await settled(page, 'Home');

  await page.reload();
  await settled(page, 'Home');
  await tabTo(page, 'Skip to the page');
  const skip = await page.getByRole('button', { name: 'Skip to the page' }).boundingBox();
  expect(skip!.x).toBeGreaterThanOrEqual(0);
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => document.activeElement?.id)).toBe('page');

  await open(page, '/sponsor-categories/create', 'Add a category');
  await tabTo(page, 'Name');
  await page.keyboard.type('Hardware');
  await tabTo(page, 'Add');
  await page.keyboard.press('Enter');
  await settled(page, 'Hardware');
  expect((await director.look('/api/sponsor-categories')).data.map((one: { name: string }) => one.name)).toEqual(['Hardware']);
});

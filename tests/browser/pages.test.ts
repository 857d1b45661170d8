import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { WIDTHS, aPage, open, settled } from '../support/browser-page.ts';
import { baseUrl } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aBusyOffice } from './office.ts';
import type { Rooms, Sheet } from './office.ts';

/** The success criteria of WCAG 2.2 (W3C Recommendation, 5 October 2023), levels A and AA, that axe-core can decide. */
const WCAG = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

let department: Department;
let rooms: Rooms;
beforeAll(async () => {
  department = await aDepartment({ checksBooks: false });
  ({ rooms } = await aBusyOffice(department));
});

type Asked = 'all' | 'allButColours' | 'colours';

async function violationsOn(page: Page, asked: Asked): Promise<string[]> {
  const axe = new AxeBuilder({ page: page as never }).setLegacyMode().options({ resultTypes: ['violations'] });
  const { violations } = await (asked === 'colours' ? axe.withRules('color-contrast') : axe.withTags(WCAG).disableRules(asked === 'all' ? [] : 'color-contrast')).analyze();
  return violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.html.slice(0, 200)} ${node.any[0]?.message ?? ''}`));
}

/** What is wrong with a page whatever it shows: too wide, without one heading, an id where a name belongs. */
const faultsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    // The people of a test have e-mail addresses made from ids.
    const text = document.body.innerText.replace(/\S+@tamarack\.example/g, '');
    const headings = document.querySelectorAll('h1').length;
    const id = /[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}/i.exec(text);
    return [
      ...(scrollWidth > clientWidth ? [`is ${scrollWidth - clientWidth} px too wide`] : []),
      ...(headings === 1 ? [] : [`has ${headings} first headings`]),
      ...(id ? [`shows the id ${id[0]}`] : []),
      ...(/\b(undefined|NaN|\[object)/.test(text) ? ['shows a programmer’s word'] : []),
    ];
  });

/** A table becomes cards on a phone, so both are asked; a form is the same form in one column, and a tablet shows cards too. The colours are the same at every width. */
const isAsked = (path: string, width: number): boolean => width === WIDTHS.desk || (width === WIDTHS.phone && !path.endsWith('/create') && !/^\/[a-z-]+\/[0-9a-f-]{36}$/.test(path));

async function lookAt(page: Page, path: string, heading: string): Promise<string[]> {
  const found: string[] = [];
  for (const width of [WIDTHS.desk, WIDTHS.tablet, WIDTHS.phone]) {
    await page.setViewportSize({ width, height: 900 });
    await settled(page, heading);
    const faults = [...(await faultsOf(page)), ...(isAsked(path, width) ? await violationsOn(page, width === WIDTHS.desk ? 'all' : 'allButColours') : [])];
    found.push(...faults.map((fault) => `${path} at ${width}: ${fault}`));
  }
  return found;
}

describe('on a phone, a tablet and a desk', () => {
  test.each(['Now', 'Calendar', 'Selling', 'Promises', 'Changes', 'Money', 'Proof', 'Books', 'Office'] as const)('every page of the room “%s” fits, has one heading, shows no ids and can be used with a screen reader', { timeout: 300_000 }, async (room) => {
    const page = await aPage({ visitor: department.director });
    const faults: string[] = [];
    for (const [path, heading] of rooms[room]) {
      await page.setViewportSize({ width: WIDTHS.desk, height: 900 });
      await open(page, path, heading);
      faults.push(...(await lookAt(page, path, heading)));
    }
    expect(faults.join('\n')).toBe('');
  });

  test('the sign-in page fits, has one heading and can be used with a screen reader', async () => {
    const page = await aPage();
    await page.goto(baseUrl);
    const heading = 'Every name you promised to read, read and proven.';
    await settled(page, heading);
    expect((await lookAt(page, '/login', heading)).join('\n')).toBe('');
  });
});

/** Every kind of page: lists, sheets, statements, forms. */
const SELLING = /^\/(offers\/[^/]+\/show|calls|can-we-promise|left-to-sell|plan|plan-proposals\/.+)$/;
const inTheDark = (): Sheet[] => [
  ...rooms.Now, ...rooms.Promises.filter(([path]) => /^\/(contracts|copies)/.test(path)), ...rooms.Money.slice(0, 5), ...rooms.Proof, ...[...rooms.Calendar, ...rooms.Selling, ...rooms.Money].filter(([path]) => SELLING.test(path)),
];

test('the pages keep their contrast on the dark screen for a dim gym', { timeout: 300_000 }, async () => {
  const page = await aPage({ visitor: department.director });
  await open(page, '/', 'Home');
  await page.getByRole('button', { name: /^director/ }).click();
  await page.getByRole('menuitem', { name: /Dark screen/ }).click();
  await page.getByRole('menuitem').first().waitFor({ state: 'hidden' });
  const faults: string[] = [];
  for (const [path, heading] of inTheDark()) {
    await open(page, path, heading);
    faults.push(...(await violationsOn(page, 'colours')).map((fault) => `${path}: ${fault}`));
  }
  expect(faults.join('\n')).toBe('');
});

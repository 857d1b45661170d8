import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { PerformanceSheet } from '../../server/platform/typesetting/performance-sheet.ts';
import { paceChart } from '../../server/platform/typesetting/pace-chart.ts';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';
import { aLongStatement, aStatement, day } from '../support/statement-content.ts';
import { read } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
beforeAll(async () => {
  typesetter = new Typesetter({ workerFile: await builtWorker('performance'), limitMilliseconds: 60_000 });
}, 90_000);
afterAll(() => typesetter.close());

const HEAD = createHash('sha256').update('the books').digest('hex');
const issued = { number: 2, issuedOn: '2027-04-03', sealNumber: 41, sealHead: HEAD };
const sheet = (extra: Partial<PerformanceSheet> = {}): PerformanceSheet => ({ content: aStatement(), issued, replacedBy: null, ...extra });
const set = (extra: Partial<PerformanceSheet> = {}) => typesetter.pdf('performance', sheet(extra));
const times = (text: string, words: string) => text.split(words).length - 1;

describe('the statement of performance on paper', () => {
  test('says what was promised and given, each night, the changes, the account and who signs', async () => {
    const { text, isTagged, title, languages } = await read(await set());
    expect([isTagged, title, languages]).toEqual([true, 'Statement of performance 2, Snowmelt Creamery, C-2027-0007', ['en']]);
    for (const words of [
      'Tamarack Ridge High School', 'Kestrel Boosters', 'C-2027-0007, Concession reads', 'November 20, 2026 to March 13, 2027', 'Told through March 20, 2027', '40 33 4 3 0', '37 given', '40 expected', 'Photo in the binder',
      'Dec 1, 2026', 'Port Ansel Herons', 'Halftime, 7:42 PM', 'Winter cones, version 2', 'Not read: ran out of time', 'Makegood for Dec 1, 2026', 'Extra, beyond the promise',
      '3 reads credited: the last three games were called off.', 'Invoice KB-2027-0014 issued.', '$925.00', 'Nothing is open.', 'Local rules and the business office decide', 'the athletic director, name and signature',
    ]) expect(text.replaceAll(/\s+/g, ' ')).toContain(words);
  });

  test('names its number and the head of its seal at the foot of every page, and the whole head once', async () => {
    const { pageTexts, text } = await read(await set({ content: aLongStatement(40) }));
    expect(pageTexts.length).toBeGreaterThan(2);
    for (const [place, page] of pageTexts.entries()) {
      expect(page.replaceAll(/\s+/g, ' ')).toContain(`Statement 2 of contract C-2027-0007, issued April 3, 2027; seal 41, head ${HEAD.slice(0, 16)}…`);
      expect(page).toContain(`Page ${place + 1} of ${pageTexts.length}`);
    }
    expect(text.replaceAll(/\s+/g, '')).toContain(HEAD);
  });

  test('calls the audience an estimate, says how it was reckoned and how many nights it leaves out', async () => {
    const said = (await read(await set())).text.replaceAll(/\s+/g, ' ');
    expect(said).toContain('An estimate: 400 audience contacts. Each of 1 read given on 1 night counts once for everybody who came that night');
    expect(said).toContain('For 1 night with 2 reads no attendance was recorded; nothing is counted for it.');
  });

  test('that was overtaken differs from before by its stamp alone, which names the next', async () => {
    const before = await read(await set());
    const after = await read(await set({ replacedBy: { number: 3, issuedOn: '2027-04-20' } }));
    expect(after.text.replace(/\s*Replaced by statement 3 of April 20, 2027/, '').replaceAll(/\s+/g, ' ').trim()).toBe(before.text.replaceAll(/\s+/g, ' ').trim());
    const places = ({ pages }: typeof before) => pages.map((page) => page.filter((line) => line.text.trim() !== '' && !line.text.includes('Replaced by')).map(({ text, left, bottom }) => [text, left, bottom]));
    expect(places(after)).toEqual(places(before));
  });

  test('as a draft says so on every page and bears neither number nor seal', async () => {
    const { pageTexts, text, title } = await read(await set({ issued: null }));
    for (const page of pageTexts) expect(page).toContain('Draft, not issued');
    expect(text).not.toContain('seal');
    expect(title).toBe('Statement of performance (draft), Snowmelt Creamery, C-2027-0007');
  });

  test('of a contract without a night is set all the same, and says so', async () => {
    const bare = aStatement({ pace: [], nights: [], changes: [], account: [], benefits: [] });
    const { text } = await read(await set({ content: bare }));
    for (const words of ['No night was played for this contract yet.', 'No read was given yet, so there is nothing to estimate.', 'Nothing was billed or paid yet.']) expect(text.replaceAll(/\s+/g, ' ')).toContain(words);
    expect(text).not.toContain('Pace');
  });

  test('of five hundred nights has each read once and the heads of its table on every page', async () => {
    const { pageTexts, text } = await read(await set({ content: aLongStatement(500) }));
    const words = text.replaceAll(/\s+/g, ' ');
    for (let night = 1; night <= 500; night += 1) for (const one of [1, 2, 3]) expect([night, one, times(words, `Copy ${night}-${one}.`)]).toEqual([night, one, 1]);
    const ofNights = pageTexts.filter((page) => /Copy \d+-\d\./.test(page));
    for (const page of ofNights) expect(page.replaceAll(/\s+/g, ' ')).toContain('What became of it');
  });

  test('is the same bytes when it is set again', async () => {
    const digest = (pdf: Buffer) => createHash('sha256').update(pdf).digest('hex');
    const first = digest(await set());
    await set({ issued: null });
    expect(digest(await set())).toBe(first);
  });
});

describe('the chart of pace', () => {
  const pace = aStatement().pace;
  test.each([
    ['no day', [], false],
    ['one day', pace.slice(0, 1), false],
    ['two days', pace.slice(0, 2), true],
  ])('of %s is drawn only where there is a line to draw', (_, points, isDrawn) => {
    expect(paceChart(points, 'en-US') !== null).toBe(isDrawn);
  });

  test('lies within its frame, begins at nothing and says in words what it shows', () => {
    const chart = paceChart(pace, 'en-US')!;
    for (const [x, y] of [...chart.expected, ...chart.given]) expect(x >= 0 && x <= 1 && y >= 0 && y <= 1).toBe(true);
    expect(chart.ticks.map((tick) => tick.label)).toEqual(['0', '10', '20', '30', '40']);
    expect(chart.alt).toBe('Pace of the reads from December 1, 2026 to March 12, 2027: by the last of these days 40 should have been given at an even pace and 37 were. The table of nights has each of them.');
  });

  test('of reads that nobody expected or gave is flat', () => {
    const flat = paceChart([{ on: day('2026-12-01'), expected: 0, given: 0 }, { on: day('2026-12-08'), expected: 0, given: 0 }], 'en-US')!;
    expect(flat.given).toEqual([[0, 0], [1, 0]]);
  });
});

import { describe, expect, test } from 'vitest';
import { cueInHand, windowLine } from '../../admin-ui/night/now/cue-in-hand.ts';
import type { Reading } from '../../admin-ui/night/now/reading.ts';
import { cueStandings, windowsTonight } from '../../server/domain/night/desk/reading/reads-left.ts';
import { aNightBundle } from './desk-night.ts';

const bundle = aNightBundle();
const planned = bundle.cues.find(({ moment }) => moment === 'welcome')!;

/** The line of the welcome, with so many seconds in its window and so long to read. */
function lineOf(capacitySeconds: number | null, seconds: number, startsText: string | null): string {
  const standings = cueStandings([{ ...planned, seconds }], []);
  const windows = windowsTonight({ cues: [{ ...planned, seconds }], windows: bundle.windows }, standings).map((window) => ({ ...window, capacitySeconds }));
  const startsTexts = new Map<string, string>(startsText === null ? [] : [[planned.cueKey, startsText] as const]);
  const reading = { standings, windows, startsTexts } as Pick<Reading, 'standings' | 'windows' | 'startsTexts'> as Reading;
  return windowLine(reading, cueInHand(reading, [], planned.cueKey)!).text;
}

describe('the line below the title of a cue begins with its time by the clock', () => {
  test.each([
    ['in a window of so many seconds', 1286, 12, '5:21 PM', '5:21 PM · about 12 s · 21:26 min left in: Before the game'],
    ['where it just fits', 12, 12, '5:21 PM', '5:21 PM · about 12 s · 12 s left in: Before the game'],
    ['where it does not fit any more', 11, 12, '5:21 PM', '5:21 PM · does not fit any more · about 12 s · 11 s left in: Before the game'],
    ['where nothing limits the window', null, 12, '5:21 PM', '5:21 PM · about 12 s · Before the game · 0 reads left here'],
    ['without a time', 1286, 12, null, 'about 12 s · 21:26 min left in: Before the game'],
  ])('%s', (_, capacitySeconds, seconds, startsText, expected) => {
    expect(lineOf(capacitySeconds, seconds, startsText)).toBe(expected);
  });
});

import { describe, expect, test } from 'vitest';
import { cueStandings, leftTonight, windowsTonight } from '../../server/domain/night/desk/reading/reads-left.ts';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { readEntry } from '../../server/domain/night/desk/reading/read-entry.ts';
import { windowSeconds } from '../../server/domain/night/desk/reading/seconds-left.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';

const bundle = aNightBundle();
const cueOf = (sponsor: string) => bundle.cues.find((cue) => cue.sponsorName === sponsor && cue.moment !== 'mention')!;
const creamery = cueOf('Snowmelt Creamery');
const read = readEntry(creamery);
const cutShort = readEntry(creamery, { outcome: 'cutShort', reason: 'playResumed' });
const notRead = readEntry(creamery, { outcome: 'notRead', reason: 'noTime' });

function stateAfter(...entries: (NewDeskEntry | number)[]) {
  const log = new DeskLog();
  for (const entry of entries) {
    if (typeof entry === 'number') log.takeBack(log.lines[entry]!.id);
    else log.write(entry);
  }
  return cueStandings(bundle.cues, log.lines).get(creamery.cueKey)!;
}

describe('where a cue stands', () => {
  test.each([
    ['nothing logged', [], 'open', 0],
    ['read', [read], 'read', 1],
    ['cut short', [cutShort], 'cutShort', 0],
    ['not read', [notRead], 'notRead', 0],
    ['not read, then read after all', [notRead, read], 'read', 1],
    ['read, then said not to be read', [read, notRead], 'read', 1],
    ['cut short, then said not to be read', [cutShort, notRead], 'cutShort', 0],
    ['read and taken back', [read, 0], 'open', 0],
    ['read twice, the first taken back', [read, read, 0], 'read', 1],
  ] as const)('%s: %j', (_, entries, state, timesRead) => {
    expect(stateAfter(...entries)).toMatchObject({ state, timesRead, isDoubled: false });
  });

  test('a read that another device logged too is doubled and still one read', () => {
    const [here, there] = [new DeskLog('tablet'), new DeskLog('phone')];
    here.write(read);
    there.write(read);
    const standings = cueStandings(bundle.cues, [...here.lines, ...there.lines]);
    expect(standings.get(creamery.cueKey)).toMatchObject({ state: 'read', isDoubled: true, line: { deviceId: 'tablet' } });
    expect(leftTonight(windowsTonight(bundle, standings)).reads).toBe(leftTonight(windowsTonight(bundle, cueStandings(bundle.cues, []))).reads - 1);
  });

  test('words of the house that are read twice are not doubled', () => {
    const welcome = bundle.cues.find((cue) => cue.moment === 'welcome')!;
    const log = new DeskLog();
    log.write(readEntry(welcome));
    log.write(readEntry(welcome));
    expect(cueStandings(bundle.cues, log.lines).get(welcome.cueKey)).toMatchObject({ isDoubled: false, timesRead: 2 });
  });

  test('a read in another window says where it was read', () => {
    expect(stateAfter(readEntry(creamery, { windowKey: 'postgame' })).movedTo).toBe('postgame');
    expect(stateAfter(readEntry(creamery, { windowKey: creamery.windowKey })).movedTo).toBe(null);
  });
});

describe('what is left tonight', () => {
  const windowsAfter = (...entries: NewDeskEntry[]) => {
    const log = new DeskLog();
    for (const entry of entries) log.write(entry);
    return windowsTonight(bundle, cueStandings(bundle.cues, log.lines));
  };

  test('every window has its reads, and none holds a mention', () => {
    const reads = windowsAfter().map((window) => [window.windowKey, window.readsLeft]);
    expect(reads).toEqual([['pregame', 1], ['timeOut1', 1], ['timeOut2', 1], ['betweenPeriods1', 1], ['halftime', 1], ['betweenPeriods2', 1], ['postgame', 1]]);
  });

  test.each([
    ['nothing logged', [], 7],
    ['one read', [read], 6],
    ['one cut short: a person decides, nothing is left to do', [cutShort], 6],
    ['one not read, with its reason', [notRead], 6],
    ['the house’s own words are no read', [readEntry(bundle.cues[0]!)], 7],
  ] as const)('%s: %j', (_, entries, left) => {
    expect(leftTonight(windowsAfter(...entries)).reads).toBe(left);
  });

  test('a read that waits for a time-out nobody relies on is not among those left, and never behind', () => {
    const uncertain = { ...bundle, windows: bundle.windows.map((window) => (window.windowKey === 'timeOut2' ? { ...window, isReliedOn: false } : window)) };
    expect(leftTonight(windowsTonight(uncertain, cueStandings(bundle.cues, [])))).toMatchObject({ reads: 6, ifItComes: 1 });
  });
});

describe('the seconds left in a window', () => {
  const halftime = { gameId: 'game-1', windowKey: 'halftime', capacitySeconds: 60 };
  const left = (entries: NewDeskEntry[], cueSeconds = 0, capacitySeconds: number | null = 60) => {
    const log = new DeskLog();
    for (const entry of entries) log.write(entry);
    return windowSeconds({ ...halftime, capacitySeconds }, cueStandings(bundle.cues, log.lines).values(), cueSeconds);
  };
  const tire = cueOf('Blue Lantern Tire');

  test.each([
    ['nothing read', [], 60],
    ['its own read', [read], 60 - Math.round(creamery.seconds)],
    ['its own read cut short took its time too', [cutShort], 60 - Math.round(creamery.seconds)],
    ['not read took none', [notRead], 60],
    ['one moved away took its time elsewhere', [readEntry(creamery, { windowKey: 'postgame' })], 60],
    ['one moved here', [readEntry(tire, { windowKey: 'halftime' })], Math.round(60 - tire.seconds)],
    ['doubled took its time once', [read, read], 60 - Math.round(creamery.seconds)],
  ] as const)('%s', (_, entries, seconds) => {
    expect(left([...entries]).leftSeconds).toBeGreaterThanOrEqual(seconds - 1);
    expect(left([...entries]).leftSeconds).toBeLessThanOrEqual(seconds + 1);
  });

  test('the last cue that fits leaves nothing, one second more does not fit', () => {
    expect(left([], 60).afterCueSeconds).toBe(0);
    expect(left([], 61).afterCueSeconds).toBe(-1);
  });

  test('a window without a limit has no seconds to lose', () => {
    expect(left([], 500, null)).toEqual({ leftSeconds: null, afterCueSeconds: null });
  });
});

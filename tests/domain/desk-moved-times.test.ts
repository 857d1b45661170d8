import { describe, expect, test } from 'vitest';
import type { DeskCue, DeskGame, NightBundle } from '../../server/domain/night/desk/bundle.ts';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { HOUSE_WORDS_THAT_WAIT, capacityTonight, orderInShorterWindows, shorterWindows, slidTimes, startsTonight, timesTonight } from '../../server/domain/night/desk/reading/moved-times.ts';
import { cueStandings } from '../../server/domain/night/desk/reading/reads-left.ts';
import { readEntry } from '../../server/domain/night/desk/reading/read-entry.ts';
import { MOVABLE } from '../../server/domain/packet/window-load.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';
import { game, night } from './packet-night.ts';

const bundle = aNightBundle(night({ games: [game({ startsClock: '19:00' })] }));
const start = (clock: string, gameId = 'game-1'): NewDeskEntry => ({ kind: 'timeMoved', gameId, detail: { what: 'start', clock } });
const halftime = (minutes: number): NewDeskEntry => ({ kind: 'timeMoved', gameId: 'game-1', detail: { what: 'halftime', seconds: minutes * 60 } });

function linesOf(...entries: NewDeskEntry[]) {
  const log = new DeskLog();
  for (const entry of entries) log.write(entry);
  return log.lines;
}

describe('tip is now 7:12', () => {
  const jv: DeskGame = { ...bundle.games[0]!, gameId: 'jv', startsClock: '17:30', startsText: '5:30 PM', usualMinutes: 75 };
  const varsity: DeskGame = { ...bundle.games[0]!, startsClock: null, startsText: '20 minutes after the game before, about 7:05 PM', startsAfterMinutes: 20 };
  const texts = (...entries: NewDeskEntry[]) => startsTonight([jv, varsity], timesTonight(linesOf(...entries))).map(({ text }) => text);

  test.each([
    ['nothing said', [], ['5:30 PM', '20 minutes after the game before, about 7:05 PM']],
    ['the second game', [start('19:12')], ['5:30 PM', '7:12 PM']],
    ['the first game takes the second along', [start('17:42', 'jv')], ['5:42 PM', 'about 7:17 PM']],
    ['the first game, then the second', [start('17:42', 'jv'), start('19:12')], ['5:42 PM', '7:12 PM']],
    ['the last word holds', [start('19:12'), start('19:20')], ['5:30 PM', '7:20 PM']],
    ['what is no clock is passed over', [start('25:00')], ['5:30 PM', '20 minutes after the game before, about 7:05 PM']],
  ])('%s', (_, entries, expected) => {
    expect(texts(...entries)).toEqual(expected);
  });

  test('the clock-back times of the cues before the game slide by as much', () => {
    const welcome = bundle.cues.find((cue) => cue.moment === 'welcome')!;
    expect(welcome.startsText).toBe('6:35 PM');
    expect(slidTimes(bundle, timesTonight(linesOf(start('19:12')))).get(welcome.cueKey)).toBe('6:47 PM');
    expect(slidTimes(bundle, timesTonight([])).get(welcome.cueKey)).toBe('6:35 PM');
  });

  test('a move that is taken back never was', () => {
    const log = new DeskLog();
    log.takeBack(log.write(start('19:12')).id);
    expect(timesTonight(log.lines).startsClocks.size).toBe(0);
  });

  test('an earlier start leaves so much less before the game', () => {
    const capacity = (...entries: NewDeskEntry[]) => capacityTonight(bundle, timesTonight(linesOf(...entries)))('game-1', 'pregame');
    expect([capacity(), capacity(start('18:50')), capacity(start('19:12'))]).toEqual([23 * 60, 13 * 60, 35 * 60]);
  });
});

describe('halftime is now so many minutes', () => {
  const capacity = (minutes: number) => capacityTonight(bundle, timesTonight(linesOf(halftime(minutes))))('game-1', 'halftime');

  test('the notice to the teams three minutes before its end is taken off', () => {
    // NFHS 5-5-1; IAABO Board 36 timing card
    expect([capacity(10), capacity(15), capacity(3), capacity(2)]).toEqual([420, 720, 0, 0]);
  });

  const cue = (code: string, priority: number, seconds: number, extra: Partial<DeskCue> = {}): DeskCue => ({
    ...bundle.cues.find((one) => one.windowKey === 'halftime' && one.isSponsored)!, code, number: Number(code.slice(1)), cueKey: code, priority, seconds, ...extra,
  });
  const cues = [
    cue('H1', 2, 20, { isSponsored: false, moment: 'halftime' }), cue('H2', 3, 40), cue('H3', 2, 60, { isSponsored: false, moment: 'recognition' }), cue('H4', 1, 60), cue('H5', 2, 30),
  ];
  const full: NightBundle = { ...bundle, cues, windows: bundle.windows.map((window) => (window.windowKey === 'halftime' ? { ...window, capacitySeconds: 420 } : window)) };
  // What is left of halftime after the three minutes.
  const shortened = (seconds: number, ...entries: NewDeskEntry[]) => {
    const lines = linesOf({ kind: 'timeMoved', gameId: 'game-1', detail: { what: 'halftime', seconds: seconds + 180 } }, ...entries);
    const [window] = shorterWindows(full, cueStandings(cues, lines), timesTonight(lines));
    return window && { stays: window.stays.map(({ code }) => code), out: window.fallsOut.map(({ code }) => code) };
  };

  test.each([
    ['as long as planned', 420, undefined],
    ['longer', 600, undefined],
    ['room for all: the reads go by priority, the house keeps its places', 210, { stays: ['H1', 'H4', 'H3', 'H5', 'H2'], out: [] }],
    ['a second too few: the least goes', 209, { stays: ['H1', 'H3', 'H4', 'H5'], out: ['H2'] }],
    ['room for the first two, and for a short one behind the long one that has none', 110, { stays: ['H1', 'H4', 'H5'], out: ['H3', 'H2'] }],
    ['the house’s own words that belong to the window stay to the last', 20, { stays: ['H1'], out: ['H4', 'H3', 'H5', 'H2'] }],
  ])('%s', (_, seconds, expected) => {
    expect(shortened(seconds)).toEqual(expected);
  });

  describe('the order in the window once it is shorter', () => {
    const ofNight = { ...full, cues };
    const shorter: NewDeskEntry = { kind: 'timeMoved', gameId: 'game-1', detail: { what: 'halftime', seconds: 209 + 180 } };
    const read = (place: number) => readEntry(cues[place]!);
    test.each([
      ['as it is ranked', [shorter], 'H1 H3 H4 H5 H2'],
      ['the same when something out of order is logged', [shorter, read(4)], 'H1 H3 H4 H5 H2'],
      ['the same when what has no room is logged', [shorter, read(1)], 'H1 H3 H4 H5 H2'],
      ['what was logged before it stands first', [read(4), shorter, read(2)], 'H5 H1 H3 H4 H2'],
      ['ranked again when it gets shorter still', [shorter, read(4), { ...shorter, detail: { what: 'halftime', seconds: 380 } }], 'H5 H1 H3 H4 H2'],
    ])('%s', (_, entries, expected) => {
      expect(orderInShorterWindows(ofNight, linesOf(...entries)).get('game-1 halftime')?.join(' ')).toBe(expected);
    });

    test('a move taken back ranks nothing', () => {
      const log = new DeskLog();
      log.takeBack(log.write(shorter).id);
      expect(orderInShorterWindows(ofNight, log.lines).size).toBe(0);
    });
  });

  test('what was read already has had its time', () => {
    expect(shortened(209, readEntry(cues[3]!))).toEqual({ stays: ['H1', 'H3', 'H5'], out: ['H2'] });
  });
});

test('the words of the house that wait are those the packet moves first', () => {
  expect([...HOUSE_WORDS_THAT_WAIT]).toEqual([...MOVABLE]);
});

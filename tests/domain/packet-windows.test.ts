import { describe, expect, test } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import type { HonoursForPacket, NightForPacket, PacketSettings, PlacementForPacket } from '../../server/domain/packet/night-for-packet.ts';
import type { Cue, Packet, WindowLoad } from '../../server/domain/packet/packet.ts';
import { cueToMove } from '../../server/domain/packet/window-load.ts';
import { game, night, placement, render, readinessOf } from './packet-night.ts';

const composed = (of: NightForPacket): Packet => composePacket(of, DEFAULT_SCRIPTS, render);
const settings = (extra: Partial<PacketSettings>): Partial<NightForPacket> => ({ settings: { ...DEFAULT_PACKET_SETTINGS, ...extra } });
const windowOf = (packet: Packet, windowKey: string, gameId = 'game-1'): WindowLoad => packet.windows.find((one) => one.windowKey === windowKey && one.gameId === gameId)!;

/** Words that take a number of seconds by themselves. */
const seconds = (count: number): string => `[[pause ${count - 1}]] Yes.`;
const read = (windowKey: string, place: number, count: number, extra: Partial<PlacementForPacket> = {}): PlacementForPacket => {
  const window = windowKey.startsWith('timeOut') ? 'timeout' : windowKey.startsWith('between') ? 'betweenPeriods' : (windowKey as 'halftime');
  return placement('game-1', window, place, `Sponsor ${windowKey} ${place}`, { windowKey, cueKey: `game:game-1/${windowKey}/${place}`, copyText: seconds(count), ...extra });
};
const withReads = (placements: readonly PlacementForPacket[], extra: Partial<NightForPacket> = {}, sport = 'basketball'): Packet => composed(night({ games: [game({ sport, placements, mentions: [] })], ...extra }));

describe('a window', () => {
  // NFHS Basketball Rules 3-3-1a and 5-12: sixty seconds less the warning horn fifteen seconds before the end.
  test.each([
    ['of 45 seconds holds 45', 45, 0, null],
    ['does not hold 46, and says which cue to move', 46, 1, 'Sponsor timeOut1 1'],
  ])('%s', (_, count, over, move) => {
    const packet = withReads([read('timeOut1', 1, count)]);
    const window = windowOf(packet, 'timeOut1');
    expect([window.filledSeconds, window.capacitySeconds, window.overSeconds]).toEqual([count, 45, over]);
    expect(packet.cues.find(({ number }) => number === window.moveCueNumber)?.sponsorName ?? null).toBe(move);
  });

  // NFHS Basketball Rule 5-5-1: one minute between quarters; the score is read in every one of them.
  test('between quarters counts the score in, though it is one cue', () => {
    const packet = withReads([read('betweenPeriods1', 1, 30), read('betweenPeriods2', 1, 20)]);
    const score = packet.cues.find(({ moment }) => moment === 'periodScore')!;
    expect(windowOf(packet, 'betweenPeriods1').filledSeconds).toBe(30 + score.seconds);
    expect(windowOf(packet, 'betweenPeriods2').filledSeconds).toBe(20 + score.seconds);
    expect(windowOf(packet, 'betweenPeriods2')).toMatchObject({ title: 'After the third quarter', mayNotHappen: false, isReliedOn: true });
  });

  test('that has to be mended is the first thing to mend, one that may not come is worth knowing', () => {
    const grade = (windowKey: string) => readinessOf(withReads([read(windowKey, 1, 60)])).find(({ code }) => code === 'window-overfull')?.grade;
    expect([grade('betweenPeriods1'), grade('timeOut1')]).toEqual(['mustFix', 'worthKnowing']);
    const line = readinessOf(withReads([read('timeOut1', 1, 60)])).find(({ code }) => code === 'window-overfull');
    expect(line?.sentence).toBe('Time-out 1: 60 seconds to read and 45 to read them in, 15 too many. Move T1, Sponsor timeOut1 1.');
  });
});

describe('the cue to move', () => {
  const cue = (number: number, length: number, isSponsored = true, moment: Cue['moment'] = 'sponsorRead') => ({ number, seconds: length, isSponsored, moment }) as Cue;
  const priority = (of: Record<number, number>) => (one: Cue) => of[one.number] ?? 2;

  test.each<[string, Cue[], number, Record<number, number>, number | null]>([
    ['is the shortest that mends it', [cue(1, 20), cue(2, 10), cue(3, 12)], 10, {}, 2],
    ['is the next longer where the shortest is one second short', [cue(1, 20), cue(2, 10), cue(3, 12)], 11, {}, 3],
    ['is of the least priority', [cue(1, 20), cue(2, 30)], 5, { 2: 3 }, 2],
    ['is of the next priority where the least cannot mend it', [cue(1, 20), cue(2, 4)], 5, { 2: 3 }, 1],
    ['is the longest of the least where none mends it alone', [cue(1, 20), cue(2, 4), cue(3, 6)], 50, { 2: 3, 3: 3 }, 3],
    ['is a sponsor’s before a script', [cue(1, 20, false, 'concession'), cue(2, 20)], 5, {}, 2],
    ['is a script where no sponsor is heard', [cue(1, 20, false, 'conduct'), cue(2, 20, false, 'anthem')], 5, {}, 1],
    ['is none where all of it has to be read', [cue(1, 20, false, 'anthem'), cue(2, 20, false, 'mustCarryPregame')], 5, {}, null],
  ])('%s', (_, cues, over, priorities, wanted) => {
    expect(cueToMove(cues, over, priority(priorities))?.number ?? null).toBe(wanted);
  });
});

describe('windows that may not come', () => {
  const fourTimeOuts = [1, 2, 3, 4].map((number) => read(`timeOut${number}`, 1, 10, { priority: number === 4 ? 1 : 2 }));

  test.each([
    ['a usual game’s, where nothing is said', null, []],
    ['four of them', 4, []],
    ['three of them', 3, ['T4']],
    ['one of them, the first priority first in line', 1, ['T4', 'T2', 'T3']],
    ['none of them', 0, ['T4', 'T1', 'T2', 'T3']],
  ])('carry what a department relies on: %s', (_, timeOutsReliedOn, inLine) => {
    const packet = withReads(fourTimeOuts, settings({ timeOutsReliedOn }));
    expect(packet.nextTimeOut).toEqual(inLine);
    for (const window of packet.windows.filter(({ windowKey }) => windowKey.startsWith('timeOut'))) {
      expect(window.cueNumbers.length, window.windowKey).toBe(window.isReliedOn ? 1 : 0);
      expect(window.mayNotHappen).toBe(true);
    }
    expect(packet.cues.filter(({ window }) => window === 'timeout')).toHaveLength(4);
  });

  // Best of five: a fourth and a fifth set may not be played.
  test('a read before a fourth set waits in line, one before the third does not', () => {
    const packet = withReads([read('betweenPeriods2', 1, 10), read('betweenPeriods3', 1, 10)], {}, 'volleyball');
    expect(packet.nextTimeOut).toEqual([packet.cues.find(({ windowKey, isSponsored }) => windowKey === 'betweenPeriods3' && isSponsored)?.code]);
    expect(windowOf(packet, 'betweenPeriods3')).toMatchObject({ mayNotHappen: true, isReliedOn: false });
  });

  test('of two games wait game by game', () => {
    const games = ['game-1', 'game-2'].map((gameId) => game({ gameId, mentions: [], placements: [placement(gameId, 'timeout', 3, 'Blue Lantern Tire', { windowKey: 'timeOut3' })] }));
    expect(composed(night({ games, ...settings({ timeOutsReliedOn: 2 }) })).nextTimeOut).toEqual(['T1', '2-T1']);
  });
});

describe('halftime', () => {
  // NFHS Basketball Rule 5-5-1: ten minutes; longer for special activities when the visitors are told before the start.
  test.each([
    ['of ten minutes says nothing', 600, null],
    ['of twelve says to tell the visitors', 720, 'Halftime is 12 minutes tonight, not 10: tell the visitors before the start.'],
    ['of sixteen says that the rules do not allow it', 960, 'Halftime is 16 minutes tonight, not 10: tell the visitors before the start. The rules allow no more than 15.'],
  ])('%s', (_, halftimeSeconds, sentence) => {
    const packet = composed(night(settings({ halftimeSeconds })));
    expect(packet.cues.filter(({ moment }) => moment === 'welcome' || moment === 'halftime').map(({ caution }) => caution)).toEqual([sentence, sentence]);
    expect(readinessOf(packet).find(({ code }) => code.startsWith('halftime-'))?.sentence ?? null).toBe(sentence);
  });

  test('is longer only in the game the night is for', () => {
    const games = [game({ gameId: 'game-1', level: 'junior varsity' }), game({ gameId: 'game-2' })];
    const packet = composed(night({ games, ...settings({ halftimeSeconds: 900 }) }));
    expect(windowOf(packet, 'halftime', 'game-2').capacitySeconds! - windowOf(packet, 'halftime', 'game-1').capacitySeconds!).toBe(300);
    expect(packet.cues.filter(({ moment }) => moment === 'halftime').map(({ caution }) => caution !== null)).toEqual([false, true]);
  });

  test('is too short for fourteen seniors at thirty seconds, and the list is what to move', () => {
    const students = Array.from({ length: 14 }, (_, place) => ({ playerId: String(place), name: `Senior ${place}`, sayAs: null, announce: 'name' as const, escorts: null, line: null }));
    const list: HonoursForPacket = { honoursListId: 'list-1', title: 'Senior night', kind: 'seniors', window: 'halftime', secondsEach: 30, openingText: 'Our seniors.', students };
    const packet = withReads([], { honours: [list] });
    const window = windowOf(packet, 'halftime');
    expect(window.overSeconds).toBeGreaterThan(0);
    expect(packet.cues.find(({ number }) => number === window.moveCueNumber)?.moment).toBe('honours');
    const before = withReads([], { honours: [{ ...list, window: 'pregame', secondsEach: 20 }] });
    const empty = withReads([]);
    expect(windowOf(before, 'pregame').filledSeconds - windowOf(empty, 'pregame').filledSeconds).toBeGreaterThanOrEqual(280);
    expect(windowOf(before, 'pregame')).toMatchObject({ capacitySeconds: 1380, overSeconds: 0 });
  });
});

test('every window of every game is there once, in the order of the night', () => {
  expect(composed(night()).windows.map(({ windowKey }) => windowKey)).toEqual([
    'pregame', 'timeOut1', 'timeOut2', 'timeOut3', 'timeOut4', 'betweenPeriods1', 'halftime', 'betweenPeriods2', 'postgame',
  ]);
  const windows = composed(night({ games: [game(), game({ gameId: 'game-2', sport: 'soccer', startsAfterMinutes: 20, placements: [], mentions: [] })] })).windows;
  expect(windows.filter(({ gameId }) => gameId === 'game-2').map(({ windowKey, capacitySeconds }) => [windowKey, capacitySeconds])).toEqual([['pregame', 1080], ['halftime', 480], ['postgame', null]]);
});

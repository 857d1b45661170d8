import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { DeskLine, NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { foldLine, sheetOf } from '../../server/domain/night/desk/sheet/fold-line.ts';
import { periodName, periodNumber } from '../../server/domain/night/desk/sheet/period.ts';
import { SheetKeeper } from '../../server/domain/night/desk/sheet/sheet-keeper.ts';
import { currentPeriod, emptySheet, isCoachDisqualified, isDisqualified, isOver, isSetPlayedOut, setsWon } from '../../server/domain/night/desk/sheet/table-sheet.ts';
import { teamFoulsOf } from '../../server/domain/night/desk/sheet/team-fouls.ts';
import { timeOutsLeft } from '../../server/domain/night/desk/sheet/time-outs.ts';
import { standing } from '../../server/domain/night/take-back.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import { aNightBundle, DeskLog } from './desk-night.ts';

const game = aNightBundle().games[0]!;
const byQuarters = profileFor('basketball', 2026);
const byHalves = profileFor('basketball', 2022);
const [HERONS, KESTRELS] = ['team-herons', 'team-kestrels'];

const Q = (period: number): string => periodName(byQuarters, period);
const foul = (period: number, playerNumber: string | null = '12', detail: Record<string, unknown> | null = null, teamId = HERONS): NewDeskEntry =>
  ({ kind: 'foul', teamId, playerNumber, period: Q(period), detail });
const times = (count: number, entry: NewDeskEntry): NewDeskEntry[] => Array.from({ length: count }, () => entry);
const logOf = (...entries: NewDeskEntry[]): DeskLine[] => entries.reduce((log, entry) => (log.write(entry), log), new DeskLog()).lines;
const sheet = (entries: NewDeskEntry[], rules = byQuarters) => sheetOf(game, rules, logOf(...entries));

/** What each foul of the Herons earned, in order. */
function awards(entries: NewDeskEntry[], rules = byQuarters): string[] {
  let now = emptySheet(game, rules);
  return logOf(...entries).map((line) => {
    now = foldLine(now, line);
    return `${periodNumber(rules, line.period)}:${now.lastFoul!.teamFouls}:${now.lastFoul!.award}`;
  });
}

describe('team fouls and what is shot', () => {
  // CHECKS 1.3, foul-sheet vectors: NFHS 4-8-1 (old, B-20) half count; from 2023-24 (B-21) quarter count.
  test.each([
    [1, '1:none', '1:none'], [4, '4:none', '4:none'], [5, '5:none', '5:two'], [6, '6:none', '6:two'],
    [7, '7:oneAndOne', '7:two'], [9, '9:oneAndOne', '9:two'], [10, '10:two', '10:two'],
  ])('team foul %i of the first quarter earns %s by halves and %s by quarters', (count, halves, quarters) => {
    expect(awards(times(count, foul(1)), byHalves).at(-1)).toBe(`1:${halves}`);
    expect(awards(times(count, foul(1))).at(-1)).toBe(`1:${quarters}`);
  });

  // CHECKS 1.3: fouls by quarter 4, 4, 6, 3.
  const evening = [...times(4, foul(1)), ...times(4, foul(2)), ...times(6, foul(3)), ...times(3, foul(4))];
  test('four, four, six and three fouls earn two shots twice by quarters, five one-and-ones by halves', () => {
    expect(awards(evening).filter((award) => !award.endsWith('none'))).toEqual(['3:5:two', '3:6:two']);
    expect(awards(evening, byHalves).filter((award) => !award.endsWith('none'))).toEqual(['2:7:oneAndOne', '2:8:oneAndOne', '4:7:oneAndOne', '4:8:oneAndOne', '4:9:oneAndOne']);
  });

  // CHECKS B-07: extra periods extend the fourth quarter (NFHS 5-7-3).
  test('after four fouls in the fourth quarter the first of overtime is the fifth, and the second overtime goes on', () => {
    expect(awards([...times(4, foul(4)), foul(5), foul(6)]).slice(-2)).toEqual(['5:5:two', '6:6:two']);
    expect(awards([...times(3, foul(4)), foul(5)]).at(-1)).toBe('5:4:none');
    expect(awards([...times(6, foul(3)), foul(5)], byHalves).at(-1)).toBe('5:7:oneAndOne');
  });

  // CHECKS B-21: counts begin anew at the end of each quarter.
  test('the next quarter begins without team fouls, and the sheet says what the next foul earns', () => {
    const state = (entries: NewDeskEntry[]) => teamFoulsOf(sheet(entries), sheet(entries).visitors);
    expect(state(times(3, foul(1)))).toMatchObject({ count: 3, nextEarns: 'none', bonusFrom: 5 });
    expect(state(times(4, foul(1)))).toMatchObject({ count: 4, nextEarns: 'two' });
    expect(state([...times(4, foul(1)), { kind: 'periodEnd', period: Q(1) }])).toMatchObject({ count: 0, nextEarns: 'none' });
  });

  // CHECKS B-26, from memory: a foul in control of the ball counts for the team and earns nothing.
  test('a foul by a player in control of the ball counts and earns no shots', () => {
    expect(awards([...times(4, foul(1)), foul(1, '12', { foul: 'control' }), foul(1)])).toEqual(['1:1:none', '1:2:none', '1:3:none', '1:4:none', '1:5:none', '1:6:two']);
  });

  // From memory: a technical foul earns two free throws whatever the count.
  test('a technical foul is a team foul and earns two', () => {
    expect(awards([foul(1, '12', { foul: 'technical' }), foul(1, null, { foul: 'bench' })])).toEqual(['1:1:two', '1:2:two']);
  });
});

describe('disqualification', () => {
  const player = (entries: NewDeskEntry[]) => sheet(entries).visitors.players['12'];

  // CHECKS B-24: five fouls, personal and technical together, or two technical ones (IAABO Board 36 scorer card; Case 10.6.3).
  test.each([
    [4, 0, false], [5, 0, true], [3, 1, false], [4, 1, true], [0, 1, false], [0, 2, true],
  ])('%i personal and %i technical fouls: out of the game %s', (personal, technical, isOut) => {
    const entries = [...times(personal, foul(1)), ...times(technical, foul(2, '12', { foul: 'technical' }))];
    expect(isDisqualified(byQuarters, player(entries))).toBe(isOut);
    expect(sheet(entries).lastFoul!.disqualifies).toBe(isOut);
  });

  test('a sixth foul is kept and does not disqualify a second time', () => {
    expect(sheet(times(6, foul(1))).lastFoul).toMatchObject({ playerFouls: 6, disqualifies: false });
  });

  // CHECKS B-25: two direct technicals, or three direct and indirect together.
  test.each([
    [1, 0, false], [2, 0, true], [1, 1, false], [1, 2, true], [0, 2, false], [0, 3, true],
  ])('the head coach with %i direct and %i indirect technical fouls must leave: %s', (direct, indirect, isOut) => {
    const entries = [...times(direct, foul(1, null, { foul: 'coach' })), ...times(indirect, foul(1, null, { foul: 'bench' }))];
    expect(isCoachDisqualified(byQuarters, sheet(entries).visitors)).toBe(isOut);
  });
});

describe('time-outs left', () => {
  const timeOut = (period: number, name: string, clock: string | null = null, teamId = HERONS): NewDeskEntry => ({ kind: 'timeOut', teamId, period: Q(period), clock, detail: { timeOut: name } });
  const left = (entries: NewDeskEntry[], rules = byQuarters) => timeOutsLeft(sheet(entries, rules), sheet(entries, rules).visitors).map(({ name, left: still, over }) => `${name} ${still}${over > 0 ? ` over ${over}` : ''}`);
  const end = (period: number): NewDeskEntry => ({ kind: 'periodEnd', period: Q(period) });

  // CHECKS B-11: three of sixty seconds and two of thirty (NFHS 5-12). B-13: a state may give fewer (NFHS 5-11-1 Note).
  test('a team begins with three full ones and two of thirty seconds; one too many is kept and marked', () => {
    expect(left([])).toEqual(['full 3', 'thirty 2']);
    expect(left([timeOut(1, 'full'), timeOut(2, 'thirty')])).toEqual(['full 2', 'thirty 1']);
    expect(left(times(4, timeOut(1, 'full')))).toEqual(['full 0 over 1', 'thirty 2']);
    const fewer = { ...byQuarters, timeOuts: byQuarters.timeOuts.map((rule) => ({ ...rule, perTeam: 1 })) };
    expect(left([], fewer)).toEqual(['full 1', 'thirty 1']);
  });

  // CHECKS B-12: each extra period adds one of sixty seconds to what is left (IAABO Board 36).
  test('overtime adds one full time-out to what is left, and so does the next', () => {
    const regulation = [timeOut(1, 'full'), timeOut(2, 'full'), timeOut(3, 'thirty'), end(1), end(2), end(3), end(4)];
    expect(left(regulation)).toEqual(['full 2', 'thirty 1']);
    expect(left([...regulation, timeOut(5, 'full'), end(5)])).toEqual(['full 2', 'thirty 1']);
    expect(left([...times(3, timeOut(1, 'full')), end(4)])).toEqual(['full 1', 'thirty 2']);
  });

  // CHECKS B-14: none follows another once time has run out in the last period or an extra one (NFHS Case 5.11.7 Situation A).
  test.each([
    [[timeOut(4, 'full', '0:00'), timeOut(4, 'full', '0:00', KESTRELS)], true],
    [[timeOut(4, 'full', '0:01'), timeOut(4, 'full', '0:01', KESTRELS)], false],
    [[timeOut(3, 'full', '0:00'), timeOut(3, 'full', '0:00', KESTRELS)], false],
    [[timeOut(4, 'full', '0:00'), timeOut(5, 'full', '3:10', KESTRELS)], false],
    [[timeOut(5, 'full', '0:00'), timeOut(5, 'thirty', '0:00')], true],
  ])('time-outs in succession %#: %s', (entries, isMarked) => {
    expect(sheet(entries).timeOutsWereSuccessive).toBe(isMarked);
  });

  // CHECKS 1.7: football three a half and one in each extra period, volleyball two a set (NAC 386.750).
  test('football gives three a half and one in overtime, volleyball two a set', () => {
    const football = profileFor('football', 2026);
    expect(left(times(2, timeOut(1, 'full')), football)).toEqual(['full 1']);
    expect(left([...times(2, timeOut(1, 'full')), end(2)], football)).toEqual(['full 3']);
    expect(left([...times(2, timeOut(3, 'full')), end(4)], football)).toEqual(['full 1']);
    const volleyball = profileFor('volleyball', 2026);
    const inSet = (set: number): NewDeskEntry => ({ kind: 'timeOut', teamId: HERONS, period: periodName(volleyball, set) });
    expect(left([inSet(1), inSet(1)], volleyball)).toEqual(['full 0']);
    expect(left([inSet(1), inSet(1), { kind: 'periodEnd', period: '1st set' }], volleyball)).toEqual(['full 2']);
  });
});

// CHECKS B-04 to B-10: NFHS 5-5-1, 5-7, 3-3-1a; IAABO Board 36.
test('breaks, warnings and overtime stand in the profile as published', () => {
  const halftime = byQuarters.breaks.find((pause) => pause.halftime)!;
  expect([halftime.seconds, halftime.longestSeconds, halftime.warningSeconds]).toEqual([600, 900, 180]);
  expect([byQuarters.extraPeriodSeconds, byQuarters.breaks[0]!.warningSeconds, byQuarters.timeOuts[0]!.warningSeconds]).toEqual([240, 15, 15]);
});

describe('the score', () => {
  const made = (period: number, what: string, points: number, teamId = KESTRELS, playerNumber: string | null = '12'): NewDeskEntry =>
    ({ kind: 'basket', teamId, playerNumber, period: Q(period), detail: { what, points } });

  // CHECKS B-30: two, three from behind the arc, one for a free throw (NFHS 5-2-1, 5-2-2). B-31: an own basket is no player's.
  test('baskets add up by period, by player and in all', () => {
    const now = sheet([made(1, 'fieldGoal', 2), made(1, 'threePointer', 3), made(2, 'freeThrow', 1), made(2, 'fieldGoal', 2, KESTRELS, null), made(2, 'fieldGoal', 2, HERONS)]);
    expect([now.home.points, now.home.total, now.home.players['12']?.points, now.visitors.points]).toEqual([[5, 3], 8, 6, [0, 2]]);
  });

  // CHECKS 1.7; touchdown and the rest from memory.
  test.each([
    ['football', 'touchdown', 6], ['football', 'tryByKick', 1], ['football', 'tryByRunOrPass', 2], ['football', 'fieldGoal', 3], ['football', 'safety', 2],
    ['soccer', 'goal', 1], ['baseball', 'run', 1], ['baseball', 'hit', 0], ['softball', 'run', 1], ['volleyball', 'point', 1],
  ] as const)('in %s a %s is worth %i', (sport, what, points) => {
    const now = sheet([{ kind: 'score', teamId: KESTRELS, detail: { what } }], profileFor(sport, 2026));
    expect([now.home.total, now.home.counts[what]]).toEqual([points, 1]);
  });

  // CHECKS 1.7: sets to 25, the fifth to 15, two ahead, no cap; three sets win.
  test.each([
    [1, 24, 23, false], [1, 25, 23, true], [1, 25, 24, false], [1, 31, 29, true], [5, 15, 13, true], [5, 15, 14, false], [4, 15, 3, false],
  ])('set %i at %i to %i is played out: %s', (set, ours, theirs, isOut) => {
    const volleyball = profileFor('volleyball', 2026);
    const point = (teamId: string): NewDeskEntry => ({ kind: 'score', teamId, period: periodName(volleyball, set), detail: { what: 'point' } });
    expect(isSetPlayedOut(sheet([...times(ours, point(KESTRELS)), ...times(theirs, point(HERONS))], volleyball), set)).toBe(isOut);
  });

  test('sets are won by who is ahead at their end, and the third decides the match', () => {
    const volleyball = profileFor('volleyball', 2026);
    const set = (number: number): NewDeskEntry[] => [
      { kind: 'score', teamId: KESTRELS, period: periodName(volleyball, number), detail: { what: 'point', points: 25 } }, { kind: 'periodEnd', period: periodName(volleyball, number) },
    ];
    expect(isOver(sheet([1, 2].flatMap(set), volleyball))).toBe(false);
    const match = sheet([1, 2, 3].flatMap(set), volleyball);
    expect([setsWon(match, 'home'), setsWon(match, 'visitors'), isOver(match), currentPeriod(match)]).toEqual([3, 0, true, 3]);
  });

  // Team points of a dual meet, from memory: decision 3, major 4, technical fall 5, fall, forfeit, default, disqualification 6.
  test.each([
    ['decision', 3], ['majorDecision', 4], ['technicalFall', 5], ['fall', 6], ['forfeit', 6], ['default', 6], ['disqualification', 6],
  ])('a bout won by %s gives the team %i', (how, points) => {
    const wrestling = profileFor('wrestling', 2026);
    const bout: NewDeskEntry = { kind: 'bout', teamId: KESTRELS, detail: { weightClass: '126', how } };
    expect(sheet([bout], wrestling).home.total).toBe(points);
    const corrected = sheet([bout, { ...bout, teamId: HERONS }], wrestling);
    expect([corrected.home.total, corrected.visitors.total, corrected.bouts['126']?.winnerTeamId]).toEqual([0, points, HERONS]);
    expect(sheet([{ kind: 'bout', detail: { weightClass: '126', how: 'doubleForfeit' } }], wrestling).bouts['126']).toMatchObject({ winnerTeamId: null, points: 0 });
  });
});

describe('periods', () => {
  test.each([
    ['basketball', 1, '1st quarter'], ['basketball', 5, 'overtime'], ['basketball', 6, 'overtime 2'], ['soccer', 2, '2nd half'],
    ['volleyball', 5, '5th set'], ['baseball', 3, '3rd inning'], ['baseball', 11, '11th inning'],
  ] as const)('in %s period %i is the %s', (sport, number, name) => {
    const rules = profileFor(sport, 2026);
    expect([periodName(rules, number), periodNumber(rules, name)]).toEqual([name, number]);
  });

  test('what names no period is none, a bare number is one', () => {
    expect([periodNumber(byQuarters, null), periodNumber(byQuarters, 'later'), periodNumber(byQuarters, '2')]).toEqual([null, null, 2]);
  });

  test('the game goes on with the next period, with overtime when it is tied, and is over when it is not', () => {
    const ends = (count: number): NewDeskEntry[] => Array.from({ length: count }, (_, place) => ({ kind: 'periodEnd', period: Q(place + 1) }));
    const basket: NewDeskEntry = { kind: 'basket', teamId: HERONS, playerNumber: '4', period: Q(1), detail: { points: 2 } };
    expect([currentPeriod(sheet(ends(2))), currentPeriod(sheet(ends(4))), isOver(sheet(ends(4)))]).toEqual([3, 5, false]);
    expect([currentPeriod(sheet([basket, ...ends(4)])), isOver(sheet([basket, ...ends(4)]))]).toEqual([4, true]);
    expect(isOver(sheet([basket, ...ends(3)]))).toBe(false);
    const inOvertime: NewDeskEntry = { ...basket, period: 'overtime' };
    expect(isOver(sheet([...ends(4), inOvertime]))).toBe(false);
    expect(isOver(sheet([...ends(4), inOvertime, { kind: 'periodEnd', period: 'overtime' }]))).toBe(true);
  });

  test('the book agrees or differs, period by period, and the latest word holds', () => {
    const book = (period: number, agrees: boolean, words = ''): NewDeskEntry => ({ kind: 'book', period: Q(period), detail: { agrees, words } });
    expect(sheet([book(1, true), book(2, false, 'number 4 has three'), book(2, true)]).book).toEqual({ 1: { agrees: true, words: '' }, 2: { agrees: true, words: '' } });
  });
});

const entry: fc.Arbitrary<NewDeskEntry> = fc.record({
  kind: fc.constantFrom('foul', 'basket', 'timeOut', 'substitution', 'periodEnd', 'book', 'read', 'note', 'happening' as const),
  teamId: fc.constantFrom(HERONS, KESTRELS, null, 'another'), playerNumber: fc.constantFrom('0', '00', '12', null), period: fc.constantFrom(...[1, 2, 3, 4, 5, 6].map(Q), null),
  clock: fc.constantFrom('0:00', '3:10', null), gameId: fc.constantFrom('game-1', 'game-1', 'game-2'),
  detail: fc.constantFrom(null, { foul: 'technical' }, { foul: 'control' }, { points: 3 }, { timeOut: 'thirty' }, { agrees: true }),
});
const step = fc.oneof({ weight: 4, arbitrary: entry }, { weight: 1, arbitrary: fc.nat(60) });

test('any order of taps and of taking back gives the sheet of what stands', () => {
  fc.assert(fc.property(fc.array(step, { maxLength: 80 }), (steps) => {
    const log = new DeskLog();
    const keeper = new SheetKeeper(game, byQuarters);
    for (const one of steps) {
      if (typeof one !== 'number') log.write(one);
      else if (log.lines.length > 0) log.takeBack(log.lines[one % log.lines.length]!.id);
      expect(keeper.of([...log.lines])).toEqual(standing(log.lines).reduce(foldLine, emptySheet(game, byQuarters)));
    }
  }), { numRuns: 200 });
});

test('totals do not depend on the order in which fouls and baskets of a period arrive', () => {
  const counting = entry.filter((one) => one.kind === 'foul' || one.kind === 'basket').map((one) => ({ ...one, period: Q(1) }));
  fc.assert(fc.property(fc.array(counting, { maxLength: 40 }), fc.infiniteStream(fc.nat()), (entries, random) => {
    const lines = logOf(...entries);
    const shuffled = lines.map((line) => ({ line, at: random.next().value })).toSorted((a, b) => a.at - b.at).map(({ line }) => line);
    const [one, other] = [sheetOf(game, byQuarters, lines), sheetOf(game, byQuarters, shuffled)];
    expect([one.visitors, one.home]).toEqual([other.visitors, other.home]);
  }));
});

test('a line that a later one takes back counts for nothing even where the taking back came first', () => {
  const log = new DeskLog();
  log.write({ kind: 'takenBack', takesBackEntryId: 'tablet-2' });
  const keeper = new SheetKeeper(game, byQuarters);
  keeper.of([...log.lines]);
  log.write(foul(1));
  expect(keeper.of([...log.lines]).visitors.teamFouls).toEqual([]);
});

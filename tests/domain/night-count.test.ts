import { describe, expect, test } from 'vitest';
import { whyNotEntry } from '../../server/domain/night/log-entry.ts';
import { countNight, readsToCount } from '../../server/domain/night/reads-to-count.ts';
import { amendmentOf, countedReads, statusAtSignOff, whyNotSignOff } from '../../server/domain/night/sign-off.ts';
import { takenBackIds, whyNotTakeBack } from '../../server/domain/night/take-back.ts';
import { dayOf } from '../../server/domain/day.ts';
import { REFUSALS } from '../../server/domain/refusals.ts';
import { aLog, gameBall } from './night-log.ts';

const outcomes = (log: ReturnType<typeof aLog>, decisions = new Map()): string[] =>
  readsToCount(log, { decisions }).map((read) => `${read.entryId} ${read.outcome}`);

describe('an entry of the log', () => {
  const read = { ...aLog({ id: 'a', ...gameBall })[0]! };
  test.each([
    ['a read with cue, game and outcome', {}, null],
    ['a read without a cue', { cueKey: null }, 'read-without-cue'],
    ['a sponsor read without a game', { gameId: null }, 'read-without-game'],
    ['the house’s own announcement without a game', { gameId: null, commitmentId: null }, null],
    ['a read without an outcome', { outcome: null }, 'read-without-outcome'],
    ['a read not given, without a reason', { outcome: 'notRead' }, 'read-without-reason'],
    ['a read not given, with a reason', { outcome: 'notRead', reason: 'injury' }, null],
    ['a read cut short with a blank reason', { outcome: 'cutShort', reason: '  ' }, 'read-without-reason'],
    ['a note with an outcome', { kind: 'note' }, 'outcome-without-read'],
    ['a happening without a name', { kind: 'happening', outcome: null }, 'happening-unnamed'],
    ['a foul on no team', { kind: 'foul', outcome: null }, 'foul-without-team'],
    ['a taking back of nothing', { kind: 'takenBack', outcome: null }, 'taking-back-nothing'],
  ] as const)('%s: %s', (_, change, refusal) => {
    expect(whyNotEntry({ ...read, ...change })).toBe(refusal);
    if (refusal !== null) expect(REFUSALS[refusal].sentence).toMatch(/\.$/);
  });
});

describe('an entry of a kind', () => {
  const plain = { ...aLog({ id: 'a', kind: 'note' })[0]!, teamId: 'kestrels', playerNumber: '12' };
  test.each([
    ['score', {}, null], ['score', { teamId: null }, 'play-without-team'],
    ['serve', {}, null], ['serve', { teamId: null }, 'play-without-team'],
    ['batter', {}, null], ['batter', { teamId: null }, 'play-without-team'],
    ['basket', { teamId: null }, null],
    ['book', { detail: { agrees: false } }, null], ['book', { detail: { agrees: 'no' } }, 'book-without-answer'], ['book', {}, 'book-without-answer'],
    ['hold', { detail: { state: 'begun', situation: 'weather' } }, null], ['hold', { detail: { state: 'begun', situation: 'hunger' } }, 'hold-without-state'],
    ['hold', { detail: { state: 'ended' } }, null], ['hold', { detail: { state: 'over', situation: 'weather' } }, 'hold-without-state'],
    ['timeMoved', { detail: { what: 'start', clock: '19:12' } }, null], ['timeMoved', { detail: { what: 'start', clock: '7:12 PM' } }, 'moved-without-time'],
    ['timeMoved', { detail: { what: 'halftime', seconds: 600 } }, null], ['timeMoved', { detail: { what: 'halftime', seconds: 3601 } }, 'moved-without-time'],
    ['timeMoved', { detail: { what: 'start', seconds: 600 } }, 'moved-without-time'],
    ['worn', { detail: { name: 'Tamsin Orlebar' } }, null], ['worn', { detail: { name: ' ' } }, 'worn-without-player'],
    ['worn', { detail: { isNotListed: true } }, null], ['worn', { detail: { isNotListed: false } }, 'worn-without-player'],
    ['worn', { detail: { wornInstead: '21' } }, null], ['worn', { playerNumber: null, detail: { name: 'Tamsin Orlebar' } }, 'worn-without-player'],
    ['worn', { teamId: null, detail: { name: 'Tamsin Orlebar' } }, 'worn-without-player'],
    ['request', { detail: { requestKind: 'vehicle' } }, null], ['request', { detail: { requestKind: 'car' } }, 'request-without-kind'],
    ['requestAnswered', { detail: { requestId: 'r', answer: 'read' } }, null], ['requestAnswered', { detail: { requestId: 'r', answer: 'waiting' } }, 'answer-without-request'],
    ['requestAnswered', { detail: { answer: 'read' } }, 'answer-without-request'],
  ] as const)('%s with %j: %s', (kind, change, refusal) => {
    expect(whyNotEntry({ ...plain, kind, ...change })).toBe(refusal);
    if (refusal !== null) expect(REFUSALS[refusal].sentence).toMatch(/\.$/);
  });
});

describe('what counts as a read', () => {
  test('a read given counts once, with its placement and commitment', () => {
    expect(readsToCount(aLog({ id: 'a', ...gameBall }))).toEqual([
      { nightId: 'friday', gameId: 'varsity', cueKey: 'pregame-1', occurrence: 0, placementId: 'place-1', commitmentId: 'gameBall', entryId: 'a', outcome: 'counts' },
    ]);
  });

  test('the same read logged on two devices counts once; the second is kept as double', () => {
    expect(outcomes(aLog({ id: 'a', ...gameBall }, { id: 'b', ...gameBall, deviceId: 'phone' }))).toEqual(['a counts', 'b double']);
  });

  test('the same cue of the next game is another read', () => {
    expect(outcomes(aLog({ id: 'a', ...gameBall, gameId: 'jv' }, { id: 'b', ...gameBall }))).toEqual(['a counts', 'b counts']);
  });

  test('order is by the place in the log, not by the order they are passed in', () => {
    expect(outcomes(aLog({ id: 'a', ...gameBall }, { id: 'b', ...gameBall }).toReversed())).toEqual(['a counts', 'b double']);
  });

  test('a read cut short waits for the director, who counts it or not', () => {
    const log = aLog({ id: 'a', ...gameBall, outcome: 'cutShort', reason: 'playResumed' });
    expect(outcomes(log)).toEqual(['a cutShortOpen']);
    expect(outcomes(log, new Map([['a', 'counts']]))).toEqual(['a counts']);
    expect(outcomes(log, new Map([['a', 'doesNotCount']]))).toEqual(['a cutShortNotCounted']);
  });

  test('cut short and then given in full counts once', () => {
    const log = aLog({ id: 'a', ...gameBall, outcome: 'cutShort', reason: 'playResumed' }, { id: 'b', ...gameBall });
    expect(outcomes(log)).toEqual(['a cutShortOpen', 'b counts']);
    expect(outcomes(log, new Map([['a', 'counts']]))).toEqual(['a counts', 'b double']);
  });

  test('not read and the house’s own announcements never count', () => {
    expect(outcomes(aLog({ id: 'a', ...gameBall, outcome: 'notRead', reason: 'noTime' }, { id: 'b', kind: 'read', outcome: 'given', cueKey: 'welcome' }))).toEqual(['a notRead']);
  });
});

describe('taking back', () => {
  const log = aLog(
    { id: 'a', ...gameBall },
    { id: 'b', ...gameBall, deviceId: 'phone' },
    { id: 'back', kind: 'takenBack', takesBackEntryId: 'a' },
  );

  test('a read taken back does not count, and the double that waits takes its place', () => {
    expect(outcomes(log)).toEqual(['b counts']);
  });

  test.each([
    ['an entry that stands', 'b', 'friday', null],
    ['an entry taken back already', 'a', 'friday', 'entry-taken-back-already'],
    ['a taking back', 'back', 'friday', 'taking-back-stays'],
    ['an entry of another night', 'b', 'saturday', 'unknown-entry'],
    ['an entry that is not there', 'zzz', 'friday', 'unknown-entry'],
  ])('%s: %s on %s gives %s', (_, entryId, nightId, refusal) => {
    expect(whyNotTakeBack(log.find(({ id }) => id === entryId), nightId, takenBackIds(log).has(entryId))).toBe(refusal);
  });
});

describe('sign-off', () => {
  const night = { heldOn: dayOf('2026-12-04'), isSignedOff: false, games: [{ status: 'underWay' }, { status: 'cancelled' }] } as const;
  test('a night is signed off on its day or later, and only once', () => {
    expect(whyNotSignOff(night, dayOf('2026-12-04'))).toBeNull();
    expect(whyNotSignOff(night, dayOf('2026-12-03'))).toBe('night-not-yet-held');
    expect(whyNotSignOff({ ...night, isSignedOff: true }, dayOf('2026-12-05'))).toBe('night-already-signed-off');
  });

  test('a night whose games were all called off has nothing to sign off', () => {
    expect(whyNotSignOff({ ...night, games: [{ status: 'cancelled' }, { status: 'postponed' }] }, dayOf('2026-12-04'))).toBe('night-without-games');
  });

  test('what was logged has been played, a suspended game waits', () => {
    expect([statusAtSignOff('underWay', true), statusAtSignOff('planned', true), statusAtSignOff('planned', false), statusAtSignOff('suspended', true)]).toEqual([
      'played', 'played', 'planned', 'suspended',
    ]);
  });

  const first = aLog({ id: 'a', ...gameBall }, { id: 'c', ...gameBall, cueKey: 'half-1', outcome: 'cutShort', reason: 'playResumed' });
  const claims = countedReads(readsToCount(first));

  test('the first sign-off counts what counts', () => {
    expect(amendmentOf([], readsToCount(first))).toMatchObject({ count: [{ entryId: 'a' }], release: [] });
  });

  test('the same log again amends nothing', () => {
    expect(amendmentOf(claims, readsToCount(first))).toEqual({ count: [], release: [] });
  });

  test('a read taken back the next morning is released, one the director counts is added', () => {
    const later = [...first, ...aLog({ id: 'back', kind: 'takenBack', takesBackEntryId: 'a' }).map((entry) => ({ ...entry, number: 3 }))];
    const amended = amendmentOf(claims, readsToCount(later, { decisions: new Map([['c', 'counts']]) }));
    expect(amended.release.map((claim) => claim.entryId)).toEqual(['a']);
    expect(amended.count.map((read) => read.entryId)).toEqual(['c']);
  });

  test('a double that arrives after sign-off changes nothing', () => {
    const later = aLog({ id: 'a', ...gameBall }, { id: 'b', ...gameBall, deviceId: 'phone' });
    expect(amendmentOf(claims, readsToCount(later))).toEqual({ count: [], release: [] });
    expect(countNight(later).open).toEqual([]);
  });
});

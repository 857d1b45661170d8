import { describe, expect, test } from 'vitest';
import type { LogEntry } from '../../server/domain/night/log-entry.ts';
import type { OccurrenceTerms } from '../../server/domain/night/occurrences.ts';
import { countNight } from '../../server/domain/night/reads-to-count.ts';
import { settledOf, whyNotSettle } from '../../server/domain/night/settle.ts';
import type { Settlement } from '../../server/domain/night/settle.ts';
import { shortfallsOf } from '../../server/domain/night/shortfall.ts';
import { tidyOf } from '../../server/domain/night/tidy.ts';
import { REFUSALS } from '../../server/domain/refusals.ts';
import { aLog, bankShot, mention } from './night-log.ts';

const copperline: OccurrenceTerms = { commitmentId: 'bankShots', happening: 'bankShot', whose: 'ours', severalCountAsOne: false, gameIds: null };
const names = new Map([
  ['gameBall', { sponsorName: 'Juniper & Pike Hardware', readKindName: 'Sponsored game ball' }],
  ['bankShots', { sponsorName: 'Copperline Credit Union', readKindName: 'Bank-shot mention' }],
]);
const planned = [1, 2, 3].map((place) => ({
  placementId: `place-${place}`, gameId: 'varsity', cueKey: `half-${place}`, commitmentId: 'gameBall', windowKey: 'halftime', sponsorName: 'Juniper & Pike Hardware',
  readKindName: 'Sponsored game ball', gameLabel: 'Herons at Kestrels',
}));
const read = (place: number, more: Partial<LogEntry> = {}) =>
  ({ kind: 'read', outcome: 'given', cueKey: `half-${place}`, placementId: `place-${place}`, commitmentId: 'gameBall', ...more }) as const;
const said = (entryId: string, answer: Settlement['answer'], sameAsEntryId: string | null = null): Settlement => ({ entryId, answer, sameAsEntryId });

function tidy(log: LogEntry[], { settlements = [] as Settlement[], status = 'underWay' as 'underWay' | 'cancelled', windowKey = 'halftime' } = {}) {
  const { settled, decisions } = settledOf(settlements);
  const count = countNight(log, { occurrenceTerms: [copperline], ourTeamIds: ['kestrels'], settled, decisions });
  const entries = log.map((entry) => ({ ...entry, windowKey, sentence: `${entry.kind} ${entry.id}.` }));
  return tidyOf({ planned, games: [{ id: 'varsity', status }], entries, count, decisions, commitments: names });
}

describe('what became of the planned reads', () => {
  test.each([
    ['read', aLog({ id: 'a', ...read(1) }), 'read', null],
    ['logged by its cue alone', aLog({ id: 'a', ...read(1, { placementId: null }) }), 'read', null],
    ['cut short and then read', aLog({ id: 'a', ...read(1, { outcome: 'cutShort', reason: 'injury' }) }, { id: 'b', ...read(1) }), 'read', null],
    ['cut short', aLog({ id: 'a', ...read(1, { outcome: 'cutShort', reason: 'playResumed' }) }), 'cutShort', 'cut short, play resumed'],
    ['not read for a reason of the list', aLog({ id: 'a', ...read(1, { outcome: 'notRead', reason: 'noTime' }) }), 'notRead', 'no time'],
    ['not read for a reason of one’s own', aLog({ id: 'a', ...read(1, { outcome: 'notRead', reason: 'other', detail: { words: 'the band played on' } }) }), 'notRead', 'the band played on'],
    ['read and taken back', aLog({ id: 'a', ...read(1) }, { id: 'b', kind: 'takenBack', takesBackEntryId: 'a' }), 'unlogged', 'nothing was logged'],
    ['the next read only', aLog({ id: 'a', ...read(2) }), 'unlogged', 'nothing was logged'],
  ] as const)('%s', (_, log, state, why) => {
    expect(tidy([...log]).planned[0]).toMatchObject({ state, why });
  });

  test('a read given in another window is read', () => {
    expect(tidy(aLog({ id: 'a', ...read(1) }), { windowKey: 'timeOut2' }).planned[0]!.state).toBe('readInAnotherWindow');
  });

  test('a read of a game that was called off is not missed', () => {
    const night = tidy([], { status: 'cancelled' });
    expect([night.planned[0]!.state, night.leftOver, night.tallySentence]).toEqual(['gameOff', [], 'No read was planned.']);
  });

  test.each([
    ['not read', read(1, { outcome: 'notRead', reason: 'gameEnded' })],
    ['cut short', read(1, { outcome: 'cutShort', reason: 'injury' })],
  ] as const)('a read %s in a game that was called off is not missed either', (_, entry) => {
    expect(tidy(aLog({ id: 'a', ...entry }), { status: 'cancelled' })).toMatchObject({ planned: [{ state: 'gameOff' }, {}, {}], leftOver: [] });
  });

  test('the night in one sentence', () => {
    const log = aLog({ id: 'a', ...read(1) }, { id: 'a2', ...read(1), deviceId: 'phone' }, { id: 'b', ...read(2, { outcome: 'cutShort', reason: 'injury' }) }, { id: 's', ...bankShot }, { id: 'm', ...mention }, { id: 'x', ...read(9, { placementId: null }) });
    expect(tidy(log).tallySentence).toBe('3 reads planned: 1 read, 1 cut short, 1 without an entry. 1 read more than planned. 1 mention.');
    expect(tidy(log).leftOver.map((line) => line.sentence)).toEqual([
      'Juniper & Pike Hardware, Sponsored game ball, Herons at Kestrels: cut short, an injury; it does not count.',
      'Juniper & Pike Hardware, Sponsored game ball, Herons at Kestrels: nothing was logged.',
    ]);
  });
});

describe('what a person may settle', () => {
  test('the same cue on two devices counts once and is shown as doubled', () => {
    const night = tidy(aLog({ id: 'a', ...read(1) }, { id: 'b', ...read(1), deviceId: 'phone' }));
    expect(night.doubled).toEqual([{ entryIds: ['a', 'b'], sentence: 'read b. Logged twice, as entries 1 and 2; it counts once.', answer: null, counts: false }]);
  });

  test('a read cut short counts once a person says so', () => {
    const log = aLog({ id: 'a', ...read(1, { outcome: 'cutShort', reason: 'injury' }) });
    expect(tidy(log).cutShort).toMatchObject([{ entryIds: ['a'], answer: null, counts: false }]);
    expect(tidy(log, { settlements: [said('a', 'counts')] })).toMatchObject({ cutShort: [{ answer: 'counts', counts: true }], planned: [{ state: 'cutShortCounts' }, {}, {}] });
    expect(tidy(log, { settlements: [said('a', 'counts'), said('a', 'doesNotCount')] }).cutShort).toMatchObject([{ answer: 'doesNotCount', counts: false }]);
  });

  test('a mention for which nothing happened counts once a person says so', () => {
    const log = aLog({ id: 'm', ...mention });
    expect(tidy(log).withoutHappening).toMatchObject([{ entryIds: ['m'], answer: null, counts: false }]);
    expect(tidy(log, { settlements: [said('m', 'counts')] }).withoutHappening).toMatchObject([{ answer: 'counts', counts: true }]);
  });

  test('a happening whose mention never came is held', () => {
    const log = aLog({ id: 's', ...bankShot }, { id: 's2', ...bankShot, clock: '1:00' }, { id: 'm', ...mention, happeningEntryId: 's2', outcome: 'notRead', reason: 'noTime' });
    expect(tidy(log).held.map((one) => [one.entryIds, one.why])).toEqual([[['s'], 'held, and never read'], [['s2'], 'not read, no time']]);
  });
});

describe('happenings of two devices', () => {
  const two = (clock: string | null) => aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, deviceId: 'phone', clock }, { id: 'm1', ...mention, happeningEntryId: 's1' }, { id: 'm2', ...mention, happeningEntryId: 's2', deviceId: 'phone' });
  const counted = (log: LogEntry[], settlements: Settlement[] = []) => {
    const night = tidy(log, { settlements });
    const { settled } = settledOf(settlements);
    const { reads } = countNight(log, { occurrenceTerms: [copperline], ourTeamIds: ['kestrels'], settled });
    return [reads.filter((one) => one.outcome === 'counts').length, night.questions.map((one) => one.entryIds), night.takenAsOne.map((one) => one.entryIds)];
  };

  test('with clocks eight seconds apart they are one, nine seconds apart two', () => {
    expect(counted(two('5:24'))).toEqual([1, [], [['s1', 's2']]]);
    expect(counted(two('5:23'))).toEqual([2, [], []]);
  });

  test('without a clock a person is asked; the answer settles it', () => {
    expect(counted(two(null))).toEqual([2, [['s1', 's2']], []]);
    expect(counted(two(null), [said('s2', 'sameAs', 's1')])).toEqual([1, [], []]);
    expect(counted(two(null), [said('s1', 'sameAs', 's2')])).toEqual([1, [], []]);
    expect(counted(two(null), [said('s2', 'different')])).toEqual([2, [], []]);
    expect(counted(two(null), [said('s2', 'sameAs', 's1'), said('s2', 'different')])).toEqual([2, [], []]);
  });

  test('two that were taken as one are two where a person says so', () => {
    expect(counted(two('5:30'), [said('s2', 'different')])).toEqual([2, [], []]);
  });

  test('one of two that are the same may be taken back; the shot stays', () => {
    const log = [...two(null), ...aLog({ id: 'back', kind: 'takenBack', takesBackEntryId: 's1' }).map((entry) => ({ ...entry, number: 5 }))];
    expect(counted(log, [said('s2', 'sameAs', 's1')])[0]).toBe(1);
  });

  test('the same as one that is the same as a third is the third', () => {
    expect(settledOf([said('b', 'sameAs', 'a'), said('c', 'sameAs', 'b')]).settled.get('c')).toEqual({ sameAs: 'a' });
  });
});

describe('an answer that cannot be kept', () => {
  const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, deviceId: 'phone' }, { id: 'jv', ...bankShot, gameId: 'jv' }, { id: 'r', ...read(1) },
    { id: 'cut', ...read(2, { outcome: 'cutShort', reason: 'injury' }) }, { id: 'not', ...read(3, { outcome: 'notRead', reason: 'noTime' }) },
    { id: 'bare', ...mention }, { id: 'answers', ...mention, happeningEntryId: 's1' });
  test.each([
    [said('s2', 'sameAs', 's1'), null],
    [said('s2', 'different'), null],
    [said('cut', 'counts'), null],
    [said('bare', 'counts'), null],
    [said('r', 'doesNotCount'), 'settling-what-is-settled'],
    [said('not', 'counts'), 'settling-what-is-settled'],
    [said('answers', 'doesNotCount'), 'settling-what-is-settled'],
    [said('zzz', 'counts'), 'unknown-entry'],
    [said('s2', 'sameAs', 'zzz'), 'unknown-entry'],
    [said('s2', 'counts'), 'settling-no-read'],
    [said('r', 'different'), 'settling-no-happening'],
    [said('s2', 'sameAs'), 'same-as-nothing'],
    [said('s2', 'sameAs', 's2'), 'same-as-itself'],
    [said('s2', 'sameAs', 'jv'), 'same-as-unlike'],
    [said('s2', 'sameAs', 'r'), 'same-as-unlike'],
  ] as const)('%o: %s', (asked, refusal) => {
    expect(whyNotSettle(asked, log, [])).toBe(refusal);
    if (refusal !== null) expect(REFUSALS[refusal].sentence).toMatch(/\.$/);
  });

  test('two entries are not each the same as the other', () => {
    expect(whyNotSettle(said('s1', 'sameAs', 's2'), log, [said('s2', 'sameAs', 's1')])).toBe('same-as-itself');
  });
});

describe('proposed shortfalls', () => {
  const log = aLog({ id: 'a', ...read(1) }, { id: 'b', ...read(2, { outcome: 'notRead', reason: 'noTime' }) });
  const owed = (stillOwed: number | null) => shortfallsOf(tidy(log), new Map([['gameBall', { contractId: 'c', ...names.get('gameBall')!, stillOwed }]])).map((one) => [one.missed, one.why]);

  test('reads that were not given are missed, each reason once', () => {
    expect(owed(null)).toEqual([[2, 'no time; nothing was logged']]);
    expect(shortfallsOf(tidy(log), new Map([['gameBall', { contractId: 'c', ...names.get('gameBall')!, stillOwed: 9 }]]))[0]!.sentence).toBe(
      'Juniper & Pike Hardware, Sponsored game ball: 2 reads missed (no time; nothing was logged). They stay owed.',
    );
  });

  test.each([[3, 2], [2, 2], [1, 1]])('with %i still owed, %i are missed', (stillOwed, missed) => {
    expect(owed(stillOwed)[0]![0]).toBe(missed);
  });

  test('where nothing is owed any more, nothing is missed', () => {
    expect(owed(0)).toEqual([]);
  });
});

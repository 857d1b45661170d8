import { describe, expect, test } from 'vitest';
import type { LogEntry } from '../../server/domain/night/log-entry.ts';
import type { OccurrenceTerms } from '../../server/domain/night/occurrences.ts';
import { countNight } from '../../server/domain/night/reads-to-count.ts';
import type { CountingRules } from '../../server/domain/night/reads-to-count.ts';
import { aLog, bankShot, mention } from './night-log.ts';

const copperline: OccurrenceTerms = { commitmentId: 'bankShots', happening: 'bankShot', whose: 'ours', severalCountAsOne: false, gameIds: null };

function night(log: LogEntry[], terms: Partial<OccurrenceTerms> = {}, rules: CountingRules = {}) {
  const count = countNight(log, { occurrenceTerms: [{ ...copperline, ...terms }], ourTeamIds: ['kestrels'], ...rules });
  return {
    reads: count.reads.map((read) => `${read.entryId} ${read.occurrence} ${read.outcome}`),
    shots: count.occurrences.get('bankShots')!.filter((one) => one.stands).length,
    open: count.open.map((question) => question.entryIds),
  };
}

describe('bank shots and their mentions', () => {
  test('each mention answers the shots that wait before it', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 'm1', ...mention }, { id: 's2', ...bankShot, clock: '1:04' }, { id: 'm2', ...mention });
    expect(night(log)).toEqual({ reads: ['m1 1 counts', 'm2 2 counts'], shots: 2, open: [] });
  });

  test('one mention after three shots is three reads, or one where the contract says so', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, clock: '4:00' }, { id: 's3', ...bankShot, clock: '3:10' }, { id: 'm', ...mention });
    expect(night(log).reads).toEqual(['m 1 counts', 'm 2 counts', 'm 3 counts']);
    expect(night(log, { severalCountAsOne: true })).toMatchObject({ reads: ['m 1 counts'], shots: 3 });
  });

  test('a mention that names its shot answers that one', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, clock: '4:00' }, { id: 'm2', ...mention, happeningEntryId: 's2' }, { id: 'm1', ...mention });
    expect(night(log).reads).toEqual(['m2 2 counts', 'm1 1 counts']);
  });

  test('two announcers mention the same shot: one counts, the other is double', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 'm1', ...mention, happeningEntryId: 's1' }, { id: 'm2', ...mention, happeningEntryId: 's1', deviceId: 'phone' });
    expect(night(log).reads).toEqual(['m1 1 counts', 'm2 1 double']);
  });

  test('a mention without a shot waits for a person, who may count it', () => {
    const log = aLog({ id: 'm', ...mention });
    expect(night(log).reads).toEqual(['m 100001 noHappening']);
    expect(night(log, {}, { decisions: new Map([['m', 'counts']]) }).reads).toEqual(['m 100001 counts']);
  });

  test('a mention not read leaves its shot waiting for the next one', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 'm1', ...mention, outcome: 'notRead', reason: 'noTime' }, { id: 'm2', ...mention });
    expect(night(log).reads).toEqual(['m1 0 notRead', 'm2 1 counts']);
  });

  test('a shot of the visitors counts only where both teams’ shots do', () => {
    const log = aLog({ id: 's1', ...bankShot, teamId: 'herons' });
    expect([night(log).shots, night(log, { whose: 'both' }).shots]).toEqual([0, 1]);
  });

  test('shots are numbered game by game, and only in the games of the commitment', () => {
    const log = aLog({ id: 's1', ...bankShot, gameId: 'jv' }, { id: 's2', ...bankShot }, { id: 'm', ...mention });
    expect(night(log)).toMatchObject({ reads: ['m 1 counts'], shots: 2 });
    expect(night(log, { gameIds: ['varsity'] }).shots).toBe(1);
  });
});

describe('one shot logged on two devices', () => {
  test.each([
    ['clocks eight seconds apart', { clock: '5:24' }, 1, 0],
    ['clocks nine seconds apart', { clock: '5:23' }, 2, 0],
    ['another player', { playerNumber: '14' }, 2, 0],
    ['another quarter', { period: '3' }, 2, 0],
    ['no quarter said on one of them', { period: null }, 2, 1],
    ['no clock', { clock: null }, 2, 1],
    ['no player', { playerNumber: null }, 2, 1],
  ] as const)('%s: %s makes %i shots and %i questions', (_, change, shots, questions) => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, deviceId: 'phone', ...change });
    expect(night(log).shots).toBe(shots);
    expect(night(log).open).toHaveLength(questions);
  });

  test('two shots logged on one device are two', () => {
    expect(night(aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot })).shots).toBe(2);
  });

  test('a person says that two are one, or that they differ', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, deviceId: 'phone', clock: null });
    expect(night(log, {}, { settled: new Map([['s2', { sameAs: 's1' }]]) })).toMatchObject({ shots: 1, open: [] });
    expect(night(log, {}, { settled: new Map([['s2', 'different']]) })).toMatchObject({ shots: 2, open: [] });
  });

  test('a shot taken back on one of two devices still stands; on both it is gone', () => {
    const once = [{ id: 's1', ...bankShot }, { id: 's2', ...bankShot, deviceId: 'phone' }, { id: 'b1', kind: 'takenBack' as const, takesBackEntryId: 's1' }];
    expect(night(aLog(...once)).shots).toBe(1);
    expect(night(aLog(...once, { id: 'b2', kind: 'takenBack', takesBackEntryId: 's2' })).shots).toBe(0);
  });

  test('a shot taken back keeps its number, so later mentions keep theirs', () => {
    const log = aLog({ id: 's1', ...bankShot }, { id: 's2', ...bankShot, clock: '2:00' }, { id: 'm', ...mention }, { id: 'b', kind: 'takenBack', takesBackEntryId: 's1' });
    expect(night(log)).toMatchObject({ reads: ['m 2 counts'], shots: 1 });
  });
});

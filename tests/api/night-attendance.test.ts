import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };

async function aNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { nightId } = season.games[0]!;
  const path = `/api/nights/${nightId}/attendance`;
  return {
    ...department, nightId, path,
    signOff: (form = {}) => department.director.make(`/api/nights/${nightId}/sign-off`, { ...EARLY, ...form }),
    record: (attendance: unknown, how?: unknown) => department.director.post(path, { attendance, ...(how === undefined ? {} : { how }) }),
    known: async () => {
      const { attendance, how, records } = await department.director.look(path);
      return { attendance, how, records: records.map((one: { attendance: number | null; how: string | null }) => `${one.attendance} ${one.how}`) };
    },
  };
}

describe('how many came', () => {
  test('is what the sign-off says until somebody records it, and then what was recorded last, down to nobody knows', async () => {
    const night = await aNight();
    await night.signOff({ attendance: 400 });
    expect(await night.known()).toEqual({ attendance: 400, how: 'signOff', records: ['400 signOff'] });
    expect((await night.record(412, 'tickets')).status).toBe(200);
    expect(await night.known()).toEqual({ attendance: 412, how: 'tickets', records: ['412 tickets', '400 signOff'] });
    await night.record(430, 'estimated');
    await night.record(430, 'estimated');
    expect(await night.known()).toEqual({ attendance: 430, how: 'estimated', records: ['430 estimated', '412 tickets', '400 signOff'] });
    await night.record(null);
    expect(await night.known()).toEqual({ attendance: null, how: null, records: ['null null', '430 estimated', '412 tickets', '400 signOff'] });
    await night.record(0, 'counted');
    expect(await night.known()).toMatchObject({ attendance: 0, how: 'counted' });
  });

  test('is unknown where nobody said it, and may be recorded all the same', async () => {
    const night = await aNight();
    await night.signOff();
    expect(await night.known()).toEqual({ attendance: null, how: null, records: [] });
    expect((await night.record(null)).status).toBe(200);
    expect((await night.known()).records).toEqual([]);
    await night.record(88, 'counted');
    expect((await night.director.look(night.path)).records[0]).toMatchObject({ attendance: 88, how: 'counted', byName: expect.stringMatching(/^director/) });
  });

  test('is recorded by the director, after sign-off, with how it is known', async () => {
    const night = await aNight();
    expect((await night.record(412, 'counted')).body.code).toBe('night-not-signed-off');
    await night.signOff();
    for (const [attendance, how, status] of [[200_000, 'tickets', 200], [200_001, 'tickets', 400], [-1, 'counted', 400], [12.5, 'counted', 400], [12, 'guessed', 400]] as const) {
      expect([attendance, how, (await night.record(attendance, how)).status]).toEqual([attendance, how, status]);
    }
    for (const [attendance, how] of [[412, undefined], [412, null], [null, 'counted']] as const) {
      const refused = await night.record(attendance, how);
      expect([refused.status, refused.body.code]).toEqual([422, 'attendance-incomplete']);
      expect(refused.body.errors.how).toBeDefined();
    }
    expect((await night.announcer.post(night.path, { attendance: 10, how: 'counted' })).body.code).toBe('role-missing');
    expect((await night.announcer.look(night.path)).attendance).toBe(200_000);
  });
});

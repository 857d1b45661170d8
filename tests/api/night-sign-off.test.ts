import { randomUUID } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aNightInDays, aSeason, aSignedContract } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };

/** A night with two planned game-ball reads, bank-shot mentions, and two devices at the table. */
async function aNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season, {
    priceCents: 60_000,
    commitments: [
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 10_000 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 2, readsAtMost: 9, rateCents: 1000 },
    ],
  });
  const { gameId, nightId } = season.games[0]!;
  const [concession, bankShots] = contract.commitments.map((one: { id: string }) => one.id) as [string, string];
  const placements: { id: string; cueKey: string }[] = [];
  for (const windowKey of ['halftime', 'timeOut1']) placements.push(await department.director.make('/api/placements', { commitmentId: concession, gameId, windowKey }));
  const [tablet, phone] = [new TableDevice(), new TableDevice()];
  const send = (device: TableDevice, ...entries: unknown[]) => department.announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  const read = (device: TableDevice, place: number, outcome = 'given', reason?: string) => {
    const { id: placementId, cueKey } = placements[place]!;
    return device.entry({ kind: 'read', outcome, placementId, commitmentId: concession, gameId, cueKey, ...(reason ? { reason } : {}) });
  };
  const shot = (device: TableDevice, clock: string | null) =>
    device.entry({ kind: 'happening', gameId, teamId: season.teamId, playerNumber: '3', period: '2nd quarter', clock, detail: { happening: 'bankShot' } });
  const mention = (device: TableDevice, happeningEntryId: string) => device.entry({ kind: 'mention', outcome: 'given', gameId, commitmentId: bankShots, happeningEntryId });
  return {
    ...department, department, contract, gameId, nightId, concession, bankShots, tablet, phone, send, read, shot, mention,
    tidy: () => department.director.look(`/api/nights/${nightId}/tidy`),
    signOff: (form = {}) => department.director.make(`/api/nights/${nightId}/sign-off`, { ...EARLY, ...form }),
    settle: (form: object) => department.director.post(`/api/nights/${nightId}/settle`, form),
    given: async () => (await department.director.look(`/api/contracts/${contract.id}`)).commitments.map((one: { standing: { given: number; owed: number } }) => `${one.standing.given} given, ${one.standing.owed} owed`),
  };
}

describe('two devices on one night', () => {
  test('the same cue logged on both is counted once and shown as doubled', async () => {
    const night = await aNight();
    await night.send(night.tablet, night.read(night.tablet, 0));
    await night.send(night.phone, night.read(night.phone, 0));
    const { doubled, tallySentence } = await night.tidy();
    expect(doubled.map((one: { sentence: string }) => one.sentence)).toEqual(['Juniper & Pike Hardware, Concession read: given. Logged twice, as entries 1 and 2; it counts once.']);
    expect(tallySentence).toBe('2 reads planned: 1 read, 1 without an entry.');
    expect((await night.signOff()).counted).toBe(1);
    expect(await night.given()).toEqual(['1 given, 3 owed', '0 given, 2 owed']);
  });

  test('a bank shot with nearby clocks is one, and the second mention of it is doubled', async () => {
    const night = await aNight();
    const [one, other] = [night.shot(night.tablet, '4:10'), night.shot(night.phone, '4:04')];
    await night.send(night.tablet, one, night.mention(night.tablet, one.id));
    await night.send(night.phone, other, night.mention(night.phone, other.id));
    const tidy = await night.tidy();
    expect([tidy.takenAsOne.length, tidy.questions.length, tidy.doubled.length]).toEqual([1, 0, 1]);
    expect((await night.signOff()).counted).toBe(1);
  });

  test('without a clock they are two until somebody says otherwise; the answer stays through every later count and takes the read out of both ledgers', async () => {
    const night = await aNight();
    const [one, other] = [night.shot(night.tablet, '4:10'), night.shot(night.phone, null)];
    await night.send(night.tablet, one, night.mention(night.tablet, one.id));
    await night.send(night.phone, other, night.mention(night.phone, other.id));
    expect((await night.tidy()).questions).toMatchObject([{ entryIds: [one.id, other.id] }]);
    const { counted, earnedCents } = await night.signOff();
    expect([counted, await night.given()]).toEqual([2, ['0 given, 4 owed', '2 given, 0 owed']]);
    const answer = { entryId: other.id, answer: 'sameAs', sameAsEntryId: one.id };
    expect((await night.settle(answer)).body.code).toBe('amendment-without-reason');
    expect((await night.announcer.post(`/api/nights/${night.nightId}/settle`, { ...answer, reason: 'I saw one' })).body.code).toBe('role-missing');
    const settled = (await night.settle({ ...answer, reason: 'The video shows one shot' })).body;
    expect(settled).toMatchObject({ counted: 0, released: 1 });
    expect(settled.earnedCents).toBeLessThan(0);
    expect(settled.earnedCents).toBeGreaterThan(-earnedCents);
    expect(await night.given()).toEqual(['0 given, 4 owed', '1 given, 1 owed']);
    await night.director.make(`/api/nights/${night.nightId}/amend`, { reason: 'A read was forgotten', deviceId: night.tablet.deviceId, entries: [night.read(night.tablet, 1)] });
    expect(await night.given()).toEqual(['1 given, 3 owed', '1 given, 1 owed']);
    expect((await night.tidy()).questions).toEqual([]);
    expect((await night.settle({ entryId: other.id, answer: 'different', reason: 'Two after all' })).body).toMatchObject({ counted: 1, released: 0, earnedCents: -settled.earnedCents });
  });
});

describe('what is settled before sign-off', () => {
  test('the announcer may answer then, without a reason, and it is what sign-off counts', async () => {
    const night = await aNight();
    const cut = night.read(night.tablet, 0, 'cutShort', 'playResumed');
    const bare = night.tablet.entry({ kind: 'mention', outcome: 'given', gameId: night.gameId, commitmentId: night.bankShots });
    await night.send(night.tablet, cut, bare);
    expect((await night.tidy()).withoutHappening).toMatchObject([{ entryIds: [bare.id], answer: null, counts: false }]);
    for (const [entryId, answer] of [[cut.id, 'doesNotCount'], [bare.id, 'counts']]) {
      expect((await night.announcer.make(`/api/nights/${night.nightId}/settle`, { entryId, answer })).counted).toBe(0);
    }
    expect(await night.tidy()).toMatchObject({ cutShort: [{ answer: 'doesNotCount', counts: false }], withoutHappening: [{ answer: 'counts', counts: true }], amendments: [] });
    expect((await night.signOff()).counted).toBe(1);
    expect(await night.given()).toEqual(['0 given, 4 owed', '1 given, 1 owed']);
  });

  test('an answer about what is not there, or that cannot be, is refused by its name', async () => {
    const night = await aNight();
    const [one, read] = [night.shot(night.tablet, '4:10'), night.read(night.tablet, 0)];
    await night.send(night.tablet, one, read);
    const codes = [];
    for (const form of [{ entryId: randomUUID(), answer: 'counts' }, { entryId: one.id, answer: 'counts' }, { entryId: read.id, answer: 'different' }, { entryId: one.id, answer: 'sameAs' }, { entryId: one.id, answer: 'sameAs', sameAsEntryId: one.id }]) {
      codes.push((await night.settle(form)).body.code);
    }
    expect(codes).toEqual(['unknown-entry', 'settling-no-read', 'settling-no-happening', 'same-as-nothing', 'same-as-itself']);
  });
});

describe('sign-off', () => {
  test('keeps attendance, the book and a note, is not held up by what is open, and happens once however often it is sent', async () => {
    const night = await aNight();
    await night.send(night.tablet, night.read(night.tablet, 0), night.shot(night.tablet, null), night.tablet.entry({ kind: 'book', gameId: night.gameId, period: '1st quarter', detail: { agrees: true } }), night.tablet.entry({ kind: 'note', reason: 'A full house' }));
    const form = { ...EARLY, attendance: 412, bookAgrees: false, bookWords: 'One foul less on number 3', note: 'The clock stood still in the third quarter.' };
    const key = randomUUID();
    const [first, again] = [await night.director.post(`/api/nights/${night.nightId}/sign-off`, form, { key }), await night.director.post(`/api/nights/${night.nightId}/sign-off`, form, { key })];
    expect([first.status, again.body]).toEqual([200, first.body]);
    expect((await night.director.post(`/api/nights/${night.nightId}/sign-off`, form)).body.code).toBe('night-already-signed-off');
    const tidy = await night.tidy();
    expect(tidy.signOff).toMatchObject({ at: first.body.signedOffAt, attendance: 412, bookAgrees: false, bookWords: 'One foul less on number 3' });
    expect([tidy.state, tidy.book.length, tidy.notes.length, tidy.held.length, tidy.requestsOpen]).toEqual(['signedOff', 1, 1, 1, 0]);
    expect(tidy.shortfalls.map((one: { sentence: string }) => one.sentence)).toEqual([
      'Juniper & Pike Hardware, Concession read: 1 read missed (nothing was logged). It stays owed.',
      'Juniper & Pike Hardware, Bank-shot mention: 1 read missed (mention held, and never read). It stays owed.',
    ]);
    expect((await night.announcer.look(`/api/nights/${night.nightId}/tidy`)).shortfalls).toEqual([]);
  });

  test('every change after it needs a reason, is listed with it, and sent again changes nothing', async () => {
    const night = await aNight();
    const status = async () => (await night.director.look(`/api/games/${night.gameId}`)).status;
    await night.signOff();
    expect(await status()).toBe('planned');
    const form = { deviceId: night.phone.deviceId, entries: [night.read(night.phone, 0)] };
    expect((await night.director.post(`/api/nights/${night.nightId}/amend`, form)).body.errors).toMatchObject({ reason: expect.anything() });
    expect((await night.director.make(`/api/nights/${night.nightId}/amend`, { ...form, reason: 'The phone came back on Monday' })).counted).toBe(1);
    expect(await status()).toBe('played');
    expect((await night.director.make(`/api/nights/${night.nightId}/amend`, { ...form, reason: 'Sent once more' })).counted).toBe(0);
    const { amendments } = await night.tidy();
    expect(amendments.map((one: { reason: string; sentence: string }) => [one.reason, one.sentence])).toEqual([['The phone came back on Monday', 'Entry 1 added: 1 read counted.']]);
    expect(await night.given()).toEqual(['1 given, 3 owed', '0 given, 2 owed']);
  });

  test('what an announcer sends after it is refused as an amendment, and nothing of it is counted', async () => {
    const night = await aNight();
    await night.signOff();
    const { results } = await night.send(night.tablet, night.read(night.tablet, 0));
    expect(results).toMatchObject([{ status: 'refused', code: 'night-already-signed-off' }]);
    expect(await night.given()).toEqual(['0 given, 4 owed', '0 given, 2 owed']);
  });
});

describe('sign-off by the link of the night’s table', () => {
  test('an adult’s link signs off under the name typed, a spotter’s does not, and neither settles or amends', async () => {
    const department = await aDepartment();
    const { director } = department;
    const { nightId, gameId } = await aNightInDays(department, 0);
    const giveOut = async (label: string, maySignOff: boolean) => Visitor.atTable(await director.make(`/api/nights/${nightId}/table-links`, { label, maySignOff }));
    const [adult, spotter] = [await giveOut('Odell, substitute', true), await giveOut('Bram, spotter', false)];
    const device = new TableDevice();
    await spotter.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.entry({ kind: 'note', gameId, reason: 'Doors open' })] });
    const signOff = (who: Visitor, form: object) => who.post(`/api/nights/${nightId}/sign-off`, form);
    expect((await signOff(spotter, { name: 'Bram' })).body.code).toBe('link-cannot-sign-off');
    expect((await signOff(adult, {})).body.code).toBe('sign-off-without-name');
    expect((await signOff(adult, { name: 'Odell Marlowe', decisions: [{ entryId: randomUUID(), counts: true }] })).body.code).toBe('role-missing');
    expect((await signOff(adult, { name: 'Odell Marlowe', attendance: 80 })).body).toMatchObject({ signedOffByName: 'Odell Marlowe', counted: 0 });
    expect(await spotter.look(`/api/nights/${nightId}/tidy`)).toMatchObject({ state: 'signedOff', signOff: { byName: 'Odell Marlowe', attendance: 80 }, notes: [{ sentence: 'Note: Doors open' }], shortfalls: [] });
    for (const route of ['settle', 'amend']) expect((await adult.post(`/api/nights/${nightId}/${route}`, {})).status).toBe(401);
    expect((await director.look('/api/home')).recent[0].sentence).toMatch(/^Odell Marlowe signed off the night of/);
  });
});

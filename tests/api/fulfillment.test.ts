import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aContract, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };

const fulfillmentOf = ({ director }: Department, contractId: string): Promise<any> => director.look(`/api/contracts/${contractId}/fulfillment`);

interface Told {
  given?: string[];
  notRead?: string[];
  isSignedOff?: boolean;
}

/** Logs reads of a night, by the commitment of each, and signs it off. Answers the entries. */
async function tell({ director, announcer }: Department, device: TableDevice, { gameId, nightId }: Season['games'][number], { given = [], notRead = [], isSignedOff = true }: Told) {
  const reads = given.map((line, place) => device.read(line, gameId, 10 + place));
  const missed = notRead.map((line, place) => device.read(line, gameId, 100 + place, 'notRead', 'noTime'));
  if (reads.length + missed.length > 0) await announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [...reads, ...missed] });
  if (isSignedOff) await director.make(`/api/nights/${nightId}/sign-off`, { ...EARLY, attendance: 240 });
  return reads;
}

describe('a contract by its ledger and its log', () => {
  test('is told by line, by night and by window; the last reads beyond the promise are extra, and a read taken back makes room for one', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 3);
    const contract = await aSignedContract(department, season, {
      commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4000, leastPerGame: 2 }],
      benefits: [{ name: 'Banner', quantity: 1, rateCents: 20_000, earns: 'onDelivery', dueOn: '2026-12-01' }],
    });
    const line = contract.commitments[0].id as string;
    await department.director.make(`/api/contracts/${contract.id}/benefits/${contract.benefits[0].id}/deliveries`, { deliveredOn: '2026-11-30', quantity: 1, proof: 'Photo of the north wall' });
    const device = new TableDevice();
    const [first, second, third] = season.games as [Season['games'][number], Season['games'][number], Season['games'][number]];
    const planned = await department.director.make('/api/placements', { commitmentId: line, gameId: third.gameId, windowKey: 'halftime' });
    const reads = await tell(department, device, first, { given: [line, line] });
    await tell(department, device, second, { given: [line], notRead: [line] });
    const before = await fulfillmentOf(department, contract.id);
    expect(before).toMatchObject({ contractId: contract.id, sponsorName: 'Juniper & Pike Hardware', state: 'signed', planned: 1, sum: { promised: 3, given: 3, owed: 0, extra: 0 } });
    expect(before.lines[0]).toMatchObject({ readKindName: 'Concession read', counting: 'perTerm', gamesInAll: 3, planned: 1 });
    expect(before.benefits).toMatchObject([{ name: 'Banner', quantity: 1, delivered: 1, deliveries: [{ deliveredOn: '2026-11-30', proof: 'Photo of the north wall', isTakenBack: false }] }]);
    expect(before.windows).toEqual([{ windowKind: 'halftime', windowName: 'Halftime', planned: 0, given: 3, notRead: 1, toCome: 1 }]);
    expect(before.nights.map((night: any) => [night.heldOn, night.isSignedOff, night.attendance, night.attendanceHow, night.planned])).toEqual([
      [first.playedOn, true, 240, 'signOff', 0], [second.playedOn, true, 240, 'signOff', 0], [third.playedOn, false, null, null, 1],
    ]);
    expect(before.nights[0].games).toMatchObject([{ gameId: first.gameId, label: 'Herons at Kestrels', opponentName: 'Port Ansel' }]);
    expect(before.nights[1].reads.map((read: any) => [read.what, read.why, read.windowName, read.atTheTable])).toEqual([
      ['given', null, 'Halftime', expect.stringMatching(/^A\./)], ['notRead', 'no time', 'Halftime', expect.stringMatching(/^A\./)],
    ]);

    const { id: placementId, cueKey } = planned;
    const fourth = device.entry({ kind: 'read', outcome: 'given', gameId: third.gameId, commitmentId: line, placementId, cueKey });
    await department.announcer.make(`/api/nights/${third.nightId}/log`, { deviceId: device.deviceId, entries: [fourth] });
    const logged = await fulfillmentOf(department, contract.id);
    expect(logged).toMatchObject({ planned: 0, sum: { given: 3, loggedNotSignedOff: 1 } });
    expect(logged.nights[2]).toMatchObject({ planned: 0, reads: [{ what: 'logged', entryId: fourth.id }] });
    await department.director.make(`/api/nights/${third.nightId}/sign-off`, EARLY);
    expect((await fulfillmentOf(department, contract.id)).nights[2].reads).toMatchObject([{ what: 'extra' }]);

    const taken = device.entry({ kind: 'takenBack', takesBackEntryId: reads[0]!.id });
    await department.director.make(`/api/nights/${first.nightId}/amend`, { reason: 'It was another sponsor', deviceId: device.deviceId, entries: [taken] });
    const after = await fulfillmentOf(department, contract.id);
    expect(after.sum).toMatchObject({ given: 3, extra: 0, owed: 0 });
    expect(after.nights[0].reads.map((read: any) => [read.what, read.why])).toEqual([['takenBack', 'taken back after the night was signed off'], ['given', null]]);
    expect(after.nights[2].reads).toMatchObject([{ what: 'given' }]);
    expect(after.lines[0].brokenFloors.map((floor: any) => [floor.gameId, floor.least, floor.given, floor.label])).toEqual(
      season.games.map(({ gameId }) => [gameId, 2, 1, 'Herons at Kestrels']),
    );
  });

  test('with no games at all it has promised everything and given nothing', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 0);
    const contract = await aSignedContract(department, season);
    const view = await fulfillmentOf(department, contract.id);
    expect(view).toMatchObject({ sum: { promised: 14, owed: 14, given: 0, expectedByNow: 0, behind: 0 }, planned: 0, nights: [], windows: [] });
    expect(view.lines.map((line: any) => [line.gamesInAll, line.gamesPlayed, line.pace])).toEqual([[0, 0, []], [0, 0, []]]);
  });

  test('a draft has promised nothing yet, and what is not there is not found', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 1);
    const draft = await aContract(department, season);
    expect(await fulfillmentOf(department, draft.id)).toMatchObject({ state: 'draft', sum: { promised: 0, owed: 0 } });
    expect(await department.director.get('/api/contracts/0197c0de-0000-7000-8000-000000000000/fulfillment')).toMatchObject({ status: 404 });
  });
});

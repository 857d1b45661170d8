import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aHalfSeason } from '../support/half-season.ts';
import { TableDevice, aSignedContract } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };

/** Four home games, two of them over; eight concession reads at 40.00 are the whole price. */
async function aPromise(more: Record<string, unknown> = {}) {
  const department = await aDepartment();
  const season = await aHalfSeason(department, [-14, -7, 7, 14]);
  const contract = await aSignedContract(department, season, {
    priceCents: 32_000, billingPlan: { kind: 'inFull', on: season.today }, term: { startsOn: season.startsOn, endsOn: season.endsOn },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4_000, ...more }],
  });
  const device = new TableDevice();
  const play = async (game: number, reads: number) => {
    const { gameId, nightId } = season.games[game]!;
    const entries = Array.from({ length: reads }, (_, place) => device.read(contract.commitments[0].id, gameId, place + 1));
    if (reads > 0) await department.director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
    await department.director.make(`/api/games/${gameId}/play`, { scores: [] });
    await department.director.make(`/api/nights/${nightId}/sign-off`, EARLY);
  };
  return { ...department, department, season, contract, play, board: () => department.director.look(`/api/boards/at-risk?seasonId=${season.seasonId}`) };
}

test('a department without a season, and a season without contracts, have nothing at risk', async () => {
  const department = await aDepartment();
  expect(await department.director.look('/api/boards/at-risk')).toMatchObject({ seasonId: null, lines: [], commitments: 0, atStakeCents: 0 });
  const { seasonId } = await aHalfSeason(department, []);
  expect(await department.director.look(`/api/boards/at-risk?seasonId=${seasonId}`)).toMatchObject({ lines: [], commitments: 0 });
});

test('in half a season, of eight reads four should have been given; with three given the promise is one behind, and one place is missing', async () => {
  const { play, board, contract } = await aPromise();
  await play(0, 2);
  await play(1, 1);
  const view = await board();
  expect(view).toMatchObject({ commitments: 1, contractsAtRisk: 1, owed: 5 });
  expect(view.lines).toHaveLength(1);
  expect(view.lines[0]).toMatchObject({ contractId: contract.id, promised: 8, given: 3, owed: 5, expectedByNow: 4, behind: 1, planned: 0, shortfall: 0, brokenFloors: 0, openCents: 20_000 });
  expect(view.lines[0].risks).toContain('behind');
  expect(view.lines[0].repair).toEqual({ kind: 'place', words: 'Place 5 reads that have no place yet', costCents: 0 });
  expect(view.atStakeCents).toBe(view.lines[0].atStakeCents);
});

test('what is given in time is at no risk of pace', async () => {
  const { play, board } = await aPromise();
  await play(0, 2);
  await play(1, 2);
  expect((await board()).lines.flatMap(({ risks }: any) => risks)).not.toContain('behind');
});

test('a contract on hold is at risk as long as something is owed, and the repair is to lift the hold', async () => {
  const { director, contract, board, season } = await aPromise();
  await director.make(`/api/contracts/${contract.id}/hold`, { on: season.today, reason: 'The first invoice is long unpaid' });
  const [line] = (await board()).lines;
  expect(line).toMatchObject({ heldOn: season.today, heldBecause: 'The first invoice is long unpaid', repair: { kind: 'liftHold', costCents: 0 }, to: `/contracts/${contract.id}/lift-hold` });
  expect(line.risks).toContain('held');
});

test('reads of a game that is over without them cannot be given as promised: the cheapest remedy is named with its price', async () => {
  const { play, board, contract } = await aPromise({ counting: 'perGame', reads: 1, rateCents: 8_000 });
  await play(0, 0);
  await play(1, 1);
  const line = (await board()).lines[0];
  expect(line).toMatchObject({ promised: 4, given: 1, owed: 3, shortfall: 1, repair: { kind: 'makegood' }, to: `/contracts/${contract.id}/show?tab=credits` });
  expect(line.risks[0]).toBe('shortfall');
  expect(line.repair.costCents).not.toBeNull();
});

test('most at stake comes first, and the file has the same lines with a total', async () => {
  const { department, season, board, director } = await aPromise();
  for (const [reads, rateCents] of [[2, 1_000], [4, 30_000]] as const) {
    const contract = await aSignedContract(department, season, { title: `Reads at ${rateCents}`, priceCents: reads * rateCents, billingPlan: { kind: 'inFull', on: season.today }, term: { startsOn: season.startsOn, endsOn: season.endsOn }, commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads, rateCents }] });
    await director.make(`/api/contracts/${contract.id}/hold`, { on: season.today, reason: 'Waits for the owner' });
  }
  const view = await board();
  const stakes = view.lines.map(({ atStakeCents }: any) => atStakeCents);
  expect(stakes).toEqual([...stakes].sort((one, other) => other - one));
  const csv = (await director.bytes(`/api/boards/at-risk?as=csv&seasonId=${season.seasonId}`)).bytes.toString('utf8');
  expect(csv.trim().split('\n')).toHaveLength(1 + view.lines.length + 1);
  expect(csv).toContain('Settle what the hold is about');
  const xlsx = await director.bytes(`/api/boards/at-risk?as=xlsx&seasonId=${season.seasonId}`);
  expect([xlsx.status, xlsx.bytes.subarray(0, 2).toString()]).toEqual([200, 'PK']);
});

test('the announcer does not see what contracts are at risk', async () => {
  const { announcer, bookkeeper } = await aPromise();
  expect((await announcer.get('/api/boards/at-risk')).status).toBe(403);
  expect((await announcer.get('/api/boards/inventory?as=xlsx')).status).toBe(403);
  expect((await bookkeeper.get('/api/boards/at-risk')).status).toBe(200);
});

test('what is priced by the read has at stake what each read costs the sponsor, not its price on the rate card', async () => {
  const department = await aDepartment();
  const season = await aHalfSeason(department, [-14, 7]);
  const contract = await aSignedContract(department, season, {
    priceCents: 0, billingPlan: { kind: 'perGame' }, term: { startsOn: season.startsOn, endsOn: season.endsOn, pricing: 'perRead' },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 4_000, priceEachCents: 2_500 }],
  });
  const { lines } = await department.director.look(`/api/contracts/${contract.id}/fulfillment`);
  expect([lines[0].standing.owed, lines[0].openCents]).toEqual([4, 10_000]);
});

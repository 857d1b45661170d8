import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aLaterSeason, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const EARLY = { overrideReason: 'the test does not wait for the night' };
type Game = Season['games'][number];

const fulfillmentOf = ({ director }: Department, contractId: string): Promise<any> => director.look(`/api/contracts/${contractId}/fulfillment`);
const log = ({ director }: Department, device: TableDevice, { nightId }: Game, entries: unknown[]) => director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
const signOff = ({ director }: Department, { nightId }: Game) => director.make(`/api/nights/${nightId}/sign-off`, EARLY);

/** Forty concession reads for 1,000.00, at 25.00 each. */
const fortyReads = (department: Department, season: Season) =>
  aSignedContract(department, season, {
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 40, rateCents: 2_500 }],
    priceCents: 100_000, billingPlan: { kind: 'inFull', on: '2026-11-20' },
  });

// CHECKS.md, section 7, fulfillment vectors: 40 at 25.00, 33 given, 4 made good: 37 fulfilled, 3 short, credit 75.00, earned 925.00.
test('of forty reads 33 are given and 4 made good by two of another kind; the three that are credited are worth 75.00', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 2);
  const [first, second] = season.games as [Game, Game];
  const contract = await fortyReads(department, season);
  const commitmentId = contract.commitments[0].id as string;
  await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const device = new TableDevice();
  await log(department, device, first, Array.from({ length: 33 }, (_, cue) => device.read(commitmentId, first.gameId, cue + 30)));
  await signOff(department, first);
  const agreed = { commitmentId, missed: 4, replacementReadKindId: season.readKinds.gameBall, replacements: 2, agreedOn: '2026-12-05', agreedWith: 'Hazel Juniper' };
  const { data: [makegood] } = await director.make(`/api/contracts/${contract.id}/makegoods`, agreed);
  const replacements = [];
  for (let place = 0; place < 2; place += 1) replacements.push(await director.make('/api/placements', { commitmentId, gameId: second.gameId, windowKey: 'pregame', makegoodId: makegood.id }));
  const waiting = await fulfillmentOf(department, contract.id);
  // Two replacements have a place, three reads are owed beside them.
  expect(waiting).toMatchObject({ planned: 2, sum: { given: 33, madeGood: 0, owed: 7 } });
  await log(department, device, second, replacements.map(({ id, cueKey, windowKey }) => device.entry({ kind: 'read', outcome: 'given', gameId: second.gameId, commitmentId, placementId: id, cueKey, windowKey })));
  const logged = await fulfillmentOf(department, contract.id);
  // Both are told where they are told one by one, and neither waits for a place any more: only the three beside them do.
  expect(logged).toMatchObject({ planned: 0, sum: { given: 33, owed: 7, loggedNotSignedOff: 2 } });
  expect(logged.nights.flatMap((night: any) => night.reads).filter((read: any) => read.what === 'logged')).toHaveLength(2);
  expect(logged.lines[0].forecast).toMatchObject({ expectedFinal: 39.7, ground: { planned: 0, withoutPlace: 3 } });
  expect((await director.look(`/api/contracts/${contract.id}`)).commitments[0].standing).toMatchObject({ loggedNotSignedOff: 2 });
  await signOff(department, second);
  await bookkeeper.make(`/api/contracts/${contract.id}/credits`, { commitmentId, count: 3, reason: 'Three were not given', on: '2026-12-12' });

  const view = await fulfillmentOf(department, contract.id);
  expect(view).toMatchObject({ sum: { promised: 40, given: 33, madeGood: 4, credited: 3, owed: 0, extra: 0 }, shortfall: 0, chanceAllGiven: 1 });
  expect(view.nights[1].reads.map((read: any) => [read.what, read.readKindName, read.windowName])).toEqual(Array(2).fill(['makegood', 'Sponsored game ball', 'Pregame']));
  expect(view.lines[0].pace.at(-1)).toEqual({ on: second.playedOn, expected: 40, given: 37 });
  expect(view.lines[0].forecast).toMatchObject({ expectedFinal: 37, low: 37, high: 37, words: 'Everything that was promised is settled.' });
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ earnedCents: 92_500, billedCents: 92_500 });
});

// CHECKS.md, section 7: over-delivery 43: bonus 3, invoice unchanged.
test('of forty reads 43 are given: the last three are extra and the invoice is what it was', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await fortyReads(department, season);
  await department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const device = new TableDevice();
  const game = season.games[0]!;
  const reads = Array.from({ length: 43 }, (_, cue) => device.read(contract.commitments[0].id, game.gameId, cue + 30));
  await log(department, device, game, reads);
  await signOff(department, game);
  const view = await fulfillmentOf(department, contract.id);
  expect(view.sum).toMatchObject({ given: 40, extra: 3, owed: 0 });
  expect(view.nights[0].reads.filter((read: any) => read.what === 'extra')).toHaveLength(3);
  expect((await department.director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ billedCents: 100_000, receivableCents: 105_000 });
});

test('a night signed off after the next one keeps its day, and pace goes by the days of the games', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 4000 }] });
  const line = contract.commitments[0].id as string;
  const [first, second] = season.games as [Game, Game];
  const device = new TableDevice();
  await log(department, device, first, [device.read(line, first.gameId, 1)]);
  await log(department, device, second, [device.read(line, second.gameId, 1), device.read(line, second.gameId, 2)]);
  await signOff(department, second);
  const early = await fulfillmentOf(department, contract.id);
  expect(early.sum).toMatchObject({ given: 2, loggedNotSignedOff: 1 });
  expect(early.nights[0].reads).toMatchObject([{ what: 'logged' }]);
  await signOff(department, first);
  const late = await fulfillmentOf(department, contract.id);
  expect(late.lines[0].pace).toEqual([{ on: first.playedOn, expected: 2, given: 1 }, { on: second.playedOn, expected: 4, given: 3 }]);
  expect(late.lines[0]).toMatchObject({ gamesInAll: 2, gamesPlayed: 2, standing: { expectedByNow: 4, behind: 1 } });
});

test('counted by the game, one too many in one game makes no other whole; counted by the night likewise', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season, {
    commitments: [
      { readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000 },
      { readKindId: season.readKinds.gameBall, counting: 'perNight', reads: 1, rateCents: 4000 },
    ],
  });
  const [byGame, byNight] = contract.commitments.map((one: { id: string }) => one.id) as [string, string];
  const [first, second] = season.games as [Game, Game];
  const device = new TableDevice();
  await log(department, device, first, [1, 2, 3].map((cue) => device.read(byGame, first.gameId, cue)).concat([8, 9].map((cue) => device.read(byNight, first.gameId, cue))));
  await log(department, device, second, [device.read(byGame, second.gameId, 1)]);
  await signOff(department, first);
  await signOff(department, second);
  const view = await fulfillmentOf(department, contract.id);
  expect(view.lines.map(({ counting, standing }: any) => [counting, standing.promised, standing.given, standing.owed, standing.extra])).toEqual([['perGame', 4, 3, 1, 1], ['perNight', 2, 1, 1, 1]]);
  expect(view.nights.map((night: any) => night.reads.map((read: any) => read.what))).toEqual([['given', 'given', 'extra', 'given', 'extra'], ['given']]);
  // The games are over, so nothing can carry what is owed in them.
  expect(view).toMatchObject({ shortfall: 2, chanceAllGiven: 0 });
});

test('a shot that never fell all season leaves what was promised at least, and says so', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 3);
  const contract = await aSignedContract(department, season, {
    commitments: [
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 4, readsAtMost: 9, rateCents: 1000 },
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 1, rateCents: 1000 },
    ],
  });
  const before = await fulfillmentOf(department, contract.id);
  // Two a game are believed where nothing is known: NB(2, 1/4), P(Y >= 4) = 0.6328125.
  expect(before.lines[0].forecast.chanceAllGiven).toBeCloseTo(1 - 0.3671875, 10);
  expect(before.lines[0].forecast.words).toBe('Worked out from no game counted yet and from a general assumption of two a game, because no earlier season is known; 3 games are left, and each time it happens a mention is assumed to be read.');
  const device = new TableDevice();
  for (const game of season.games) {
    await log(department, device, game, [device.read(contract.commitments[1].id, game.gameId, 1)]);
    await signOff(department, game);
  }
  const { lines } = await fulfillmentOf(department, contract.id);
  expect(lines[0]).toMatchObject({ standing: { promised: 4, given: 0, owed: 4, expectedByNow: 0, behind: 0 }, shortfall: 4, gamesPlayed: 3 });
  expect(lines[0].forecast).toMatchObject({ chanceAllGiven: 0, expectedFinal: 0, low: 0, high: 0, words: 'None in 3 games counted so far, and no game is left that could bring more.' });
});

test('what is planned is given with the chance of its window, and each read that was not read lowers it', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 3);
  const term = { startsOn: season.startsOn, endsOn: season.endsOn };
  const contract = await aSignedContract(department, season, { term, commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4000 }], billingPlan: { kind: 'inFull', on: '2150-11-23' } });
  const commitmentId = contract.commitments[0].id as string;
  const placements = [];
  for (const { gameId } of season.games.slice(0, 2)) placements.push(await director.make('/api/placements', { commitmentId, gameId, windowKey: 'halftime' }));
  const before = (await fulfillmentOf(department, contract.id)).lines[0];
  expect(before.forecast).toMatchObject({ expectedFinal: 2.7, low: 2, high: 3, ground: { planned: 2, withoutPlace: 1, windowReadsPlanned: 0 } });
  expect(before.forecast.chanceAllGiven).toBeCloseTo(0.9 ** 3, 12);
  const device = new TableDevice();
  const [first] = season.games as [Game];
  const { id: placementId, cueKey } = placements[0];
  await log(department, device, first, [device.entry({ kind: 'read', outcome: 'notRead', reason: 'noTime', gameId: first.gameId, commitmentId, placementId, cueKey })]);
  await signOff(department, first);
  const after = await fulfillmentOf(department, contract.id);
  // Beta(4.5, 0.5) with one planned and none given: 4.5 / 6 = 0.75. One has a place, two are owed beside it.
  expect(after.lines[0].forecast).toMatchObject({ ground: { planned: 1, withoutPlace: 2, windowReadsPlanned: 1, windowReadsGiven: 0 } });
  expect(after.lines[0].forecast.chanceAllGiven).toBeCloseTo(0.75 ** 3, 12);
  expect(after.windows).toEqual([{ windowKind: 'halftime', windowName: 'Halftime', planned: 1, given: 0, notRead: 1, toCome: 1 }]);
});

/** So many nights, each with a game of its own and one read in the log, written at once. */
async function fillNights({ ask, id }: Department, season: Season, commitmentId: string, count: number) {
  const made = Array.from({ length: count }, (_, place) => ({ night: v7(), game: v7(), entry: v7(), day: addDays(season.games[0]!.playedOn, 1 + (place % 90)), place }));
  const [nights, games, entries, days] = (['night', 'game', 'entry', 'day'] as const).map((name) => made.map((one) => one[name])) as [string[], string[], string[], string[]];
  await ask('insert into night (department_id, id, held_on, venue_id) select $1, one.id, one.day, $2 from unnest($3::uuid[], $4::date[]) as one (id, day)', [id, season.venueId, nights, days]);
  await ask(
    `insert into game (department_id, id, season_id, sport, level, played_on, starts_at) select $1, one.id, $2, 'basketball', 'varsity', one.day, one.day + interval '26 hours' from unnest($3::uuid[], $4::date[]) as one (id, day)`,
    [id, season.seasonId, games, days],
  );
  for (const [place, team] of [season.opponentTeamId, season.teamId].entries()) {
    await ask('insert into game_participant (department_id, id, game_id, team_id, is_home, place) select $1, gen_random_uuid(), one.id, $2, $3, $4 from unnest($5::uuid[]) as one (id)', [id, team, place === 1, place + 1, games]);
  }
  await ask('insert into game_night (department_id, id, game_id, night_id) select $1, gen_random_uuid(), one.game, one.night from unnest($2::uuid[], $3::uuid[]) as one (game, night)', [id, games, nights]);
  await ask(
    `insert into log_entry (department_id, id, night_id, game_id, number, device_id, sequence, kind, outcome, cue_key, commitment_id, window_key, occurred_at, content_digest)
     select $1, one.id, one.night, one.game, 1, $2, 1, 'read', 'given', 'game:' || one.game || '/halftime/1', $3, 'halftime', now(), 'written by a test' from unnest($4::uuid[], $5::uuid[], $6::uuid[]) as one (id, night, game)`,
    [id, v7(), commitmentId, entries, nights, games],
  );
}

test('a sponsor with five hundred nights is told of every one of them', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 600, rateCents: 4000 }] });
  const [game] = season.games as [Game];
  await fillNights(department, season, contract.commitments[0].id, 499);
  const device = new TableDevice();
  await log(department, device, game, [device.read(contract.commitments[0].id, game.gameId, 1)]);
  const view = await fulfillmentOf(department, contract.id);
  expect(view.nights).toHaveLength(500);
  expect(view.sum).toMatchObject({ promised: 600, given: 0, owed: 600, loggedNotSignedOff: 500 });
  expect(view.nights.every((night: any) => night.reads.length === 1 && night.reads[0].what === 'logged')).toBe(true);
});

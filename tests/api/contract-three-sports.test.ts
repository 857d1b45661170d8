import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import { aDepartment, theBooksHold } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { anOffer } from '../support/offers.ts';
import { aContract, aLaterSeason, TableDevice } from '../support/season.ts';
import type { Season } from '../support/season.ts';

interface Sport {
  seasonId: string;
  teamId: string;
  opponentTeamId: string;
  games: { gameId: string; nightId: string; playedOn: Day }[];
}

/** A season of another sport in the same gym, with home games a week apart. */
async function aSport({ director }: Department, here: Season, { sport, name, startsOn, endsOn, first, games }: { sport: string; name: string; startsOn: string; endsOn: string; first: string; games: number }): Promise<Sport> {
  const season = await director.make('/api/seasons', { name, sport, startsOn, endsOn });
  const team = await director.make('/api/teams', { seasonId: season.id, schoolId: here.schoolId, name: 'Varsity', level: 'varsity' });
  const opponent = await director.make('/api/teams', { seasonId: season.id, schoolId: here.opponentId, name: 'Varsity', level: 'varsity' });
  const made: Sport = { seasonId: season.id, teamId: team.id, opponentTeamId: opponent.id, games: [] };
  for (let week = 0; week < games; week += 1) {
    const playedOn = addDays(first as Day, 7 * week);
    const game = await director.make('/api/games', { seasonId: season.id, level: 'varsity', homeTeamId: team.id, visitorTeamIds: [opponent.id], playedOn, startsAtClock: '19:00', venueId: here.venueId, floorId: here.floorId });
    made.games.push({ gameId: game.id, nightId: game.nightIds[0], playedOn });
  }
  return made;
}

async function aSchoolYear(department: Department) {
  const basketball = await aLaterSeason(department, 2);
  const football = await aSport(department, basketball, { sport: 'football', name: 'Football 2150', startsOn: '2150-08-20', endsOn: '2150-11-10', first: '2150-09-04', games: 2 });
  const volleyball = await aSport(department, basketball, { sport: 'volleyball', name: 'Volleyball 2150', startsOn: '2150-08-20', endsOn: '2150-11-10', first: '2150-09-08', games: 2 });
  return { basketball, football, volleyball };
}

const YEAR = { startsOn: '2150-08-20', endsOn: '2151-03-13' };

test('a commitment that names teams counts over the games of their seasons, one that names none over its own', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { basketball, football, volleyball } = await aSchoolYear(department);
  const teamIds = [football.teamId, volleyball.teamId, basketball.teamId];
  const kinds = basketball.readKinds;
  const draft = await aContract(department, basketball, {
    term: YEAR,
    commitments: [
      { readKindId: kinds.gameBall, counting: 'perGame', reads: 1, rateCents: 7500, teamIds },
      { readKindId: kinds.gameBall, counting: 'perGame', reads: 1, rateCents: 7500 },
      { readKindId: kinds.concession, counting: 'perTerm', reads: 6, rateCents: 4000, teamIds, startsOn: '2150-09-05' },
    ],
  });
  const signed = await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  expect(signed.commitments.map((line: any) => line.standing.promised)).toEqual([6, 2, 6]);
  // A football game that is added promises one read more of the line that names the team, and only of that.
  await director.make('/api/games', { seasonId: football.seasonId, level: 'varsity', homeTeamId: football.teamId, visitorTeamIds: [football.opponentTeamId], playedOn: '2150-10-02', startsAtClock: '19:00', venueId: basketball.venueId, floorId: basketball.floorId });
  const after = await director.look(`/api/contracts/${draft.id}`);
  expect(after.commitments.map((line: any) => line.standing.promised)).toEqual([7, 2, 6]);
  const { lines } = await director.look(`/api/contracts/${draft.id}/fulfillment`);
  // The first football game is before the third line begins.
  expect(lines.map((line: any) => line.gamesInAll)).toEqual([7, 2, 6]);
});

test('a read over a football game and one over a basketball game are counted on one line, and billed in two fiscal years', async () => {
  const department = await aDepartment();
  const { director } = department;
  const basketball = await aLaterSeason(department, 0);
  const teams: Record<string, any> = {};
  const seasonsOver: [string, string, string, string, string][] = [['football', 'Football 2025', '2025-08-20', '2025-11-10', '2025-09-05'], ['volleyball', 'Volleyball 2025', '2025-08-20', '2025-11-10', '2025-09-09'], ['basketball', 'Basketball 2025-26', '2025-11-20', '2026-03-13', '2025-12-05']];
  for (const [sport, name, startsOn, endsOn, first] of seasonsOver) teams[sport] = await aSport(department, basketball, { sport, name, startsOn, endsOn, first, games: 1 });
  const draft = await aContract(department, { ...basketball, seasonId: teams['basketball'].seasonId }, {
    term: { startsOn: '2025-06-01', endsOn: '2026-03-13' },
    priceCents: 60_000,
    commitments: [{ readKindId: basketball.readKinds.gameBall, counting: 'perTerm', reads: 3, rateCents: 20_000, teamIds: Object.values(teams).map((one) => one.teamId) }],
    billingPlan: { kind: 'installments', installments: [{ on: '2025-06-15', share: 1 }, { on: '2025-12-01', share: 1 }] },
  });
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2025-06-01', signedByName: 'Hazel Juniper' });
  const line = draft.commitments[0].id;
  const device = new TableDevice();
  for (const { nightId, gameId, playedOn } of Object.values(teams).map((one) => one.games[0])) {
    const entry = device.read(line, gameId, 1);
    await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [{ ...entry, occurredAt: `${playedOn}T22:00:00.000Z` }] });
    await director.make(`/api/games/${gameId}/play`, { scores: [] });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  }
  const invoices = [];
  for (const day of ['2025-06-15', '2025-12-01']) invoices.push(await director.make('/api/invoices', { contractId: draft.id, throughDay: day, issuedOn: day }));
  expect(invoices.map((invoice) => [invoice.number, invoice.netCents])).toEqual([['TR-2025-0001', 30_000], ['TR-2026-0001', 30_000]]);
  const contract = await director.look(`/api/contracts/${draft.id}`);
  expect(contract.standing).toMatchObject({ promised: 3, given: 3, owed: 0, earnedCents: 60_000, billedCents: 60_000, contractBalanceCents: 0 });
  await theBooksHold(department);
});

test('what is counted over the year is planned in each season for its share of the games, and no read twice', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { basketball, football, volleyball } = await aSchoolYear(department);
  const teamIds = [football.teamId, volleyball.teamId, basketball.teamId];
  const draft = await aContract(department, basketball, { term: YEAR, commitments: [{ readKindId: basketball.readKinds.concession, counting: 'perTerm', reads: 7, rateCents: 4000, teamIds }] });
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const planned = async (seasonId: string) => {
    const { owed, planned: given } = await director.look(`/api/seasons/${seasonId}/plan`);
    return [owed, given];
  };
  const seasonIds = [football.seasonId, volleyball.seasonId, basketball.seasonId];
  const before = [];
  for (const id of seasonIds) before.push(await planned(id));
  expect(before.reduce((sum, [owed]) => sum + owed, 0)).toBe(7);
  for (const seasonId of seasonIds) await director.make('/api/plan/spread', { seasonId });
  const [row] = await department.ask<{ placed: number }>('select count(*)::int as placed from placement where department_id = $1', [department.id]);
  expect(row?.placed).toBe(7);
  const bySeason = await department.ask('select game.season_id as season, count(*)::int as reads from placement join game on game.department_id = $1 and game.id = placement.game_id where placement.department_id = $1 group by 1', [department.id]);
  expect(bySeason.map((row) => row['reads']).sort()).toEqual([2, 2, 3]);
});

test('a night of two sports is one night to a commitment that names both, whichever of its games is added or called off', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { basketball, football, volleyball } = await aSchoolYear(department);
  const draft = await aContract(department, basketball, { term: YEAR, commitments: [{ readKindId: basketball.readKinds.gameBall, counting: 'perNight', reads: 1, rateCents: 7500, teamIds: [football.teamId, volleyball.teamId] }] });
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const standing = async () => {
    const { promised, credited, released } = (await director.look(`/api/contracts/${draft.id}`)).commitments[0].standing;
    return [promised, credited, released];
  };
  const before = await standing();
  expect(before[0]).toBe(4);
  const game = await director.make('/api/games', { seasonId: volleyball.seasonId, level: 'varsity', homeTeamId: volleyball.teamId, visitorTeamIds: [volleyball.opponentTeamId], playedOn: football.games[0]!.playedOn, startsAtClock: '17:00', venueId: basketball.venueId, floorId: basketball.floorId });
  expect(game.nightIds).toEqual([football.games[0]!.nightId]);
  expect(await standing()).toEqual(before);
  await director.make(`/api/games/${game.id}/cancel`, { reason: 'Ice' });
  expect(await standing()).toEqual(before);
});

test('an offer is priced over the same games as the contract that is signed from it', async () => {
  const department = await aDepartment();
  const { basketball, football, volleyball } = await aSchoolYear(department);
  const kinds = basketball.readKinds;
  const offer = await anOffer(department, basketball, {
    ...YEAR,
    readLines: [
      { readKindId: kinds.gameBall, counting: 'perGame', reads: 1, rateCents: 7500, teamIds: [football.teamId, volleyball.teamId] },
      { readKindId: kinds.concession, counting: 'perGame', reads: 1, rateCents: 4000 },
    ],
  });
  expect(offer.values.map((line: any) => line.count)).toEqual([4, 2]);
});

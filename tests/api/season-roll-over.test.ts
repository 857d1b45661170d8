import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { aDepartment, theBooksHold } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { anOpenOffer } from '../support/offers.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const NEXT = { name: 'Basketball 2027-28' };
const SIGNATURE = { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' };

/** Three years were agreed, 2.5 % more each year. */
async function aContractOfThreeYears(department: Department, season: Season, more: Record<string, unknown> = {}): Promise<any> {
  const offer = await anOpenOffer(department, season, { priceCents: 70_001, years: 3, increaseBasisPoints: 250, billingPlan: { kind: 'installments', installments: [{ on: '2026-12-01', amountCents: 30_001 }, { on: '2027-07-01', amountCents: 40_000 }] }, ...more });
  const { contractId } = await department.director.make(`/api/offers/${offer.id}/accept`, SIGNATURE);
  return department.director.look(`/api/contracts/${contractId}`);
}

const rollOver = (department: Department, season: Season, form: object = NEXT) => department.director.post(`/api/seasons/${season.seasonId}/roll-over`, form);

/** The tables that hold what a season was; rows that follow it are left out. */
const OLD: Record<string, string> = {
  season: 'id = $2', team: 'season_id = $2', game: 'season_id = $2', rate_card_line: 'season_id = $2', package: 'season_id = $2', term: 'season_id = $2',
  contract: 'id in (select contract_id from term where term.department_id = $1 and season_id = $2)',
  commitment: 'term_id in (select id from term where term.department_id = $1 and season_id = $2)',
  roster_entry: 'team_id in (select id from team where team.department_id = $1 and season_id = $2)',
  ledger_event: 'term_id in (select id from term where term.department_id = $1 and season_id = $2)',
  player: '$2::uuid is not null', copy_version: '$2::uuid is not null', invoice: '$2::uuid is not null',
};

async function digestOf({ ask, id }: Department, seasonId: string): Promise<Record<string, string>> {
  const digests: Record<string, string> = {};
  for (const [table, where] of Object.entries(OLD)) {
    const rows = await ask(`select to_jsonb(one) as row from ${table} as one where department_id = $1 and ${where} order by id`, [id, seasonId]);
    digests[table] = `${rows.length} ${createHash('sha256').update(JSON.stringify(rows)).digest('hex')}`;
  }
  return digests;
}

test('the next season has the teams without players, the prices, the packages, and of the old season nothing changes', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7500 });
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, benefitName: 'Banner at the Perch', priceCents: 33_333 });
  await director.make('/api/packages', { seasonId: season.seasonId, name: 'Copper', priceCents: 50_000, lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 6, rateCents: 7500 }] });
  const contract = await aContractOfThreeYears(department, season);
  await director.make('/api/invoices', { contractId: contract.id, throughDay: '2026-12-01', issuedOn: '2026-12-01' });
  const before = await digestOf(department, season.seasonId);
  const preview = await director.make(`/api/seasons/${season.seasonId}/roll-over-previews`, { ...NEXT, increaseBasisPoints: 300 });
  expect(await digestOf(department, season.seasonId)).toEqual(before);
  expect((await director.look('/api/seasons')).total).toBe(1);
  const made = await rollOver(department, season, { ...NEXT, increaseBasisPoints: 300 });
  expect(made.status).toBe(201);
  expect(preview).toEqual({ ...made.body, seasonId: null, contracts: made.body.contracts.map((one: any) => ({ ...one, nextContractId: null, nextNumber: null })) });
  expect(await digestOf(department, season.seasonId)).toEqual(before);
  expect([made.body.startsOn, made.body.endsOn]).toEqual(['2027-11-19', '2028-03-11']);
  expect(made.body.rateCard.map((one: any) => [one.name, one.beforeCents, one.priceCents])).toEqual([['Banner at the Perch', 33_333, 34_333], ['Sponsored game ball', 7500, 7725]]);
  expect(made.body.packages).toEqual([{ name: 'Copper', beforeCents: 50_000, priceCents: 51_500 }]);
  const teams = (await director.look(`/api/teams?seasonId=${made.body.seasonId}`)).data;
  expect(teams.map((team: any) => [team.label, team.headCoach, team.rosterSize]).sort()).toEqual([['Herons Varsity boys', null, 0], ['Kestrels Varsity boys', 'Bram Okonkwo', 0]]);
  expect(made.body.carriesOn).toMatchObject({ schools: 2, venues: 1, readKinds: 3, players: 3, playersWithSayAs: 3, playersKeptQuiet: 1 });
  const [rolled] = (await director.look(`/api/packages?seasonId=${made.body.seasonId}`)).data;
  expect(rolled.lines.map((line: any) => [line.quantity, line.rateCents])).toEqual([[6, 7725]]);
  await theBooksHold(department);
});

test('a year that was agreed is signed at once, at its price, with its days and bills moved along', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const game = season.games[0]!;
  const first = await aContractOfThreeYears(department, season, {
    exclusivities: [{ categoryId: season.categoryId, reach: 'season', startsOn: season.startsOn, endsOn: season.endsOn }],
    readLines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500, teamIds: [season.teamId], startsOn: '2026-12-04', blackoutDays: ['2026-12-25'], pinnedGameIds: [game.gameId], priority: 1 }],
  });
  const { body } = await rollOver(department, season);
  const [one] = body.contracts;
  expect(one).toMatchObject({ contractId: first.id, choice: 'carryOn', choices: ['carryOn', 'renew', 'leave'], isSigned: true, waits: [], yearNumber: 1, years: 3, nextYearNumber: 2, priceCents: 70_001, nextPriceCents: 71_751 });
  expect(one.notes).toEqual(['1 day without reads is not taken along: ask the sponsor for new ones.', '1 game promised aloud is not taken along: promise new ones when the schedule is there.']);
  const second = await director.look(`/api/contracts/${one.nextContractId}`);
  const newTeam = (await director.look(`/api/teams?seasonId=${body.seasonId}&isOurs=true`)).data[0];
  expect(second).toMatchObject({
    followsContractId: first.id, followsContractNumber: first.number, followsAs: 'year', yearNumber: 2, years: 3, increaseBasisPoints: 250, followedByContractId: null,
    term: { state: 'signed', startsOn: '2027-11-19', endsOn: '2028-03-11', signedByName: 'Hazel Juniper', priceCents: 71_751 },
    commitments: [{ reads: 6, teamIds: [newTeam.id], startsOn: '2027-12-03', blackoutDays: [], pinnedGameIds: [], priority: 1, standing: { owed: 6 } }],
    exclusivities: [{ reach: 'season', startsOn: '2027-11-19', endsOn: '2028-03-11' }],
  });
  expect(second.number).not.toBe(first.number);
  expect(second.term.billingPlan.installments.map((part: any) => [part.on, part.amountCents])).toEqual([['2027-12-01', 30_751], ['2028-07-01', 41_000]]);
  expect(await director.look(`/api/contracts/${first.id}`)).toMatchObject({ followedByContractId: second.id, followedByContractNumber: second.number, followedByAs: 'year', yearNumber: 1, term: { state: 'signed' } });
  // A game of the season that is over takes no read of the next one.
  expect((await director.post('/api/placements', { commitmentId: second.commitments[0].id, gameId: game.gameId, windowKey: 'pregame' })).body.code).toBe('placement-game-not-covered');
  const third = (await director.post(`/api/seasons/${body.seasonId}/roll-over`, { name: 'Basketball 2028-29' })).body.contracts[0];
  expect([third.isSigned, third.nextYearNumber, third.nextPriceCents]).toEqual([true, 3, 73_545]);
  const end = (await director.post(`/api/seasons/${(await director.look(`/api/contracts/${third.nextContractId}`)).term.seasonId}/roll-over-previews`, { name: 'Basketball 2029-30' })).body.contracts[0];
  expect([end.choice, end.isSigned, end.nextYearNumber]).toEqual(['renew', false, 1]);
});

test('the next year costs what was agreed with all that was added since, once, and no concession lowers it', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const first = await aContractOfThreeYears(department, season);
  await department.director.make(`/api/contracts/${first.id}/amend`, { commitmentId: first.commitments[0].id, reads: 1, priceCents: 8_000, amendedOn: '2026-11-25' });
  await department.director.make(`/api/contracts/${first.id}/lower-price`, { byCents: 5_000, on: '2026-11-26', reason: 'A kindness' });
  const [one] = (await rollOver(department, season)).body.contracts;
  // 700.01 and 80.00, and 2.5 % more; the bills come to it.
  expect(one).toMatchObject({ isSigned: true, priceCents: 73_001, nextPriceCents: 79_951 });
  const { installments } = (await department.director.look(`/api/contracts/${one.nextContractId}`)).term.billingPlan;
  expect(installments.reduce((sum: number, part: any) => sum + part.amountCents, 0)).toBe(79_951);
});

test('a draft that nobody signed keeps the teams of its season when that season is rolled over in its turn', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500, teamIds: [season.teamId] }] });
  const second = (await rollOver(department, season)).body;
  const draftId = second.contracts[0].nextContractId;
  const before = (await director.look(`/api/contracts/${draftId}`)).commitments[0].teamIds;
  expect(before).toEqual([(await director.look(`/api/teams?seasonId=${second.seasonId}&isOurs=true`)).data[0].id]);
  await director.make(`/api/seasons/${second.seasonId}/roll-over`, { name: 'Basketball 2028-29' });
  expect((await director.look(`/api/contracts/${draftId}`)).commitments[0].teamIds).toEqual(before);
});

test('what has no years left becomes a draft at the new prices, or is left as the director chooses', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 8000 });
  const renewed = await aSignedContract(department, season, { title: 'Renewed' });
  const left = await aSignedContract(department, season, { title: 'Left' });
  const draft = await aContract(department, season, { title: 'Never signed' });
  const ended = await aSignedContract(department, season, { title: 'Ended' });
  await director.make(`/api/contracts/${ended.id}/end`, { reason: 'The store closed' });
  const { body } = await rollOver(department, season, { ...NEXT, increaseBasisPoints: 1000, choices: [{ contractId: left.id, choice: 'leave' }, { contractId: draft.id, choice: 'renew' }] });
  const byId = new Map<string, any>(body.contracts.map((one: any) => [one.contractId, one]));
  expect([renewed, left, draft, ended].map(({ id }) => [byId.get(id).choice, byId.get(id).nextNumber])).toEqual([['renew', null], ['leave', null], ['leave', null], ['leave', null]]);
  // Six game balls at 88.00 by the new card, eight concession reads at 40.00 as before.
  expect(byId.get(renewed.id)).toMatchObject({ priceCents: 70_000, nextPriceCents: 70_000, cardCents: 84_800, isSigned: false });
  const next = await director.look(`/api/contracts/${byId.get(renewed.id).nextContractId}`);
  expect(next).toMatchObject({ followsAs: 'renewal', yearNumber: 1, years: 1, number: null, term: { state: 'draft' }, commitments: [{ rateCents: 8800 }, { rateCents: 4000 }] });
  expect((await director.remove(`/api/contracts/${next.id}`)).status).toBe(204);
  expect((await director.look(`/api/contracts/${renewed.id}`)).followedByContractId).toBe(null);
});

test('a year waits as a draft where it is on hold, paid in goods, shared over games, or in the way of another', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const byGame = await aContractOfThreeYears(department, season, { title: 'By the game', billingPlan: { kind: 'inFull', on: '2026-12-01' }, readLines: [{ readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 1, rateCents: 7500 }] });
  const held = await aContractOfThreeYears(department, season, { title: 'Held' });
  await director.make(`/api/contracts/${held.id}/hold`, { reason: 'Unpaid since January' });
  const { body } = await rollOver(department, season);
  const of = (id: string) => body.contracts.find((one: any) => one.contractId === id);
  expect([of(byGame.id).isSigned, of(byGame.id).waits]).toEqual([false, ['Its price is shared over games: the next year is a draft until the schedule is there, then sign it.']]);
  expect([of(held.id).isSigned, of(held.id).waits, of(held.id).notes.length]).toEqual([false, ['It is on hold: the next year is a draft until you sign it.'], 1]);
  const waiting = await director.look(`/api/contracts/${of(byGame.id).nextContractId}`);
  expect([waiting.followsAs, waiting.yearNumber, waiting.term.state, waiting.number]).toEqual(['year', 2, 'draft', null]);
  const teams = (await director.look(`/api/teams?seasonId=${body.seasonId}`)).data;
  const team = (isOurs: boolean) => teams.find((one: any) => one.isOurs === isOurs).id;
  await director.make('/api/games', { seasonId: body.seasonId, level: 'varsity', homeTeamId: team(true), visitorTeamIds: [team(false)], playedOn: '2027-12-03', startsAtClock: '19:00', venueId: season.venueId });
  expect((await director.make(`/api/contracts/${waiting.id}/sign`, { ...SIGNATURE, signedOn: '2027-05-01' })).standing).toMatchObject({ owed: 1, priceCents: 71_751 });
});

test('a season is rolled over once, by the director alone, and a doubled send makes one', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  await aContractOfThreeYears(department, season);
  expect((await department.bookkeeper.post(`/api/seasons/${season.seasonId}/roll-over`, NEXT)).status).toBe(403);
  expect((await rollOver(department, season, { ...NEXT, startsOn: '2027-03-01', endsOn: '2028-03-01' })).body.code).toBe('season-overlaps-before');
  expect((await rollOver(department, season, { name: 'Basketball 2026-27' })).body.code).toBe('season-name-taken');
  expect((await rollOver(department, season, { ...NEXT, startsOn: '2027-11-19', endsOn: '2027-11-01' })).body.code).toBe('ends-before-it-starts');
  const key = 'roll-over-of-the-season';
  const send = () => department.director.send('POST', `/api/seasons/${season.seasonId}/roll-over`, NEXT, { key });
  const [one, other] = [await send(), await send()];
  expect([one.status, other.status, other.body.seasonId]).toEqual([201, 201, one.body.seasonId]);
  expect((await rollOver(department, season, { name: 'Once more' })).body.code).toBe('season-followed-already');
  expect((await department.director.look('/api/contracts')).total).toBe(2);
});

test('two who roll a season over at the same moment make one next season', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  await aContractOfThreeYears(department, season);
  const answers = await Promise.all(['One', 'Other'].map((name) => rollOver(department, season, { name })));
  expect(answers.map((answer) => answer.body.code ?? answer.status).sort()).toEqual([201, 'season-followed-already']);
});

test('who comes back is known again by name: how it is said and what the family chose stay, and of two with one name it is asked', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const [old] = (await director.look(`/api/teams?seasonId=${season.seasonId}&isOurs=true`)).data;
  const junior = await director.make('/api/teams', { seasonId: season.seasonId, schoolId: season.schoolId, name: 'Sophomores', level: 'sophomore' });
  const roster = (await director.look(`/api/teams/${old.id}`)).roster;
  // Two are called Łukasz Wren, and one of them is not announced at all.
  await director.put(`/api/teams/${junior.id}/roster`, { players: [{ number: '8', name: 'Łukasz Wren', isNew: true, sayAs: 'LOO-kash wren', announce: 'silence' }] }, { version: junior.version });
  const { seasonId } = (await rollOver(department, season)).body;
  const team = (await director.look(`/api/teams?seasonId=${seasonId}&isOurs=true`)).data.find((one: any) => one.level === 'varsity');
  const put = async (players: object[]) => director.put(`/api/teams/${team.id}/roster`, { players }, { version: (await director.look(`/api/teams/${team.id}`)).version });
  const written = await put([{ number: '12', name: 'Xochitl Marlowe', announce: 'name' }, { number: '1', name: 'Nguyen Tam' }]);
  expect(written.body.roster.map((line: any) => [line.name, line.sayAs, line.announce]).sort()).toEqual([['Nguyen Tam', 'nwin tahm', 'name'], ['Xochitl Marlowe', 'SO-cheel MAR-low', 'aMember']]);
  const asked = await put([{ number: '3', name: 'Lukasz Wren' }]);
  expect([asked.status, asked.body.code, asked.body.errors.players[0].name]).toEqual([422, 'player-name-twice', expect.stringContaining('3 of Varsity boys, Basketball 2026-27; 8 of Sophomores, Basketball 2026-27')]);
  const csv = 'Number,Name\n3,Lukasz Wren\n';
  const shown = await director.post('/api/imports/rosters', { seasonId, teamId: team.id, csv, confirm: false, keepMissing: true });
  expect([shown.body.rows[0].action, shown.body.rows[0].reason]).toEqual(['refuse', 'player-name-twice']);
  const known = roster.find((line: any) => line.number === '3').playerId;
  const chosen = await put([{ number: '3', name: 'Łukasz Wren', playerId: known }, { number: '4', name: 'Łukasz Wren', isNew: true }]);
  expect(chosen.body.roster.map((line: any) => [line.number, line.sayAs, line.announce])).toEqual([['3', 'WOO-kash ren', 'name'], ['4', null, 'name']]);
  // Chosen by hand or not, the family's silence stays with the student.
  const silent = (await director.look(`/api/players?schoolId=${season.schoolId}&q=Wren`)).data.find((player: any) => player.announce === 'silence');
  const quiet = await put([{ number: '9', name: 'Łukasz Wren', playerId: silent.id, announce: 'name' }]);
  expect(quiet.body.roster.map((line: any) => [line.number, line.sayAs, line.announce])).toEqual([['9', 'LOO-kash wren', 'silence']]);
  await put([{ number: '3', name: 'Łukasz Wren', playerId: known }]);
  const names = (await director.look(`/api/players?schoolId=${season.schoolId}&q=Wren`)).data;
  expect(names.map((player: any) => player.lastSeen).sort()).toEqual(['3 of Varsity boys, Basketball 2027-28', '8 of Sophomores, Basketball 2026-27', null]);
});

import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** Three reads at halftime of each game, by the profile of basketball. */
const HALFTIME_PLACES = 3;

interface Room {
  department: Department;
  season: Season;
  /** asks for concession reads at halftime, and for what else is named */
  ask: (lines: Record<string, unknown>[], more?: Record<string, unknown>) => Promise<any>;
  halftime: (reads: number, more?: Record<string, unknown>) => Record<string, unknown>;
  sell: (sponsor: string, reads: number, more?: Record<string, unknown>) => Promise<any>;
}

async function aRoom(games = 4): Promise<Room> {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, games);
  const halftime = (reads: number, more: Record<string, unknown> = {}) => ({ readKindId: season.readKinds.concession, counting: 'perTerm', reads, windowKinds: ['halftime'], ...more });
  return {
    department,
    season,
    halftime,
    ask: (lines, more = {}) => director.make('/api/plan/promise-checks', { seasonId: season.seasonId, lines, ...more }),
    sell: async (name, reads, more = {}) => {
      const category = await director.make('/api/sponsor-categories', { name: `Category of ${name}` });
      const sponsor = await director.make('/api/sponsors', { name, categoryId: category.id });
      return aSignedContract(department, { ...season, sponsorId: sponsor.id }, { title: name, commitments: [{ ...halftime(reads), rateCents: 4_000, ...more }] });
    },
  };
}

test('the last read that fits is promised, and the first that does not is refused with what is full', async () => {
  const { ask, halftime, sell } = await aRoom();
  await sell('Snowmelt Creamery', 7);
  expect(await ask([halftime(5)])).toMatchObject({ can: 'yes', asked: 5, atLeast: 5, atMost: 5, shortBefore: 0, because: [], sentence: 'Yes: all five reads fit, and everything promised before stays whole.' });
  expect(await ask([halftime(6)])).toMatchObject({
    can: 'no', asked: 6, atLeast: 5, atMost: 5, shortBefore: 0, sentence: 'No: five of the six reads fit, and no plan holds more.',
    because: ['Halftime of the four games from Dec 4 to Dec 25 is full: Snowmelt Creamery and this offer together need 13 places there, twelve exist.'],
  });
});

test('the plan that stands behind a yes is shown month by month', async () => {
  const { ask, halftime, department, season } = await aRoom(6);
  const answer = await ask([halftime(9), { readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 1 }]);
  expect(answer.can).toBe('yes');
  const [concession, ball] = answer.lines;
  expect(answer.months.map((month: any) => [month.month, month.games, month.reads[ball.id]])).toEqual([['2150-12', 4, 4], ['2151-01', 2, 2]]);
  expect(answer.months.reduce((sum: number, month: any) => sum + month.reads[concession.id], 0)).toBe(9);
  expect(await department.ask('select 1 from placement where department_id = $1', [department.id])).toEqual([]);
});

test('what was short before is told by itself and not blamed on the offer', async () => {
  const { ask, halftime, sell, season } = await aRoom(1);
  await sell('Snowmelt Creamery', HALFTIME_PLACES + 3);
  expect(await ask([{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 1 }])).toMatchObject({
    can: 'yes', shortBefore: 3, sentence: 'Yes: the read fits, and nothing promised before loses a read by it.', because: ['Already three reads short before this, promised to others.'],
  });
  const answer = await ask([halftime(1)]);
  expect(answer).toMatchObject({ can: 'no', atLeast: 0, shortBefore: 3 });
  expect(answer.because.at(-1)).toBe('Already three reads short before this, promised to others.');
});

test('ten thousand reads are answered like any other', async () => {
  const { ask, halftime } = await aRoom();
  expect(await ask([halftime(10_000)])).toMatchObject({ can: 'no', asked: 10_000, atLeast: 12, atMost: 12, sentence: 'No: twelve of the 10,000 reads fit, and no plan holds more.' });
});

test('several lines are told alone and together', async () => {
  const { ask, halftime } = await aRoom(1);
  const answer = await ask([halftime(2), halftime(2)]);
  expect(answer).toMatchObject({ can: 'no', asked: 4, atLeast: 3, atMost: 3 });
  expect(answer.lines.map((line: any) => [line.asked, line.atLeastAlone, line.atMostAlone])).toEqual([[2, 2, 2], [2, 2, 2]]);
});

test('a line that counts game by game names the games that are full', async () => {
  const { ask, halftime, sell, season } = await aRoom(3);
  await sell('Snowmelt Creamery', HALFTIME_PLACES, { startsOn: season.games[1]!.playedOn, endsOn: season.games[1]!.playedOn });
  const answer = await ask([halftime(1, { counting: 'perGame' })]);
  expect(answer).toMatchObject({ can: 'no', asked: 3, atLeast: 2 });
  expect(answer.lines[0]).toMatchObject({ shortGames: [{ gameId: season.games[1]!.gameId, label: 'Herons at Kestrels', playedOn: '2150-12-11' }], shortGamesSentence: 'Too few places for it: Herons at Kestrels on Dec 11.' });
});

test('what is read on occurrence needs no place', async () => {
  const { ask, halftime, season } = await aRoom(1);
  const line = { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 10, readsAtMost: 40 };
  expect(await ask([line])).toMatchObject({ can: 'yes', asked: 0, sentence: 'Yes: these reads need no place of their own, they are read whenever it happens.', lines: [{ asked: 0, counting: 'onOccurrence' }] });
  expect(await ask([line, halftime(4)])).toMatchObject({ can: 'no', asked: 4, atLeast: 3 });
});

const GAME_FACTS: [string, Record<string, unknown>][] = [
  ['belongs to the state association', { class: 'stateSeries' }],
  ['is an invitational', { class: 'invitational' }],
  ['is not announced', { announced: false }],
  ['has windows that are the conference’s', { windowsOwnedBy: 'conference' }],
];

test.each(GAME_FACTS)('a game that %s holds no reads', async (_, facts) => {
  const { ask, halftime, department, season } = await aRoom(2);
  const path = `/api/games/${season.games[0]!.gameId}`;
  expect((await department.director.patch(path, facts, { version: (await department.director.look(path)).version })).status).toBe(200);
  expect(await ask([halftime(HALFTIME_PLACES)])).toMatchObject({ can: 'yes' });
  expect(await ask([halftime(HALFTIME_PLACES + 1)])).toMatchObject({ can: 'no', atLeast: HALFTIME_PLACES });
});

test('a season whose windows are all somebody else’s says so', async () => {
  const { ask, halftime, department, season } = await aRoom(1);
  const path = `/api/games/${season.games[0]!.gameId}`;
  await department.director.patch(path, { windowsOwnedBy: 'association' }, { version: (await department.director.look(path)).version });
  expect(await ask([halftime(2)])).toMatchObject({ can: 'no', atLeast: 0, because: ['Halftime of Herons at Kestrels on Dec 4 has no place for a sponsor read: this offer needs two places there.'] });
});

test('on a sponsor’s blackout day nothing is read', async () => {
  const { ask, halftime, season } = await aRoom(2);
  const blackoutDays = [season.games[0]!.playedOn];
  expect(await ask([halftime(HALFTIME_PLACES, { blackoutDays })])).toMatchObject({ can: 'yes' });
  expect(await ask([halftime(HALFTIME_PLACES + 1, { blackoutDays })])).toMatchObject({ can: 'no', atMost: HALFTIME_PLACES });
});

test('where no home game is left there is no game for it', async () => {
  const { ask, halftime, season } = await aRoom(0);
  const words = 'and there is no game for them: none that we announce at home and that is still to come falls on these teams, levels and days.';
  expect(await ask([halftime(2)])).toMatchObject({ can: 'no', asked: 2, atLeast: 0, atMost: 0, because: [`This offer needs two reads, ${words}`], months: [] });
  expect(await ask([halftime(1, { counting: 'perGame' })])).toMatchObject({ can: 'no', asked: 0, sentence: 'No: there is no game for these reads.' });
  expect(season.games).toEqual([]);
});

test('one game of two lines without any is a no, whatever the other line says', async () => {
  const { ask, halftime, season } = await aRoom(1);
  expect(await ask([halftime(1), halftime(1, { counting: 'perGame', startsOn: season.startsOn, endsOn: season.startsOn })])).toMatchObject({ can: 'no', sentence: 'No: there is no game for some of these reads.' });
});

test('a blocked category is a no that says so', async () => {
  const { ask, halftime, department } = await aRoom(1);
  const category = await department.director.make('/api/sponsor-categories', { name: 'Vaping', isBlocked: true });
  expect(await ask([halftime(1)], { categoryId: category.id })).toMatchObject({
    can: 'no', sentence: 'No: whatever the places, this sponsor cannot be promised it as it is.', because: [expect.stringContaining('Vaping')],
  });
  expect(await ask([halftime(1)])).toMatchObject({ can: 'yes' });
});

test('a game ball of one sponsor is not sold to a second one', async () => {
  const { ask, sell, season } = await aRoom(3);
  await sell('Pinyon Print Works', 3, { readKindId: season.readKinds.gameBall, windowKinds: [], counting: 'perGame', reads: 1 });
  const answer = await ask([{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 1 }], { sponsorId: season.sponsorId });
  expect(answer).toMatchObject({ can: 'no', atLeast: 0, shortBefore: 0 });
  expect(answer.because[0]).toBe('Sponsored game ball is sold to at most one sponsor in a game: in the three games from Dec 4 to Dec 18 Pinyon Print Works and this offer together need four reads, three fit.');
});

test('a form that makes no sense is refused at its field', async () => {
  const { halftime, department, season } = await aRoom(1);
  const refused = (lines: Record<string, unknown>[], more = {}) => department.director.post('/api/plan/promise-checks', { seasonId: season.seasonId, lines, ...more });
  expect(await refused([halftime(1, { leastPerGame: 3, mostPerGame: 2 })])).toMatchObject({ status: 422, body: { code: 'least-above-most', errors: { lines: { 0: { leastPerGame: expect.any(String) } } } } });
  expect(await refused([halftime(1, { leastPerGame: 2, mostPerGame: 2 })])).toMatchObject({ status: 200 });
  expect(await refused([halftime(1, { startsOn: '2151-01-02', endsOn: '2151-01-01' })])).toMatchObject({ status: 422, body: { code: 'ends-before-it-starts' } });
  expect(await refused([])).toMatchObject({ status: 400 });
  expect(await refused([halftime(1)], { seasonId: season.teamId })).toMatchObject({ status: 422, body: { code: 'unknown-season' } });
  expect(await refused([halftime(1, { readKindId: season.teamId })])).toMatchObject({ status: 422, body: { code: 'unknown-read-kind' } });
  expect(await refused([halftime(1)], { sponsorId: season.teamId })).toMatchObject({ status: 422, body: { code: 'unknown-sponsor' } });
});

test('a draft contract is checked as it stands, and a signed one no more', async () => {
  const { department, season, halftime } = await aRoom(1);
  const draft = await aContract(department, season, { commitments: [{ ...halftime(4), rateCents: 4_000 }] });
  const answer = await department.director.make(`/api/contracts/${draft.id}/promise-checks`);
  expect(answer).toMatchObject({ can: 'no', atMost: 3, because: ['Halftime of Herons at Kestrels on Dec 4 is full: this contract needs four places there, three exist.'] });
  expect(answer.lines[0].id).toBe(draft.commitments[0].id);
  const signed = await aSignedContract(department, season, { commitments: [{ ...halftime(1), rateCents: 4_000 }] });
  expect(await department.director.post(`/api/contracts/${signed.id}/promise-checks`)).toMatchObject({ status: 422, body: { code: 'contract-not-a-draft' } });
});

test('whoever may see contracts may ask, and nobody else', async () => {
  const { department, season, halftime } = await aRoom(1);
  const form = { seasonId: season.seasonId, lines: [halftime(1)] };
  expect((await department.bookkeeper.post('/api/plan/promise-checks', form)).status).toBe(200);
  expect((await department.announcer.post('/api/plan/promise-checks', form)).status).toBe(403);
});

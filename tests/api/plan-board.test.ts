import { v7 } from 'uuid';
import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

interface Board {
  department: Department;
  season: Season;
  /** concession reads of Juniper & Pike: the first in halftime, the second in the first time-out of the first game */
  reads: any[];
  commitmentId: string;
}

/** Three Fridays, two concession reads of eight in their places. */
async function aBoard(): Promise<Board> {
  const department = await aDepartment();
  const season = await aLaterSeason(department);
  const contract = await aSignedContract(department, season);
  const commitmentId = contract.commitments[1].id;
  const place = (windowKey: string) => department.director.make('/api/placements', { commitmentId, gameId: season.games[0]!.gameId, windowKey });
  return { department, season, commitmentId, reads: [await place('halftime'), await place('timeOut1')] };
}

/** A rival of the same category with a read at halftime of the second game. */
async function withRival({ department, season }: Board, separation = 'window'): Promise<any> {
  const { director } = department;
  const sponsor = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId });
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4_000, separation }];
  const rival = await aSignedContract(department, { ...season, sponsorId: sponsor.id }, { title: 'Tire reads', commitments, priceCents: 12_000 });
  return director.make('/api/placements', { commitmentId: rival.commitments[0].id, gameId: season.games[1]!.gameId, windowKey: 'halftime' });
}

const lock = ({ department, season }: Board, game: number) => department.ask('insert into night_lock (department_id, id, night_id, why) values ($1, $2, $3, $4)', [department.id, v7(), season.games[game]!.nightId, 'person']);
const boardOf = ({ department, season }: Board) => department.director.look(`/api/seasons/${season.seasonId}/board`);
const change = ({ department, season }: Board, changes: unknown[], more = {}) => department.director.post(`/api/seasons/${season.seasonId}/board-changes`, { changes, ...more });
const movesTo = (read: any, gameId: string, windowKey: string, place?: number) => ({ kind: 'move', placementId: read.id, version: read.version, gameId, windowKey, ...(place ? { place } : {}) });

describe('the board shows the season', () => {
  test('games with their windows, promises, reads with their versions, and the version of the plan', async () => {
    const board = await aBoard();
    await lock(board, 2);
    const view = await boardOf(board);
    expect(view.season.games.map((game: any) => game.isLocked)).toEqual([false, false, true]);
    expect(view.games.find((game: any) => game.gameId === board.season.games[2]!.gameId).lock).toEqual({ why: 'person', note: null });
    expect(view.reads.map((read: any) => [read.sponsorName, read.readKindName, read.windowKey, read.isPinned])).toEqual([['Juniper & Pike Hardware', 'Concession read', 'halftime', true], ['Juniper & Pike Hardware', 'Concession read', 'timeOut1', true]]);
    expect(view.season.promises.flatMap((promise: any) => promise.slots.map((slot: any) => slot.reads))).toEqual([6, 8]);
    expect(view.teams).toEqual([{ id: board.season.teamId, name: 'Varsity boys' }]);
    expect(view.planVersion).toBeGreaterThan(1);
  });

  test('a bookkeeper looks at it and plans nothing', async () => {
    const board = await aBoard();
    expect((await board.department.bookkeeper.get(`/api/seasons/${board.season.seasonId}/board`)).status).toBe(200);
    expect((await board.department.bookkeeper.post(`/api/placements/${board.reads[0].id}/pin`, {}, { version: 1 })).body.code).toBe('role-missing');
  });
});

describe('a read is moved', () => {
  test('to another game: it keeps its id, goes to that night, and the plan moves on', async () => {
    const board = await aBoard();
    const before = await boardOf(board);
    const [, second] = board.season.games;
    const moved = await board.department.director.post(`/api/placements/${board.reads[0].id}/move`, { gameId: second!.gameId, windowKey: 'timeOut2' }, { version: 1 });
    expect(moved.body).toMatchObject({ id: board.reads[0].id, gameId: second!.gameId, windowKey: 'timeOut2', place: 1, isPinned: true, version: 2 });
    expect((await board.department.ask<{ night_id: string }>('select night_id from placement where department_id = $1 and id = $2', [board.department.id, board.reads[0].id]))[0]!.night_id).toBe(second!.nightId);
    expect((await boardOf(board)).planVersion).toBe(before.planVersion + 1);
  });

  test('only from the version that was seen', async () => {
    const board = await aBoard();
    const path = `/api/placements/${board.reads[0].id}/move`;
    const form = { gameId: board.season.games[1]!.gameId, windowKey: 'halftime' };
    expect((await board.department.director.post(path, form)).body.code).toBe('version-missing');
    expect((await board.department.director.post(path, form, { version: 2 })).body.code).toBe('stale-version');
    expect((await board.department.director.post(path, form, { version: 1 })).status).toBe(200);
    expect((await board.department.director.post(path, form, { version: 1 })).body.code).toBe('stale-version');
  });

  test('not into what holds no more of it', async () => {
    const board = await aBoard();
    const [first, second] = board.season.games;
    const to = (gameId: string, windowKey: string, place?: number) => board.department.director.post(`/api/placements/${board.reads[0].id}/move`, { gameId, windowKey, ...(place ? { place } : {}) }, { version: 1 });
    expect((await to(first!.gameId, 'timeOut1', 1)).body.code).toBe('placement-place-taken');
    expect((await to(first!.gameId, 'pregame')).body).toMatchObject({ code: 'window-not-of-the-kind' });
    expect((await to(first!.gameId, 'timeOut9')).body.code).toBe('unknown-window');
    expect((await to(v7(), 'halftime')).body.code).toBe('placement-game-not-open');
    const places = (await boardOf(board)).season.games[1].windows.find((window: any) => window.key === 'timeOut1').places;
    for (let place = 1; place <= places; place += 1) await board.department.director.make('/api/placements', { commitmentId: board.commitmentId, gameId: second!.gameId, windowKey: 'timeOut1' });
    expect((await to(second!.gameId, 'timeOut1')).body).toMatchObject({ code: 'window-full', override: 'never' });
  });

  test('neither into a locked night nor out of it, nor within it', async () => {
    const board = await aBoard();
    const to = (read: any, game: number, windowKey: string) => board.department.director.post(`/api/placements/${read.id}/move`, { gameId: board.season.games[game]!.gameId, windowKey }, { version: 1 });
    await lock(board, 1);
    expect((await to(board.reads[0], 1, 'halftime')).body.code).toBe('night-locked');
    await lock(board, 0);
    expect((await to(board.reads[0], 2, 'halftime')).body.code).toBe('night-locked');
    expect((await to(board.reads[0], 0, 'timeOut2')).body.code).toBe('night-locked');
  });

  test('not once the table has logged it', async () => {
    const board = await aBoard();
    const [first] = board.season.games;
    const device = new TableDevice();
    const entry = { ...device.read(board.commitmentId, first!.gameId, 1), placementId: board.reads[0].id, cueKey: board.reads[0].cueKey, windowKey: 'halftime' };
    await board.department.director.make(`/api/nights/${first!.nightId}/log`, { deviceId: device.deviceId, entries: [entry] });
    const moved = await board.department.director.post(`/api/placements/${board.reads[0].id}/move`, { gameId: board.season.games[1]!.gameId, windowKey: 'halftime' }, { version: 1 });
    expect(moved.body.code).toBe('placement-already-logged');
  });

  test('beside a competitor only where the director says why; then it is pinned there with the reason', async () => {
    const board = await aBoard();
    await withRival(board);
    const move = (more = {}) => board.department.director.post(`/api/placements/${board.reads[0].id}/move`, { gameId: board.season.games[1]!.gameId, windowKey: 'halftime', ...more }, { version: 1 });
    const refused = await move();
    expect(refused.body).toMatchObject({ code: 'competitors-too-close', override: 'director' });
    expect(refused.body.detail).toContain('Juniper & Pike Hardware and Blue Lantern Tire would stand next to each other in halftime.');
    expect((await move({ overrideReason: 'Both owners asked for it' })).body).toMatchObject({ windowKey: 'halftime', isPinned: true, besideCompetitorReason: 'Both owners asked for it' });
  });

  test('beside a competitor that asked for no distance', async () => {
    const board = await aBoard();
    await withRival(board, 'none');
    await board.department.ask(`update commitment set separation = 'none' where department_id = $1`, [board.department.id]);
    const moved = await board.department.director.post(`/api/placements/${board.reads[0].id}/move`, { gameId: board.season.games[1]!.gameId, windowKey: 'halftime' }, { version: 1 });
    expect(moved.status).toBe(200);
  });
});

describe('a read is pinned', () => {
  test('and unpinned, from the version that was seen', async () => {
    const board = await aBoard();
    const act = (verb: string, version: number) => board.department.director.post(`/api/placements/${board.reads[0].id}/${verb}`, {}, { version });
    expect((await act('unpin', 1)).body).toMatchObject({ isPinned: false, version: 2 });
    expect((await act('pin', 1)).body.code).toBe('stale-version');
    expect((await act('pin', 2)).body).toMatchObject({ isPinned: true, version: 3 });
    expect((await board.department.director.post(`/api/placements/${v7()}/pin`, {}, { version: 1 })).body.code).toBe('not-found');
  });
});

describe('several changes are one', () => {
  test('two reads change places, one is added and one is unpinned', async () => {
    const board = await aBoard();
    const [half, timeOut] = board.reads;
    const game = board.season.games[0]!.gameId;
    const answer = await change(board, [
      movesTo(half, game, 'timeOut1', 1), movesTo(timeOut, game, 'halftime', 1),
      { kind: 'add', promiseId: board.commitmentId, gameId: board.season.games[1]!.gameId, windowKey: 'halftime' },
    ]);
    expect(answer.status).toBe(200);
    expect(answer.body.reads.map((read: any) => [read.windowKey, read.place, read.isPinned])).toEqual([['timeOut1', 1, true], ['halftime', 1, true], ['halftime', 1, false]]);
    const again = await change(board, [{ kind: 'unpin', placementId: half.id, version: answer.body.reads[0].version }, { kind: 'remove', placementId: timeOut.id, version: answer.body.reads[1].version }]);
    expect(again.body.reads).toMatchObject([{ isPinned: false }, null]);
    expect((await boardOf(board)).reads).toHaveLength(2);
  });

  test('one that is refused keeps all back, and each is named with its place in the list', async () => {
    const board = await aBoard();
    await lock(board, 2);
    const before = await boardOf(board);
    const [half, timeOut] = board.reads;
    const answer = await change(board, [movesTo(half, board.season.games[1]!.gameId, 'halftime'), movesTo(timeOut, board.season.games[2]!.gameId, 'halftime'), { kind: 'remove', placementId: v7(), version: 1 }]);
    expect(answer.body).toMatchObject({ code: 'board-changes-refused', errors: { changes: { 2: 'This read is not in the plan of this season any more. Look at the board again.' } } });
    const walled = await change(board, [movesTo(half, board.season.games[1]!.gameId, 'halftime'), movesTo(timeOut, board.season.games[2]!.gameId, 'halftime')]);
    expect(walled.body.errors.changes).toEqual({ 1: 'The night of Herons at Kestrels is locked.' });
    expect(await boardOf(board)).toEqual(before);
  });

  test('no more is placed than is owed: the eighth read passes, the ninth does not', async () => {
    const board = await aBoard();
    const add = (game: number, windowKey: string) => ({ kind: 'add', promiseId: board.commitmentId, gameId: board.season.games[game]!.gameId, windowKey });
    const six = [add(1, 'halftime'), add(1, 'timeOut1'), add(1, 'timeOut2'), add(2, 'halftime'), add(2, 'timeOut1'), add(2, 'timeOut2')];
    expect((await change(board, six)).status).toBe(200);
    expect((await change(board, [add(0, 'timeOut2')])).body).toMatchObject({ code: 'placement-more-than-owed', detail: 'Juniper & Pike Hardware would have more than the 8 reads still to be placed there.' });
  });

  test('a change that names no target or nothing known is refused', async () => {
    const board = await aBoard();
    expect((await change(board, [{ kind: 'move', placementId: board.reads[0].id, version: 1 }])).body.code).toBe('board-change-without-target');
    expect((await change(board, [{ kind: 'add', promiseId: v7(), gameId: board.season.games[0]!.gameId, windowKey: 'halftime' }])).body.code).toBe('unknown-commitment');
    expect((await change(board, [])).body.code).toBe('malformed');
  });
});

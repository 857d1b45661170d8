import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

async function importTwice({ director }: Department, what: string, csv: string, seasonId: string) {
  const dry = await director.make(`/api/imports/${what}`, { csv, seasonId, confirm: false });
  const done = await director.make(`/api/imports/${what}`, { csv, seasonId, confirm: dry.planDigest });
  const again = await director.make(`/api/imports/${what}`, { csv, seasonId, confirm: false });
  return { dry, done, again };
}

const NOTHING = { create: 0, change: 0, move: 0, drop: 0 };

test('a schedule writes nothing until it is confirmed, and the same file again changes nothing', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { seasonId } = await aSeason(department, 0);
  const csv = 'id,date,time,team,opponent,venue,home/away\nE1,12/4/2026,7:00 PM,Varsity boys,Port Ansel,Alder Fieldhouse,H\nE2,12/8/2026,,Varsity boys,Quarry Bend,,A\n';
  const dry = await director.make('/api/imports/schedule', { csv, seasonId, confirm: false });
  expect([dry.done, dry.summary.create, (await director.look(`/api/games?seasonId=${seasonId}`)).total]).toEqual([false, 2, 0]);
  const { done, again } = await importTwice(department, 'schedule', csv, seasonId);
  expect([done.done, (await director.look(`/api/games?seasonId=${seasonId}`)).total]).toEqual([true, 2]);
  expect(again.summary).toMatchObject({ ...NOTHING, same: 2 });
  const stale = await director.post('/api/imports/schedule', { csv, seasonId, confirm: dry.planDigest });
  expect([stale.status, stale.body.code]).toEqual([409, 'import-changed-since']);
});

test('a game with a log stays when the file no longer names it; one without is taken off', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { seasonId, games } = await aSeason(department, 3);
  const entry = { id: crypto.randomUUID(), device: crypto.randomUUID() };
  await department.ask(
    `insert into log_entry (department_id, id, night_id, game_id, number, device_id, sequence, kind, occurred_at, content_digest)
     values ($1, $2, $3, $4, 1, $5, 1, 'note', now(), 'x')`,
    [department.id, entry.id, games[1]!.nightId, games[1]!.gameId, entry.device],
  );
  const csv = 'date,time,team,opponent,venue\n2026-12-04,7:00 PM,Varsity boys,Port Ansel,Alder Fieldhouse\n';
  const { dry, again } = await importTwice(department, 'schedule', csv, seasonId);
  expect(dry.summary).toMatchObject({ same: 1, drop: 1, refuse: 1 });
  expect((await director.look(`/api/games?seasonId=${seasonId}`)).data.map((game: { id: string }) => game.id)).toEqual([games[0]!.gameId, games[1]!.gameId]);
  expect(again.summary).toMatchObject({ ...NOTHING, same: 1, refuse: 1 });
});

test('a roster without accents finds its players, and never loosens what a family chose', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { seasonId, teamId } = await aSeason(department, 0);
  const csv = 'team,number,name,announce\nVarsity boys,3,Lukasz Wren,\nVarsity boys,12,Xochitl Marlowe,yes\nVarsity boys,0,Siobhán Reyes,\n';
  const { dry, again } = await importTwice(department, 'rosters', csv, seasonId);
  expect(dry.summary).toMatchObject({ create: 1, same: 2, drop: 1 });
  const { roster } = await director.look(`/api/teams/${teamId}`);
  expect(roster.map((line: { number: string; name: string; announce: string }) => [line.number, line.name, line.announce])).toEqual([
    ['0', 'Siobhán Reyes', 'name'],
    ['3', 'Łukasz Wren', 'name'],
    ['12', 'Xochitl Marlowe', 'aMember'],
  ]);
  expect(again.summary).toMatchObject({ ...NOTHING, same: 3 });
});

test('contracts come in as drafts, and a signed one is never changed by a file', async () => {
  const department = await aDepartment();
  const { director } = department;
  const { seasonId } = await aSeason(department, 2);
  const csv = (count: number) => `contract number,sponsor,category,read kind,count,price\nK-7,Snowmelt Creamery,Food,Concession read,${count},240.00\n`;
  const { done, again } = await importTwice(department, 'contracts', csv(4), seasonId);
  expect([done.done, done.summary.create, again.summary]).toEqual([true, 2, expect.objectContaining({ ...NOTHING, same: 2 })]);
  const [contract] = (await director.look(`/api/contracts?seasonId=${seasonId}`)).data;
  expect([contract.outsideId, contract.term.state, contract.term.priceCents]).toEqual(['K-7', 'draft', 24_000]);
  await director.make(`/api/contracts/${contract.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Rhea Lindqvist' });
  const late = await director.make('/api/imports/contracts', { csv: csv(5), seasonId, confirm: false });
  expect(late.rows.map((row: { reason?: string }) => row.reason)).toContain('import-contract-signed');
});

test.each([
  ['date,team\n"x', 422, 'file-unreadable'],
  ['date,team,opponent\n', 422, 'file-empty'],
  ['team,opponent\nVarsity boys,Port Ansel\n', 422, 'heading-missing'],
  ['date,team,opponent\n2026-12-04,Varsity boys\n', 422, 'file-row-width'],
  ['date\u0000', 422, 'file-not-text'],
])('the file %j is refused with %i %s', async (csv, status, code) => {
  const department = await aDepartment();
  const { seasonId } = await aSeason(department, 0);
  const answer = await department.director.post('/api/imports/schedule', { csv, seasonId, confirm: false });
  expect([answer.status, answer.body.code]).toEqual([status, code]);
});

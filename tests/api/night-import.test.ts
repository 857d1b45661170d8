import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';

const DECEMBER = { overrideReason: 'the test does not wait for the night' };
const LATE = { reason: 'The tablet was in the bus until Monday' };

async function aTable() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season);
  const { gameId, nightId } = season.games[0]!;
  const device = new TableDevice();
  const read = (cue: number, outcome = 'given', reason?: string) => device.read(contract.commitments[0].id, gameId, cue, outcome, reason);
  const send = (entries: unknown[]) => department.announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  const file = (entries: object[], more = {}) => ({ format: 'rafterline-table-entries', version: 1, nightId, nightTitle: 'Herons at Kestrels', entries: entries.map((entry) => ({ deviceId: device.deviceId, ...entry })), ...more });
  const importing = (body: object) => department.director.post(`/api/nights/${nightId}/log/import`, body);
  return { department, season, contract, gameId, nightId, device, read, send, file, importing };
}

test('a file from a device is taken in once, whichever way its entries come', async () => {
  const { department, nightId, device, read, send, file, importing } = await aTable();
  const [first, second, third] = [read(1), read(2), device.entry({ kind: 'foul' })];
  await send([first]);
  const answer = await importing(file([third, second, first]));
  expect(answer.body).toMatchObject({ sentence: '3 entries in the file: 1 taken in, 1 there already, 1 refused.', results: [{ status: 'refused', code: 'foul-without-team' }, { status: 'stored', number: 2 }, { status: 'already', number: 1 }] });
  expect((await importing(file([second, first]))).body.sentence).toBe('2 entries in the file: 2 there already.');
  expect((await send([second])).results).toMatchObject([{ status: 'already' }]);
  expect((await department.director.look(`/api/nights/${nightId}/log`)).entries).toHaveLength(2);
});

test('a file of two devices is taken in device by device; another night’s, another kind of file and an announcer are refused', async () => {
  const { department, season, nightId, read, file, importing } = await aTable();
  const other = new TableDevice();
  const both = file([read(1), { ...other.entry({ kind: 'note', reason: 'A full house' }), deviceId: other.deviceId }]);
  expect((await importing(both)).body.results.map((one: { status: string }) => one.status)).toEqual(['stored', 'stored']);
  expect((await importing({ ...both, nightId: season.teamId })).body.code).toBe('file-of-another-night');
  expect((await importing({ ...both, format: 'rosters' })).body.errors).toHaveProperty('format');
  expect((await importing({ ...both, entries: [] })).status).toBe(400);
  expect((await department.announcer.post(`/api/nights/${nightId}/log/import`, both)).body.code).toBe('role-missing');
});

test('after sign-off the entries of a file are amendments, counted at once', async () => {
  const { department, contract, nightId, read, send, file, importing } = await aTable();
  await send([read(1)]);
  await department.director.make(`/api/nights/${nightId}/sign-off`, DECEMBER);
  const late = read(2);
  expect((await importing(file([late], LATE))).body).toMatchObject({ results: [{ status: 'stored', number: 2 }] });
  expect((await department.director.look(`/api/contracts/${contract.id}`)).commitments[0].standing.given).toBe(2);
  expect((await importing(file([late], LATE))).body.results).toMatchObject([{ status: 'already' }]);
});

test('an entry kept aside is readable with what differs, and is taken in under an id of its own or set aside for good, once', async () => {
  const { department, nightId, read, send } = await aTable();
  const [one, other] = [read(1, 'notRead', 'noTime'), read(2)];
  await send([one, other]);
  await send([{ ...one, outcome: 'given', reason: null }]);
  await send([{ ...other, outcome: 'cutShort', reason: 'injury' }]);
  const path = `/api/nights/${nightId}/log/aside`;
  const { data, total } = await department.director.look(path);
  expect([total, data[0].state, data[0].inLog.number, data[0].settledNumber]).toEqual([2, 'waiting', 1, null]);
  expect(data[0].sentence).toBe('Juniper & Pike Hardware, Sponsored game ball: given.');
  expect(data[0].differences[0]).toBe('It says how it was read differently: not read in the log, given here.');
  expect((await department.director.post(`${path}/${data[0].id}/settle`, { answer: 'takeIn' })).body).toMatchObject({ state: 'takenIn', settledNumber: 3 });
  expect((await department.director.post(`${path}/${data[1].id}/settle`, { answer: 'setAside', reason: 'The announcer remembers it well' })).body).toMatchObject({ state: 'setAside', settledNumber: 4 });
  for (const answer of ['takeIn', 'setAside']) expect((await department.director.post(`${path}/${data[0].id}/settle`, { answer })).body.code).toBe('aside-settled-already');
  const log = await department.director.look(`/api/nights/${nightId}/log`);
  expect(log.entries).toMatchObject([{ number: 1 }, { number: 2 }, { kind: 'read', outcome: 'given', detail: { fromAside: data[0].id } }, { kind: 'note', reason: 'The announcer remembers it well' }]);
  expect(log.toCount).toBe(2);
  expect((await department.announcer.get(path)).body.code).toBe('role-missing');
  expect((await department.director.post(`${path}/${nightId}/settle`, { answer: 'takeIn' })).body.code).toBe('not-found');
});

import { IncomingMessage, ServerResponse } from 'node:http';
import { Socket } from 'node:net';
import type { FastifyReply } from 'fastify';
import { expect, onTestFinished, test } from 'vitest';
import { LiveStream } from '../../server/night/table/live-stream.ts';
import { anApplication, webPool } from '../support/database.ts';
import { aDepartment, aMember } from '../support/department.ts';
import { NewsReader } from '../support/news-reader.ts';
import { TableDevice, aSeason } from '../support/season.ts';
import { Visitor } from '../support/visitor.ts';

const NEWS_CONNECTION = `from pg_stat_activity where application_name = 'rafterline notices' and datname = current_database()`;

async function aTable(where: Parameters<typeof aDepartment>[0] = {}) {
  const department = await aDepartment(where);
  const season = await aSeason(department, 1);
  const { nightId } = season.games[0]!;
  const device = new TableDevice();
  const note = async (by: Visitor = department.announcer) => by.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.entry({ kind: 'note', reason: 'A full house' })] });
  const reader = async (visitor: Visitor = department.announcer) => {
    const opened = await NewsReader.open(visitor, `/api/nights/${nightId}/live`);
    onTestFinished(() => opened.close());
    return opened;
  };
  return { department, nightId, device, note, reader };
}

test('two readers hear of each other’s entries as soon as they are stored, and of nothing in another night', async () => {
  const { department, note, reader } = await aTable();
  const elsewhere = await aTable();
  const [one, other, theirs] = [await reader(), await reader(department.director), await elsewhere.reader()];
  expect(one.answer.headers).toMatchObject({ 'content-type': 'text/event-stream; charset=utf-8', 'cache-control': 'no-store', 'x-content-type-options': 'nosniff' });
  for (const each of [one, other, theirs]) await each.until('entries', 0);
  await note();
  await note(department.director);
  for (const each of [one, other]) expect((await each.until('entries', 2)).filter((news) => news.event === 'entries').map((news) => news.data)).toEqual(expect.arrayContaining(['1', '2']));
  await elsewhere.note();
  await theirs.until('entries', 1);
  expect(theirs.heard.map((news) => news.data)).not.toContain('2');
});

test('who opens the stream late is told at once how far the log is', async () => {
  const { note, reader } = await aTable();
  await note();
  await note();
  expect((await (await reader()).until('entries', 2))[0]).toEqual({ event: 'entries', data: '2' });
});

test('an entry whose unit of work fails is not told of', async () => {
  const { department, nightId, device, note, reader } = await aTable();
  const one = await reader();
  await one.until('entries', 0);
  await department.announcer.post(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.entry({ kind: 'foul' })] });
  await note();
  expect((await one.until('entries', 1)).map((news) => news.data)).toEqual(['0', '1']);
});

test('a connection to the database that is lost comes back, and what was missed in between is told', async () => {
  const { note, reader } = await aTable();
  const one = await reader();
  await one.until('entries', 0);
  const { rows } = await webPool.query(`select pid ${NEWS_CONNECTION}`);
  expect(rows).toHaveLength(1);
  await webPool.query(`select pg_terminate_backend(pid) ${NEWS_CONNECTION}`);
  await note();
  await one.until('entries', 1);
  await note();
  await one.until('entries', 2);
});

test('a night that never was, another department’s, and a bookkeeper have no stream', async () => {
  const { department, nightId } = await aTable();
  const elsewhere = await aTable();
  const never = await department.announcer.get('/api/nights/01900000-0000-7000-8000-000000000001/live');
  const theirs = await department.announcer.get(`/api/nights/${elsewhere.nightId}/live`);
  expect([never.status, never.body.code, theirs.body.code]).toEqual([404, 'not-found', 'not-found']);
  expect((await department.bookkeeper.get(`/api/nights/${nightId}/live`)).body.code).toBe('role-missing');
  expect((await department.announcer.send('HEAD', `/api/nights/${nightId}/live`, undefined)).status).toBe(200);
});

test('the sixty-first page of a night is told to ask again by itself, until another one closes', async () => {
  const { department, nightId, reader } = await aTable();
  const sixty = await Promise.all(Array.from({ length: 60 }, async () => reader()));
  const more = await department.announcer.get(`/api/nights/${nightId}/live`);
  expect([more.status, more.body.code, more.headers.get('retry-after')]).toEqual([503, 'too-many-listening', '10']);
  sixty[0]!.close();
  await expect.poll(async () => (await department.announcer.get(`/api/nights/${nightId}/live`)).status).toBe(200);
});

test('a stream ends when its session does, and a heartbeat keeps the others', { timeout: 60_000 }, async () => {
  const { department, reader } = await aTable();
  const [leaving, staying] = [await reader(department.director), await reader()];
  await leaving.until('entries', 0);
  await department.director.make('/api/sign-out');
  await leaving.ended();
  await staying.until('heartbeat', 0);
});

test('the stream of an own link ends with the membership', { timeout: 60_000 }, async () => {
  const { department, nightId, reader } = await aTable();
  const own = await (await aMember(department.pool, department.id, ['announcer'])).opensTable(nightId);
  const leaving = await reader(new Visitor(own.personId, null, own.baseUrl, own.linkCookie));
  await leaving.until('entries', 0);
  await department.ask(`update membership set ended_on = '2020-01-01' where department_id = $1 and person_id = $2`, [department.id, own.personId]);
  await leaving.ended();
});

test('a server that stops ends its streams and does not wait for their readers', { timeout: 120_000 }, async () => {
  const own = await anApplication();
  const { reader } = await aTable({ baseUrl: own.baseUrl, pool: own.webPool, checksBooks: false });
  const readers = [await reader(), await reader()];
  for (const each of readers) await each.until('entries', 0);
  const stopped = own.stop();
  for (const each of readers) await each.ended();
  await stopped;
  expect(readers.map((each) => each.answer.complete)).toEqual([true, true]);
});

test.each([
  ['before the stream was listened to', true],
  ['afterwards', false],
])('a reader who left %s is let go of once', async (_, early) => {
  const raw = new ServerResponse(new IncomingMessage(new Socket()));
  const leave = () => {
    raw.destroy();
    raw.emit('close');
  };
  const reply = { raw, hijack: () => undefined, getHeaders: () => ({}) } as unknown as FastifyReply;
  let gone = 0;
  if (early) leave();
  const stream = new LiveStream(reply, 1000);
  stream.onEnd(() => (gone += 1));
  if (!early) leave();
  stream.tell('entries', 1);
  expect(gone).toBe(1);
});

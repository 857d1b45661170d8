import { existsSync, readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { simpleParser } from 'mailparser';
import { afterAll, expect, test, vi } from 'vitest';
import { anApplication, application as shared } from '../support/database.ts';
import { aDepartment, aMember } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeasonWithAddresses, anInvoiceDue, changed, letterIs } from '../support/letters.ts';
import { aMailServer } from '../support/mail-server.ts';
import { pagesOfPdf } from '../support/pdf.ts';

vi.setConfig({ testTimeout: 90_000 });

/** A server that hands its letters to a mail server of these tests' own. */
const server = await aMailServer();
const application = await anApplication({ RAFTERLINE_SMTP_URL: server.url, RAFTERLINE_MAIL_FROM: 'billing@rafterline.example' });
afterAll(async () => {
  await application.stop();
  await server.close();
});

async function anOffice() {
  server.begin();
  const department = await aDepartment({ baseUrl: application.baseUrl, pool: application.webPool });
  const season = await aSeasonWithAddresses(department);
  return { department, season };
}

const kindsOf = (message: { events: { kind: string }[] }) => message.events.map((event) => event.kind);

async function anInvoiceLetter(department: Department, invoiceId: string, more = {}) {
  return department.bookkeeper.make('/api/messages', { kind: 'invoice', aboutId: invoiceId, ...more });
}

test('an invoice goes by mail as it was previewed, its PDF attached, from the seller, and answers come to the office', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  const preview = await department.bookkeeper.make('/api/messages/preview', { kind: 'invoice', aboutId: invoice.id });
  expect(preview).toMatchObject({ toAddress: 'bills@juniper.example', subject: `Invoice ${invoice.number} from Tamarack Ridge Athletics`, attachments: [`${invoice.number}.pdf`], writtenBefore: 0 });
  const queued = await anInvoiceLetter(department, invoice.id);
  const sent = await letterIs(department, application, queued.id, 'sent');
  expect(kindsOf(sent)).toEqual(['handedOver']);
  const [mail] = server.taken;
  expect(mail!.from!.value[0]).toEqual({ name: 'Tamarack Ridge Athletics', address: 'billing@rafterline.example' });
  expect(mail!.replyTo!.value[0]!.address).toBe('office@tamarack.example');
  expect([mail!.to].flat()[0]!.value.map((one) => one.address)).toEqual(['bills@juniper.example']);
  expect(mail!.messageId).toBe(`<${queued.id}@rafterline.example>`);
  expect(mail!.text!.trim()).toBe(preview.body);
  expect(mail!.text).toContain('$735.00');
  expect(mail!.attachments.map((one) => [one.filename, one.contentType])).toEqual([[`${invoice.number}.pdf`, 'application/pdf']]);
  expect((await pagesOfPdf(mail!.attachments[0]!.content)).join(' ')).toContain(invoice.number);
});

test('the same letter is never written twice; once more it goes only with a reason, which the log keeps', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  const first = await anInvoiceLetter(department, invoice.id);
  await letterIs(department, application, first.id, 'sent');
  const { bookkeeper } = department;
  const send = (more = {}, key?: string) => bookkeeper.post('/api/messages', { kind: 'invoice', aboutId: invoice.id, ...more }, key ? { key } : {});
  expect((await send()).body.code).toBe('letter-went-already');
  expect((await send({ again: true })).body.code).toBe('reason-missing');
  const key = 'once-more-for-the-walls';
  const again = await send({ again: true, reason: 'They cannot find it' }, key);
  expect([again.status, again.body.againBecause]).toEqual([201, 'They cannot find it']);
  expect((await send({ again: true, reason: 'They cannot find it' }, key)).body.id).toBe(again.body.id);
  await letterIs(department, application, again.body.id, 'sent');
  expect(server.taken).toHaveLength(2);
  expect(new Set(server.taken.map((mail) => mail.messageId)).size).toBe(2);
  const both = await Promise.all([send({ again: true, reason: 'Third' }), send({ again: true, reason: 'Third' })]);
  // Two at the same moment are one letter; the later of two that do not meet is asked for anew, with its own reason.
  const written = both.filter((answer) => answer.status === 201);
  expect(both.filter((answer) => answer.status === 409)).toHaveLength(2 - written.length);
  expect((await bookkeeper.look(`/api/messages?aboutId=${invoice.id}`)).total).toBe(2 + written.length);
  expect(written.length).toBeGreaterThan(0);
  // The next test counts what its mail server is told.
  for (const answer of written) await letterIs(department, application, answer.body.id, 'sent');
});

test('an address that is refused for good is not tried again; one that is busy is', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  server.behave({ address: (_, time) => (time === 1 ? { code: 450, says: 'Mailbox is busy' } : null) });
  const busy = await letterIs(department, application, (await anInvoiceLetter(department, invoice.id)).id, 'sent');
  expect(kindsOf(busy)).toEqual(['tryFailed', 'handedOver']);
  expect(busy.events[0].detail).toContain('Mailbox is busy');
  server.behave({ address: () => ({ code: 550, says: 'No such mailbox' }) });
  const refused = await letterIs(department, application, (await anInvoiceLetter(department, invoice.id, { again: true, reason: 'Once more' })).id, 'refused');
  expect(kindsOf(refused)).toEqual(['refused']);
  expect(refused.events[0].detail).toContain('No such mailbox');
  // The letter says so a moment before its job is done.
  await expect.poll(async () => (await application.ownerPool.query(`select state from job.job where data ->> 'subjectId' = $1`, [refused.id])).rows).toEqual([{ state: 'completed' }]);
});

test('when the line is cut after the letter was read, the same letter goes once more under the same Message-ID, and the log says so', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  server.behave({ letter: (time) => (time === 1 ? 'hangUp' : null) });
  const sent = await letterIs(department, application, (await anInvoiceLetter(department, invoice.id)).id, 'sent');
  expect(kindsOf(sent)).toEqual(['tryFailed', 'handedOver']);
  expect(sent.events[0].detail).toContain('it may have arrived');
  expect(server.read).toHaveLength(2);
  expect(server.read[1]!.mail.messageId).toBe(server.read[0]!.mail.messageId);
});

test('a mail server that always says “later” is given up after its tries, and the letter says so', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  server.behave({ letter: () => ({ code: 451, says: 'Try again later' }) });
  const given = await letterIs(department, application, (await anInvoiceLetter(department, invoice.id)).id, 'givenUp');
  expect(given.failedTries).toBe(9);
  expect(kindsOf(given).at(-1)).toBe('givenUp');
});

test('no name and no subject can begin a header of its own', async () => {
  const { department, season } = await anOffice();
  const evil = 'Juniper\r\nBcc: everybody@port-ansel.example\r\n\r\nHello';
  await changed(department, `/api/payers/${season.payerId}`, { name: evil });
  await changed(department, `/api/sellers/${season.sellerId}`, { name: `Tamarack\r\nX-Evil: yes` });
  const invoice = await anInvoiceDue(department, season, -10, `Balls\nBcc: all@port-ansel.example`);
  const message = await anInvoiceLetter(department, invoice.id, { subject: 'Invoice\r\nBcc: you@port-ansel.example' });
  expect(message.subject).toBe('Invoice Bcc: you@port-ansel.example');
  await letterIs(department, application, message.id, 'sent');
  const [{ mail, to }] = server.read as [(typeof server.read)[number]];
  expect(to).toEqual(['bills@juniper.example']);
  expect([mail.bcc, mail.headers.get('x-evil'), mail.cc]).toEqual([undefined, undefined, undefined]);
  expect(mail.from!.value).toHaveLength(1);
});

test('who has no address is refused in words, and so is what is no address', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  await changed(department, `/api/payers/${season.payerId}`, { email: null });
  const invoice = await anInvoiceDue(department, season, -10);
  const send = (toAddress?: string) => department.bookkeeper.post('/api/messages', { kind: 'invoice', aboutId: invoice.id, toAddress });
  expect((await send()).body).toMatchObject({ code: 'no-address', detail: 'Juniper & Pike Hardware has no e-mail address. Add one, or write an address here.' });
  expect((await send('hazel@juniper.example,all@port-ansel.example')).status).toBeGreaterThanOrEqual(400);
  expect((await send('a<b@juniper.example')).body.code).toBe('address-not-good');
  expect((await send('hazel@juniper.example')).status).toBe(201);
});

test('without a mail server a letter is laid into the folder and goes nowhere else', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  const sent = await letterIs(department, shared, (await anInvoiceLetter(department, invoice.id)).id, 'sent');
  const file = join(shared.folder, 'letters', `${sent.id}.eml`);
  expect(existsSync(file)).toBe(true);
  expect((await simpleParser(readFileSync(file))).attachments).toHaveLength(1);
  expect(readdirSync(join(shared.folder, 'letters')).filter((name) => name.endsWith('.half'))).toEqual([]);
  expect(readFileSync(join(shared.folder, 'server.log'), 'utf8')).toContain(`"letters":"${join(shared.folder, 'letters')}"`);
});

test('a letter that was handed over and came back is told by a person, once', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  const sent = await letterIs(department, shared, (await anInvoiceLetter(department, invoice.id)).id, 'sent');
  const bounced = await department.bookkeeper.make(`/api/messages/${sent.id}/bounced`, { detail: 'Mailbox full' });
  expect([bounced.state, bounced.events.at(-1).detail]).toEqual(['bounced', 'Mailbox full']);
  expect((await department.bookkeeper.post(`/api/messages/${sent.id}/bounced`, { detail: 'Again' })).body.code).toBe('letter-not-sent');
  const { data, total } = await department.bookkeeper.look(`/api/messages?state=bounced&sponsorId=${season.sponsorId}`);
  expect([total, data[0].id]).toEqual([1, sent.id]);
});

test('a letter and its job are written together or not at all', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  const send = () => department.bookkeeper.post('/api/messages', { kind: 'invoice', aboutId: invoice.id });
  const answers = await Promise.all([send(), send(), send()]);
  expect(answers.map((answer) => answer.status).sort()).toEqual([201, 409, 409]);
  const written = await department.ask<{ id: string }>('select id from message where department_id = $1', [department.id]);
  const { rows } = await shared.ownerPool.query(`select id, data from job.job where data ->> 'departmentId' = $1`, [department.id]);
  expect(rows.map((row) => row.id)).toEqual(written.map((row) => row.id));
  expect(rows[0].data).toEqual({ departmentId: department.id, subjectId: written[0]!.id });
});

test('a server that is stopped leaves no letter behind: the next one hands over what waits', async () => {
  const { department, season } = await anOffice();
  const invoice = await anInvoiceDue(department, season, -10);
  server.behave({ letter: () => ({ code: 451, says: 'Later' }) });
  const { id } = await anInvoiceLetter(department, invoice.id);
  await expect.poll(async () => (await department.bookkeeper.look(`/api/messages/${id}`)).failedTries, { timeout: 20_000 }).toBe(1);
  const start = await application.stopServer();
  server.behave({});
  await start();
  await letterIs(department, application, id, 'sent');
  expect(server.taken).toHaveLength(1);
});

test('the bookkeeper and the director send letters; the announcer sees none', async () => {
  const department = await aDepartment();
  const announcer = await aMember(department.pool, department.id, ['announcer']);
  expect((await announcer.get('/api/messages')).body.code).toBe('role-missing');
  expect((await announcer.post('/api/messages', {})).body.code).toBe('role-missing');
});

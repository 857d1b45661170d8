import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { simpleParser } from 'mailparser';
import { expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeasonWithAddresses, anInvoiceDue, changed, letterIs, todayOf } from '../support/letters.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import type { Season } from '../support/season.ts';

async function reminders(department: Department): Promise<any[]> {
  return (await department.bookkeeper.look('/api/messages?kind=reminder&perPage=100&sort=recordedAt')).data;
}

async function pays(department: Department, season: Season, invoice: { id: string; balanceCents: number }): Promise<void> {
  await department.bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: todayOf(), method: 'check', reference: '1041', amountCents: invoice.balanceCents,
    applications: [{ invoiceId: invoice.id, amountCents: invoice.balanceCents }],
  });
}

test('a reminder goes out on its day and once, however often somebody looks; on the day before, and for what is paid, none does', async () => {
  const department = await aDepartment();
  const { bookkeeper } = department;
  const season = await aSeasonWithAddresses(department);
  const [late, , paid] = [await anInvoiceDue(department, season, 7), await anInvoiceDue(department, season, 6), await anInvoiceDue(department, season, 7)];
  await pays(department, season, paid);
  await Promise.all([1, 2, 3].map(() => bookkeeper.make('/api/reminders')));
  const [reminder, ...more] = await reminders(department);
  expect([reminder.aboutId, more]).toEqual([late.id, []]);
  const sent = await letterIs(department, application, reminder.id, 'sent');
  expect(sent).toMatchObject({ toAddress: 'bills@juniper.example', subject: `Reminder: invoice ${late.number} from Tamarack Ridge Athletics`, attachments: [`${late.number}.pdf`] });
  expect(sent.body).toContain('7 days ago. $735.00 is still open.');
  expect((await bookkeeper.look('/api/reminders')).data).toEqual([]);
});

test('what would go out today is told before it goes, and what will not go with its reason', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  await changed(department, `/api/payers/${season.payerId}`, { email: null });
  const invoice = await anInvoiceDue(department, season, 31);
  const { data } = await department.bookkeeper.look('/api/reminders');
  expect(data).toMatchObject([{ id: invoice.id, days: 30, daysPastDue: 31, dueOn: addDays(todayOf(), -31), balanceCents: 73_500, toAddress: null, why: 'The payer has no e-mail address.' }]);
  await department.bookkeeper.make('/api/reminders');
  expect(await reminders(department)).toEqual([]);
});

test('a department that wants no reminders sends none', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  await changed(department, '/api/department', { settings: { reminderDays: [] } });
  await anInvoiceDue(department, season, 7);
  expect((await department.bookkeeper.look('/api/reminders')).data).toEqual([]);
  expect(await department.bookkeeper.make('/api/reminders')).toEqual({ written: 0 });
});

test('a reminder written by hand waits until the due day is past, and needs something open', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const remind = (aboutId: string) => department.bookkeeper.post('/api/messages', { kind: 'reminder', aboutId });
  expect((await remind((await anInvoiceDue(department, season, 0)).id)).body.code).toBe('not-due-yet');
  const late = await anInvoiceDue(department, season, 1);
  const written = await remind(late.id);
  expect([written.status, written.body.body.includes('one day ago')]).toEqual([201, true]);
  const paid = await anInvoiceDue(department, season, 2);
  await pays(department, season, paid);
  expect((await remind(paid.id)).body.code).toBe('nothing-to-remind');
});

test('an invoice that is void is sent to nobody', async () => {
  const department = await aDepartment();
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, -10);
  await department.bookkeeper.make(`/api/invoices/${invoice.id}/void`, { reason: 'Drawn up twice' });
  for (const kind of ['invoice', 'reminder']) expect((await department.bookkeeper.post('/api/messages', { kind, aboutId: invoice.id })).body.code).toBe('invoice-is-void');
});

test('a sponsor’s account, a receipt and a letter of thanks go with their papers', async () => {
  const department = await aDepartment();
  const { bookkeeper } = department;
  const season = await aSeasonWithAddresses(department);
  const invoice = await anInvoiceDue(department, season, 3);
  await pays(department, season, invoice);
  const receipt = await bookkeeper.make('/api/receipts', { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Juniper', method: 'check', reference: '1042', amountCents: 5_000, takenOn: todayOf() });
  const letters = [
    ['statement', season.sponsorId, 'bills@juniper.example', 'Nothing is open today.'],
    ['receipt', receipt.id, 'bills@juniper.example', 'We received $50.00 (check 1042)'],
    ['thankYou', invoice.contractId, 'hazel@juniper.example', 'you had paid $735.00.'],
  ] as const;
  for (const [kind, aboutId, toAddress, words] of letters) {
    const sent = await letterIs(department, application, (await bookkeeper.make('/api/messages', { kind, aboutId })).id, 'sent');
    expect([kind, sent.toAddress, sent.attachments.length, sent.body.includes(words)]).toEqual([kind, toAddress, 1, true]);
    const mail = await simpleParser(readFileSync(join(application.folder, 'letters', `${sent.id}.eml`)));
    expect((await pagesOfPdf(mail.attachments[0]!.content)).length).toBeGreaterThan(0);
  }
});

import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import type { Answer } from '../support/visitor.ts';

async function billed(): Promise<{ department: Department; season: Season; contract: any; invoice: any; pay: (form?: object) => Promise<Answer> }> {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const contract = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-23' });
  const base = { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 36_750 };
  return { department, season, contract, invoice, pay: (form = {}) => department.bookkeeper.post('/api/payments', { ...base, ...form }) };
}

test('an invoice takes its balance and not a cent more, and not from a payment that is too small', async () => {
  const { invoice, pay } = await billed();
  const apply = (amountCents: number) => [{ invoiceId: invoice.id, amountCents }];
  expect((await pay({ amountCents: 40_000, applications: apply(36_751) })).body.code).toBe('more-than-balance');
  expect((await pay({ amountCents: 36_749, applications: apply(36_750) })).body.code).toBe('more-than-unapplied');
  const over = await pay({ amountCents: 40_000, applications: apply(36_750) });
  expect([over.status, over.body.unappliedCents]).toEqual([201, 3_250]);
  expect((await pay({ applications: apply(1) })).body.code).toBe('more-than-balance');
});

test('a credit is used later, taken back, and used again', async () => {
  const { department, invoice, pay } = await billed();
  const { bookkeeper } = department;
  const { body: payment } = await pay();
  const applied = await bookkeeper.make(`/api/payments/${payment.id}/applications`, { invoiceId: invoice.id, amountCents: 36_750, appliedOn: '2026-12-06' });
  expect(applied.unappliedCents).toBe(0);
  const takeBack = `/api/applications/${applied.applications[0].id}/take-back`;
  const back = await bookkeeper.make(takeBack, { takenBackOn: '2026-12-07' });
  expect([back.unappliedCents, back.applications[0].takenBack]).toEqual([36_750, true]);
  expect((await bookkeeper.post(takeBack)).body.code).toBe('application-taken-back-already');
  expect((await bookkeeper.look(`/api/invoices/${invoice.id}`)).balanceCents).toBe(36_750);
  await bookkeeper.make(`/api/payments/${payment.id}/applications`, { invoiceId: invoice.id, amountCents: 36_750, appliedOn: '2026-12-08' });
  expect((await bookkeeper.look(`/api/invoices/${invoice.id}`)).state).toBe('paid');
});

test('a payment never crosses sellers of record, and one that keeps its books elsewhere takes none here', async () => {
  const { department, invoice, pay } = await billed();
  const boosters = await department.director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  const elsewhere = await department.director.make('/api/sellers', { name: 'Ridge Foundation', numberPrefix: 'RF', keepsBooksHere: false });
  expect((await pay({ sellerId: boosters.id, applications: [{ invoiceId: invoice.id, amountCents: 1 }] })).body.code).toBe('payment-crosses-sellers');
  expect((await pay({ sellerId: elsewhere.id })).body.code).toBe('seller-keeps-own-books');
});

test('an invoice is voided before anything is paid on it, once, and its number stays taken', async () => {
  const { department, contract, invoice, pay } = await billed();
  const { bookkeeper } = department;
  const voiding = (id: string) => bookkeeper.post(`/api/invoices/${id}/void`, { reason: 'Sent to the wrong address' });
  expect((await voiding(invoice.id)).body.state).toBe('void');
  expect((await voiding(invoice.id)).body.code).toBe('invoice-already-void');
  expect((await pay({ applications: [{ invoiceId: invoice.id, amountCents: 1 }] })).body.code).toBe('invoice-is-void');
  const again = await bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: '2026-11-24' });
  expect([again.number, again.grossCents]).toEqual(['TR-2027-0002', 36_750]);
  await pay({ applications: [{ invoiceId: again.id, amountCents: 100 }] });
  expect((await voiding(again.id)).body.code).toBe('void-after-payment');
});

test('invoices are issued once however often the button is pressed at the same time', async () => {
  const { department, contract } = await billed();
  const issue = () => department.bookkeeper.post('/api/invoices', { contractId: contract.id, issuedOn: '2027-01-15' });
  const answers = await Promise.all([issue(), issue(), issue()]);
  expect(answers.map((answer) => answer.body.code ?? answer.status).sort()).toEqual([201, 'nothing-to-bill', 'nothing-to-bill']);
});

test('an announcer sees no money, and a doubled send of one payment happens once', async () => {
  const { department, season } = await billed();
  expect((await department.announcer.get('/api/invoices')).status).toBe(403);
  const form = { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'cash', amountCents: 500 };
  const key = 'one-payment-sent-twice';
  const [first, second] = [await department.bookkeeper.post('/api/payments', form, { key }), await department.bookkeeper.post('/api/payments', form, { key })];
  expect(second.body.id).toBe(first.body.id);
  expect((await department.bookkeeper.look('/api/payments')).total).toBe(1);
});

test('what cannot be read is refused and never our fault', async () => {
  const { department, contract, invoice, pay } = await billed();
  const { bookkeeper } = department;
  expect((await pay({ amountCents: 2 ** 53 })).status).toBe(400);
  expect((await pay({ applications: [{ invoiceId: department.id, amountCents: 1 }] })).body.code).toBe('unknown-invoice');
  expect((await pay({ applications: [1, 2].map(() => ({ invoiceId: invoice.id, amountCents: 1 })) })).body.code).toBe('applied-twice');
  expect((await pay({ payerId: department.id })).body.code).toBe('unknown-payer');
  expect((await bookkeeper.get(`/api/contracts/${contract.id}/due?through=soon`)).status).toBe(400);
  expect((await bookkeeper.get('/api/invoices/none')).status).toBe(404);
  expect((await bookkeeper.get('/api/payments/none')).status).toBe(404);
  expect((await bookkeeper.get(`/api/contracts/${department.id}/account-statement`)).status).toBe(404);
});

test('an exempt payer is charged no tax while the certificate holds, and the tax the day after', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  await director.patch(`/api/payers/${season.payerId}`, { exemptionNumber: '12-3456', exemptionExpiresOn: '2026-12-31' }, { version: 1 });
  const contract = await aSignedContract(department, season, { billingPlan: { kind: 'inFull', on: '2026-12-31' } });
  const due = (through: string) => bookkeeper.look(`/api/contracts/${contract.id}/due?through=${through}`);
  expect((await due('2026-12-30')).lines).toEqual([]);
  expect((await due('2026-12-31')).taxCents).toBe(0);
  expect((await due('2027-01-01')).taxCents).toBe(3_500);
});

test('what is paid in goods, or sold by a seller with books elsewhere, is not invoiced here', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  const draft = await aSignedContract(department, { ...season, sellerId: (await director.make('/api/sellers', { name: 'Ridge Foundation', numberPrefix: 'RF', keepsBooksHere: false })).id });
  const issue = (contractId: string) => bookkeeper.post('/api/invoices', { contractId, issuedOn: '2026-11-23' });
  expect((await issue(draft.id)).body.code).toBe('seller-keeps-own-books');
  expect(await bookkeeper.look(`/api/contracts/${draft.id}/due?through=2026-11-23`)).toMatchObject({ lines: [], grossCents: 0 });
  const inKind = await director.post('/api/contracts', { sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Paint for the gym', isInKind: true, term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } }, commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5000 }] });
  await director.make(`/api/contracts/${inKind.body.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  expect((await issue(inKind.body.id)).body.code).toBe('paid-in-goods');
  const goods = (amountCents: number) => bookkeeper.post(`/api/contracts/${inKind.body.id}/goods`, { receivedOn: '2026-11-24', what: 'Forty gallons of paint', amountCents });
  expect((await goods(60_001)).body.code).toBe('more-than-to-bill');
  expect((await goods(60_000)).body.standing.toBillCents).toBe(0);
});

test('an invoice is printed under its number, as a PDF', async () => {
  const { department, invoice } = await billed();
  const printed = await department.bookkeeper.bytes(`/api/invoices/${invoice.id}/invoice.pdf`);
  expect([printed.status, printed.headers.get('content-type'), printed.headers.get('content-disposition')]).toEqual([200, 'application/pdf', 'inline; filename="TR-2027-0001.pdf"']);
  expect(printed.bytes.subarray(0, 5).toString()).toBe('%PDF-');
});

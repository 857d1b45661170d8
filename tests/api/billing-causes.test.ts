import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

/** 100.00 and 5.00 tax for ten reads, billed on the tenth of January. */
async function billed() {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { bookkeeper, director } = department;
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 10, rateCents: 1_000 }];
  const contract = await aSignedContract(department, season, { commitments, priceCents: 10_000, billingPlan: { kind: 'inFull', on: '2026-11-23' } });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2027-01-10', issuedOn: '2027-01-10' });
  const pay = (receivedOn: string, applied: number, amountCents = 10_500) =>
    bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'check', reference: '1041', amountCents, applications: applied > 0 ? [{ invoiceId: invoice.id, amountCents: applied }] : [] });
  const credit = (count: number, on: string) => bookkeeper.post(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[0].id, count, reason: 'The floor is laid anew', on });
  return { department, season, bookkeeper, director, contract, invoice, pay, credit };
}

type Billed = Awaited<ReturnType<typeof billed>>;

/** Each step the day before its cause, and on the day itself. */
const STEPS: [string, (here: Billed) => Promise<(on: string) => Promise<any>>, string, string][] = [
  ['a void', async ({ bookkeeper, invoice }) => (voidedOn) => bookkeeper.post(`/api/invoices/${invoice.id}/void`, { reason: 'Typed twice', voidedOn }), '2027-01-09', '2027-01-10'],
  ['an application', async ({ bookkeeper, invoice, pay }) => {
    const payment = await pay('2027-01-05', 0);
    return (appliedOn) => bookkeeper.post(`/api/payments/${payment.id}/applications`, { invoiceId: invoice.id, amountCents: 10_500, appliedOn });
  }, '2027-01-09', '2027-01-10'],
  ['a taking back', async ({ bookkeeper, pay }) => {
    const payment = await pay('2027-01-15', 10_500);
    return (takenBackOn) => bookkeeper.post(`/api/applications/${payment.applications[0].id}/take-back`, { takenBackOn });
  }, '2027-01-14', '2027-01-15'],
  ['a refund', async ({ bookkeeper, pay }) => {
    const payment = await pay('2027-01-15', 10_500, 11_000);
    return (refundedOn) => bookkeeper.post(`/api/payments/${payment.id}/refunds`, { amountCents: 500, refundedOn, method: 'check' });
  }, '2027-01-14', '2027-01-15'],
  ['a returned check, after its use', async ({ bookkeeper, pay }) => {
    const payment = await pay('2027-01-05', 10_500);
    return (returnedOn) => bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn, reason: 'No funds' });
  }, '2027-01-09', '2027-01-10'],
  ['a discount', async ({ bookkeeper, invoice }) => (takenOn) => bookkeeper.post(`/api/invoices/${invoice.id}/discounts`, { basisPoints: 200, takenOn, reason: 'Paid early' }), '2027-01-09', '2027-01-10'],
  ['a memo', async ({ credit }) => (on) => credit(1, on), '2027-01-09', '2027-01-10'],
];

test.each(STEPS)('%s does not lie before its cause, and is taken on its day', async (_, step, before, on) => {
  const take = await step(await billed());
  const refused = await take(before);
  expect([refused.status, refused.body.code]).toEqual([422, 'before-its-cause']);
  expect(refused.body.detail).toContain(before);
  expect(refused.body.detail).toContain(on);
  const taken = await take(on);
  expect([taken.body.code, taken.status < 300]).toEqual([undefined, true]);
});

test('a write-off and what is recovered of it do not lie before their causes', async () => {
  const { department, season, bookkeeper, director } = await billed();
  const charge = await bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Interest', amountCents: 5_000, issuedOn: '2027-01-10' });
  const { waitingWriteOff } = await bookkeeper.make(`/api/invoices/${charge.id}/write-off-requests`, { amountCents: 5_000, reason: 'The store closed' });
  const approve = (on: string) => director.post(`/api/write-off-requests/${waitingWriteOff.id}/approve`, { on });
  const recover = (recoveredOn: string) => bookkeeper.post(`/api/invoices/${charge.id}/recoveries`, { amountCents: 1_000, recoveredOn, reason: 'The trustee paid' });
  expect((await approve('2027-01-09')).body.code).toBe('before-its-cause');
  expect((await approve('2027-01-12')).status).toBe(200);
  expect((await recover('2027-01-11')).body.code).toBe('before-its-cause');
  expect((await recover('2027-01-12')).status).toBeLessThan(300);
  expect(department.id).toBeTruthy();
});

test('what came before its invoice pays it on the day of the invoice', async () => {
  const { pay } = await billed();
  expect((await pay('2027-01-05', 10_500)).applications).toMatchObject([{ appliedOn: '2027-01-10', amountCents: 10_500 }]);
});

test('a memo on an invoice that nobody paid is never paid out, whether the invoice is open again or written off', async () => {
  const { bookkeeper, credit, invoice, department } = await billed();
  const memo = await bookkeeper.look(`/api/credit-memos/${(await credit(10, '2027-01-12')).body.creditMemoIds[0]}`);
  expect([memo.grossCents, memo.appliedCents]).toEqual([10_500, 10_500]);
  await bookkeeper.make(`/api/applications/${memo.applications[0].id}/take-back`, { takenBackOn: '2027-01-13' });
  const refund = () => bookkeeper.post(`/api/credit-memos/${memo.id}/refunds`, { amountCents: 10_500, refundedOn: '2027-01-14', method: 'check' });
  const refused = await refund();
  expect(refused.body).toMatchObject({ status: 422, code: 'memo-of-unpaid-invoice' });
  expect(refused.body.detail).toContain(`${invoice.number} (105.00)`);
  expect(await department.ask(`select 1 from posting where department_id = current_department() and journal = 'money' and '1000' in (to_account, from_account)`)).toEqual([]);
});

test('a memo on an invoice that was paid is paid out', async () => {
  const { bookkeeper, credit, pay } = await billed();
  await pay('2027-01-11', 10_500);
  const memoId = (await credit(10, '2027-01-12')).body.creditMemoIds[0];
  expect((await bookkeeper.post(`/api/credit-memos/${memoId}/refunds`, { amountCents: 10_500, refundedOn: '2027-01-14', method: 'check' })).status).toBe(201);
});

import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

/** 1,000.00 for forty reads, billed to the first payer and paid by its check, then handed on to another sponsor. */
async function handedOn() {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  const halves = { kind: 'installments', installments: [{ on: '2026-11-23', share: 1 }, { on: '2027-01-15', share: 1 }] };
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 40, rateCents: 2_500 }];
  const contract = await aSignedContract(department, season, { commitments, priceCents: 100_000, billingPlan: halves });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const payment = await bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference: '1041', amountCents: invoice.grossCents, applications: [{ invoiceId: invoice.id, amountCents: invoice.grossCents }],
  });
  const sponsor = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Blue Lantern Tire', sponsorId: sponsor.id });
  await director.make(`/api/contracts/${contract.id}/assign`, { toSponsorId: sponsor.id, toPayerId: payer.id, on: '2026-12-10', reason: 'The store was sold' });
  const credit = (count: number) => bookkeeper.post(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[0].id, count, reason: 'Not read', on: '2027-01-20' });
  return { bookkeeper, director, season, contract, invoice, payment, payer, credit };
}

test('a memo belongs to the payer of the invoice it credits, whoever pays for the contract today', async () => {
  const { bookkeeper, season, payer, credit, invoice } = await handedOn();
  const { body } = await credit(22);
  const memo = await bookkeeper.look(`/api/credit-memos/${body.creditMemoIds[0]}`);
  expect([memo.payerId, memo.payerId === payer.id, memo.grossCents, memo.unappliedCents]).toEqual([season.payerId, false, 5_250, 5_250]);
  expect((await bookkeeper.look(`/api/invoices/${invoice.id}`)).balanceCents).toBe(0);
});

test('one memo never credits the invoices of two payers: so many reads are credited as one of them paid for', async () => {
  const { bookkeeper, contract, payer, credit } = await handedOn();
  const second = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2027-01-15', issuedOn: '2027-01-15' });
  expect(second.payerId).toBe(payer.id);
  expect((await credit(21)).body).toMatchObject({ code: 'memo-of-two-payers' });
  const { body } = await credit(20);
  expect(await bookkeeper.look(`/api/credit-memos/${body.creditMemoIds[0]}`)).toMatchObject({ payerId: payer.id, appliedCents: second.grossCents });
  expect((await credit(1)).status).toBe(201);
});

test('a check of the former owner comes back: its fee is charged to who wrote it, without the contract', async () => {
  const { bookkeeper, payment, season } = await handedOn();
  const back = await bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-12', bankFeeCents: 1_200, chargeCents: 1_200, reason: 'No funds' });
  expect([back.status, back.body.code]).toEqual([200, undefined]);
  const { data } = await bookkeeper.look('/api/invoices?sort=number');
  expect(data.at(-1)).toMatchObject({ kind: 'charge', payerId: season.payerId, contractId: null, grossCents: 1_200 });
});

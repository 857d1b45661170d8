import { expect, test } from 'vitest';
import { aClosedContract, aPaidContract } from '../support/closed-contract.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

async function closed() {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  return { department, season, director, bookkeeper, ...(await aClosedContract(department, season)) };
}

test('a check that comes back after its contract was closed opens the contract again first, and the account says so', async () => {
  const { bookkeeper, department, invoice, payment, id, contract, number } = await closed();
  expect((await bookkeeper.look(`/api/payments/${payment.id}`)).applications[0].closedContract).toBe(number);
  const returned = await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-10', bankFeeCents: 1_200, chargeCents: 1_200, reason: 'Not sufficient funds' });
  expect(returned.applications[0]).toMatchObject({ takenBack: true, closedContract: null });
  const { term, standing } = await contract();
  expect([term.state, term.closedOn, standing.receivableCents]).toEqual(['signed', null, 127_200]);
  const events = await department.ask<{ kind: string }>(`select happening ->> 'kind' as kind from ledger_event where department_id = $1 and occurred_on = '2026-12-10' order by recorded_at`, [department.id]);
  expect(events.map(({ kind }) => kind)).toEqual(['reopened', 'creditUnapplied', 'paymentReturned', 'charged']);
  const { lines } = await bookkeeper.look(`/api/contracts/${id}/account-statement`);
  expect(lines.map((line: any) => line.sentence)).toContain(`$1,260.00 of payment ${payment.number} was taken off invoice ${invoice.number} again. Contract ${number}, which was closed, is open again.`);
});

test('a payment of a closed contract that was a mistake, or is taken off its invoice, opens the contract again as well', async () => {
  for (const way of ['mistake', 'take back'] as const) {
    const { bookkeeper, payment, contract, director, id } = await closed();
    if (way === 'mistake') await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-10', reason: 'Typed twice' });
    else await bookkeeper.make(`/api/applications/${payment.applications[0].id}/take-back`, { takenBackOn: '2026-12-10' });
    expect([way, (await contract()).term.state]).toEqual([way, 'signed']);
    expect((await director.post(`/api/contracts/${id}/close`, { on: '2026-12-11' })).body.code).toBe('close-with-open-invoices');
  }
});

test('a charge by hand is refused on a closed contract, and taken without the contract', async () => {
  const { bookkeeper, season, id } = await closed();
  const charge = { sellerId: season.sellerId, payerId: season.payerId, description: 'Late fee', amountCents: 1_500, issuedOn: '2026-12-10' };
  expect((await bookkeeper.post('/api/charges', { ...charge, contractId: id })).body.code).toBe('contract-closed');
  expect((await bookkeeper.post('/api/charges', charge)).status).toBe(201);
});

test('what was written off before the closing and is open again opens the contract; paid at once, it leaves it closed', async () => {
  for (const [method, state] of [[undefined, 'signed'], ['check', 'closed']] as const) {
    const department = await aDepartment();
    const { director, bookkeeper } = department;
    const { id, invoice, payment, contract } = await aPaidContract(department, await aSeason(department, 0));
    await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-06', reason: 'Typed twice' });
    const { waitingWriteOff } = await bookkeeper.make(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 126_000, reason: 'The store closed' });
    await director.make(`/api/write-off-requests/${waitingWriteOff.id}/approve`, { on: '2026-12-07' });
    await director.make(`/api/contracts/${id}/close`, { on: '2026-12-08' });
    await bookkeeper.make(`/api/invoices/${invoice.id}/recoveries`, { amountCents: 126_000, recoveredOn: '2026-12-10', reason: 'Paid after all', method });
    expect([method, (await contract()).term.state]).toEqual([method, state]);
  }
});

test('a payment that is used on two contracts with a rest keeps both from closing', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  const [one, other] = [await aPaidContract(department, season), await aPaidContract(department, season)];
  for (const { payment } of [one, other]) await bookkeeper.make(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-06', reason: 'One check paid both' });
  const both = await bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-06', method: 'check', reference: '1042', amountCents: 252_500, applications: [one, other].map(({ invoice }) => ({ invoiceId: invoice.id, amountCents: 126_000 })),
  });
  for (const { id } of [one, other]) expect((await director.post(`/api/contracts/${id}/close`, { on: '2026-12-08' })).body.code).toBe('close-with-open-credits');
  await bookkeeper.make(`/api/payments/${both.id}/refunds`, { amountCents: 500, refundedOn: '2026-12-08', method: 'check' });
  for (const { id } of [one, other]) expect((await director.post(`/api/contracts/${id}/close`, { on: '2026-12-08' })).status).toBeLessThan(300);
});

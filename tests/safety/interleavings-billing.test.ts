import { expect, test } from 'vitest';
import { addDays, firstOfMonth } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { FULL, WAYS, anOffice, ordersOf, saidOf, take, told } from './interleaving.ts';

test.each(WAYS)('the same reads are billed from two sessions, %s: one invoice holds them, and the other is told that nothing is due', async (way) => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { bookkeeper, director } = department;
  const names = ['bookkeeper bills', 'director bills', 'bookkeeper bills again'];
  const orders = ordersOf(names);
  const [night] = season.games as [Season['games'][0]];
  const contracts = [];
  for (const order of orders) {
    contracts.push(await aSignedContract(department, season, {
      title: order.join(', '), priceCents: 80_000, billingPlan: { kind: 'perReadInArrears' },
      commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 10_000 }],
    }));
  }
  const device = new TableDevice();
  await director.make(`/api/nights/${night.nightId}/log`, { deviceId: device.deviceId, entries: contracts.map((contract, place) => device.read(contract.commitments[0].id, night.gameId, place + 1)) });
  await director.make(`/api/nights/${night.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  for (const [place, order] of orders.entries()) {
    const { id: contractId } = contracts[place];
    const bill = (who: typeof director) => () => who.post('/api/invoices', { contractId, throughDay: '2026-12-31', issuedOn: '2026-12-31' });
    const answers = await take(department, { contract: contractId }, { 'bookkeeper bills': bill(bookkeeper), 'director bills': bill(director), 'bookkeeper bills again': bill(bookkeeper) }, order, way);
    expect(Object.values(told(answers, order)).sort(), order.join(', ')).toEqual(['done', 'nothing-to-bill', 'nothing-to-bill']);
    const { data } = await bookkeeper.look(`/api/invoices?contractId=${contractId}`);
    expect(data.map((invoice: any) => invoice.netCents), order.join(', ')).toEqual([10_000]);
  }
});

test.each(WAYS)('an invoice is paid by one check and by two that were kept, %s: one of the three pays it, the others are refused and nothing of them is kept', async (way) => {
  const { department, season, pay, billed } = await anOffice();
  const { bookkeeper } = department;
  const kept = () => bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-04', method: 'check', amountCents: FULL });
  for (const order of ordersOf(['a check pays', 'the first kept pays', 'the second kept pays'])) {
    const { invoiceId } = await billed(order.join(', '));
    const [first, second] = [await kept(), await kept()];
    const apply = (payment: { id: string }) => () => bookkeeper.post(`/api/payments/${payment.id}/applications`, { invoiceId, amountCents: FULL, appliedOn: '2026-12-05' });
    const answers = await take(department, { document: invoiceId }, { 'a check pays': () => pay(invoiceId, FULL), 'the first kept pays': apply(first), 'the second kept pays': apply(second) }, order, way);
    expect(Object.values(told(answers, order)).sort(), order.join(', ')).toEqual(['done', 'more-than-balance', 'more-than-balance']);
    expect((await bookkeeper.look(`/api/payments?invoiceId=${invoiceId}`)).total).toBe(1);
    expect(await bookkeeper.look(`/api/invoices/${invoiceId}`)).toMatchObject({ state: 'paid', appliedCents: FULL });
  }
});

test.each(WAYS)('an invoice is voided while two pay it, %s: it is void or paid once, never both', async (way) => {
  const { department, pay, billed } = await anOffice();
  const { bookkeeper } = department;
  for (const order of ordersOf(['voids', 'first pays', 'second pays'])) {
    const { invoiceId } = await billed(order.join(', '));
    const answers = await take(department, { document: invoiceId }, {
      voids: () => bookkeeper.post(`/api/invoices/${invoiceId}/void`, { reason: 'Sent to the wrong address' }),
      'first pays': () => pay(invoiceId, FULL),
      'second pays': () => pay(invoiceId, FULL),
    }, order, way);
    const said = told(answers, order);
    const isVoid = said['voids'] === 'done';
    const others = isVoid ? ['invoice-is-void', 'invoice-is-void'] : ['done', 'more-than-balance'];
    expect(['first pays', 'second pays'].map((name) => said[name]).sort(), order.join(', ')).toEqual(others.sort());
    if (!isVoid) expect(said['voids']).toBe('void-after-payment');
    if (way === 'one after the other') expect(isVoid, order.join(', ')).toBe(order[0] === 'voids');
    expect((await bookkeeper.look(`/api/invoices/${invoiceId}`)).state).toBe(isVoid ? 'void' : 'paid');
  }
});

test.each(WAYS)('an invoice is credited while it is paid and voided, %s: the credit pays it off or waits as a credit, and nothing is lost', async (way) => {
  const { department, pay, billed } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['credits', 'pays', 'voids'])) {
    const { contractId, invoiceId } = await billed(order.join(', '));
    const answers = await take(department, { contract: contractId }, {
      credits: () => director.post(`/api/contracts/${contractId}/lower-price`, { byCents: 10_000, on: '2026-12-04', reason: 'Fewer games than planned' }),
      pays: () => pay(invoiceId, FULL),
      voids: () => bookkeeper.post(`/api/invoices/${invoiceId}/void`, { reason: 'Sent to the wrong address' }),
    }, order, way);
    const said = told(answers, order);
    expect(said['credits'], order.join(', ')).toBe('done');
    const invoice = await bookkeeper.look(`/api/invoices/${invoiceId}`);
    const { data: memos } = await bookkeeper.look(`/api/credit-memos?contractId=${contractId}`);
    const credited = memos.filter((memo: any) => memo.contractId === contractId);
    if (said['voids'] === 'done') {
      expect([said['pays'], invoice.state, credited.length], order.join(', ')).toEqual(['invoice-is-void', 'void', 0]);
    } else if (said['pays'] === 'done') {
      // The payment was first: the memo stays a credit of the payer.
      expect([said['voids'], invoice.appliedCents, credited[0].unappliedCents], order.join(', ')).toEqual(['void-after-payment', FULL, 10_500]);
    } else {
      expect([said['pays'], invoice.balanceCents, credited[0].unappliedCents], order.join(', ')).toEqual(['more-than-balance', FULL - 10_500, 0]);
    }
  }
});

test.each(WAYS)('a contract is amended while two bill it, %s: the two invoices together come to the price, to the cent', async (way) => {
  const { department, season } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['amends', 'bookkeeper bills', 'director bills'])) {
    const contract = await aSignedContract(department, season, { title: order.join(', '), billingPlan: { kind: 'inFull', on: '2026-11-23' } });
    const bill = (who: typeof director) => who.post('/api/invoices', { contractId: contract.id, throughDay: '2026-12-31', issuedOn: '2026-12-31' });
    const answers = await take(department, { contract: contract.id }, {
      amends: () => director.post(`/api/contracts/${contract.id}/amend`, { commitmentId: contract.commitments[1].id, reads: 4, priceCents: 12_000, amendedOn: '2026-12-30' }),
      'bookkeeper bills': () => bill(bookkeeper),
      'director bills': () => bill(director),
    }, order, way);
    const said = told(answers, order);
    expect(said['amends'], order.join(', ')).toBe('done');
    const last = await bill(bookkeeper);
    expect(['done', 'nothing-to-bill'], order.join(', ')).toContain(saidOf(last));
    const { data } = await bookkeeper.look(`/api/invoices?contractId=${contract.id}`);
    expect(data.reduce((sum: number, invoice: any) => sum + invoice.netCents, 0), order.join(', ')).toBe(82_000);
    expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ toBillCents: 0, billedCents: 82_000 });
  }
});

test.each(WAYS)('a month is closed while two post into it, %s: what was booked before stays in it, what came after is in the next', async (way) => {
  const { department, season } = await anOffice();
  const { bookkeeper } = department;
  const thisMonth = firstOfMonth(dayAt(instantOf(new Date().toISOString()), 'America/Denver'));
  const orders = ordersOf(['closes', 'first pays', 'second pays']);
  const months = orders.map((_, place) => {
    let month = thisMonth;
    for (let back = place; back < orders.length; back += 1) month = firstOfMonth(addDays(month, -1));
    return month;
  });
  const pay = (receivedOn: string) => bookkeeper.post('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'cash', amountCents: 1_000 });
  await pay(months[0]!);
  for (const [place, order] of orders.entries()) {
    const month = months[place]!;
    const next = months[place + 1] ?? thisMonth;
    const answers = await take(department, { books: true }, {
      closes: () => bookkeeper.post(`/api/months/${month.slice(0, 7)}/close`),
      'first pays': () => pay(addDays(month, 9)),
      'second pays': () => pay(addDays(month, 9)),
    }, order, way);
    expect(told(answers, order), order.join(', ')).toEqual({ closes: 'done', 'first pays': 'done', 'second pays': 'done' });
    const days = await department.ask<{ booked_on: string }>('select booked_on from ledger_event where department_id = $1 and occurred_on = $2 order by booked_on', [department.id, addDays(month, 9)]);
    expect(days.every((day) => day.booked_on === addDays(month, 9) || day.booked_on === next), order.join(', ')).toBe(true);
    if (way === 'one after the other') expect(days.filter((day) => day.booked_on === next), order.join(', ')).toHaveLength(2 - order.indexOf('closes'));
    const late = await pay(addDays(month, 9));
    expect(await department.ask('select booked_on from ledger_event where department_id = $1 and cause_id = $2', [department.id, late.body.id])).toEqual([{ booked_on: next }]);
  }
});

test.each(WAYS)('a payment comes back while its rest is refunded and applied, %s: it is used or it is gone, never both', async (way) => {
  const { department, season, billed } = await anOffice();
  const { bookkeeper } = department;
  for (const order of ordersOf(['comes back', 'is refunded', 'is applied'])) {
    const { invoiceId } = await billed(order.join(', '));
    const payment = await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 10_000 });
    const answers = await take(department, { document: payment.id }, {
      'comes back': () => bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'returned', returnedOn: '2026-12-10', reason: 'No funds' }),
      'is refunded': () => bookkeeper.post(`/api/payments/${payment.id}/refunds`, { amountCents: 10_000, refundedOn: '2026-12-08', method: 'check' }),
      'is applied': () => bookkeeper.post(`/api/payments/${payment.id}/applications`, { invoiceId, amountCents: 10_000, appliedOn: '2026-12-06' }),
    }, order, way);
    const said = told(answers, order);
    const after = await bookkeeper.look(`/api/payments/${payment.id}`);
    const done = order.filter((name) => said[name] === 'done');
    // Applied and then come back is the one pair that may both be: the coming back undoes the use.
    expect(['comes back', 'is refunded', 'comes back, is applied'], order.join(', ')).toContain([...done].sort().join(', '));
    expect(after.unappliedCents + after.appliedCents + after.refundedCents, order.join(', ')).toBe(done.includes('comes back') ? 0 : 10_000);
    expect(order.filter((name) => !done.includes(name)).map((name) => said[name])).toEqual(order.filter((name) => !done.includes(name)).map(() => 'more-than-unapplied'));
  }
});

test.each(WAYS)('the director writes off while the sponsor pays, %s: one of the two is told that nothing is open', async (way) => {
  const { department, season, pay } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['writes off', 'declines', 'pays'])) {
    const charge = await bookkeeper.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: order.join(', '), amountCents: 5_000, issuedOn: '2026-11-20' });
    const { waitingWriteOff } = await bookkeeper.make(`/api/invoices/${charge.id}/write-off-requests`, { amountCents: 5_000, reason: 'The store closed' });
    const answers = await take(department, { document: charge.id }, {
      'writes off': () => director.post(`/api/write-off-requests/${waitingWriteOff.id}/approve`, { on: '2026-12-06' }),
      declines: () => director.post(`/api/write-off-requests/${waitingWriteOff.id}/decline`, { reason: 'Call them once more' }),
      pays: () => pay(charge.id, 5_000),
    }, order, way);
    const said = told(answers, order);
    const after = await bookkeeper.look(`/api/invoices/${charge.id}`);
    expect(after.balanceCents, order.join(', ')).toBe(0);
    expect([said['writes off'], said['pays']].filter((one) => one === 'done'), order.join(', ')).toHaveLength(1);
    expect(after.state, order.join(', ')).toBe(said['pays'] === 'done' ? 'paid' : 'writtenOff');
  }
});

test.each(WAYS)('a check in the drawer is deposited while it is found to be a mistake, %s: the books say where its money lay', async (way) => {
  const { department, season } = await anOffice();
  const { bookkeeper, director } = department;
  for (const order of ordersOf(['is deposited', 'is deposited again', 'is a mistake'])) {
    const payment = await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 1_000, drawer: 'undepositedReceipts' });
    const deposit = () => director.post('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-08', paymentIds: [payment.id], countedCents: 1_000 });
    const answers = await take(department, { document: payment.id }, {
      'is deposited': deposit,
      'is deposited again': deposit,
      'is a mistake': () => bookkeeper.post(`/api/payments/${payment.id}/return`, { kind: 'mistake', returnedOn: '2026-12-09', reason: 'Typed twice' }),
    }, order, way);
    const said = told(answers, order);
    expect(said['is a mistake'], order.join(', ')).toBe('done');
    const deposits = ['is deposited', 'is deposited again'].map((name) => said[name]).sort();
    expect([['done', 'payment-deposited-already'], ['payment-not-in-drawer', 'payment-not-in-drawer']], order.join(', ')).toContainEqual(deposits);
    if (way === 'one after the other') expect(deposits[0] === 'done', order.join(', ')).toBe(order[0] !== 'is a mistake');
    const [row] = await department.ask<{ drawer: number; cash: number }>(
      `select coalesce(sum(case '1050' when to_account then amount when from_account then -amount else 0 end), 0)::int as drawer,
              coalesce(sum(case '1000' when to_account then amount when from_account then -amount else 0 end), 0)::int as cash from posting where department_id = $1`,
      [department.id],
    );
    expect(row, order.join(', ')).toEqual({ drawer: 0, cash: 0 });
  }
});

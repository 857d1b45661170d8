import { expect, test } from 'vitest';
import { balances, theGoldenContract } from '../support/golden-contract.ts';

// LEDGER.md, section 5: every row of K1, to the cent and to the read, and its trial balances.
test('the golden contract comes to the cent and to the read after each of its steps, played, billed, paid, credited and closed through the API', async () => {
  const golden = await theGoldenContract();
  const { department, contractId, a, b } = golden;
  const { director, bookkeeper } = department;
  const contract = `/api/contracts/${contractId}`;

  const signed = await director.make(`${contract}/sign`, { signedOn: '2024-11-20', signedByName: 'Hazel Juniper' });
  expect(signed.number).toBe('C-2025-0001');
  expect(await golden.row()).toEqual(['6/0/0', '8/0/0/0', 70_000, 0, 0, 0, 0, 0, 0]);

  const first = await bookkeeper.make('/api/invoices', { contractId, throughDay: '2024-11-23', issuedOn: '2024-11-23' });
  expect([first.number, first.netCents, first.taxCents]).toEqual(['TR-2025-0001', 35_000, 1_750]);
  expect(await golden.row()).toEqual(['6/0/0', '8/0/0/0', 35_000, -35_000, 36_750, 0, -1_750, 0, 0]);

  await golden.night('2024-12-01', [1, 1]);
  expect(await golden.row()).toEqual(['5/1/0', '7/1/0/0', 35_000, -24_544, 36_750, 0, -1_750, 0, -10_456]);

  await golden.receive('2024-12-05', 'check', 36_750, { [first.id]: 36_750 });
  expect((await bookkeeper.look(`/api/invoices/${first.id}`)).state).toBe('paid');
  expect(await golden.row()).toEqual(['5/1/0', '7/1/0/0', 35_000, -24_544, 0, 0, -1_750, 36_750, -10_456]);

  const eighth = await golden.night('2024-12-08', [1, 1]);
  expect(await golden.row()).toEqual(['4/2/0', '6/2/0/0', 35_000, -14_089, 0, 0, -1_750, 36_750, -20_911]);

  await golden.night('2024-12-15', [1, 0], { notRead: 1 });
  expect(await golden.row()).toEqual(['3/3/0', '6/2/0/0', 35_000, -7_271, 0, 0, -1_750, 36_750, -27_729]);

  await golden.night('2024-12-18', [1, 2]);
  expect(await golden.row()).toEqual(['2/4/0', '4/4/0/0', 35_000, 6_820, 0, 0, -1_750, 36_750, -41_820]);

  await bookkeeper.make('/api/months/2024-11/close', {});
  await bookkeeper.make('/api/months/2024-12/close', {});
  await golden.takeBack(eighth.nightId, eighth.entries[1]!.id);
  expect(await golden.row()).toEqual(['2/4/0', '5/3/0/0', 35_000, 3_184, 0, 0, -1_750, 36_750, -38_184]);
  expect((await balances(department, '2024-12-31')).trial).toEqual({ '1000': 36_750, '2100': 6_820, '2200': -1_750, '4000': -41_820 });

  await director.make(`${contract}/amend`, { commitmentId: b, reads: 4, priceCents: 12_000, amendedOn: '2025-01-06' });
  expect(await golden.row()).toEqual(['2/4/0', '9/3/0/0', 47_000, 3_184, 0, 0, -1_750, 36_750, -38_184]);

  await golden.night('2025-01-08', [1, 2]);
  expect(await golden.row()).toEqual(['1/5/0', '7/5/0/0', 47_000, 16_710, 0, 0, -1_750, 36_750, -51_710]);

  const second = await bookkeeper.make('/api/invoices', { contractId, throughDay: '2025-01-15', issuedOn: '2025-01-15' });
  expect([second.netCents, second.taxCents]).toEqual([47_000, 2_350]);
  expect(await golden.row()).toEqual(['1/5/0', '7/5/0/0', 0, -30_290, 49_350, 0, -4_100, 36_750, -51_710]);

  await golden.receive('2025-01-20', 'check', 30_000, { [second.id]: 30_000 });
  expect(await golden.row()).toEqual(['1/5/0', '7/5/0/0', 0, -30_290, 19_350, 0, -4_100, 66_750, -51_710]);

  const icy = await golden.game('2025-01-22');
  await director.make(`/api/games/${icy.gameId}/cancel`, { reason: 'Ice' });
  const agreed = await director.make(`${contract}/makegoods`, {
    commitmentId: a, gameId: icy.gameId, missed: 1, replacementReadKindId: golden.season.readKinds.concession, replacements: 2, agreedOn: '2025-01-25', agreedWith: 'Hazel Juniper',
  });
  const makegoodId = agreed.data[0].id as string;
  expect(await golden.row()).toEqual(['1/5/0', '7/5/0/0', 0, -30_290, 19_350, 0, -4_100, 66_750, -51_710]);

  await golden.night('2025-01-29', [0, 3], { makegoodId });
  expect(await golden.row()).toEqual(['1/5/0', '4/8/0/0', 0, -20_230, 19_350, 0, -4_100, 66_750, -61_770]);
  expect((await director.look(`${contract}/makegoods`)).data).toMatchObject([{ placed: 1, given: 1, settled: 0 }]);

  await bookkeeper.make('/api/months/2025-01/close', {});
  await golden.night('2025-02-05', [0, 2], { makegoodId });
  expect(await golden.row()).toEqual(['0/5/1', '2/10/0/0', 0, -6_706, 19_350, 0, -4_100, 66_750, -75_294]);
  expect((await director.look(`${contract}/makegoods`)).data).toMatchObject([{ missed: 1, replacements: 2, placed: 2, given: 2, settled: 1 }]);
  expect((await balances(department, '2025-01-31')).trial).toEqual({ '1000': 66_750, '1100': 19_350, '2100': -20_230, '2200': -4_100, '4000': -61_770 });

  const asked = { commitmentId: b, count: 2, reason: 'Two reads were not given', on: '2025-02-15' };
  const foreseen = await bookkeeper.make(`${contract}/credits/preview`, asked);
  expect(foreseen).toMatchObject({ valueCents: 6_706, unbilledCents: 0, memoCents: 6_706, memoTaxCents: 335, memoGrossCents: 7_041, owedBefore: 2, owedAfter: 0 });
  expect(foreseen.words).toEqual([
    '2 reads are owed now, 0 afterward.', 'The price goes down by $67.06.',
    'A credit memo is written on invoice TR-2025-0002: $67.06 and $3.35 tax, $70.41 in all.', '$70.41 of it pays off what is still open there.',
  ]);
  expect(await golden.row()).toEqual(['0/5/1', '2/10/0/0', 0, -6_706, 19_350, 0, -4_100, 66_750, -75_294]);
  const credited = await bookkeeper.make(`${contract}/credits`, asked);
  const memo = await bookkeeper.look(`/api/credit-memos/${credited.creditMemoIds[0]}`);
  expect(memo).toMatchObject({ number: 'TR-CM-2025-0001', netCents: 6_706, taxCents: 335, appliedCents: 7_041, unappliedCents: 0 });
  expect(memo.lines).toMatchObject([{ description: 'Concession read, credited', quantity: 2, unitCents: 3_353, amountCents: 6_706, taxCents: 335, invoiceId: second.id }]);
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/0', 0, 0, 12_309, 0, -3_765, 66_750, -75_294]);

  const check = await golden.receive('2025-02-18', 'check', 15_000, { [second.id]: 12_309 });
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/0', 0, 0, 0, -2_691, -3_765, 81_750, -75_294]);

  await golden.night('2025-02-19', [0, 1]);
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/1', 0, 0, 0, -2_691, -3_765, 81_750, -75_294]);

  await bookkeeper.make(`/api/payments/${check.id}/return`, { kind: 'returned', returnedOn: '2025-02-24', bankFeeCents: 1_200, reason: 'Not enough in the account' });
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/1', 0, 0, 12_309, 0, -3_765, 65_550, -75_294]);

  const charge = await bookkeeper.make('/api/charges', { payerId: golden.season.payerId, sellerId: golden.season.sellerId, contractId, description: 'Bank fee of the returned check', amountCents: 1_200, issuedOn: '2025-02-24' });
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/1', 0, 0, 13_509, 0, -3_765, 65_550, -75_294]);

  const transfer = await golden.receive('2025-03-02', 'transfer', 14_000, { [second.id]: 12_309, [charge.id]: 1_200 });
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/1', 0, 0, 0, -491, -3_765, 79_550, -75_294]);

  await bookkeeper.make(`/api/payments/${transfer.id}/refunds`, { amountCents: 491, refundedOn: '2025-03-05', method: 'check' });
  await director.make(`${contract}/close`, { on: '2025-03-05' });
  expect(await golden.row()).toEqual(['0/5/1', '0/10/2/1', 0, 0, 0, 0, -3_765, 79_059, -75_294]);
  expect((await balances(department)).trial).toEqual({ '1000': 79_059, '2200': -3_765, '4000': -75_294, '4200': -1_200, '5200': 1_200 });
  expect((await director.look(contract)).term.state).toBe('closed');
});

import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import type { DepositSlipSheet } from '../../server/platform/typesetting/deposit-slip-sheet.ts';
import type { ReceiptSheet } from '../../server/platform/typesetting/receipt-sheet.ts';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';
import { read } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
beforeAll(async () => {
  typesetter = new Typesetter({ workerFile: await builtWorker('receipts'), limitMilliseconds: 60_000 });
}, 90_000);
afterAll(() => typesetter.close());

const receipt = (extra: Partial<ReceiptSheet> = {}): ReceiptSheet => ({
  number: 'TR-R-2027-0003', departmentName: 'Tamarack Ridge Athletics', locale: 'en-US', currency: 'USD', sellerName: 'Kestrel Boosters', sellerAddress: '12 Alder Street\nTamarack Ridge',
  payerName: 'Juniper & Pike Hardware', fromWhom: 'Hazel Juniper', whatFor: 'Game ball, opening night', takenOn: '2026-12-04', takenByName: 'Odell Marsh', method: 'check', reference: '1041',
  amountCents: 125_000, isTakenOut: false, ...extra,
});

const slip = (extra: Partial<DepositSlipSheet> = {}): DepositSlipSheet => ({
  number: 'TR-D-2027-0001', departmentName: 'Tamarack Ridge Athletics', locale: 'en-US', currency: 'USD', sellerName: 'Kestrel Boosters', depositedOn: '2026-12-07', depositedByName: 'Ottoline Brandt',
  expectedCents: 127_000, countedCents: 126_900, differenceCents: -100, checkCents: 125_000, cashCents: 2_000, note: 'Counted twice; a dollar is missing',
  lines: [
    { paymentNumber: 'TR-P-2027-0004', receiptNumber: 'TR-R-2027-0003', payerName: 'Juniper & Pike Hardware', receivedOn: '2026-12-04', method: 'check', reference: '1041', amountCents: 125_000 },
    { paymentNumber: 'TR-P-2027-0005', receiptNumber: null, payerName: 'Łukasz Wren', receivedOn: '2026-12-04', method: 'cash', reference: null, amountCents: 2_000 },
  ],
  ...extra,
});

test('a receipt is half a page that says who handed over what, to whom, and when', async () => {
  const { text, isTagged, title, pages } = await read(await typesetter.pdf('receipt', receipt()));
  expect([isTagged, title, pages.length]).toEqual([true, 'Receipt TR-R-2027-0003', 1]);
  for (const words of ['Kestrel Boosters', '12 Alder Street', 'TR-R-2027-0003', 'Hazel Juniper', 'Juniper & Pike Hardware', 'Check 1041', 'Game ball, opening night', 'December 4, 2026', 'Odell Marsh', '$1,250.00', 'the business office decide']) expect(text).toContain(words);
});

test('cash has no number, one’s own account is not named twice, and what was taken back says so', async () => {
  const { text } = await read(await typesetter.pdf('receipt', receipt({ method: 'cash', reference: null, fromWhom: 'Juniper & Pike Hardware', isTakenOut: true })));
  expect(text).toContain('Cash');
  expect(text).toContain('TAKEN BACK');
  expect(text).not.toContain('On account of');
});

test('a deposit slip has checks and cash apart, the numbers of the checks, and what is short', async () => {
  const { text, isTagged, title } = await read(await typesetter.pdf('depositSlip', slip()));
  expect([isTagged, title]).toEqual([true, 'Deposit slip TR-D-2027-0001']);
  for (const words of ['Checks', 'Cash', '1041', '1 check', 'TR-R-2027-0003', 'TR-P-2027-0005', 'Short', '$1.00', '$1,269.00', 'Counted twice; a dollar is missing', 'Ottoline Brandt', 'December 7, 2026']) expect(text).toContain(words);
});

test('one of two hundred checks runs over pages and loses none; one to the cent has no word of over or short', async () => {
  const [check] = slip().lines;
  const lines = Array.from({ length: 200 }, (_, place) => ({ ...check!, reference: `n${3000 + place}` }));
  const { text, pages } = await read(await typesetter.pdf('depositSlip', slip({ lines, differenceCents: 0, countedCents: 127_000 })));
  expect(pages.length).toBeGreaterThan(3);
  for (const { reference } of lines) expect(text).toContain(reference);
  expect(text).not.toMatch(/\b(Over|Short)\b/);
});

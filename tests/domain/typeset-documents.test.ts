import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import type { InvoiceSheet } from '../../server/platform/typesetting/invoice-sheet.ts';
import type { PacketSheet } from '../../server/platform/typesetting/packet-sheet.ts';
import { Typesetter, TypesettingFailed } from '../../server/platform/typesetting/typesetter.ts';
import { amountText, dayText, shareText } from '../../server/platform/typesetting/amount-text.ts';
import { longNight } from './packet-night.ts';
import { composed, read, sheetOf } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
let workerFile: URL;
beforeAll(async () => {
  workerFile = await builtWorker('documents');
  typesetter = new Typesetter({ workerFile, limitMilliseconds: 60_000 });
}, 90_000);
afterAll(() => typesetter.close());

const invoice = (extra: Partial<InvoiceSheet> = {}): InvoiceSheet => ({
  kind: 'invoice', number: 'KB-2027-0014', mark: null, locale: 'en-US', currency: 'USD',
  seller: { name: 'Kestrel Boosters', address: '12 Alder Street\nTamarack Ridge', remitTo: 'Kestrel Boosters\nPO Box 7', taxIdentity: '00-0000000', contactName: 'Ottoline Brandt', contactEmail: 'books@kestrels.example', contactPhone: '(303) 555-0142' },
  payer: { name: 'Juniper & Pike Hardware', address: '40 Alder Street', email: null },
  sponsorName: 'Juniper & Pike Hardware', contractNumber: 'C-2026-003', contractTitle: 'Game ball', purchaseOrderNumber: 'PO 4471', issuedOn: '2026-12-01', dueOn: '2026-12-31', terms: 'Net 30', creditsNumber: null, reason: null,
  lines: [{ description: 'Game ball, 12 reads', quantity: 12, unitCents: 7500, amountCents: 90000 }],
  netCents: 90000, taxBasisPoints: 725, taxCents: 6525, exemptionReason: null, grossCents: 96525, paidCents: 50000, balanceCents: 46525, note: null, ...extra,
});

describe('the printed invoice', () => {
  // A proper invoice: 5 CFR 1315.9(b).
  test('has the fields of a proper invoice', async () => {
    const { text, isTagged, title } = await read(await typesetter.pdf('invoice', invoice()));
    expect(isTagged).toBe(true);
    expect(title).toBe('Invoice KB-2027-0014');
    for (const words of [
      'Kestrel Boosters', '12 Alder Street', 'PO Box 7', 'Tax id 00-0000000', 'Ottoline Brandt', 'KB-2027-0014', 'December 1, 2026', 'December 31, 2026', 'Net 30', 'C-2026-003',
      'PO 4471', 'Game ball, 12 reads', '$75.00', '$900.00', 'Tax 7.25%', '$65.25', '$965.25', '-$500.00', '$465.25', 'local rules and the business office decide',
    ]) expect(text).toContain(words);
  });

  test('an exempt payer’s has the reason and no rate, a void one says VOID, a credit memo says what it credits', async () => {
    const exempt = await read(await typesetter.pdf('invoice', invoice({ exemptionReason: 'Exempt, certificate 98-7', taxCents: 0 })));
    expect(exempt.text).toContain('Exempt, certificate 98-7');
    expect(exempt.text).not.toContain('7.25');
    expect((await read(await typesetter.pdf('invoice', invoice({ mark: 'VOID' })))).text).toContain('VOID');
    const memo = await read(await typesetter.pdf('invoice', invoice({ kind: 'creditMemo', dueOn: null, creditsNumber: 'KB-2027-0009', reason: 'One game cancelled' })));
    for (const words of ['Credit memo', 'KB-2027-0009', 'One game cancelled', 'Total credited']) expect(memo.text).toContain(words);
    expect(memo.text).not.toContain('Balance due');
  });

  test('that is taxed in part says the tax of each line, and one that is taxed alike does not', async () => {
    const lines = [
      { description: 'Game ball', quantity: 1, unitCents: null, amountCents: 40909, taxCents: 2966 },
      { description: 'Scholarship page', quantity: 1, unitCents: null, amountCents: 29091, taxCents: 0 },
    ];
    const apart = await read(await typesetter.pdf('invoice', invoice({ lines, netCents: 70000, taxCents: 2966, grossCents: 72966 })));
    for (const words of ['Tax', '$29.66', '$0.00', '$729.66']) expect(apart.text).toContain(words);
    const alike = lines.map((line) => ({ ...line, taxCents: Math.round(line.amountCents * 0.0725) }));
    expect((await read(await typesetter.pdf('invoice', invoice({ lines: alike, netCents: 70000, taxCents: 5075, grossCents: 75075 })))).text).not.toContain('$21.09');
  });

  test('of ninety lines runs over pages and loses none', async () => {
    const lines = Array.from({ length: 90 }, (_, place) => ({ description: `Read of night ${place + 1}.`, quantity: 1, unitCents: null, amountCents: 100 }));
    const printed = await read(await typesetter.pdf('invoice', invoice({ lines })));
    expect(printed.pages.length).toBeGreaterThan(1);
    for (const line of lines) expect(printed.text).toContain(line.description);
  });

  test.each([[0, '$0.00'], [1, '$0.01'], [-5, '-$0.05'], [123456789, '$1,234,567.89'], [9007199254740991, '$90,071,992,547,409.91']])('%i cents are printed %s', (cents, text) => {
    expect(amountText(cents, 'en-US', 'USD')).toBe(text);
  });

  test('shares and days are printed in words', () => {
    expect([shareText(725), shareText(800), shareText(10), shareText(0)]).toEqual(['7.25%', '8%', '0.1%', '0%']);
    expect(dayText('2026-12-04', 'en-US')).toBe('December 4, 2026');
  });
});

test('the statement shows what was promised, given and still to come, and the dollars', async () => {
  const printed = await read(await typesetter.pdf('statement', {
    title: 'Delivery and account statement', departmentName: 'Tamarack Ridge Athletics', sponsorName: 'Snowmelt Creamery', contractNumber: 'C-7', asOfOn: '2027-01-15', locale: 'en-US', currency: 'USD',
    commitments: [{ name: 'Concession read', promised: 24, given: 11, madeGood: 1, credited: 0, stillToCome: 12 }],
    reads: [{ heldOn: '2026-12-04', what: 'Concession read, Port Ansel at Tamarack Ridge', outcome: 'given', count: 1 }],
    account: [{ on: '2026-12-01', what: 'Invoice KB-2027-0014', amountCents: 80000, balanceCents: 80000 }], note: null,
  }));
  for (const words of ['Snowmelt Creamery', 'Still to come', '24 11 1 0 12', 'December 4, 2026', '$800.00']) expect(printed.text).toContain(words);
});

describe('the typesetter', () => {
  test('sets many documents at once, in turn', async () => {
    const pdfs = await Promise.all(Array.from({ length: 8 }, (_, place) => typesetter.pdf('invoice', invoice({ number: `KB-${place}` }))));
    for (const [place, pdf] of pdfs.entries()) expect((await read(pdf)).title).toBe(`Invoice KB-${place}`);
  });

  test('refuses data the template cannot set and goes on with the next', async () => {
    await expect(typesetter.pdf('packet', { sections: [] } as unknown as PacketSheet)).rejects.toThrow(TypesettingFailed);
    expect((await typesetter.pdf('invoice', invoice())).subarray(0, 5).toString()).toBe('%PDF-');
  });

  test('gives up on a document that takes too long and sets the next with a new worker', async () => {
    const hasty = new Typesetter({ workerFile, limitMilliseconds: 6000 });
    await hasty.pdf('invoice', invoice());
    const packet = composed(longNight());
    const endless = { ...packet, cues: Array.from({ length: 45 }, (_, round) => packet.cues.map((cue) => ({ ...cue, title: `${cue.title} ${round}` }))).flat() };
    await expect(hasty.pdf('packet', sheetOf(endless, 'Version 1'))).rejects.toMatchObject({ code: 'document-too-long' });
    // The old worker still holds a core until its compiler comes back to look around.
    await vi.waitFor(async () => expect((await hasty.pdf('invoice', invoice())).subarray(0, 5).toString()).toBe('%PDF-'), { timeout: 40_000 });
    await hasty.close();
    await expect(hasty.pdf('invoice', invoice())).rejects.toThrow('closed');
  }, 60_000);

  test('refuses a document of millions of letters before any work is done', async () => {
    const lines = [{ description: 'x'.repeat(4_000_001), quantity: 1, unitCents: null, amountCents: 1 }];
    await expect(typesetter.pdf('invoice', invoice({ lines }))).rejects.toMatchObject({ code: 'document-too-long' });
  });
});

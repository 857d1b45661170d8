import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import type { NightForPacket } from '../../server/domain/packet/night-for-packet.ts';
import type { Packet } from '../../server/domain/packet/packet.ts';
import { headOf, sectionsOf } from '../../server/domain/packet/sections.ts';
import type { PacketSheet } from '../../server/platform/typesetting/packet-sheet.ts';
import type { InvoiceSheet } from '../../server/platform/typesetting/invoice-sheet.ts';
import { Typesetter, TypesettingFailed } from '../../server/platform/typesetting/typesetter.ts';
import { amountText, dayText, shareText } from '../../server/platform/typesetting/amount-text.ts';
import { game, kestrels, longNight, night, player, render } from './packet-night.ts';
import { builtWorker } from './packet-typesetter.ts';

interface Line { readonly text: string; readonly size: number; readonly left: number; readonly right: number; readonly bottom: number }
interface Printed { readonly pages: readonly (readonly Line[])[]; readonly text: string; readonly pageTexts: readonly string[]; readonly title: string; readonly isTagged: boolean; readonly size: readonly number[] }

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
let workerFile: URL;
let nightPdf: Buffer;
let printedNight: Printed;
beforeAll(async () => {
  workerFile = await builtWorker('typesetting');
  typesetter = new Typesetter({ workerFile, limitMilliseconds: 60_000 });
  nightPdf = await print(night());
  printedNight = await read(nightPdf);
}, 90_000);
afterAll(() => typesetter.close());

async function read(pdf: Buffer): Promise<Printed> {
  const task = getDocument({ data: new Uint8Array(pdf), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const pages: Line[][] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(items.flatMap((item) => ('str' in item && item.transform[1] === 0 ? [{
      text: item.str, size: Math.hypot(Number(item.transform[2]), Number(item.transform[3])),
      left: Number(item.transform[4]), right: Number(item.transform[4]) + item.width, bottom: Number(item.transform[5]),
    }] : [])));
  }
  const pageTexts = pages.map((lines) => lines.map((line) => line.text).join(' ').replace(/\s+/g, ' ').normalize('NFC'));
  const { info } = (await document.getMetadata()) as { info: { Title?: string } };
  const marks = await document.getMarkInfo();
  const [, , width, height] = (await document.getPage(1)).view;
  await task.destroy();
  return { pages, pageTexts, text: pageTexts.join('\n'), title: info.Title ?? '', isTagged: marks?.Marked === true, size: [width ?? 0, height ?? 0] };
}

async function print(of: NightForPacket, issueNumber: number | null = 3): Promise<Buffer> {
  const packet = composePacket(of, DEFAULT_SCRIPTS, render);
  return typesetter.pdf('packet', sheetOf(packet, issueNumber === null ? null : `Version ${issueNumber}`));
}

function sheetOf(packet: Packet, versionText: string | null, extra: Partial<PacketSheet> = {}): PacketSheet {
  return { head: headOf(packet), paper: packet.paper, versionText, sections: sectionsOf(packet), pages: null, pageCount: null, only: null, cover: null, ...extra };
}

describe('the printed packet', () => {
  test('is tagged, has a title, lies on US Letter and says night, issue and page on every page', () => {
    const printed = printedNight;
    expect(printed.isTagged).toBe(true);
    expect(printed.title).toBe('Port Ansel Herons at Tamarack Ridge Kestrels, Friday, December 4, 2026: Version 3');
    expect(printed.size).toEqual([612, 792]);
    printed.pageTexts.forEach((text, place) => {
      expect(text).toContain(`page ${place + 1} of ${printed.pages.length}`);
      expect(text).toContain('Friday, December 4, 2026 · Herons at Kestrels');
      expect(text).toContain('Version 3');
    });
  });

  test('begins with the table card on two sides, with every sponsor on it', () => {
    const printed = printedNight;
    expect(printed.pageTexts[0]).toContain('Table card');
    expect(printed.pageTexts[2]).toContain('Run of show');
    for (const words of ['Juniper & Pike Hardware', 'Copperline Credit Union', 'Snowmelt Creamery', 'Blue Lantern Tire']) expect(`${printed.pageTexts[0]} ${printed.pageTexts[1]}`).toContain(words);
    expect(printed.text).toContain('For the table — do not read');
    expect(printed.text).toContain('O say can you see');
    expect(printed.text).toContain('Emergency: all sponsor reads stop at once');
  });

  test('sets what is spoken in 18 points or more', () => {
    const { pages } = printedNight;
    const lines = pages.flat().filter((line) => /Good evening|rise, take off|This break comes|final score tonight/.test(line.text));
    expect(lines.length).toBeGreaterThan(3);
    for (const line of lines) expect(line.size).toBeGreaterThanOrEqual(18);
  });

  test('keeps names in Vietnamese, Polish, Irish and Nahuatl letters, with the way to say them', () => {
    const { text } = printedNight;
    for (const words of ['Siobhán Delacroix-Whitcombe', 'Nguyễn Thị Bảo Ngọc', 'Łukasz Wierzbicki', 'Xochitl Marchetti', 'Adaeze Okonkwo', 'WOO-kahsh vyezh-BIT-skee']) expect(text).toContain(words);
  });

  test('names no student whose family chose otherwise', () => {
    const { text } = printedNight;
    for (const name of ['Ottilie', 'Perpetua', 'Wilhelmina', 'Zuleika', 'zoo-LAY']) expect(text).not.toContain(name);
    for (const words of ['(number only)', '(a member of the team)', '(do not announce)']) expect(text).toContain(words);
  });

  test('with three games, thirty players a side and long names has a table card of two sides, and nothing is cut off', async () => {
    const printed = await read(await print(longNight()));
    expect(printed.pageTexts.findIndex((text) => text.includes('Clock Code What'))).toBe(2);
    for (const line of printed.pages.flat()) {
      expect(line.left).toBeGreaterThanOrEqual(71);
      expect(line.right).toBeLessThanOrEqual(612 - 7);
      expect(line.bottom).toBeGreaterThanOrEqual(39);
    }
    for (let number = 0; number < 30; number += 1) expect(printed.text).toMatch(new RegExp(`\\b${number} (Maximiliana|Siobhán)`));
  });

  test('leaves room for the three-hole punch on the left', () => {
    const { pages } = printedNight;
    for (const line of pages.flat().filter((one) => one.text.trim() !== '')) expect(line.left).toBeGreaterThanOrEqual(72 - 1);
  });

  test('of the same night is the same to the byte, and a draft says so', async () => {
    expect((await print(night())).equals(nightPdf)).toBe(true);
    expect((await read(await print(night(), null))).pageTexts[0]).toContain('DRAFT, not issued');
  });

  test('tells where each block stands, keeps planned pages, and prints only the pages asked for, with a cover', async () => {
    const packet = composePacket(night(), DEFAULT_SCRIPTS, render);
    const flowing = await typesetter.set('packet', sheetOf(packet, 'Version 1'));
    const keys = sectionsOf(packet).flatMap((section) => section.blocks.map((block) => block.key));
    expect(flowing.marks.map((mark) => mark.key)).toEqual(keys);
    expect(new Set(keys).size).toBe(keys.length);
    expect(flowing.pageCount).toBe(Math.max(...flowing.marks.map((mark) => mark.lastPage)));
    const pages = sectionsOf(packet).map((section, place) => ({ label: String(place + 1), tab: section.tab, versionText: `Version ${place}`, digestText: `d${place}`, keys: section.blocks.map((block) => block.key) }));
    const forced = await read((await typesetter.set('packet', sheetOf(packet, 'Version 9', { pages, pageCount: pages.length }))).pdf);
    expect(forced.pageTexts[0]).toContain(`page 1 of ${pages.length}`);
    expect(forced.text).toContain(`page 3a of ${pages.length}`);
    expect(forced.text).toContain('Version 3 · d3');
    const cover = { title: 'Change set', sinceText: 'Version 8', versionText: 'Version 9', reasonText: 'One player wears another number', lines: [{ action: 'swap', label: '4', tab: 'Line-ups', what: 'Line-up: Herons' }] } as const;
    const change = await read((await typesetter.set('packet', sheetOf(packet, 'Version 9', { pages, pageCount: pages.length, only: ['4'], cover }))).pdf);
    expect(change.pageTexts[0]).toContain('Swap these pages');
    expect(change.pageTexts[1]).toContain('page 4 of');
  });

  test('with no sponsor, no roster, no people and no next game still prints', async () => {
    const bare = night({ people: [], nextGame: null, nextHomeGame: null, games: [game({ placements: [], mentions: [], home: { ...kestrels, roster: [], headCoach: null } })] });
    expect((await read(await print(bare))).text).toContain('No roster has been entered.');
    expect((await read(await print(night({ games: [] })))).text).toContain('Table card');
  });

  test('with a script of many pages breaks it over pages and loses no word', async () => {
    const library = DEFAULT_SCRIPTS.map((one) => (one.moment === 'conduct' ? { ...one, text: `${'Be kind to each other tonight. '.repeat(600)} The very last word.` } : one));
    const packet = composePacket(night(), library, render);
    const { text } = await read(await typesetter.pdf('packet', sheetOf(packet, 'Version 1')));
    expect(text).toContain('The very last word.');
  });

  test('words that look like markup of the typesetter are printed as they stand', async () => {
    const words = '#import "x" *bold* $1 + 1$ @here <there> \\ [x] "quoted" {braces}';
    const home = { ...kestrels, roster: [player('4', words, { isStarter: true })] };
    expect((await read(await print(night({ games: [game({ home })] })))).text).toContain(words);
  });
});

describe('a character the font lacks', () => {
  test('is found and printed as a box, with a warning on the first page', async () => {
    const home = { ...kestrels, roster: [player('4', 'Mina 김 🏀', { isStarter: true })] };
    const of = night({ games: [game({ home })] });
    expect(await typesetter.missingGlyphs(of)).toEqual(['김', '🏀']);
    const printed = await read(await print(of));
    expect(printed.pageTexts[0]).toContain('Some characters cannot be printed');
    expect(printed.text).toContain('Mina □ □');
  });

  test('is none in the names of the season, composed or not', async () => {
    expect(await typesetter.missingGlyphs(['Siobhán', 'Nguyễn', 'Łukasz', 'Xochitl', 'Okonkwo', 'Nguyễn'.normalize('NFD'), 'ñ ü ¿ ¡ — “ ” ’ ½ €'])).toEqual([]);
  });
});

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
      'PO 4471', 'Game ball, 12 reads', '$75.00', '$900.00', 'Tax 7.25 %', '$65.25', '$965.25', '-$500.00', '$465.25', 'local rules and the business office decide',
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
    expect([shareText(725), shareText(800), shareText(10), shareText(0)]).toEqual(['7.25 %', '8 %', '0.1 %', '0 %']);
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
    const hasty = new Typesetter({ workerFile, limitMilliseconds: 4000 });
    await hasty.pdf('invoice', invoice());
    const packet = composePacket(longNight(), DEFAULT_SCRIPTS, render);
    const endless = { ...packet, cues: Array.from({ length: 400 }, () => packet.cues).flat() };
    await expect(hasty.pdf('packet', sheetOf(endless, 'Version 1'))).rejects.toThrow('took longer');
    expect((await hasty.pdf('invoice', invoice())).subarray(0, 5).toString()).toBe('%PDF-');
    await hasty.close();
    await expect(hasty.pdf('invoice', invoice())).rejects.toThrow('closed');
  }, 30_000);
});

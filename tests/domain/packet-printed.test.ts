import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test, vi } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import type { NightForPacket } from '../../server/domain/packet/night-for-packet.ts';
import { sectionsOf } from '../../server/domain/packet/sections.ts';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';
import { game, kestrels, night, placement, player, render } from './packet-night.ts';
import { composed, read, sheetOf } from './packet-print.ts';
import type { Printed } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

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

async function print(of: NightForPacket, issueNumber: number | null = 3): Promise<Buffer> {
  return typesetter.pdf('packet', sheetOf(composed(of), issueNumber === null ? null : `Version ${issueNumber}`));
}

const squeezed = (text: string): string => text.normalize('NFC').replace(/\s+/g, '');

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

  test('has every word that is spoken once, in 18 points or more', () => {
    const large = squeezed(printedNight.pages.flat().filter((line) => line.size >= 17.9).map((line) => line.text).join(' '));
    const spoken = composed(night()).cues.flatMap((cue) => [...cue.segments, ...(cue.second?.segments ?? [])]).filter(({ kind }) => kind === 'spoken').map(({ text }) => squeezed(text));
    expect(spoken.length).toBeGreaterThan(40);
    for (const text of spoken) expect([text, large.split(text).length - 1]).toEqual([text, spoken.reduce((sum, other) => sum + other.split(text).length - 1, 0)]);
  });

  test('sets what is done in smaller letters between brackets', () => {
    const directions = composed(night()).cues.flatMap((cue) => cue.segments).filter(({ kind }) => kind === 'direction');
    expect(directions.length).toBeGreaterThan(15);
    const small = squeezed(printedNight.pages.flat().filter((line) => line.size < 17).map((line) => line.text).join(' '));
    for (const { text } of directions) expect(small).toContain(squeezed(text));
    expect(printedNight.text).toContain('[Pause 3 seconds]');
  });

  test('has its sections in the order of the tabs', () => {
    const places = ['Table card', 'Run of show', 'Scripts:', 'Line-ups and rosters:', 'Sheets of the table:', 'Only if the singer or the recording fails', 'Voice and microphone', 'Called in at four', 'Forms', 'Tally by hand', 'Emergency: wait for quiet'].map((words) =>
      printedNight.pageTexts.findIndex((text) => text.includes(words)));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((one, other) => one - other));
    const words = (of: string): string => printedNight.pageTexts.find((text) => text.includes(of)) ?? '';
    expect(words('Called in at four')).toContain('on the wall by the trophy case');
    expect(words('Tally by hand')).toContain('shooter’s number');
    expect(printedNight.text).toContain('Plate, one character a box');
  });

  test('reads the same in another program, pdftotext', () => {
    const file = join(tmpdir(), `rafterline-packet-${process.pid}.pdf`);
    writeFileSync(file, nightPdf);
    const text = squeezed(execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }).normalize('NFC'));
    for (const words of ['Nguyễn Thị Bảo Ngọc', 'Łukasz Wierzbicki', 'Good evening, everyone', 'O say can you see', 'Copperline Credit Union']) expect(text).toContain(squeezed(words));
  });

  test('sets a second language below the first, names it and tells a screen reader', async () => {
    const spanish = night({ games: [game({ placements: [placement('game-1', 'halftime', 1, 'Blue Lantern Tire', { copyText: 'Come in out of the cold.', copySecondLanguage: 'es', copySecondText: 'Entre y protéjase del frío, señora.' })] })] });
    const pdf = await print(spanish);
    const printed = await read(pdf);
    expect(printed.text).toContain('Entre y protéjase del frío, señora.');
    expect(printed.text).toContain('Español, the same message');
    expect(printed.languages).toContain('es');
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

  test('leaves room for the three-hole punch on the left', () => {
    const { pages } = printedNight;
    for (const line of pages.flat().filter((one) => one.text.trim() !== '')) expect(line.left).toBeGreaterThanOrEqual(72 - 1);
  });

  test('of the same night is the same to the byte, and a draft says so', async () => {
    expect((await print(night())).equals(nightPdf)).toBe(true);
    expect((await read(await print(night(), null))).pageTexts[0]).toContain('DRAFT, not issued');
  });

  test('tells where each block stands, keeps planned pages, and prints only the pages asked for, with a cover', async () => {
    const packet = composed(night());
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

  test('with a script of many pages breaks it between sentences, says so and loses no word', async () => {
    const library = DEFAULT_SCRIPTS.map((one) => (one.moment === 'conduct' ? { ...one, text: `${'Be kind to each other tonight. '.repeat(160)} The very last word.` } : one));
    const packet = composePacket(night(), library, render);
    const { text } = await read(await typesetter.pdf('packet', sheetOf(packet, 'Version 1')));
    expect(text).toContain('The very last word.');
    expect(text).toContain('continues on the next page');
    expect(text.split(/Be kind to each other\s+tonight\./).length - 1).toBe(160);
  });

  test('on A4 lies on A4', async () => {
    expect((await read(await typesetter.pdf('packet', sheetOf(composed(night()), null, { paper: 'a4' })))).size.map(Math.round)).toEqual([595, 842]);
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

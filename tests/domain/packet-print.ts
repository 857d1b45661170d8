import { inflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import type { NightForPacket } from '../../server/domain/packet/night-for-packet.ts';
import type { Packet } from '../../server/domain/packet/packet.ts';
import { headOf, sectionsOf } from '../../server/domain/packet/sections.ts';
import type { PacketSheet } from '../../server/platform/typesetting/packet-sheet.ts';
import { render } from './packet-night.ts';

/** A run of letters on a page, in points from the left and the bottom edge. */
export interface Line {
  readonly text: string;
  readonly size: number;
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

export interface Printed {
  readonly pages: readonly (readonly Line[])[];
  readonly pageTexts: readonly string[];
  readonly text: string;
  readonly title: string;
  /** Of the document and of every part that is tagged with one. */
  readonly languages: readonly string[];
  readonly isTagged: boolean;
  readonly size: readonly number[];
}

export function composed(of: NightForPacket): Packet {
  return composePacket(of, DEFAULT_SCRIPTS, render);
}

export function sheetOf(packet: Packet, versionText: string | null, extra: Partial<PacketSheet> = {}): PacketSheet {
  return { head: headOf(packet), paper: packet.paper, versionText, sections: sectionsOf(packet), pages: null, pageCount: null, only: null, cover: null, ...extra };
}

/** The languages its parts are tagged with, from the file itself: the reader does not tell. */
function languagesOf(pdf: Buffer): string[] {
  const found = new Set<string>();
  for (const { index } of pdf.toString('latin1').matchAll(/stream\r?\n/g)) {
    const start = pdf.indexOf(10, index) + 1;
    try {
      for (const [, language] of inflateSync(pdf.subarray(start, pdf.indexOf('endstream', start))).toString('latin1').matchAll(/\/Lang\s*\(([a-z]+)/g)) found.add(language ?? '');
    } catch {
      // No compressed stream begins here.
    }
  }
  return [...found];
}

/** Reads a document back as another program sees it; the tabs, set upright at the edge, are left out. */
export async function read(pdf: Buffer): Promise<Printed> {
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
  return { pages, pageTexts, text: pageTexts.join('\n'), title: info.Title ?? '', languages: languagesOf(pdf), isTagged: marks?.Marked === true, size: [width ?? 0, height ?? 0] };
}

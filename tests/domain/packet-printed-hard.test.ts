import { afterAll, beforeAll, expect, test, vi } from 'vitest';
import { sectionsOf } from '../../server/domain/packet/sections.ts';
import { Typesetter } from '../../server/platform/typesetting/typesetter.ts';
import { HARD_NIGHTS } from './packet-hard-nights.ts';
import { composed, read, sheetOf } from './packet-print.ts';
import type { Line } from './packet-print.ts';
import { builtWorker } from './packet-typesetter.ts';

vi.setConfig({ testTimeout: 60_000 });

let typesetter: Typesetter;
beforeAll(async () => {
  typesetter = new Typesetter({ workerFile: await builtWorker('hard'), limitMilliseconds: 60_000 });
}, 90_000);
afterAll(() => typesetter.close());

/** Pairs of texts that lie on each other, with their page. */
function overlaps(lines: readonly Line[]): string[] {
  const set = lines.filter((line) => line.text.trim() !== '');
  return set.flatMap((one, place) => set.slice(place + 1).filter((other) => {
    const apart = Math.abs(one.bottom - other.bottom);
    return apart < 0.62 * Math.min(one.size, other.size) && Math.min(one.right, other.right) - Math.max(one.left, other.left) > 1.5;
  }).map((other) => `${one.text} / ${other.text}`));
}

const squeezed = (text: string): string => text.normalize('NFC').replace(/[\s\u200b]+/g, '');
const LEFT = 71;
const TABS = 0.42 * 72;
const FOOT = 36;

// Each night on one of the two papers; the fullest, which come first, on both.
for (const paper of ['letter', 'a4'] as const) {
  test.each(HARD_NIGHTS.filter((_, place) => place < 2 || (place % 2 === 0) === (paper === 'letter')))(`%s: on ${paper} nothing is cut off, nothing overlaps, no word is lost`, async (_, of) => {
    const packet = composed(of());
    const { pdf, marks } = await typesetter.set('packet', sheetOf(packet, 'Version 1', { paper }));
    const printed = await read(pdf);
    const [width] = printed.size as [number, number];
    printed.pages.forEach((lines, page) => {
      expect([page + 1, overlaps(lines)]).toEqual([page + 1, []]);
      for (const line of lines.filter(({ text }) => text.trim() !== '')) {
        expect.soft([page + 1, line.text, line.left >= LEFT, line.right <= width - TABS, line.bottom >= FOOT]).toEqual([page + 1, line.text, true, true, true]);
      }
    });
    const text = squeezed(printed.pages.flat().filter((line) => line.size >= 17.9).map((line) => line.text).join(''));
    for (const cue of packet.cues) {
      for (const { kind, text: words } of [...cue.segments, ...(cue.second?.segments ?? [])]) if (kind === 'spoken' && !/[^\u0000-\u1eff\u2010-\u2026]/.test(words)) expect(text).toContain(squeezed(words));
    }
    expect(printed.pageTexts[0]).toContain('Table card');
    expect(marks.map((mark) => mark.key)).toEqual(sectionsOf(packet).flatMap((section) => section.blocks.map((block) => block.key)));
    // The card keeps to its two sides.
    expect(marks.find((mark) => mark.key === 'card:back')?.lastPage).toBe(2);
    // A cue is never broken over a page: what is longer is taken apart into cues that are not.
    for (const mark of marks.filter(({ key }) => key.startsWith('cue:'))) expect([mark.key, mark.lastPage]).toEqual([mark.key, mark.page]);
  });
}

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeSentence, changeSetOf, printedOf } from '../../server/domain/packet/change-set.ts';
import { compareLabels, labelAfter } from '../../server/domain/packet/page-label.ts';
import { binderOf, firstPages, pagesOfSheets, pagesToSet, sheetsFor } from '../../server/domain/packet/page-plan.ts';
import type { Binder, BlockToPlace, Mark, Page, Sheet } from '../../server/domain/packet/page-plan.ts';

/** A block of so many lines; a page of the test's paper holds ten. */
interface Lines extends BlockToPlace {
  lines: number;
  text: string;
}
const PAGE = 10;
const block = (key: string, lines = 3, extra: Partial<Lines> = {}): Lines => ({ key, tab: 'Scripts', startsPage: false, lines, text: 'first', ...extra });

/** A typesetter of lines: a block that fits on no page goes on overleaf, any other stays whole. */
function typeset(blocks: readonly Lines[], breaksBefore: ReadonlySet<string> | null): { marks: Mark[]; pageCount: number } {
  let page = 1;
  let filled = 0;
  const marks = blocks.map((one, place): Mark => {
    const turns = breaksBefore === null ? one.startsPage || blocks[place - 1]?.tab !== one.tab : breaksBefore.has(one.key);
    const isFull = filled > 0 && (turns || (filled + one.lines > PAGE && one.lines <= PAGE));
    if (isFull) [page, filled] = [page + 1, 0];
    const first = filled >= PAGE ? page + 1 : page;
    if (filled >= PAGE) filled = 0;
    const end = filled + one.lines;
    page = first + Math.ceil(end / PAGE) - 1;
    filled = end - (Math.ceil(end / PAGE) - 1) * PAGE;
    return { key: one.key, page: first, lastPage: page };
  });
  return { marks, pageCount: page };
}

const topsOf = (pages: readonly { keys: readonly string[] }[]): Set<string> => new Set(pages.map((page) => page.keys[0]!));

function issueOf(blocks: readonly Lines[], old: Binder | null, number: number): Binder {
  const digestOf = (page: Page, isFirst: boolean): string => JSON.stringify([page, isFirst, blocks.filter((one) => page.keys.includes(one.key)).map((one) => [one.text, one.lines])]);
  if (old === null) {
    const { marks, pageCount } = typeset(blocks, null);
    return binderOf(firstPages(blocks, marks, pageCount), null, number, digestOf);
  }
  const sheets: Sheet[] = sheetsFor(blocks, old.pages);
  return binderOf(pagesOfSheets(sheets, blocks, typeset(blocks, topsOf(sheets)).marks), old, number, digestOf);
}

const shown = (binder: Binder): string => binder.pages.map((page) => `${page.label}: ${page.keys.join(' ')}`).join(' | ');
const sentence = (old: Binder, next: Binder): string => changeSentence(changeSetOf(old.pages, next.pages));

test('labels stand in the order of the binder', () => {
  expect(['8', '7b', '10', '7', '7aa', '7a', '7z'].toSorted(compareLabels)).toEqual(['7', '7a', '7b', '7z', '7aa', '8', '10']);
  expect(['7', '7a', '7z', '7az', '7zz'].map(labelAfter)).toEqual(['7a', '7b', '7aa', '7ba', '7aaa']);
  expect(() => compareLabels('seven', '7')).toThrow(RangeError);
});

describe('a change moves the pages it has to, and no other', () => {
  const blocks = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i'].map((key) => block(key));
  const first = issueOf(blocks, null, 1);
  const without = (...keys: string[]) => blocks.filter((one) => !keys.includes(one.key));
  const after = (key: string, ...more: Lines[]) => blocks.flatMap((one) => (one.key === key ? [one, ...more] : [one]));

  test.each<[string, Lines[], string, string]>([
    ['nothing changes', blocks, '1: a b c | 2: d e f | 3: g h i', 'No page changes.'],
    ['a word changes', blocks.map((one) => (one.key === 'e' ? { ...one, text: 'other' } : one)), '1: a b c | 2: d e f | 3: g h i', 'Swap page 2.'],
    ['a cue falls out', without('b'), '1: a c | 2: d e f | 3: g h i', 'Swap page 1.'],
    ['a page falls out', without('d', 'e', 'f'), '1: a b c | 3: g h i', 'Take out page 2.'],
    ['a cue comes in and there is room', after('f', block('n', 1)), '1: a b c | 2: d e f n | 3: g h i', 'Swap page 2.'],
    ['a cue comes in and there is none', after('d', block('n', 3)), '1: a b c | 2: d n e | 2a: f | 3: g h i', 'Swap page 2, add page 2a.'],
    ['a cue grows past the page', blocks.map((one) => (one.key === 'c' ? { ...one, lines: 6 } : one)), '1: a b | 1a: c | 2: d e f | 3: g h i', 'Swap page 1, add page 1a.'],
    ['a page gives way to another', after('c', block('n', 3), block('o', 3)).filter((one) => !['d', 'e', 'f'].includes(one.key)), '1: a b c | 2: n o | 3: g h i', 'Swap page 2.'],
    ['the first cue is new', [block('n', 1), ...blocks], '1: n a b c | 2: d e f | 3: g h i', 'Swap page 1.'],
    ['a cue moves to the end', [...without('b'), block('b')], '1: a c | 2: d e f | 3: g h i | 3a: b', 'Swap page 1, add page 3a.'],
    ['the last cue moves to the front', [block('i'), ...without('i')], '1: i a b | 1a: c | 2: d e f | 3: g h', 'Swap pages 1 and 3, add page 1a.'],
    ['a sheet of its own comes in', after('c', block('n', 2, { startsPage: true })), '1: a b c | 1a: n | 2: d e f | 3: g h i', 'Add page 1a.'],
    ['it comes into the middle of a page', after('b', block('n', 2, { startsPage: true })), '1: a b | 1a: n | 1b: c | 2: d e f | 3: g h i', 'Swap page 1, add pages 1a and 1b.'],
    ['another section follows', [...blocks, block('z', 2, { tab: 'Forms' })], '1: a b c | 2: d e f | 3: g h i | 3a: z', 'Add page 3a.'],
    ['a list longer than a page comes in', after('f', block('n', 19)), '1: a b c | 2: d e f n | 2a: n | 2b: n | 3: g h i', 'Swap page 2, add pages 2a and 2b.'],
    ['everything is new', ['r', 's', 't', 'u'].map((key) => block(key)), '1: r s t | 2: u', 'Swap pages 1 and 2, take out page 3.'],
  ])('when %s', (_, next, pages, words) => {
    const second = issueOf(next, first, 2);
    expect([shown(second), sentence(first, second)]).toEqual([pages, words]);
    expect(second.of).toBe(3);
  });

  test('the third issue counts from the second, and pages between two letters move on', () => {
    const second = issueOf(after('d', block('n', 3)), first, 2);
    const third = issueOf(after('d', block('n', 3), block('o', 4), block('p', 5)), second, 3);
    expect(shown(third)).toBe('1: a b c | 2: d n o | 2a: p e | 2b: f | 3: g h i');
    expect(sentence(second, third)).toBe('Swap pages 2 and 2a, add page 2b.');
    expect(third.pages.map((page) => page.version)).toEqual([1, 3, 3, 3, 1]);
  });

  test('a list that grows moves what stands behind it on the next page', () => {
    const long = [block('run', 12), block('x', 3), block('y', 3)];
    const one = issueOf(long, null, 1);
    const two = issueOf([{ ...long[0]!, lines: 14, text: 'longer' }, ...long.slice(1)], one, 2);
    expect([shown(one), shown(two), sentence(one, two)]).toEqual(['1: run | 1a: run x y', '1: run | 1a: run x y', 'Swap pages 1 and 1a.']);
  });
});

const ofKey = fc.integer({ min: 0, max: 24 });
const ofBlocks = fc
  .uniqueArray(fc.record({ key: ofKey, lines: fc.integer({ min: 1, max: 23 }), starts: fc.integer({ min: 0, max: 5 }), words: fc.integer({ min: 0, max: 1 }) }), { selector: (one) => one.key, minLength: 1, maxLength: 20 })
  .map((list) => {
    const sections = ['Card', 'Scripts', 'Forms'];
    // A key belongs to its section, as cues and sheets do.
    return list
      .map(({ key, lines, starts, words }) => block(`k${key}`, lines, { tab: sections[key % 3]!, startsPage: starts === 0, text: `words ${words}` }))
      .toSorted((one, other) => sections.indexOf(one.tab) - sections.indexOf(other.tab));
  });

test('whatever changes over four issues, the change set makes the old binder the new one', () => {
  fc.assert(
    fc.property(fc.array(ofBlocks, { minLength: 2, maxLength: 4 }), (issues) => {
      let old: Binder | null = null;
      issues.forEach((blocks, place) => {
        const next = issueOf(blocks, old, place + 1);
        const labels = next.pages.map((page) => page.label);
        expect(labels).toEqual([...new Set(labels)].toSorted(compareLabels));
        const seen = next.pages.flatMap((page) => page.keys);
        expect(seen.filter((key, at) => key !== seen[at - 1])).toEqual(blocks.map((one) => one.key));
        // A full print with these pages breaks where the plan says.
        const printed = typeset(blocks, topsOf(pagesToSet(next.pages)));
        expect(printed.pageCount).toBe(next.pages.length);
        next.pages.forEach((page, at) => expect(printed.marks.filter((mark) => mark.page <= at + 1 && at + 1 <= mark.lastPage).map((mark) => mark.key)).toEqual(page.keys));
        if (old !== null) {
          const before: Binder = old;
          const set = changeSetOf(before.pages, next.pages);
          const brought = next.pages.filter((page) => printedOf(set, next.pages).includes(page.label));
          const kept = before.pages.filter((page) => !set.takeOut.includes(page.label) && !set.swap.includes(page.label));
          expect([...kept, ...brought].toSorted((one, other) => compareLabels(one.label, other.label))).toEqual(next.pages);
          for (const page of brought) expect(page.version).toBe(place + 1);
          for (const page of kept) expect(page.version).toBeLessThan(place + 1);
          expect(next.of).toBe(before.of);
        }
        old = next;
      });
    }),
    { numRuns: 500 },
  );
});

test('a packet that did not change has no change set', () => {
  fc.assert(fc.property(ofBlocks, (blocks) => {
    const first = issueOf(blocks, null, 1);
    expect(issueOf(blocks, first, 2)).toEqual(first);
  }));
});

import { compareLabels, labelAfter, numberOfLabel } from './page-label.ts';
import type { PageLabel } from './page-label.ts';

/** A block as far as its page is concerned. */
export interface BlockToPlace {
  readonly key: string;
  readonly tab: string;
  readonly startsPage: boolean;
}

/** Where the typesetter put a block: pages of the paper, counted from 1. */
export interface Mark {
  readonly key: string;
  readonly page: number;
  readonly lastPage: number;
}

/** One side of paper. A block longer than a page stands on each page it reaches. */
export interface Page {
  readonly label: PageLabel;
  readonly tab: string;
  readonly keys: readonly string[];
}

/** A page as it lies in the binder. */
export interface BinderPage extends Page {
  /** The issue in which it last changed; printed on it. */
  readonly version: number;
  readonly digest: string;
  /** What is different on it, where it changed with this issue; without anybody's name. */
  readonly what?: string;
}

export interface Binder {
  /** The highest number a label has: "page 7a of 30". It stays over all issues, so that unchanged pages stay true. */
  readonly of: number;
  readonly pages: readonly BinderPage[];
}

/** What has to stand together from the top of a page on; where it does not fit, it goes on overleaf. */
export interface Sheet {
  readonly tab: string;
  readonly keys: readonly string[];
  /** Labels it may take, in order: its own of the issue before, then those that fell free behind it. */
  readonly labels: readonly PageLabel[];
}

/** Pages that hang together because a block of one goes on upon the next; they are set as one. */
export function runsOf<P extends Page>(pages: readonly P[]): P[][] {
  const seen = new Set<string>();
  const runs: P[][] = [];
  for (const page of pages) {
    const [first] = page.keys;
    const goesOn = first === undefined || seen.has(first);
    if (goesOn && runs.length > 0) runs.at(-1)!.push(page);
    else runs.push([page]);
    for (const key of page.keys) seen.add(key);
  }
  return runs;
}

/** The places in a list of the longest subsequence that never falls; places holding null are left out. */
function longestRising(values: readonly (number | null)[]): Set<number> {
  const length: number[] = [];
  const before: number[] = [];
  let last = -1;
  values.forEach((value, place) => {
    length[place] = value === null ? 0 : 1;
    before[place] = -1;
    if (value === null) return;
    for (let earlier = 0; earlier < place; earlier += 1) {
      const other = values[earlier] ?? null;
      if (other === null || other > value || length[earlier]! < length[place]!) continue;
      length[place] = length[earlier]! + 1;
      before[place] = earlier;
    }
    if (last === -1 || length[place]! > length[last]!) last = place;
  });
  const kept = new Set<number>();
  for (let place = last; place !== -1; place = before[place]!) kept.add(place);
  return kept;
}

/** For each block the old run it stays in; null for a block that is new, or that moved past others. */
function homesOf(blocks: readonly BlockToPlace[], runs: readonly (readonly BinderPage[])[]): (number | null)[] {
  const runOf = new Map<string, number>();
  runs.forEach((run, place) => {
    for (const key of run.flatMap((page) => page.keys)) if (!runOf.has(key)) runOf.set(key, place);
  });
  const wanted = blocks.map((block) => {
    const run = runOf.get(block.key);
    return run !== undefined && runs[run]![0]!.tab === block.tab ? run : null;
  });
  const kept = longestRising(wanted);
  const homes = wanted.map((run, place) => (kept.has(place) ? run : null));
  return homes.map((home, place) => home ?? homeAhead(blocks, homes, place));
}

/** A new block that opens a section goes on the page of the block behind it. */
function homeAhead(blocks: readonly BlockToPlace[], homes: readonly (number | null)[], place: number): number | null {
  const tab = blocks[place]!.tab;
  for (let before = place - 1; before >= 0 && blocks[before]!.tab === tab; before -= 1) if (homes[before] !== null) return null;
  for (let behind = place + 1; behind < blocks.length; behind += 1) {
    const block = blocks[behind]!;
    if (block.tab !== tab || block.startsPage) return null;
    if (homes[behind] !== null) return homes[behind]!;
  }
  return null;
}

/**
 * The sheets of the next issue: every block that is still there keeps its page, a new one goes on the page
 * of the block before it, a section or a block that starts a page gets a sheet of its own.
 *
 * @param blocks in the order of the packet
 * @param old the pages of the issue before
 */
export function sheetsFor(blocks: readonly BlockToPlace[], old: readonly BinderPage[]): Sheet[] {
  const runs = runsOf(old);
  const homes = homesOf(blocks, runs);
  const sheets: { tab: string; keys: string[]; home: number | null; own: PageLabel[] }[] = [];
  blocks.forEach((block, place) => {
    const open = sheets.at(-1);
    const home = homes[place]!;
    const turns = open === undefined || open.tab !== block.tab || block.startsPage || (home !== null && home !== open.home);
    if (!turns) return void open.keys.push(block.key);
    // Torn apart by a block that starts a page, the second half is a new page.
    const isTorn = home === null || sheets.some((sheet) => sheet.home === home);
    sheets.push({ tab: block.tab, keys: [block.key], home, own: isTorn ? [] : runs[home]!.map((page) => page.label) });
  });
  const taken = new Set(sheets.flatMap((sheet) => sheet.own));
  const free = old.filter((page) => !taken.has(page.label));
  return sheets.map(({ tab, keys, own }, place) => {
    const limit = sheets.slice(place + 1).find((sheet) => sheet.own.length > 0)?.own[0];
    const isBehind = (label: PageLabel): boolean => own.length === 0 || compareLabels(label, own.at(-1)!) > 0;
    const fallen = free
      .filter((page) => page.tab === tab && isBehind(page.label) && (limit === undefined || compareLabels(page.label, limit) < 0))
      .map((page) => page.label);
    return { tab, keys, labels: [...own, ...fallen] };
  });
}

function keysFrom(marks: readonly Mark[], first: number, last: number): string[][] {
  const pages: string[][] = [];
  for (let page = first; page <= last; page += 1) pages.push(marks.filter((mark) => mark.page <= page && page <= mark.lastPage).map((mark) => mark.key));
  return pages;
}

const goesOn = (pages: readonly string[][], place: number): boolean => place > 0 && (pages[place]![0] === undefined || pages[place - 1]!.includes(pages[place]![0]!));

/** The pages of a first issue, as the typesetter let them flow: 1, 2, 3 …, and 3a where a block of page 3 goes on. */
export function firstPages(blocks: readonly BlockToPlace[], marks: readonly Mark[], pageCount: number): Page[] {
  const tabs = new Map(blocks.map((block) => [block.key, block.tab]));
  let [label, tab] = ['0', ''];
  return keysFrom(ordered(blocks, marks), 1, pageCount).map((keys, place, all) => {
    label = goesOn(all, place) ? labelAfter(label) : String(numberOfLabel(label) + 1);
    tab = tabs.get(keys[0] ?? '') ?? tab;
    return { label, tab, keys };
  });
}

/** The pages that sheets came to on paper: one that ran over goes on as 7a, 7b … */
export function pagesOfSheets(sheets: readonly Sheet[], blocks: readonly BlockToPlace[], marks: readonly Mark[]): Page[] {
  const inOrder = ordered(blocks, marks);
  let before: PageLabel = '0';
  return sheets.flatMap(({ tab, keys, labels }) => {
    const own = inOrder.filter((mark) => keys.includes(mark.key));
    const first = Math.min(...own.map((mark) => mark.page));
    const last = Math.max(...own.map((mark) => mark.lastPage));
    return keysFrom(own, first, last).map((onPage, place, all) => {
      const free = goesOn(all, place) ? undefined : labels.find((one) => compareLabels(one, before) > 0);
      before = free ?? labelAfter(before);
      return { label: before, tab, keys: onPage };
    });
  });
}

/** @throws RangeError when the typesetter did not say where a block is */
function ordered(blocks: readonly BlockToPlace[], marks: readonly Mark[]): Mark[] {
  const byKey = new Map(marks.map((mark) => [mark.key, mark]));
  return blocks.map((block) => {
    const mark = byKey.get(block.key);
    if (mark === undefined) throw new RangeError(`nobody knows on which page ${block.key} stands`);
    return mark;
  });
}

const together = (run: readonly Page[]): Page => ({ ...run[0]!, keys: [...new Set(run.flatMap((page) => page.keys))] });

/**
 * Gives each page its digest and its version: that of the issue before where the digest is the same, else this one.
 *
 * @param digestOf of everything that is printed on a page. Pages that hang together have one, because a block that
 *   grows moves what stands behind it; the title of a section stands on its first page
 */
export function binderOf(pages: readonly Page[], old: Binder | null, number: number, digestOf: (page: Page, isFirstOfTab: boolean) => string): Binder {
  const before = new Map(old?.pages.map((page) => [page.label, page]));
  const tabs = new Set<string>();
  const finished = runsOf(pages).flatMap((run) => {
    const digest = digestOf(together(run), !tabs.has(run[0]!.tab));
    tabs.add(run[0]!.tab);
    return run.map((page): BinderPage => {
      const was = before.get(page.label);
      return { ...page, digest, version: was?.digest === digest ? was.version : number };
    });
  });
  return { of: old?.of ?? Math.max(0, ...pages.map((page) => numberOfLabel(page.label))), pages: finished };
}

/** The pages as they are set: those that hang together are one, which runs over by itself. */
export function pagesToSet(pages: readonly BinderPage[]): BinderPage[] {
  return runsOf(pages).map((run) => ({ ...run[0]!, ...together(run) }));
}

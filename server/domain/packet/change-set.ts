import type { BinderPage } from './page-plan.ts';
import type { PageLabel } from './page-label.ts';

/** What makes the issue before into this one, page by page, each list in the order of the binder. */
export interface ChangeSet {
  readonly swap: readonly PageLabel[];
  readonly add: readonly PageLabel[];
  readonly takeOut: readonly PageLabel[];
}

/** What to do with the old pages. Pages in none of the lists stay as they are. */
export function changeSetOf(old: readonly BinderPage[], next: readonly BinderPage[]): ChangeSet {
  const before = new Map(old.map((page) => [page.label, page]));
  const now = new Set(next.map((page) => page.label));
  const labels = (pages: readonly BinderPage[]): PageLabel[] => pages.map((page) => page.label);
  return {
    swap: labels(next.filter((page) => before.has(page.label) && before.get(page.label)!.digest !== page.digest)),
    add: labels(next.filter((page) => !before.has(page.label))),
    takeOut: labels(old.filter((page) => !now.has(page.label))),
  };
}

/** The pages of a change set that are printed. */
export const printedOf = ({ swap, add }: ChangeSet, next: readonly BinderPage[]): PageLabel[] =>
  next.map((page) => page.label).filter((label) => swap.includes(label) || add.includes(label));

const listed = (labels: readonly PageLabel[]): string =>
  `${labels.length === 1 ? 'page' : 'pages'} ${labels.length < 2 ? labels.join('') : `${labels.slice(0, -1).join(', ')} and ${labels.at(-1)}`}`;

/** "Swap pages 4 and 9, add page 9a, take out page 12."; where nothing is to be done, it says so. */
export function changeSentence({ swap, add, takeOut }: ChangeSet): string {
  const parts = [swap.length > 0 && `swap ${listed(swap)}`, add.length > 0 && `add ${listed(add)}`, takeOut.length > 0 && `take out ${listed(takeOut)}`].filter(
    (part) => part !== false,
  );
  if (parts.length === 0) return 'No page changes.';
  const sentence = parts.join(', ');
  return `${sentence[0]!.toUpperCase()}${sentence.slice(1)}.`;
}

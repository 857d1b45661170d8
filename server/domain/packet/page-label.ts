/**
 * The label of a page in the binder: `7`, and for pages that came in later `7a`, `7b` … So that a page
 * that did not change keeps its label however many are added before it.
 */
export type PageLabel = string;

const partsOf = (label: PageLabel): [number, string] => {
  const [, number, letters] = /^(\d+)([a-z]*)$/.exec(label) ?? [];
  if (number === undefined) throw new RangeError(`${label} is no label of a page`);
  return [Number(number), letters ?? ''];
};

/** The number without its letters, as "page 7a of 30" counts. */
export const numberOfLabel = (label: PageLabel): number => partsOf(label)[0];

/** The order of the binder: 7, 7a, 7b, 7z, 7aa, 8. */
export function compareLabels(one: PageLabel, other: PageLabel): number {
  const [number, letters] = partsOf(one);
  const [otherNumber, otherLetters] = partsOf(other);
  if (number !== otherNumber) return number - otherNumber;
  if (letters.length !== otherLetters.length) return letters.length - otherLetters.length;
  return letters < otherLetters ? -1 : letters > otherLetters ? 1 : 0;
}

/** The next label of the same number: 7 → 7a, 7a → 7b, 7z → 7aa. */
export function labelAfter(label: PageLabel): PageLabel {
  const [number, letters] = partsOf(label);
  const end = /[a-y]?z*$/.exec(letters)![0];
  const kept = letters.slice(0, letters.length - end.length);
  if (end === '' || end.startsWith('z')) return `${number}${'a'.repeat(letters.length + 1)}`;
  return `${number}${kept}${String.fromCharCode(end.charCodeAt(0) + 1)}${'a'.repeat(end.length - 1)}`;
}

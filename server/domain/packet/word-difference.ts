/** A run of words that stayed, went, or came. */
export interface Difference {
  readonly kind: 'same' | 'gone' | 'new';
  readonly text: string;
}

const MOST_WORDS = 2000;

/**
 * What changed from one text to the next, word by word: the longest run of common words stays, what is left goes
 * or comes. Texts of more than 2,000 words are shown whole, gone and new.
 */
export function wordDifference(before: string, after: string): Difference[] {
  const [one, other] = [before, after].map((text) => text.split(/(\s+)/).filter((word) => word !== '')) as [string[], string[]];
  if (one.length > MOST_WORDS || other.length > MOST_WORDS) return joined([{ kind: 'gone', text: before }, { kind: 'new', text: after }]);
  const common = Array.from({ length: one.length + 1 }, () => new Uint16Array(other.length + 1));
  for (let i = one.length - 1; i >= 0; i -= 1) {
    for (let j = other.length - 1; j >= 0; j -= 1) {
      common[i]![j] = one[i] === other[j] ? common[i + 1]![j + 1]! + 1 : Math.max(common[i + 1]![j]!, common[i]![j + 1]!);
    }
  }
  const found: Difference[] = [];
  let [i, j] = [0, 0];
  while (i < one.length || j < other.length) {
    if (i < one.length && j < other.length && one[i] === other[j]) [found[found.length], i, j] = [{ kind: 'same', text: one[i]! }, i + 1, j + 1];
    else if (i < one.length && (j === other.length || common[i + 1]![j]! >= common[i]![j + 1]!)) [found[found.length], i] = [{ kind: 'gone', text: one[i]! }, i + 1];
    else [found[found.length], j] = [{ kind: 'new', text: other[j]! }, j + 1];
  }
  return joined(found);
}

function joined(parts: readonly Difference[]): Difference[] {
  const runs: Difference[] = [];
  for (const part of parts) {
    const last = runs.at(-1);
    if (last?.kind === part.kind) runs[runs.length - 1] = { kind: part.kind, text: last.text + part.text };
    else if (part.text !== '') runs.push(part);
  }
  return runs;
}

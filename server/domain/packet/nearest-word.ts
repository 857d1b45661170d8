/**
 * Letters to change, add, take out or swap with their neighbour to make one word of another.
 *
 * @source optimal string alignment distance, after Damerau (1964), Communications of the ACM 7(3) (from memory)
 */
export function lettersApart(one: string, other: string): number {
  const rows: number[][] = [Array.from({ length: other.length + 1 }, (_, place) => place)];
  for (let i = 1; i <= one.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= other.length; j += 1) {
      const cost = one[i - 1] === other[j - 1] ? 0 : 1;
      let least = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + cost);
      if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) least = Math.min(least, rows[i - 2]![j - 2]! + 1);
      row.push(least);
    }
    rows.push(row);
  }
  return rows.at(-1)!.at(-1)!;
}

/** The known word somebody most likely meant, capitals aside; null where none is near. Up to a third of the letters may differ. */
export function nearest(word: string, known: readonly string[]): string | null {
  const written = word.toLowerCase();
  let best: { word: string; apart: number } | null = null;
  for (const candidate of known) {
    const apart = lettersApart(written, candidate.toLowerCase());
    if (apart <= Math.max(1, Math.floor(candidate.length / 3)) && (best === null || apart < best.apart)) best = { word: candidate, apart };
  }
  return best?.word ?? null;
}

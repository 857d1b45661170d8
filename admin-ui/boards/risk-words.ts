/** A chance as it is said: never "100 %" of what is not sure, nor "0 %" of what may still happen. */
export function chanceText(chance: number | null): string {
  if (chance === null) return 'Nobody can say';
  if (chance >= 1) return 'Sure';
  if (chance <= 0) return 'None';
  return `${Math.min(99, Math.max(1, Math.round(chance * 100)))} %`;
}

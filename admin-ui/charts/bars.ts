export interface BarsProps {
  /** what stands under (or beside) each bar: months, sponsors */
  labels: readonly string[];
  /** one number a label; null where nothing is known */
  series: readonly { name: string; values: readonly (number | null)[] }[];
  /** series on one another, as parts of a whole; else beside each other */
  isStacked?: boolean;
  /** bars that lie, for names too long to stand under one */
  isLying?: boolean;
  /** how a number is written on the axis and when pointed at; else as it is */
  valueText?: (value: number) => string;
  /** where the axis ends, as 100 for a share */
  most?: number;
}

/** How much of a name stands beside a lying bar, in letters of a line and pixels: a phone leaves little room, a desk enough for a whole name. */
export const LETTERS_BESIDE = { narrow: { letters: 14, width: 112 }, wide: { letters: 32, width: 248 } } as const;

/** "Sponsor: what" in two lines, each cut to so many letters. */
const sides = (label: string, letters: number): string | null => {
  const at = label.indexOf(': ');
  const cut = (line: string) => (line.length > letters ? `${line.slice(0, letters - 1).trimEnd()}…` : line);
  return at < 0 ? null : `${cut(label.slice(0, at))}\n${cut(label.slice(at + 2))}`;
};

/** A name in at most two lines of about fourteen letters, so that it fits beside a bar on a phone; the table has it whole. */
export function shortLabel(label: string, letters = 14): string {
  const told = sides(label, letters + 2);
  if (told !== null) return told;
  const lines: string[] = [];
  for (const word of label.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && `${last} ${word}`.length <= letters) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  const cut = (line: string) => (line.length > letters + 2 ? `${line.slice(0, letters + 1)}…` : line);
  const [first = '', second] = lines;
  if (second === undefined) return cut(first);
  return `${cut(first)}\n${lines.length > 2 ? `${cut(second).replace(/…$/, '')}…` : cut(second)}`;
}

/** One way in which written signs are said; tried in order wherever a sign or a word begins. */
export interface Saying {
  readonly what: string;
  /** Sticky, and bounded so that a long text costs no more than its length. */
  readonly pattern: RegExp;
  /** What is said instead; null where the rule does not hold after all. @param before the text up to here */
  readonly say: (found: readonly (string | undefined)[], before: string, after: string) => string | null;
}

const IN_A_WORD = /[\p{L}\p{N}\p{M}]/u;
/** Spaces and stops, which no rule says. */
const SILENT = /[\s,;:!?]+/y;
/** A word of small letters that no rule changes: most of a text goes by here. Not before a number or a dash, as a month may be. */
const PLAIN = /(?!(?:[Pp]lates?|[Ll]icense|Mrs?|Jr|Blvd|Hwy|Pkwy|Bldg|vs|Dept|Bros|Assn|lbs|hrs)\b)\p{Lu}?\p{Ll}+(?=[,;!?]|$|\s(?![\d–—-]))/uy;
/** How much of the text a rule may look at on either side. */
const SIGHT = 60;

/** The text with every sign said in words; what no rule knows stays as it is. */
export function sayAloud(text: string, sayings: readonly Saying[]): string {
  const said: string[] = [];
  let at = 0;
  while (at < text.length) {
    const plain = at === 0 || !IN_A_WORD.test(text[at - 1] ?? '') ? matchAt(SILENT, text, at) || matchAt(PLAIN, text, at) : '';
    if (plain !== '') {
      said.push(plain);
      at += plain.length;
      continue;
    }
    const found = IN_A_WORD.test(text[at] ?? '') && at > 0 && IN_A_WORD.test(text[at - 1] ?? '') ? null : firstSaying(text, at, sayings);
    if (found === null) {
      said.push(text[at] ?? '');
      at += 1;
    } else {
      said.push(' ', found.words, ' ');
      at += found.length;
    }
  }
  return said.join('');
}

function matchAt(pattern: RegExp, text: string, at: number): string {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? '';
}

function firstSaying(text: string, at: number, sayings: readonly Saying[]): { words: string; length: number } | null {
  for (const { pattern, say } of sayings) {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found === null || found[0] === '') continue;
    const end = at + found[0].length;
    const words = say(found, text.slice(Math.max(0, at - SIGHT), at), text.slice(end, end + SIGHT));
    if (words !== null) return { words, length: found[0].length };
  }
  return null;
}

/** Letters by their names and digits one by one: "1A/B2345" is "one A B two three four five". */
export function spelledOut(signs: string, digitWords: (digits: string) => string): string {
  return [...signs.toUpperCase()].map((sign) => (/\d/.test(sign) ? digitWords(sign) : /\p{L}/u.test(sign) ? sign : '')).filter((sign) => sign !== '').join(' ');
}

/**
 * The words of a said text, small, with a letter that is named by itself kept as a capital.
 */
export function wordsOf(said: string): string[] {
  return said
    .normalize('NFC')
    .replaceAll('’', "'")
    .split(/[^\p{L}\p{M}\p{N}']+/u)
    .map((word) => word.replace(/^'+|'+$/g, ''))
    .filter((word) => word !== '')
    .map((word) => (/^[A-ZÑ]$/.test(word) ? word : word.toLowerCase()));
}

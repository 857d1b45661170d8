import type { CopyVerdict, MarkKind } from './copy-mark.ts';
import type { WordRow } from './copy-word-row.ts';
import { ALSO_A_NAME, ENGLISH, NO_GIVEN_NAME, STREET } from './copy-words-english.ts';
import { SPANISH, SPANISH_STREET } from './copy-words-spanish.ts';

export type CopyLanguage = 'en' | 'es';

/** Words in a text that the check marks: where they stand, counted in UTF-16 units as JavaScript slices. */
export interface CopyMark {
  readonly kind: MarkKind;
  readonly start: number;
  readonly end: number;
  readonly words: string;
}

/** A registered slogan found in the text: what stands inside it passes. */
export interface SloganFound {
  readonly start: number;
  readonly end: number;
  readonly slogan: string;
}

export interface CopyCheck {
  readonly verdict: CopyVerdict;
  readonly marks: readonly CopyMark[];
  readonly slogans: readonly SloganFound[];
}

/** What is known of the sponsor: its own name is a name, and a slogan it has long used is no praise. */
export interface KnownOfSponsor {
  readonly sponsorName: string;
  readonly slogans: readonly string[];
}

interface Span {
  readonly start: number;
  readonly end: number;
}

const TABLES: Readonly<Record<CopyLanguage, readonly { row: WordRow; pattern: RegExp }[]>> = { en: ENGLISH.map(wholeWords), es: SPANISH.map(wholeWords) };
const DIRECTION = /\[\[[^\]]*\]\]/gu;

/**
 * Marks the words of one message that may turn an acknowledgment into an advertisement, and judges the message as a whole.
 * Names, addresses, telephone numbers, web addresses, years in business and plain descriptions pass; so do personal pronouns
 * and "visit our website", which some broadcasters forbid and the regulation does not.
 *
 * @source 26 U.S.C. 513(i)(2)(A); 26 CFR 1.513-4(c)(2)(iv) to (vi); the word lists are our own
 */
export function checkCopy(text: string, language: CopyLanguage, known: KnownOfSponsor): CopyCheck {
  const slogans = known.slogans.flatMap((slogan) => found(text, slogan).map((span) => ({ ...span, slogan })));
  const names = found(text, known.sponsorName);
  const passing: Span[] = [...slogans, ...names, ...[...text.matchAll(DIRECTION)].map((match) => ({ start: match.index, end: match.index + match[0].length }))];
  const marks = TABLES[language]
    .flatMap(({ row, pattern }) => [...text.matchAll(pattern)].map((match) => markOf(row, match)).filter((mark) => !row.notWith?.test(sentenceAround(text, mark))))
    .filter((mark) => !passing.some((span) => span.start <= mark.start && mark.end <= span.end))
    .filter((mark) => !isName(text, mark, language, names));
  const kept = withoutOverlaps(marks);
  return { verdict: verdictOf(kept), marks: kept, slogans };
}

export interface MessageCheck {
  readonly verdict: CopyVerdict;
  /** one for each text of the message, in their order */
  readonly texts: readonly (CopyCheck & { readonly language: CopyLanguage })[];
}

/** One message, also in two languages, is judged as one: what the worse of its texts is, the whole is. */
export function checkMessage(texts: readonly { text: string; language: CopyLanguage }[], known: KnownOfSponsor): MessageCheck {
  const checked = texts.map(({ text, language }) => ({ language, ...checkCopy(text, language, known) }));
  return { verdict: checked.map((one) => one.verdict).reduce(worseVerdict, 'acknowledgment'), texts: checked };
}

/** The words that are marked, for a sentence: `“finest”, “call now”`. */
export function markedWords({ texts }: MessageCheck): string {
  return texts.flatMap((text) => text.marks.map((mark) => `“${mark.words}”`)).join(', ');
}

export function worseVerdict(one: CopyVerdict, other: CopyVerdict): CopyVerdict {
  const order: readonly CopyVerdict[] = ['acknowledgment', 'exclusiveProvider', 'advertising'];
  return order.indexOf(one) >= order.indexOf(other) ? one : other;
}

function verdictOf(marks: readonly CopyMark[]): CopyVerdict {
  if (marks.some((mark) => mark.kind !== 'exclusiveProvider')) return 'advertising';
  return marks.length > 0 ? 'exclusiveProvider' : 'acknowledgment';
}

function wholeWords(row: WordRow): { row: WordRow; pattern: RegExp } {
  return { row, pattern: new RegExp(String.raw`(?<![\p{L}\p{N}_])(?:${row.words})(?![\p{L}\p{N}_])`, 'giu') };
}

function markOf({ kind }: WordRow, match: RegExpExecArray): CopyMark {
  const words = match[0].trimEnd();
  return { kind, start: match.index, end: match.index + words.length, words };
}

/** Every place where a phrase stands, whatever its capitals, quotation marks and spaces. */
function found(text: string, phrase: string): Span[] {
  const words = phrase.trim().replace(/[.!]+$/u, '').split(/\s+/u).filter((word) => word !== '');
  if (words.length === 0) return [];
  const source = words.map((word) => word.replace(/[.*+?^${}()|[\]\\]/gu, String.raw`\$&`).replace(/['’]/gu, '[’\']')).join(String.raw`\s+`);
  return [...text.matchAll(new RegExp(String.raw`(?<![\p{L}\p{N}])${source}(?![\p{L}\p{N}])`, 'giu'))].map((match) => ({ start: match.index, end: match.index + match[0].length }));
}

function sentenceAround(text: string, { start, end }: Span): string {
  const before = text.slice(0, start).search(/[^.!?]*$/u);
  const after = /[.!?](?:\s|$)/u.exec(text.slice(end));
  return text.slice(before, after ? end + after.index : text.length);
}

/** "Best Street", "Coach Dana Sale", "Price-Okonkwo": capitalized, beside a street or a given name. */
function isName(text: string, mark: CopyMark, language: CopyLanguage, names: readonly Span[]): boolean {
  const isCapitalized = /^\p{Lu}\p{Ll}/u.test(mark.words);
  if (!isCapitalized) return false;
  if (language === 'es') return SPANISH_STREET.test(text.slice(0, mark.start));
  if (!ALSO_A_NAME.test(mark.words)) return false;
  const after = text.slice(mark.end);
  if (STREET.test(after) || /^[-‑]\p{Lu}/u.test(after)) return true;
  const given = /(\p{Lu}[\p{L}’'.]*)\s+$/u.exec(text.slice(0, mark.start));
  if (!given || NO_GIVEN_NAME.test(given[1]!) || names.some((name) => given.index >= name.start && given.index < name.end)) return false;
  return !/^\s+\p{Lu}/u.test(after);
}

function withoutOverlaps(marks: readonly CopyMark[]): CopyMark[] {
  const kept: CopyMark[] = [];
  for (const mark of marks.toSorted((a, b) => a.start - b.start || b.end - a.end)) {
    if (mark.start >= (kept.at(-1)?.end ?? 0)) kept.push(mark);
  }
  return kept;
}

/** What is written to those who pay and those who sponsor. */
export const LETTER_KINDS = ['invoice', 'creditMemo', 'reminder', 'statement', 'receipt', 'thankYou'] as const;
export type LetterKind = (typeof LETTER_KINDS)[number];

/** A letter in plain text; its lines end in a bare line feed. */
export interface Letter {
  readonly subject: string;
  readonly body: string;
}

/** How the department writes an amount in cents and a day; told, because the rules know no locale. */
export interface Writing {
  amount(cents: number): string;
  day(day: string): string;
}

/** Who signs: the seller of record, or the department where the letter is about several. */
export interface Signature {
  readonly name: string;
  readonly contactName?: string | null;
  readonly contactPhone?: string | null;
  readonly contactEmail?: string | null;
}

/**
 * Text on one line. Whatever a name holds, it can begin no second line of a header: line feeds, returns and all other
 * control characters become one space.
 *
 * @source RFC 5322, 2.2: a header field ends with its line
 */
export function oneLine(text: string): string {
  return text.replace(/[\p{Cc}\p{Zl}\p{Zp}\s]+/gu, ' ').trim();
}

/**
 * Whether letters can be sent to an address: one address, in plain ASCII, without a name, a list or a route.
 *
 * @source WHATWG HTML, "valid e-mail address"; RFC 5321, 4.5.3.1.1: at most 64 characters before the sign, 254 in all
 */
export function isMailAddress(text: string): boolean {
  const label = '[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?';
  return text.length <= 254 && new RegExp(`^[a-z0-9.!#$%&'*+/=?^_\`{|}~-]{1,64}@${label}(?:\\.${label})+$`, 'i').test(text);
}

/** Paragraphs with an empty line between them; what there is nothing to say about is left out. */
export function letterOf(subject: string, paragraphs: readonly (string | null)[], signature: Signature): Letter {
  const body = [...paragraphs.filter((one): one is string => one !== null && one !== ''), signed(signature)].join('\n\n');
  return { subject: oneLine(subject), body: body.replace(/\r\n?/g, '\n') };
}

function signed({ name, contactName, contactPhone, contactEmail }: Signature): string {
  const lines = [contactName, name, [contactPhone, contactEmail].filter(Boolean).map((one) => oneLine(one!)).join(' · ')];
  return lines.filter(Boolean).map((line) => oneLine(line!)).join('\n');
}

/**
 * The name by which the same letter is known, so that it is never written twice. A letter that goes once more on
 * purpose has the number of its sending behind it.
 *
 * @param which tells two letters about one thing apart: the days of a reminder, the days a statement covers
 * @param sending 1 for the first
 */
export function onceKeyOf(kind: LetterKind, aboutId: string, which: readonly (string | number)[], sending: number): string {
  return [kind, aboutId, ...which, ...(sending > 1 ? [`again ${sending}`] : [])].join(':');
}

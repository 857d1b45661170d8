/** What cannot be seen: control characters, marks that turn the direction of writing, and letters without width. */
const UNSEEN = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\u2028\u2029]/gu;

/** Text as it is kept: one line, composed letters, one space between words, nothing that cannot be seen. */
export function plainText(raw: string): string {
  return raw.replace(/[\r\n\t\u2028\u2029]+/g, ' ').normalize('NFC').replace(UNSEEN, '').replace(/\s+/gu, ' ').trim();
}

/** A web or mail address: with its scheme, with `www.`, with an `@`, or by an ending that is common in them. */
const ADDRESS = /(?:\b[a-z][a-z0-9+.-]{1,15}:\/\/|\bwww\.|\S@\S|\b[a-z0-9-]{1,63}\.(?:com|org|net|edu|gov|info|biz|io|co|us|me|ly|app|dev|gg|tv|xyz|link|site|shop|online)\b)/i;

/** Marks of a page, a template or a direction; none of them is ever said. */
const MARKS = /[<>{}[\]\\|^`~]/;

/** Why a text cannot be read out as it stands, in words that follow the name of its field; null for none. */
export function whyNotPlain(text: string): string | null {
  if (MARKS.test(text)) return 'has a sign that cannot be read out; write it in words';
  if (ADDRESS.test(text)) return 'has a web or mail address; say where to ask instead';
  return /\p{L}|\p{N}/u.test(text) ? null : 'has no words';
}

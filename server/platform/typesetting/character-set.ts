/**
 * The code points a TrueType font has a glyph for, from its character map (formats 4 and 12).
 *
 * @throws RangeError when the file has no Unicode character map
 */
export function charactersOf(font: Buffer): Set<number> {
  const tables = font.readUInt16BE(4);
  for (let table = 0; table < tables; table += 1) {
    const record = 12 + table * 16;
    if (font.toString('latin1', record, record + 4) === 'cmap') return readMap(font, font.readUInt32BE(record + 8));
  }
  throw new RangeError('the font has no character map');
}

function readMap(font: Buffer, cmap: number): Set<number> {
  const found = new Set<number>();
  const count = font.readUInt16BE(cmap + 2);
  for (let record = 0; record < count; record += 1) {
    const subtable = cmap + font.readUInt32BE(cmap + 4 + record * 8 + 4);
    const format = font.readUInt16BE(subtable);
    if (format === 4) readSegments(font, subtable, found);
    if (format === 12) readGroups(font, subtable, found);
  }
  if (found.size === 0) throw new RangeError('the font has no Unicode character map');
  return found;
}

function readSegments(font: Buffer, at: number, found: Set<number>): void {
  const doubled = font.readUInt16BE(at + 6);
  const [ends, starts] = [at + 14, at + 16 + doubled];
  const [deltas, offsets] = [starts + doubled, starts + 2 * doubled];
  for (let step = 0; step < doubled; step += 2) {
    const [start, end] = [font.readUInt16BE(starts + step), font.readUInt16BE(ends + step)];
    const [delta, offset] = [font.readUInt16BE(deltas + step), font.readUInt16BE(offsets + step)];
    for (let code = start; code <= end && code < 0xffff; code += 1) {
      const glyph = offset === 0 ? code : font.readUInt16BE(offsets + step + offset + (code - start) * 2);
      if (glyph !== 0 && ((glyph + delta) & 0xffff) !== 0) found.add(code);
    }
  }
}

function readGroups(font: Buffer, at: number, found: Set<number>): void {
  const groups = font.readUInt32BE(at + 12);
  for (let group = 0; group < groups; group += 1) {
    const record = at + 16 + group * 12;
    for (let code = font.readUInt32BE(record); code <= font.readUInt32BE(record + 4); code += 1) found.add(code);
  }
}

/** Characters that need no glyph. */
const INVISIBLE = /[\s\p{Cf}]|\p{Variation_Selector}/u;

const UNBROKEN = /[^\s\u200b-]{31,}/gu;

/** Lets a word longer than any name break anywhere, so that it never runs over the edge of a page. */
function breakable(text: string): string {
  return text.replace(UNBROKEN, (word) => word.replace(/.{8}(?=.)/gsu, '$&\u200b'));
}

/** A text in composed form, with a box for every character the font cannot set; `missing` collects those. */
export function settable(text: string, characters: ReadonlySet<number>, missing: Set<string>): string {
  let result = '';
  for (const letter of text.normalize('NFC')) {
    if (INVISIBLE.test(letter)) {
      result += /[\n\t\u00a0]/.test(letter) ? letter : /\s/u.test(letter) ? ' ' : '';
      continue;
    }
    const code = letter.codePointAt(0) ?? 0;
    const isControl = code < 32 || code === 127;
    if (!isControl && characters.has(code)) {
      result += letter;
      continue;
    }
    if (isControl) continue;
    missing.add(letter);
    result += '\u25a1';
  }
  return breakable(result);
}

/** The same for every text in a tree of plain data. */
export function settableData<T>(data: T, characters: ReadonlySet<number>, missing: Set<string>): T {
  if (typeof data === 'string') return settable(data, characters, missing) as T;
  if (Array.isArray(data)) return data.map((item) => settableData(item, characters, missing)) as T;
  if (data === null || typeof data !== 'object') return data;
  return Object.fromEntries(Object.entries(data).map(([key, value]) => [key, settableData(value, characters, missing)])) as T;
}

import pg from 'pg';

const INT8 = 20;
const NUMERIC = 1700;
const DATE = 1082;
/** An array of days, which the driver's types do not name. */
const DATES = 1182 as typeof DATE;
const TIMESTAMPTZ = 1184;

/**
 * Reads what PostgreSQL sends as the domain wants it: amounts as whole numbers (an amount beyond
 * 2^53 - 1 is an error, never a rounded number), days as text, moments as ISO 8601 in UTC.
 */
export function setTypeParsers(): void {
  pg.types.setTypeParser(INT8, wholeNumber);
  pg.types.setTypeParser(NUMERIC, (text) => (/^-?\d+$/.test(text) ? wholeNumber(text) : Number(text)));
  pg.types.setTypeParser(DATE, (text) => text);
  pg.types.setTypeParser(DATES, (text) => (text === '{}' ? [] : text.slice(1, -1).split(',')));
  pg.types.setTypeParser(TIMESTAMPTZ, moment);
}

function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new RangeError(`${text} is beyond the whole numbers that are exact`);
  return value;
}

function moment(text: string): string {
  const match = /^(\d{4}-\d\d-\d\d) (\d\d:\d\d:\d\d)(?:\.(\d{1,6}))?\+00$/.exec(text);
  if (!match) return new Date(text).toISOString();
  return `${match[1]}T${match[2]}.${(match[3] ?? '').padEnd(3, '0').slice(0, 3)}Z`;
}

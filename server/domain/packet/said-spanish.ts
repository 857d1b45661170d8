import type { Saying } from './saying.ts';
import { spelledOut } from './saying.ts';

const SMALL = (
  'cero uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciséis diecisiete dieciocho diecinueve ' +
  'veinte veintiuno veintidós veintitrés veinticuatro veinticinco veintiséis veintisiete veintiocho veintinueve'
).split(' ');
const TENS = ['', '', '', 'treinta', 'cuarenta', 'cincuenta', 'sesenta', 'setenta', 'ochenta', 'noventa'];
const HUNDREDS = ['', 'ciento', 'doscientos', 'trescientos', 'cuatrocientos', 'quinientos', 'seiscientos', 'setecientos', 'ochocientos', 'novecientos'];
const ORDINALS = ['', 'primero', 'segundo', 'tercero', 'cuarto', 'quinto', 'sexto', 'séptimo', 'octavo', 'noveno', 'décimo'];

/** A whole number from 0 below a billion in Spanish words. */
export function spanishNumberWords(number: number): string {
  if (number < 30) return SMALL[number] ?? '';
  if (number < 100) return `${TENS[Math.floor(number / 10)]}${number % 10 === 0 ? '' : ` y ${SMALL[number % 10]}`}`;
  if (number === 100) return 'cien';
  if (number < 1000) return `${HUNDREDS[Math.floor(number / 100)]} ${number % 100 === 0 ? '' : spanishNumberWords(number % 100)}`.trim();
  const [size, one, many] = number < 1_000_000 ? ([1000, 'mil', 'mil'] as const) : ([1_000_000, 'un millón', 'millones'] as const);
  const times = Math.floor(number / size);
  const head = times === 1 ? one : `${spanishNumberWords(times).replace(/uno$/, 'ún')} ${many}`;
  return `${head} ${number % size === 0 ? '' : spanishNumberWords(number % size)}`.trim();
}

const digits = (signs: string): string => [...signs].map((digit) => SMALL[Number(digit)] ?? '').join(' ');
const whole = (number: string | undefined): number => Number((number ?? '').replaceAll(',', ''));
const WORDS: Readonly<Record<string, string>> = { 'Sr.': 'señor', 'Sra.': 'señora', 'Srta.': 'señorita', 'Dr.': 'doctor', 'Dra.': 'doctora', 'Av.': 'avenida', 'Ud.': 'usted', 'Uds.': 'ustedes', 'núm.': 'número', 'EE. UU.': 'estados unidos' };
const SIGNS: Readonly<Record<string, string>> = { '&': 'y', '+': 'más', '@': 'arroba', '%': 'por ciento', '#': 'número', '°': 'grados' };

function moneyWords(dollars: number, cents: number): string {
  const whole_ = `${spanishNumberWords(dollars).replace(/uno$/, 'un')} ${dollars === 1 ? 'dólar' : 'dólares'}`;
  return cents === 0 ? whole_ : `${whole_} con ${spanishNumberWords(cents)} ${cents === 1 ? 'centavo' : 'centavos'}`;
}

/**
 * How Spanish signs are said.
 *
 * @source common practice, no source
 */
export const SPANISH_SAYINGS: readonly Saying[] = [
  { what: 'phone', pattern: /\(?\d{3}\)?[-. ]{1,2}\d{3}[-. ]\d{4}(?!\d)|\d{3}[-.]\d{4}(?!\d)/y, say: ([number]) => digits((number ?? '').replace(/\D/g, '')) },
  { what: 'plate', pattern: /(?:[A-Z]{2,3}-\d{3,4}|\d{3}-[A-Z]{3}|(?=[A-Z]{0,7}\d)(?=\d{0,7}[A-Z])[A-Z0-9]{5,8})(?![A-Za-z0-9])/y, say: ([plate]) => spelledOut(plate ?? '', digits) },
  { what: 'money', pattern: /\$\s?(\d{1,3}(?:,\d{3})+|\d{1,9})(?:\.(\d{2})(?!\d))?/y, say: ([, dollars, cents]) => moneyWords(whole(dollars), Number(cents ?? 0)) },
  {
    what: 'time 7:30 p. m.', pattern: /(\d{1,2}):(\d{2})(?!\d)(?:\s?([AaPp])\.?\s?[Mm]\b\.?)?/y,
    say: ([, hour, minutes, half]) => `${spanishNumberWords(Number(hour)).replace(/uno$/, 'una')} ${Number(minutes) === 0 ? '' : `y ${spanishNumberWords(Number(minutes))}`} ${half === undefined ? '' : `${half.toUpperCase()} M`}`,
  },
  { what: 'ordinal', pattern: /(\d{1,2})\.?[ºª]/y, say: ([, place]) => ORDINALS[Number(place)] ?? spanishNumberWords(Number(place)) },
  { what: 'number sign', pattern: /(?:No\.|N\.º|#)\s?(?=\d)/y, say: () => 'número' },
  { what: 'decimal', pattern: /(\d{1,9})\.(\d{1,6})(?!\d)/y, say: ([, before, after]) => `${spanishNumberWords(Number(before))} punto ${digits(after ?? '')}` },
  { what: 'number', pattern: /\d{1,3}(?:,\d{3})+(?!\d)|\d+/y, say: ([number]) => ((number ?? '').length > 9 || /^0\d/.test(number ?? '') ? digits((number ?? '').replaceAll(',', '')) : spanishNumberWords(whole(number))) },
  { what: 'from – to', pattern: /[-–—](?=\d)/y, say: (_, before) => (/\d$/.test(before) ? 'a' : null) },
  { what: 'abbreviation', pattern: /Sra?\.|Srta\.|Dra?\.|Av\.|Uds?\.|núm\.|EE\. UU\./y, say: ([written]) => WORDS[written ?? ''] ?? null },
  { what: 'initials', pattern: /[A-Z]{2,5}(?![\p{L}\p{N}])/uy, say: ([written]) => (/[AEIOU]/.test(written ?? '') ? null : spelledOut(written ?? '', digits)) },
  { what: 'sign', pattern: /[&+@%#°]/y, say: ([sign]) => SIGNS[sign ?? ''] ?? null },
];

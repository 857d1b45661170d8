/**
 * An amount as it is printed, `$1,234.56`, written from whole cents without passing through a fraction.
 *
 * @param locale `en-US`
 * @param currency `USD`, with two decimals
 */
export function amountText(amountCents: number, locale: string, currency: string): string {
  const digits = String(Math.abs(amountCents)).padStart(3, '0');
  const decimal = `${amountCents < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`;
  return amountFormat(locale, currency).format(decimal as unknown as number);
}

/** A share in hundredths of a percent as it is printed: 725 is `7.25%`. */
export function shareText(basisPoints: number): string {
  return `${(basisPoints / 100).toFixed(2).replace(/\.?0+$/, '')}%`;
}

/** A day as it is printed, `December 4, 2026`; the day is a day, in no zone. */
export function dayText(day: string, locale: string): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  return dayFormat(locale).format(Date.UTC(year, month - 1, date));
}

// Making a format takes longer than using it a hundred times, and there are only a few.
const amountFormats = new Map<string, Intl.NumberFormat>();
const dayFormats = new Map<string, Intl.DateTimeFormat>();

function amountFormat(locale: string, currency: string): Intl.NumberFormat {
  const key = `${locale} ${currency}`;
  const format =
    amountFormats.get(key) ?? new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: 2, maximumFractionDigits: 2 });
  amountFormats.set(key, format);
  return format;
}

function dayFormat(locale: string): Intl.DateTimeFormat {
  const format = dayFormats.get(locale) ?? new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' });
  dayFormats.set(locale, format);
  return format;
}

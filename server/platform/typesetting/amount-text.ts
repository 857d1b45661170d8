/**
 * An amount as it is printed, `$1,234.56`, written from whole cents without passing through a fraction.
 *
 * @param locale `en-US`
 * @param currency `USD`, with two decimals
 */
export function amountText(amountCents: number, locale: string, currency: string): string {
  const digits = String(Math.abs(amountCents)).padStart(3, '0');
  const decimal = `${amountCents < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`;
  const format = new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: 2, maximumFractionDigits: 2 });
  return format.format(decimal as unknown as number);
}

/** A share in hundredths of a percent as it is printed: 725 is `7.25 %`. */
export function shareText(basisPoints: number): string {
  return `${(basisPoints / 100).toFixed(2).replace(/\.?0+$/, '')} %`;
}

/** A day as it is printed, `December 4, 2026`; the day is a day, in no zone. */
export function dayText(day: string, locale: string): string {
  const [year, month, date] = day.split('-').map(Number) as [number, number, number];
  return new Intl.DateTimeFormat(locale, { dateStyle: 'long', timeZone: 'UTC' }).format(Date.UTC(year, month - 1, date));
}

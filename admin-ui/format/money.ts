import { department } from '../session/me.ts';

/** Whole cents as an amount in the department's currency and locale: 120000 is "$1,200.00". */
export function moneyText(amountCents: number | null | undefined): string {
  if (amountCents === null || amountCents === undefined) return '–';
  const { currency, locale } = department();
  return new Intl.NumberFormat(locale, { style: 'currency', currency }).format(amountCents / 100);
}

/** Cents as typed into a field, without the currency sign: 1250 is "12.50". */
export function typedMoney(amountCents: number | null | undefined): string {
  if (amountCents === null || amountCents === undefined) return '';
  const whole = Math.trunc(Math.abs(amountCents) / 100);
  const cents = String(Math.abs(amountCents) % 100).padStart(2, '0');
  return `${amountCents < 0 ? '-' : ''}${whole}.${cents}`;
}

/** What a person typed as cents, read digit by digit so that no cent is lost; undefined when it is no amount. */
export function centsTyped(typed: string): number | undefined {
  const found = /^\s*\$?\s*(\d{1,3}(?:,\d{3})+|\d+)?(?:\.(\d{0,2}))?\s*$/.exec(typed);
  if (!found || (found[1] === undefined && !found[2])) return undefined;
  const cents = Number((found[1] ?? '0').replaceAll(',', '')) * 100 + Number((found[2] ?? '').padEnd(2, '0'));
  return Number.isSafeInteger(cents) ? cents : undefined;
}

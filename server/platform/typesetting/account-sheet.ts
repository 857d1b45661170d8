import { amountText, dayText } from './amount-text.ts';

/** A sponsor's account over a span, each seller of record apart. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface AccountSheet {
  readonly departmentName: string;
  readonly sponsorName: string;
  readonly fromOn: string;
  readonly toOn: string;
  readonly locale: string;
  readonly currency: string;
  readonly buckets: readonly string[];
  readonly sellers: readonly {
    readonly sellerName: string;
    readonly remitTo: string | null;
    readonly openingCents: number;
    readonly lines: readonly { readonly on: string; readonly what: string; readonly chargeCents: number; readonly creditCents: number; readonly balanceCents: number }[];
    readonly closingCents: number;
    readonly bucketCents: readonly number[];
    readonly openCents: number;
    readonly unappliedCents: number;
  }[];
  readonly note: string | null;
}

export function accountTexts(sheet: AccountSheet): Record<string, unknown> {
  const amount = (cents: number): string => amountText(cents, sheet.locale, sheet.currency);
  const some = (cents: number): string => (cents === 0 ? '' : amount(cents));
  const day = (on: string): string => dayText(on, sheet.locale);
  return {
    departmentName: sheet.departmentName,
    sponsorName: sheet.sponsorName,
    from: day(sheet.fromOn),
    to: day(sheet.toOn),
    buckets: [...sheet.buckets, 'Open in all'],
    sellers: sheet.sellers.map((seller) => ({
      name: seller.sellerName,
      remitTo: seller.remitTo,
      opening: amount(seller.openingCents),
      lines: seller.lines.map((line) => [day(line.on), line.what, some(line.chargeCents), some(line.creditCents), amount(line.balanceCents)]),
      closing: amount(seller.closingCents),
      owes: seller.closingCents > 0,
      ages: seller.openCents === 0 ? null : [...seller.bucketCents, seller.openCents].map(amount),
      unapplied: some(seller.unappliedCents),
    })),
    note: sheet.note,
  };
}

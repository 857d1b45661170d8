import { amountText, dayText } from './amount-text.ts';

/** Everything a deposit slip shows. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface DepositSlipSheet {
  readonly number: string;
  readonly departmentName: string;
  readonly locale: string;
  readonly currency: string;
  readonly sellerName: string;
  readonly depositedOn: string;
  readonly depositedByName: string | null;
  readonly expectedCents: number;
  readonly countedCents: number;
  readonly differenceCents: number;
  readonly checkCents: number;
  readonly cashCents: number;
  readonly note: string | null;
  readonly lines: readonly {
    readonly paymentNumber: string;
    readonly receiptNumber: string | null;
    readonly payerName: string;
    readonly receivedOn: string;
    readonly method: 'cash' | 'check';
    readonly reference: string | null;
    readonly amountCents: number;
  }[];
}

export function depositSlipTexts(sheet: DepositSlipSheet): Record<string, unknown> {
  const amount = (cents: number): string => amountText(cents, sheet.locale, sheet.currency);
  const rows = (method: 'cash' | 'check') =>
    sheet.lines
      .filter((line) => line.method === method)
      .map((line) => [line.reference ?? '–', line.payerName, dayText(line.receivedOn, sheet.locale), line.receiptNumber ?? line.paymentNumber, amount(line.amountCents)]);
  const { differenceCents } = sheet;
  return {
    number: sheet.number,
    sellerName: sheet.sellerName,
    departmentName: sheet.departmentName,
    depositedOn: dayText(sheet.depositedOn, sheet.locale),
    depositedBy: sheet.depositedByName,
    checks: rows('check'),
    checkTotal: amount(sheet.checkCents),
    cash: rows('cash').map(([, ...row]) => row),
    cashTotal: amount(sheet.cashCents),
    totals: [
      ['Expected', amount(sheet.expectedCents), false],
      ...(differenceCents === 0 ? [] : [['Cash expected', amount(sheet.cashCents), false], ['Cash counted', amount(sheet.cashCents + differenceCents), false]]),
      ...(differenceCents === 0 ? [] : [[differenceCents > 0 ? 'Over' : 'Short', amount(Math.abs(differenceCents)), false]]),
      ['Deposited', amount(sheet.countedCents), true],
    ],
    note: sheet.note,
    currency: sheet.currency,
  };
}

import { amountText, dayText } from './amount-text.ts';

/** Everything a receipt shows. The amount is whole cents, the day `YYYY-MM-DD`. */
export interface ReceiptSheet {
  readonly number: string;
  readonly departmentName: string;
  readonly locale: string;
  readonly currency: string;
  readonly sellerName: string;
  readonly sellerAddress: string | null;
  readonly payerName: string;
  readonly fromWhom: string;
  readonly whatFor: string | null;
  readonly takenOn: string;
  readonly takenByName: string;
  readonly method: 'cash' | 'check';
  readonly reference: string | null;
  readonly amountCents: number;
  /** The payment was none after all. */
  readonly isTakenOut: boolean;
}

const CAUTION = 'This paper says what was handed over. It does not say what may be deducted: local rules and the business office decide. Nothing on it is tax advice.';

export function receiptTexts(sheet: ReceiptSheet): Record<string, unknown> {
  const facts: (readonly [string, string | null])[] = [
    ['Handed over by', sheet.fromWhom],
    ['On account of', sheet.payerName === sheet.fromWhom ? null : sheet.payerName],
    ['In', sheet.method === 'cash' ? 'Cash' : `Check ${sheet.reference ?? ''}`.trim()],
    ['For', sheet.whatFor],
    ['On', dayText(sheet.takenOn, sheet.locale)],
    ['Taken by', sheet.takenByName],
  ];
  return {
    number: sheet.number,
    sellerName: sheet.sellerName,
    sellerAddress: (sheet.sellerAddress ?? '').split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== ''),
    departmentName: sheet.departmentName,
    amount: amountText(sheet.amountCents, sheet.locale, sheet.currency),
    currency: sheet.currency,
    mark: sheet.isTakenOut ? 'TAKEN BACK' : null,
    facts: facts.filter((fact) => fact[1] !== null && fact[1] !== ''),
    caution: CAUTION,
  };
}

import { amountText, dayText } from './amount-text.ts';

/** A contract's reads, night by night, and its dollars. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface StatementSheet {
  readonly title: string;
  readonly departmentName: string;
  readonly sponsorName: string;
  readonly contractNumber: string | null;
  readonly asOfOn: string;
  readonly locale: string;
  readonly currency: string;
  /** Where each promise stands. */
  readonly commitments: readonly {
    readonly name: string;
    readonly promised: number;
    readonly given: number;
    readonly madeGood: number;
    readonly credited: number;
    readonly stillToCome: number;
  }[];
  readonly reads: readonly { readonly heldOn: string; readonly what: string; readonly outcome: string; readonly count: number }[];
  readonly account: readonly { readonly on: string; readonly what: string; readonly amountCents: number; readonly balanceCents: number }[];
  readonly note: string | null;
}

export function statementTexts(sheet: StatementSheet): Record<string, unknown> {
  const amount = (cents: number): string => amountText(cents, sheet.locale, sheet.currency);
  return {
    title: sheet.title,
    departmentName: sheet.departmentName,
    sponsorName: sheet.sponsorName,
    contractNumber: sheet.contractNumber,
    asOf: dayText(sheet.asOfOn, sheet.locale),
    commitments: sheet.commitments.map((one) => [one.name, one.promised, one.given, one.madeGood, one.credited, one.stillToCome].map(String)),
    reads: sheet.reads.map((one) => [dayText(one.heldOn, sheet.locale), one.what, one.outcome, String(one.count)]),
    account: sheet.account.map((one) => [dayText(one.on, sheet.locale), one.what, amount(one.amountCents), amount(one.balanceCents)]),
    note: sheet.note,
  };
}

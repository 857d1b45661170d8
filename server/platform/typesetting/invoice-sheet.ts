import { amountText, dayText, shareText } from './amount-text.ts';

/** Everything an invoice shows. Amounts are whole cents, days `YYYY-MM-DD`. */
export interface InvoiceSheet {
  readonly kind: 'invoice' | 'creditMemo' | 'charge';
  readonly number: string;
  /** Printed large across the head: `VOID`, `COPY`; null for a live document. */
  readonly mark: string | null;
  readonly locale: string;
  readonly currency: string;
  readonly seller: {
    readonly name: string;
    readonly address: string | null;
    readonly remitTo: string | null;
    readonly taxIdentity: string | null;
    readonly contactName: string | null;
    readonly contactEmail: string | null;
    readonly contactPhone: string | null;
  };
  readonly payer: { readonly name: string; readonly address: string | null; readonly email: string | null };
  readonly sponsorName: string | null;
  readonly contractNumber: string | null;
  readonly contractTitle: string | null;
  readonly purchaseOrderNumber: string | null;
  readonly issuedOn: string;
  readonly dueOn: string | null;
  /** "Net 30", or any other words. */
  readonly terms: string | null;
  /** For a credit memo: the number of the invoice it credits, and why. */
  readonly creditsNumber: string | null;
  readonly reason: string | null;
  readonly lines: readonly {
    readonly description: string;
    readonly quantity: number;
    readonly unitCents: number | null;
    readonly amountCents: number;
    /** printed where not every line is taxed alike */
    readonly taxCents?: number;
  }[];
  readonly netCents: number;
  readonly taxBasisPoints: number;
  readonly taxCents: number;
  /** Why no tax is charged: "Exempt, certificate 12-3456". */
  readonly exemptionReason: string | null;
  readonly grossCents: number;
  /** Payments and credits applied so far. */
  readonly paidCents: number;
  readonly balanceCents: number;
  readonly note: string | null;
  /** the department's paper; letter where nothing is said */
  readonly paper?: 'letter' | 'a4';
}

const TITLES = { invoice: 'Invoice', creditMemo: 'Credit memo', charge: 'Account charge' } as const;
const CAUTION =
  'Sponsorship of a school activity: local rules and the business office decide on tax, receipts and who may sign. Nothing on this page is tax advice.';

function linesOf(text: string | null): string[] {
  return text === null ? [] : text.split(/\r?\n/).map((line) => line.trim()).filter((line) => line !== '');
}

function factsOf(sheet: InvoiceSheet): (readonly [string, string])[] {
  const facts: (readonly [string, string | null])[] = [
    ['Number', sheet.number],
    ['Issued on', dayText(sheet.issuedOn, sheet.locale)],
    ['Due on', sheet.dueOn === null ? null : dayText(sheet.dueOn, sheet.locale)],
    ['Terms', sheet.terms],
    ['Contract', [sheet.contractNumber, sheet.contractTitle].filter((part) => part !== null).join(', ') || null],
    ['Purchase order', sheet.purchaseOrderNumber],
    ['Sponsor', sheet.sponsorName],
    ['Credits invoice', sheet.creditsNumber],
    ['Reason', sheet.reason],
  ];
  return facts.filter((fact): fact is readonly [string, string] => fact[1] !== null && fact[1] !== '');
}

/** Some lines are taxed and some are not, so each says its tax. */
function isTaxedApart({ lines, taxBasisPoints }: InvoiceSheet): boolean {
  return taxBasisPoints > 0 && lines.some((line) => line.taxCents !== undefined && Math.abs(line.taxCents - (line.amountCents * taxBasisPoints) / 10_000) > 1);
}

/** The texts of an invoice, ready to be set: amounts and days in the department's locale. */
export function invoiceTexts(sheet: InvoiceSheet): Record<string, unknown> {
  const amount = (cents: number): string => amountText(cents, sheet.locale, sheet.currency);
  const tax = sheet.exemptionReason ?? (sheet.taxBasisPoints === 0 ? 'No tax charged' : `Tax ${shareText(sheet.taxBasisPoints)}`);
  const isCredit = sheet.kind === 'creditMemo';
  return {
    title: TITLES[sheet.kind],
    number: sheet.number,
    mark: sheet.mark,
    currency: sheet.currency,
    seller: { ...sheet.seller, address: linesOf(sheet.seller.address), remitTo: linesOf(sheet.seller.remitTo) },
    payer: { ...sheet.payer, address: linesOf(sheet.payer.address) },
    facts: factsOf(sheet),
    hasTaxByLine: isTaxedApart(sheet),
    lines: sheet.lines.map((line) => ({
      description: line.description,
      quantity: String(line.quantity),
      unit: line.unitCents === null ? '' : amount(line.unitCents),
      amount: amount(line.amountCents),
      tax: line.taxCents === undefined ? '' : amount(line.taxCents),
    })),
    totals: [
      ['Net', amount(sheet.netCents), false],
      [tax, amount(sheet.taxCents), false],
      [isCredit ? 'Total credited' : 'Total', amount(sheet.grossCents), true],
      ...(isCredit ? [] : [['Paid and credited', amount(-sheet.paidCents), false], ['Balance due', amount(sheet.balanceCents), true]]),
    ],
    note: sheet.note,
    paper: sheet.paper === 'a4' ? 'a4' : 'us-letter',
    caution: CAUTION,
  };
}

import type { Cell } from '../../platform/files/cell.ts';
import type { ReportTable } from '../../platform/files/file-answer.ts';
import type { PaidState, RenewalsView } from './renewals.dto.ts';

export const PAID_WORDS: Readonly<Record<PaidState, string>> = { paid: 'Paid', notBilled: 'Not all billed', open: 'Open', overdue: 'Overdue' };

const HEADINGS = [
  'Sponsor', 'Contract', 'Title', 'Price last term', 'Promised', 'Given', 'Made good', 'Credited', 'Paid', 'Open', 'Last contact', 'Next step', 'By', 'Caller', 'What follows', 'Suggested', 'Nearest package',
  'Package price', 'Why',
];

/** The renewals for a spreadsheet. */
export function renewalsTable(view: RenewalsView): ReportTable {
  const money = (cents: number): Cell => ({ cents });
  const day = (on: string | null): Cell => (on === null ? null : { day: on });
  return {
    fileName: `renewals-${view.seasonName ?? 'no-season'}`,
    sheetName: 'Renewals',
    totalRows: 1,
    rows: [
      HEADINGS,
      ...view.rows.map((row): Cell[] => [
        row.sponsorName, row.number, row.title, money(row.priceCents), row.promised, row.given, row.madeGood, row.credited, PAID_WORDS[row.paid], money(row.openCents), day(row.lastContactOn), row.nextStep,
        day(row.nextStepOn), row.callerName, row.follows.words, money(row.suggestion.worthCents), row.suggestion.package?.name ?? null, row.suggestion.package ? money(row.suggestion.package.priceCents) : null, row.suggestion.words,
      ]),
      ['Total', null, null, money(view.priceCents), ...Array<null>(11).fill(null), money(view.suggestedCents), null, null, null],
    ],
  };
}

import type { Day } from '../day.ts';
import type { JournalColumn, JournalLayout } from './journal-layout.ts';
import type { JournalLine } from './journal-lines.ts';

export const DELIMITER_SIGNS = { comma: ',', semicolon: ';', tab: '\t' } as const;

/** The rows of the file, headings first where the layout has them; each cell as it is written, before any quoting. */
export function journalRows(lines: readonly JournalLine[], layout: JournalLayout, batchNumber: string): string[][] {
  const rows = lines.map((line) => layout.columns.map((column) => cellOf(column, line, layout, batchNumber)));
  return layout.hasHeadings ? [layout.columns.map(({ heading }) => heading), ...rows] : rows;
}

function cellOf(column: JournalColumn, line: JournalLine, layout: JournalLayout, batchNumber: string): string {
  const amount = (cents: number): string => (cents > 0 ? amountOf(cents, layout) : '');
  switch (column.field) {
    case 'entryNumber': return String(line.entryNumber);
    case 'entryOn': return dayIn(line.entry.entryOn, layout);
    case 'bookedOn': return dayIn(line.entry.bookedOn, layout);
    case 'accountCode': return line.account;
    case 'outsideCode': return line.outsideCode ?? '';
    case 'accountName': return line.accountName;
    case 'codeString': return line.codeParts.join(layout.separator);
    case 'codePart': return line.codeParts[(column.part ?? 1) - 1] ?? '';
    case 'debit': return amount(line.cents);
    case 'credit': return amount(-line.cents);
    case 'amount': return amountOf(layout.positiveIs === 'debit' ? line.cents : -line.cents, layout);
    case 'description': return line.entry.description;
    case 'documentNumber': return line.entry.documentNumber ?? '';
    case 'sponsorName': return line.entry.sponsorName ?? '';
    case 'contractNumber': return line.entry.contractNumber ?? '';
    case 'batchNumber': return batchNumber;
    case 'text': return column.text ?? '';
    case 'blank': return '';
  }
}

function amountOf(cents: number, layout: JournalLayout): string {
  const digits = String(Math.abs(cents)).padStart(3, '0');
  return `${cents < 0 ? '-' : ''}${digits.slice(0, -2)}${layout.decimalSign === 'point' ? '.' : ','}${digits.slice(-2)}`;
}

function dayIn(day: Day, layout: JournalLayout): string {
  const [year, month, date] = day.split('-') as [string, string, string];
  if (layout.dayForm === '12/31/2026') return `${month}/${date}/${year}`;
  return layout.dayForm === '20261231' ? `${year}${month}${date}` : day;
}

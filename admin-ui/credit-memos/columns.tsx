import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import type { Column } from '../lists/rows.tsx';
import type { CreditMemoView } from './types.ts';

export const creditMemoColumns: Column<CreditMemoView>[] = [
  { label: 'Number', sortBy: 'number', show: (memo) => <Go resource="credit-memos" id={memo.id}>{memo.number}</Go> },
  { label: 'To', sortBy: 'payerName', show: (memo) => memo.payerName },
  { label: 'Issued', sortBy: 'issuedOn', show: (memo) => dayText(memo.issuedOn) },
  { label: 'Why', show: (memo) => memo.reason ?? '–' },
  { label: 'Amount', sortBy: 'grossCents', numeric: true, show: (memo) => moneyText(memo.grossCents) },
  { label: 'Not applied', sortBy: 'unappliedCents', numeric: true, show: (memo) => moneyText(memo.unappliedCents) },
];

import { journalRows } from '../../server/domain/billing/journal-cells.ts';
import type { JournalLayout } from '../../server/domain/billing/journal-layout.ts';
import { journalLines } from '../../server/domain/billing/journal-lines.ts';
import type { JournalEntry, JournalNames } from '../../server/domain/billing/journal-lines.ts';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';

const SPONSOR = 'Juniper & Pike Hardware';

const entry = (id: string, day: string, description: string, documentNumber: string | null, teamIds: string[], changes: [account: string, cents: number][]): JournalEntry => ({
  id, entryOn: dayOf(day), bookedOn: dayOf(day), description, documentNumber, sponsorName: SPONSOR, contractNumber: '2027-0001', teamIds,
  changes: changes.map(([account, cents]) => ({ account, cents: centsOf(cents) })),
});

/** A read in a game of two teams, and a check: five lines where income is split by team. */
const entries = (teamIds: string[]): JournalEntry[] => [
  entry('read', '2026-12-01', 'Read given', null, teamIds, [['2100', 10_455], ['4000', -10_455]]),
  entry('payment', '2026-12-05', 'Payment received', 'P-2027-0001', [], [['1000', 36_750], ['2150', -36_750]]),
  entry('applied', '2026-12-05', 'Credit applied to an invoice', '2027-0001', [], [['1100', -36_750], ['2150', 36_750]]),
];

/** Five lines as the layout would write them, and what it still asks for. */
export function sampleOf(layout: JournalLayout, names: JournalNames): { rows: string[][]; missing: string[] } {
  const { lines, missing } = journalLines(entries([...names.teams.keys()].slice(0, 2)), layout, names);
  return { rows: journalRows(lines.slice(0, 5), { ...layout, hasHeadings: false }, 'J-2027-0001'), missing };
}

import fc from 'fast-check';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { DELIMITER_SIGNS, journalRows } from '../../server/domain/billing/journal-cells.ts';
import { DAY_FORMS, DELIMITERS, FIRST_LAYOUT, assertLayout } from '../../server/domain/billing/journal-layout.ts';
import type { CodePart, JournalField, JournalLayout } from '../../server/domain/billing/journal-layout.ts';
import { debitsOf, journalLines } from '../../server/domain/billing/journal-lines.ts';
import type { JournalEntry, JournalNames } from '../../server/domain/billing/journal-lines.ts';
import { dayOf } from '../../server/domain/day.ts';
import { centsOf } from '../../server/domain/money.ts';
import { Refused } from '../../server/domain/refusals.ts';
import { recordsOf } from '../../server/platform/files/csv.ts';

/** Column forms are common practice, no source: the district's system says what it reads. */
const entry = (changes: Record<string, number>, more: Partial<JournalEntry> = {}): JournalEntry => ({
  id: 'e1', entryOn: dayOf('2026-12-31'), bookedOn: dayOf('2027-01-01'), description: 'Read given', documentNumber: null, sponsorName: 'Juniper & Pike Hardware',
  contractNumber: 'TR-C-2027-0001', changes: Object.entries(changes).map(([account, cents]) => ({ account, cents: centsOf(cents) })), teamIds: [], ...more,
});

const names: JournalNames = {
  accounts: new Map([['1000', { name: 'Cash', outsideCode: '01-1010' }], ['2100', { name: 'Contract balance', outsideCode: null }], ['4000', { name: 'Sponsorship revenue', outsideCode: '01-4000' }]]),
  teams: new Map([
    ['boys', { name: 'Varsity boys', schoolId: 'tr', schoolName: 'Tamarack Ridge', schoolCode: '310' }],
    ['girls', { name: 'Varsity girls', schoolId: 'tr', schoolName: 'Tamarack Ridge', schoolCode: '310' }],
    ['away', { name: 'Varsity boys', schoolId: 'pa', schoolName: 'Port Ansel', schoolCode: null }],
  ]),
};

const laidOut = (fields: JournalField[], more: Partial<JournalLayout> = {}): JournalLayout => ({
  ...FIRST_LAYOUT, columns: fields.map((field) => ({ field, heading: field, text: 'SPIRIT', part: 1 })), hasHeadings: false, ...more,
});

const given = entry({ '2100': 10_001, '4000': -10_001 });

test.each<[string, JournalField, Partial<JournalLayout>, [debited: string, credited: string]]>([
  ['the number of its entry', 'entryNumber', {}, ['1', '1']],
  ['the day it happened', 'entryOn', {}, ['2026-12-31', '2026-12-31']],
  ['the day it is booked', 'bookedOn', {}, ['2027-01-01', '2027-01-01']],
  ['the day as it is written in the United States', 'entryOn', { dayForm: '12/31/2026' }, ['12/31/2026', '12/31/2026']],
  ['the day without signs', 'entryOn', { dayForm: '20261231' }, ['20261231', '20261231']],
  ['our account code', 'accountCode', {}, ['2100', '4000']],
  ['the account’s name', 'accountName', {}, ['Contract balance', 'Sponsorship revenue']],
  ['its debit', 'debit', {}, ['100.01', '']],
  ['its credit', 'credit', {}, ['', '100.01']],
  ['a signed amount, debit above zero', 'amount', {}, ['100.01', '-100.01']],
  ['a signed amount, credit above zero', 'amount', { positiveIs: 'credit' }, ['-100.01', '100.01']],
  ['an amount with a decimal comma', 'amount', { decimalSign: 'comma' }, ['100,01', '-100,01']],
  ['what happened', 'description', {}, ['Read given', 'Read given']],
  ['nothing where there is no document', 'documentNumber', {}, ['', '']],
  ['the sponsor', 'sponsorName', {}, ['Juniper & Pike Hardware', 'Juniper & Pike Hardware']],
  ['the contract', 'contractNumber', {}, ['TR-C-2027-0001', 'TR-C-2027-0001']],
  ['the batch', 'batchNumber', {}, ['TR-J-2027-0001', 'TR-J-2027-0001']],
  ['the same words in every line', 'text', {}, ['SPIRIT', 'SPIRIT']],
  ['nothing', 'blank', {}, ['', '']],
])('a line can hold %s', (_, field, more, cells) => {
  const layout = laidOut([field], more);
  expect(journalRows(journalLines([given], layout, names).lines, layout, 'TR-J-2027-0001').map(([cell]) => cell)).toEqual(cells);
});

const part = (kind: CodePart['kind'], values: Record<string, string> = {}, otherwise: string | null = null): CodePart =>
  ({ name: kind, kind, otherwise, values: Object.entries(values).map(([key, text]) => ({ key, text })) });

const coded = (codeParts: CodePart[]) => laidOut(['codeString', 'amount'], { codeParts, separator: '-' });

test.each<[string, CodePart[], string[], string[][]]>([
  ['a constant and the account', [part('constant', {}, '21'), part('account', { '2100': '480', '4000': '1710' })], ['boys'], [['21-480', '100.01'], ['21-1710', '-100.01']]],
  ['the school by its own record, one line for two teams of one school', [part('school', {}, '000')], ['boys', 'girls'], [['000', '100.01'], ['310', '-100.01']]],
  ['the school as the layout has it', [part('school', { tr: '31' }, '000')], ['boys'], [['000', '100.01'], ['31', '-100.01']]],
  ['the team, the earlier one a cent larger', [part('team', { boys: 'MBB', girls: 'WBB' }, 'ATH')], ['boys', 'girls'], [['ATH', '100.01'], ['MBB', '-50.01'], ['WBB', '-50.00']]],
  ['what stands for the department as a whole', [part('team', { boys: 'MBB' }, 'ATH')], [], [['ATH', '100.01'], ['ATH', '-100.01']]],
])('a code string is made of %s', (_, parts, teamIds, rows) => {
  const layout = coded(parts);
  const { lines, missing } = journalLines([{ ...given, teamIds }], layout, names);
  expect([journalRows(lines, layout, ''), missing]).toEqual([rows, []]);
});

test.each<[string, JournalLayout, string[], string[]]>([
  ['an account without the outside code a column asks for', laidOut(['outsideCode', 'amount']), [], ['Account 2100 Contract balance: an outside code']],
  ['an account without its part of the code', coded([part('account', { '4000': '1710' })]), [], ['Account 2100 Contract balance: the part “account” of its code']],
  ['a school without a code', coded([part('school', {}, null)]), ['away'], ['Account 2100 Contract balance: the part “school” of its code', 'School Port Ansel: the part “school” of its code']],
  ['nothing, where our own codes are enough', FIRST_LAYOUT, [], []],
])('what is missing is named: %s', (_, layout, teamIds, missing) => {
  expect(journalLines([{ ...given, teamIds }], layout, names).missing).toEqual(missing);
});

const refusalOf = (run: () => void): string => {
  try {
    run();
    return 'none';
  } catch (failure) {
    return (failure as Refused).code;
  }
};

test.each<[string, JournalLayout, string]>([
  ['signed amounts', laidOut(['accountCode', 'amount']), 'none'],
  ['debits and credits', laidOut(['debit', 'credit']), 'none'],
  ['debits alone', laidOut(['debit']), 'layout-without-amounts'],
  ['a code string without parts', laidOut(['amount', 'codeString']), 'layout-without-code-parts'],
  ['a part beyond the last', laidOut(['amount', 'codePart']), 'layout-without-code-parts'],
  ['the first part of one', laidOut(['amount', 'codePart'], { codeParts: [part('constant', {}, '21')] }), 'none'],
])('a layout with %s is refused for: %s', (_, layout, code) => {
  expect(refusalOf(() => assertLayout(layout))).toBe(code);
});

test('an entry that does not balance leaves in no batch, and an account that stays as it was has no line', () => {
  expect(refusalOf(() => journalLines([entry({ '1000': 100, '4000': -99 })], FIRST_LAYOUT, names))).toBe('entry-does-not-balance');
  expect(journalLines([entry({ '1000': 0 })], FIRST_LAYOUT, names).lines).toEqual([]);
});

test('whatever the amounts, teams and layout, the lines of an entry come to zero and the file says so again when it is read', () => {
  const amounts = fc.array(fc.integer({ min: -1_000_000, max: 1_000_000 }), { minLength: 1, maxLength: 5 });
  fc.assert(fc.property(amounts, fc.subarray(['boys', 'girls', 'away']), fc.constantFrom(...DELIMITERS), fc.constantFrom(...DAY_FORMS), fc.string(), (moved, teamIds, delimiter, dayForm, sponsorName) => {
    const changes = { ...Object.fromEntries(moved.map((cents, place) => [['4000', '4010', '4050', '4090', '1000'][place]!, cents])), '2100': -moved.reduce((sum, cents) => sum + cents, 0) };
    const layout = { ...laidOut(['amount', 'sponsorName', 'codeString', 'entryOn'], { codeParts: [part('team', {}, 'ATH'), part('school', { pa: '9' }, '0')] }), delimiter, dayForm };
    const { lines } = journalLines([entry(changes, { teamIds, sponsorName })], layout, names);
    expect(lines.reduce((sum, line) => sum + line.cents, 0)).toBe(0);
    const read: string[][] = parse(recordsOf(journalRows(lines, layout, 'b'), DELIMITER_SIGNS[delimiter]), { delimiter: DELIMITER_SIGNS[delimiter] });
    expect(read.map((row) => row.length)).toEqual(lines.map(() => 4));
    expect(read.reduce((sum, [amount]) => sum + Math.round(Number(amount) * 100), 0)).toBe(0);
    expect(read.reduce((sum, [amount]) => sum + Math.max(0, Math.round(Number(amount) * 100)), 0)).toBe(debitsOf(lines));
  }));
});

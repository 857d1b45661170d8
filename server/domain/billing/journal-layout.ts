import { refuse } from '../refusals.ts';

/** What a column of the exported journal may hold. */
export const JOURNAL_FIELDS = [
  'entryNumber', 'entryOn', 'bookedOn', 'accountCode', 'outsideCode', 'accountName', 'codeString', 'codePart', 'debit', 'credit', 'amount',
  'description', 'documentNumber', 'sponsorName', 'contractNumber', 'batchNumber', 'text', 'blank',
] as const;
export type JournalField = (typeof JOURNAL_FIELDS)[number];

export interface JournalColumn {
  field: JournalField;
  heading: string;
  /** the same words in every line, for the field `text` */
  text: string | null;
  /** which part of the code string (1, 2, …), for the field `codePart` */
  part: number | null;
}

/** Where a part of a code string comes from: always the same, the account, the school or the team whose income it is. */
export const CODE_PART_KINDS = ['constant', 'account', 'school', 'team'] as const;
export type CodePartKind = (typeof CODE_PART_KINDS)[number];

/** One part of a code string such as fund, function, object or school. */
export interface CodePart {
  name: string;
  kind: CodePartKind;
  /** the constant itself; else what stands where no value is given for the account, school or team */
  otherwise: string | null;
  /** account code, school id or team id → what stands in the string */
  values: { key: string; text: string }[];
}

export const DELIMITERS = ['comma', 'semicolon', 'tab'] as const;
export const DAY_FORMS = ['2026-12-31', '12/31/2026', '20261231'] as const;
export const DECIMAL_SIGNS = ['point', 'comma'] as const;
export const POSITIVE_SIDES = ['debit', 'credit'] as const;

export interface JournalLayout {
  name: string;
  columns: JournalColumn[];
  codeParts: CodePart[];
  /** between the parts of the code string */
  separator: string;
  delimiter: (typeof DELIMITERS)[number];
  dayForm: (typeof DAY_FORMS)[number];
  decimalSign: (typeof DECIMAL_SIGNS)[number];
  /** which side is written without a minus in a column of signed amounts */
  positiveIs: (typeof POSITIVE_SIDES)[number];
  hasHeadings: boolean;
}

const column = (field: JournalField, heading: string): JournalColumn => ({ field, heading, text: null, part: null });

/** What a seller's journal looks like until somebody lays it out: our own account codes, two columns of amounts. */
export const FIRST_LAYOUT: JournalLayout = {
  name: 'Journal',
  columns: [
    column('batchNumber', 'Batch'), column('entryNumber', 'Entry'), column('bookedOn', 'Date'), column('accountCode', 'Account'), column('accountName', 'Account name'),
    column('debit', 'Debit'), column('credit', 'Credit'), column('description', 'Description'), column('documentNumber', 'Document'), column('sponsorName', 'Sponsor'),
  ],
  codeParts: [],
  separator: '.',
  delimiter: 'comma',
  dayForm: '2026-12-31',
  decimalSign: 'point',
  positiveIs: 'debit',
  hasHeadings: true,
};

const usesCodeString = (layout: JournalLayout): boolean => layout.columns.some(({ field }) => field === 'codeString' || field === 'codePart');

/** Whether a line of revenue has to be split by team because its code string names the team or the school. */
export const splitsByTeam = (layout: JournalLayout): boolean => usesCodeString(layout) && layout.codeParts.some(({ kind }) => kind === 'school' || kind === 'team');

/** Whether a line needs the code by which the district knows the account. */
export const needsOutsideCode = (layout: JournalLayout): boolean => layout.columns.some(({ field }) => field === 'outsideCode');

/**
 * @throws Refused `layout-without-amounts` when a line could not say what it moves (a signed column, or a debit and a credit
 *   column), `layout-without-code-parts` when a column names a part of the code string that is not there
 */
export function assertLayout(layout: JournalLayout): void {
  const fields = new Set(layout.columns.map(({ field }) => field));
  if (!fields.has('amount') && !(fields.has('debit') && fields.has('credit'))) refuse('layout-without-amounts');
  if (fields.has('codeString') && layout.codeParts.length === 0) refuse('layout-without-code-parts');
  if (layout.columns.some(({ field, part }) => field === 'codePart' && (part ?? 0) > layout.codeParts.length)) refuse('layout-without-code-parts');
  if (layout.columns.some(({ field, part }) => field === 'codePart' && (part ?? 0) < 1)) refuse('layout-without-code-parts');
}

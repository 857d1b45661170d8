import { foldedText, textProblem } from '../season/import-headings.ts';
import type { Cells } from '../season/import-headings.ts';
import { changesOf, refusedStep } from '../season/import-plan.ts';
import type { ImportStep } from '../season/import-plan.ts';
import type { ContractColumn } from './import-contract-rows.ts';
import type { ContractsThere, SponsorThere } from './import-contracts.ts';

/** The category of a new sponsor whose row names none. */
export const NO_CATEGORY_YET = 'Other';

export interface WantedSponsor {
  readonly name: string;
  readonly outsideId: string | null;
  /** by name; one that is not there yet is added */
  readonly categoryName: string;
  readonly contactName: string | null;
  readonly email: string | null;
  readonly phone: string | null;
}

type Row = Cells<ContractColumn>;

/** The sponsor a row names, among those that are there: by outside id, else by name. */
export function sponsorThere(row: Row, there: ContractsThere): SponsorThere | null {
  const id = row.cell('sponsorOutsideId');
  const byId = id === '' ? undefined : there.sponsors.find((sponsor) => sponsor.outsideId === id);
  const name = foldedText(row.cell('sponsor'));
  return byId ?? there.sponsors.find((sponsor) => name !== '' && foldedText(sponsor.name) === name) ?? null;
}

/** One step for each sponsor a file names; the first filled cell of its rows holds, empty cells change nothing. */
export function sponsorSteps(rows: readonly Row[], there: ContractsThere): ImportStep<WantedSponsor>[] {
  const bySponsor = new Map<string, Row[]>();
  for (const row of rows) {
    const key = sponsorThere(row, there)?.id ?? foldedText(row.cell('sponsor'));
    if (row.cell('sponsor') !== '') bySponsor.set(key, [...(bySponsor.get(key) ?? []), row]);
  }
  return [...bySponsor.values()].map((ofSponsor) => stepFor(ofSponsor, there));
}

function stepFor(rows: readonly Row[], there: ContractsThere): ImportStep<WantedSponsor> {
  const first = (column: ContractColumn): string => rows.map((row) => row.cell(column)).find((cell) => cell !== '') ?? '';
  const existing = sponsorThere(rows[0]!, there);
  const lines = rows.map((row) => row.line);
  const problems = (['sponsor', 'category', 'contactName', 'email', 'phone', 'sponsorOutsideId'] as const).flatMap((column) =>
    textProblem(lines[0]!, column, first(column), 120, column === 'sponsor'),
  );
  if (problems.length > 0) return refusedStep(lines, first('sponsor'), problems, existing?.id ?? null);
  const category = there.categories.find((other) => foldedText(other.name) === foldedText(first('category')));
  const wanted: WantedSponsor = {
    name: first('sponsor'),
    outsideId: first('sponsorOutsideId') || (existing?.outsideId ?? null),
    categoryName: category?.name ?? (first('category') || existing?.categoryName || NO_CATEGORY_YET),
    contactName: first('contactName') || (existing?.contactName ?? null),
    email: first('email') || (existing?.email ?? null),
    phone: first('phone') || (existing?.phone ?? null),
  };
  const changes = existing
    ? changesOf([
        ['sponsor', existing.name, wanted.name],
        ['sponsorOutsideId', existing.outsideId, wanted.outsideId],
        ['category', existing.categoryName, wanted.categoryName],
        ['contactName', existing.contactName, wanted.contactName],
        ['email', existing.email, wanted.email],
        ['phone', existing.phone, wanted.phone],
      ])
    : [];
  return {
    action: !existing ? 'create' : changes.length > 0 ? 'change' : 'same',
    lines,
    label: wanted.name,
    existingId: existing?.id ?? null,
    wanted,
    changes,
    problems: [],
    notes: [
      ...(category?.isBlocked ? [`The department blocks the category ${category.name}: a contract needs a recorded exception before it is signed.`] : []),
      ...(!there.categories.some((other) => other.name === wanted.categoryName) ? [`${wanted.categoryName} is added as a category.`] : []),
    ],
  };
}

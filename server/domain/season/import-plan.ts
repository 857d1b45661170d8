import { isRefusalCode, sentenceOfRefusal } from '../refusals.ts';
import type { RefusalCode, RefusalDetails } from '../refusals.ts';

/** What a dry run says would happen: nothing is written until the director confirms. */
export const IMPORT_ACTIONS = ['create', 'change', 'move', 'drop', 'same', 'refuse'] as const;
export type ImportAction = (typeof IMPORT_ACTIONS)[number];

/** A row of the file; the line is the one a text editor shows, the headings are line 1. */
export interface ImportRow {
  readonly line: number;
  /** by heading, as the heading is written in the file */
  readonly fields: Readonly<Record<string, string>>;
}

export interface ImportFile {
  readonly headings: readonly string[];
  readonly rows: readonly ImportRow[];
}

export interface ImportChange {
  readonly field: string;
  readonly before: string;
  readonly after: string;
}

export interface ImportProblem {
  readonly line: number;
  readonly field: string;
  readonly code: RefusalCode;
  readonly sentence: string;
}

/** One thing the file names, with what would happen to it and why. */
export interface ImportStep<Wanted> {
  readonly action: ImportAction;
  /** the lines of the file it comes from; none for a drop */
  readonly lines: readonly number[];
  readonly label: string;
  /** the id of what is there already, or null */
  readonly existingId: string | null;
  /** what would be written; null for a drop or a refusal */
  readonly wanted: Wanted | null;
  readonly changes: readonly ImportChange[];
  readonly problems: readonly ImportProblem[];
  /** warnings and things worth knowing; they hold nothing up */
  readonly notes: readonly string[];
}

export interface ImportPlan<Wanted> {
  readonly steps: readonly ImportStep<Wanted>[];
  readonly tally: Readonly<Record<ImportAction, number>>;
  /** headings that mean nothing here; their columns are left out */
  readonly ignoredHeadings: readonly string[];
}

/** A plan with its steps in the order of the file, drops last. */
export function planOf<Wanted>(
  steps: readonly ImportStep<Wanted>[],
  ignoredHeadings: readonly string[],
): ImportPlan<Wanted> {
  const tally: Record<ImportAction, number> = { create: 0, change: 0, move: 0, drop: 0, same: 0, refuse: 0 };
  for (const step of steps) tally[step.action] += 1;
  const place = (step: ImportStep<Wanted>): number => step.lines[0] ?? Number.MAX_SAFE_INTEGER;
  return { steps: steps.toSorted((a, b) => place(a) - place(b)), tally, ignoredHeadings };
}

/** True when confirming the plan would write nothing. */
export function changesNothing(plan: ImportPlan<unknown>): boolean {
  return plan.tally.create + plan.tally.change + plan.tally.move + plan.tally.drop === 0;
}

export function problem(line: number, field: string, code: RefusalCode, details: RefusalDetails = {}): ImportProblem {
  return { line, field, code, sentence: sentenceOfRefusal(code, { field, ...details }) };
}

/** A problem from a rule's code, where the rule knows codes only as text. */
export function problemOfRule(line: number, field: string, code: string): ImportProblem {
  return problem(line, field, isRefusalCode(code) ? code : 'malformed');
}

/** A step that writes nothing because of its problems. */
export function refusedStep<Wanted>(
  lines: readonly number[],
  label: string,
  problems: readonly ImportProblem[],
  existingId: string | null = null,
): ImportStep<Wanted> {
  return { action: 'refuse', lines, label, existingId, wanted: null, changes: [], problems, notes: [] };
}

/** The fields that differ, in the order given; equal ones are left out. */
export function changesOf(fields: readonly (readonly [field: string, before: string | null, after: string | null])[]): ImportChange[] {
  return fields
    .filter(([, before, after]) => (before ?? '') !== (after ?? ''))
    .map(([field, before, after]) => ({ field, before: before ?? '', after: after ?? '' }));
}

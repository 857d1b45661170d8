import { createHash } from 'node:crypto';
import { refuse } from '../domain/refusals.ts';
import type { ImportAction, ImportPlan, ImportStep } from '../domain/season/import-plan.ts';
import { IMPORT_ACTIONS } from '../domain/season/import-plan.ts';
import type { ImportRowView, ImportView } from './import.dto.ts';

type AnyPlan = ImportPlan<unknown>;

/** What a person confirms: the same file over the same records has the same digest. */
export function digestOf(plans: readonly AnyPlan[]): string {
  return createHash('sha256').update(JSON.stringify(plans)).digest('hex');
}

/** @throws Refused `import-changed-since` when the plan is not the one that was shown */
export function isConfirmed(plans: readonly AnyPlan[], confirm: false | string): boolean {
  if (confirm === false) return false;
  return confirm === digestOf(plans) ? true : refuse('import-changed-since');
}

export function importView(plans: readonly AnyPlan[], done: boolean): ImportView {
  const summary = Object.fromEntries(IMPORT_ACTIONS.map((action) => [action, plans.reduce((sum, plan) => sum + plan.tally[action], 0)]));
  return {
    planDigest: digestOf(plans),
    summary: summary as Record<ImportAction, number>,
    rows: plans.flatMap((plan) => plan.steps.flatMap(rowsOf)).toSorted((a, b) => (a.line ?? Infinity) - (b.line ?? Infinity)),
    ignoredHeadings: [...new Set(plans.flatMap((plan) => plan.ignoredHeadings))],
    done,
  };
}

function rowsOf(step: ImportStep<unknown>): ImportRowView[] {
  if (step.action === 'refuse') {
    return step.problems.map((problem) => ({
      line: problem.line || null,
      action: 'refuse',
      sentence: step.label === '' ? problem.sentence : `${step.label}: ${problem.sentence}`,
      reason: problem.code,
      field: problem.field,
    }));
  }
  const notes = step.notes.length > 0 ? ` ${step.notes.join(' ')}` : '';
  return [{ line: step.lines[0] ?? null, action: step.action, sentence: `${sentenceOf(step)}${notes}` }];
}

function sentenceOf(step: ImportStep<unknown>): string {
  const changes = step.changes.map(({ field, before, after }) => `${field} ${before || 'empty'} → ${after || 'empty'}`).join(', ');
  switch (step.action) {
    case 'create':
      return `${step.label} is added.`;
    case 'change':
      return `${step.label} changes: ${changes}.`;
    case 'move':
      return `${step.label} moves: ${changes}.`;
    case 'drop':
      return `${step.label} is not in the file and is taken off.`;
    default:
      return `${step.label} stays as it is.`;
  }
}

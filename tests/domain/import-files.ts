import { readCsv } from '../../server/season/csv.ts';
import type { ImportFile, ImportPlan } from '../../server/domain/season/import-plan.ts';

/** A file as a school sends it, read as the server reads it. */
export function aFile(...lines: string[]): ImportFile {
  return readCsv(new TextEncoder().encode(lines.join('\r\n')));
}

/** What a plan would do, one line a step: `2 create`, `3 refuse day import-day-unreadable`, `- drop 12 Siobhán Okafor`. */
export function inWords(plan: ImportPlan<unknown>): string[] {
  return plan.steps.map((step) => {
    const place = step.lines.join('+') || '-';
    const why = step.problems.map((problem) => ` ${problem.field} ${problem.code}`).join(',');
    const what = step.action === 'drop' ? ` ${step.label}` : step.changes.map((change) => ` ${change.field} ${change.before}>${change.after}`).join(',');
    return `${place} ${step.action}${why}${what}`;
  });
}

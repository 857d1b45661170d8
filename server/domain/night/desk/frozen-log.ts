import type { DeskLine } from './desk-entry.ts';

/**
 * The log as it stood when it was opened, so that no line moves under a thumb. What came later is only counted; a taking back
 * of a line that is there shows on that line, and is not counted.
 *
 * @param frozenIds the ids that stood there, the first line first
 */
export function frozenLog(lines: readonly DeskLine[], frozenIds: readonly string[]): { readonly shown: readonly DeskLine[]; readonly newCount: number } {
  const byId = new Map(lines.map((line) => [line.id, line]));
  const frozen = new Set(frozenIds);
  const fresh = [...byId.values()].filter((line) => !frozen.has(line.id) && !(line.kind === 'takenBack' && line.takesBackEntryId !== null && frozen.has(line.takesBackEntryId)));
  return { shown: frozenIds.flatMap((id) => byId.get(id) ?? []), newCount: fresh.length };
}

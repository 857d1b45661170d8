import type { ReadinessLine } from './readiness.ts';

type Grade = ReadinessLine['grade'];

/** Where a line is mended: `{ resource: 'nights', id, tab: 'people' }`. */
export interface Mend {
  readonly resource: string;
  readonly id: string | null;
  readonly tab?: string;
}

export function mustFix(code: string, sentence: string, mend: Mend, gameId: string | null = null): ReadinessLine {
  return lineOf('mustFix', code, sentence, mend, gameId);
}

export function worthKnowing(code: string, sentence: string, mend: Mend, gameId: string | null = null): ReadinessLine {
  return lineOf('worthKnowing', code, sentence, mend, gameId);
}

function lineOf(grade: Grade, code: string, sentence: string, { resource, id, tab = undefined }: Mend, gameId: string | null): ReadinessLine {
  return { code, grade, sentence, resource, id, tab: tab ?? null, gameId };
}

/** "Ana, Bo and 4 more". */
export function someOf(names: readonly string[], most = 6): string {
  const shown = names.slice(0, most);
  const left = names.length - shown.length;
  return left > 0 ? `${shown.join(', ')} and ${left} more` : shown.join(', ');
}

/** The page that mends a line: `/nights/…/show?tab=people`, a form, or the list where nothing is there yet. */
export function addressOf({ resource, id, tab }: Pick<ReadinessLine, 'resource' | 'id' | 'tab'>): string {
  if (id === null) return `/${resource}`;
  if (tab === 'edit') return `/${resource}/${id}`;
  return `/${resource}/${id}/show${tab === null ? '' : `?tab=${tab}`}`;
}

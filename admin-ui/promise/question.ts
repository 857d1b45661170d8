import { only } from '../api/changes.ts';

/** A line as the form holds it. */
export interface AskedLine {
  readKindId?: string | null;
  counting?: string | null;
  reads?: number | null;
  startsOn?: string | null;
  endsOn?: string | null;
  blackout?: { day?: string | null }[] | null;
  [more: string]: unknown;
}

export interface QuestionValues {
  seasonId?: string | null;
  sponsorId?: string | null;
  categoryId?: string | null;
  lines?: AskedLine[] | null;
}

export interface Question {
  seasonId: string;
  sponsorId?: string;
  categoryId?: string;
  lines: Record<string, unknown>[];
}

const LINE = ['readKindId', 'counting', 'reads', 'startsOn', 'endsOn', 'teamIds', 'levels', 'leastPerGame', 'mostPerGame', 'separation', 'windowKinds', 'priority'] as const;

const isWhole = (line: AskedLine): boolean => Boolean(line.readKindId && line.counting && (line.counting === 'onOccurrence' || (line.reads ?? 0) > 0));

function lineOf(line: AskedLine): Record<string, unknown> {
  const sent = Object.fromEntries(Object.entries(only(line, ...LINE)).filter(([, value]) => value !== null && value !== undefined && value !== ''));
  const blackoutDays = (line.blackout ?? []).map((one) => one.day).filter((day): day is string => /^\d{4}-\d{2}-\d{2}$/.test(day ?? ''));
  return { ...sent, ...(line.counting === 'onOccurrence' ? { reads: 0 } : {}), ...(blackoutDays.length > 0 ? { blackoutDays } : {}) };
}

/** What the form asks the server, or null as long as it is not whole. */
export function questionOf({ seasonId, sponsorId, categoryId, lines }: QuestionValues): Question | null {
  const whole = (lines ?? []).filter(isWhole);
  if (!seasonId || whole.length === 0 || whole.length < (lines ?? []).length) return null;
  return { seasonId, ...(sponsorId ? { sponsorId } : {}), ...(categoryId && !sponsorId ? { categoryId } : {}), lines: whole.map(lineOf) };
}

/** What the page of a new offer starts from. */
export function offerOf({ seasonId, sponsorId, lines }: Question): object {
  return { seasonId, ...(sponsorId ? { sponsorId } : {}), readLines: lines };
}

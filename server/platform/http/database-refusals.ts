import { isRefusalCode } from '../../domain/refusals.ts';
import type { RefusalCode } from '../../domain/refusals.ts';

const MALFORMED = new Set(['22P02', '22003', '22007', '22008', '22021', '22001', '23502', '22P05']);
const BUSY = new Set(['40001', '40P01', '55P03', '57014', '53300']);

/** A constraint is named after the refusal it stands for, so the database says no in the same words as the guard. */
export function refusedByDatabase(error: unknown): RefusalCode | null {
  const cause = ((error as { driverError?: unknown })?.driverError ?? error) as {
    code?: string;
    constraint?: string;
    detail?: string;
  };
  if (typeof cause?.code !== 'string') return null;
  if (BUSY.has(cause.code)) return 'busy';
  if (MALFORMED.has(cause.code)) return 'malformed';
  if (cause.code === '23503' && /is still referenced/.test(cause.detail ?? '')) return 'still-in-use';
  if (!/^(23|P0001)/.test(cause.code)) return null;
  if (cause.constraint && isRefusalCode(cause.constraint)) return cause.constraint;
  if (cause.code === '23503') return 'unknown-reference';
  return cause.code === '23505' ? 'already-there' : cause.code.startsWith('23') ? 'malformed' : null;
}

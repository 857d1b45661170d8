import type { RaRecord } from 'react-admin';
import type { Package } from './types.ts';

interface LineForm {
  what?: 'read' | 'benefit';
  readKindId?: string | null;
  counting?: string | null;
  benefitName?: string | null;
  quantity?: number | null;
  rateCents?: number | null;
  leastPerGame?: number | null;
  mostPerGame?: number | null;
}

/** A line is a read or another benefit; what the other one would need is left out. */
export function fromForm({ seasonId, name, priceCents, isOffered, note, lines, ...record }: RaRecord): Record<string, unknown> {
  return { id: record.id, version: record['version'], seasonId, name, priceCents, isOffered, note, lines: ((lines ?? []) as LineForm[]).map(lineOf) };
}

function lineOf({ what, readKindId, counting, benefitName, quantity, rateCents, leastPerGame, mostPerGame }: LineForm) {
  if (what === 'benefit') return { benefitName, quantity: quantity ?? 1, rateCents };
  return { readKindId, counting: counting ?? 'perTerm', quantity: quantity ?? (counting === 'onOccurrence' ? 0 : 1), rateCents, leastPerGame, mostPerGame };
}

export const toForm = (one: Package): object => ({ ...one, lines: one.lines.map((line) => ({ ...line, what: line.readKindId ? 'read' : 'benefit' })) });

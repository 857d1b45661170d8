import type { NightTidy } from './tidy.ts';

/** What a night leaves owed on one commitment, as a proposal. Nothing is posted: the reads are owed already. */
export interface ProposedShortfall {
  readonly commitmentId: string;
  readonly contractId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  /** reads */
  readonly missed: number;
  /** each reason once, in words */
  readonly why: string;
  readonly sentence: string;
}

export interface CommitmentOwed {
  readonly contractId: string;
  readonly sponsorName: string;
  readonly readKindName: string;
  /** reads that are owed once this night is counted; null where nobody knows before sign-off */
  readonly stillOwed: number | null;
}

/**
 * The reads a night was to give and did not, by commitment: planned and not read, cut short and not counted, a mention
 * that never came. Never more than the commitment still owes, so that a read given elsewhere is not missed here. A read
 * not given posts nothing (LEDGER.md, happening 14); what follows from a shortfall is agreed with the sponsor.
 */
export function shortfallsOf(tidy: Pick<NightTidy, 'leftOver' | 'held'>, commitments: ReadonlyMap<string, CommitmentOwed>): ProposedShortfall[] {
  const missed = [
    ...tidy.leftOver.map(({ commitmentId, why }) => ({ commitmentId, why: why ?? 'not read' })),
    ...tidy.held.map(({ commitmentId, why }) => ({ commitmentId, why: `mention ${why}` })),
  ];
  const ids = [...new Set(missed.map((one) => one.commitmentId))];
  return ids.flatMap((commitmentId) => {
    const owed = commitments.get(commitmentId);
    const of = missed.filter((one) => one.commitmentId === commitmentId);
    const count = Math.min(of.length, owed?.stillOwed ?? of.length);
    if (!owed || count <= 0) return [];
    const why = [...new Set(of.map((one) => one.why))].join('; ');
    const { contractId, sponsorName, readKindName } = owed;
    const sentence = `${sponsorName}, ${readKindName}: ${count === 1 ? '1 read' : `${count} reads`} missed (${why}). ${count === 1 ? 'It stays' : 'They stay'} owed.`;
    return [{ commitmentId, contractId, sponsorName, readKindName, missed: count, why, sentence }];
  });
}

/** Reads that were planned in a kind of window on nights signed off, and how many of them were given. */
export interface WindowRecord {
  readonly planned: number;
  readonly given: number;
}

export const NOTHING_KNOWN: WindowRecord = { planned: 0, given: 0 };

/** What is believed before anything is known: nine in ten, as much as five reads would tell. Common practice, no source. */
const BELIEVED = { given: 4.5, missed: 0.5 };

/**
 * The chance that a read planned in such a window is given: the mean of a Beta(4.5, 0.5) belief with what was seen.
 *
 * @source Gelman et al., Bayesian Data Analysis, 3rd edition, section 2.4, from memory
 */
export function chanceOfRead({ planned, given }: WindowRecord): number {
  return (BELIEVED.given + given) / (BELIEVED.given + BELIEVED.missed + planned);
}

export function sumOfRecords(records: readonly WindowRecord[]): WindowRecord {
  return records.reduce((sum, one) => ({ planned: sum.planned + one.planned, given: sum.given + one.given }), NOTHING_KNOWN);
}

import type { Application } from './types.ts';

/** A sentence for each closed contract that is open again once these are taken back. */
export function opensAgain(applications: readonly Application[]): string {
  const contracts = new Set(applications.flatMap((one) => (one.takenBack || one.closedContract === null ? [] : [one.closedContract])));
  return [...contracts].map((contract) => ` Contract ${contract} is closed and will be open again.`).join('');
}

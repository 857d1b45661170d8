/** What a seller of record numbers apart. */
export type DocumentKind = 'invoice' | 'creditMemo' | 'receipt';

/**
 * The printed number of a document, without gap per seller, kind and fiscal year: `INV-2027-0001`.
 *
 * @param seriesNumber 1, 2, 3 …; more than four digits are printed as they are
 */
export function documentNumber(prefix: string, fiscalYear: number, seriesNumber: number): string {
  return `${prefix}-${fiscalYear}-${String(seriesNumber).padStart(4, '0')}`;
}

/** The next number of a series; numbers of voided documents stay taken. */
export function nextSeriesNumber(taken: readonly number[]): number {
  return taken.reduce((highest, number) => Math.max(highest, number), 0) + 1;
}

/** Numbers that are missing between 1 and the highest; a clean series has none. */
export function gapsIn(taken: readonly number[]): number[] {
  const present = new Set(taken);
  return Array.from({ length: nextSeriesNumber(taken) - 1 }, (_, place) => place + 1).filter((number) => !present.has(number));
}

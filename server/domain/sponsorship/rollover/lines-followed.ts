/** How a contract follows another: as its next agreed year, or as a renewal that is agreed anew. */
export type FollowsAs = 'year' | 'renewal';

export interface LineInItsPlace {
  readonly id: string;
  readonly readKindId: string;
  /** its place among the commitments of its contract, from 1 */
  readonly place: number;
}

export interface LineFollowed {
  readonly lineId: string;
  /** null where the contract that follows has no such line */
  readonly nextLineId: string | null;
}

/**
 * Which line of the contract that follows stands for each line of the one before: of the same read kind at the same place,
 * else the one line of that kind that no other line has by its place.
 */
export function linesFollowed(before: readonly LineInItsPlace[], after: readonly LineInItsPlace[]): LineFollowed[] {
  const inPlace = (line: LineInItsPlace) => after.find((one) => one.place === line.place && one.readKindId === line.readKindId);
  const taken = new Set(before.flatMap((line) => inPlace(line)?.id ?? []));
  const left = before.filter((line) => !inPlace(line));
  return before.map((line) => {
    const same = inPlace(line);
    if (same) return { lineId: line.id, nextLineId: same.id };
    const open = after.filter((one) => one.readKindId === line.readKindId && !taken.has(one.id));
    const isAlone = open.length === 1 && left.filter((one) => one.readKindId === line.readKindId).length === 1;
    return { lineId: line.id, nextLineId: isAlone ? open[0]!.id : null };
  });
}

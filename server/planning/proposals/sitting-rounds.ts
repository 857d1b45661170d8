/** A row that gets another place. */
export interface SittingRead {
  readonly id: string;
  readonly gameId: string;
  readonly windowKey: string;
  readonly place: number;
}

/** Who stands up first, and who then sits down where it is free. */
export interface SittingRound<Read extends SittingRead> {
  readonly stands: readonly string[];
  readonly sits: readonly Read[];
}

const spotOf = (read: SittingRead): string => `${read.gameId} ${read.windowKey} ${read.place}`;

/**
 * The order in which rows can take their new places when no two may ever have the same one: in each round those whose place is
 * free by then. Where all wait for each other in a circle, one of them stands up.
 *
 * @param seated where all rows are before
 */
export function sittingRounds<Read extends SittingRead>(seated: readonly SittingRead[], moving: readonly Read[]): SittingRound<Read>[] {
  const taken = new Map(seated.map((read) => [spotOf(read), read.id]));
  const at = new Map(seated.map((read) => [read.id, spotOf(read)]));
  const rounds: SittingRound<Read>[] = [];
  let waiting = [...moving];
  while (waiting.length > 0) {
    const isFree = (read: Read): boolean => !taken.has(spotOf(read)) || taken.get(spotOf(read)) === read.id;
    const stands: string[] = [];
    if (!waiting.some(isFree)) {
      const [first] = waiting;
      stands.push(first!.id);
      taken.delete(at.get(first!.id)!);
    }
    const sits = waiting.filter(isFree);
    for (const read of sits) if (taken.get(at.get(read.id)!) === read.id) taken.delete(at.get(read.id)!);
    for (const read of sits) taken.set(spotOf(read), read.id);
    const seats = new Set(sits.map((read) => read.id));
    waiting = waiting.filter((read) => !seats.has(read.id));
    rounds.push({ stands, sits });
  }
  return rounds;
}

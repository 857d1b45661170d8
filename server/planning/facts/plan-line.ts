import type { Day } from '../../domain/day.ts';
import type { KindToPlan, PromiseToPlan } from '../../domain/planning/facts/promise-to-plan.ts';
import type { CommitmentDto } from '../../sponsorship/contract-line.dto.ts';

type ReadPart = Pick<
  CommitmentDto,
  'readKindId' | 'counting' | 'reads' | 'teamIds' | 'levels' | 'leastPerGame' | 'mostPerGame' | 'separation' | 'windowKinds' | 'blackoutDays' | 'pinnedGameIds' | 'priority'
>;

/** Reads that would be promised, as a line of an offer or of a contract names them. */
export interface PlanLine extends ReadPart {
  id: string;
  /** null where nobody is named yet */
  sponsorId: string | null;
  sponsorName?: string;
  categoryId: string | null;
  startsOn: string;
  endsOn: string;
  /** the offer's id; the line's own where it is of no offer */
  dealId?: string;
}

/** A sponsor who is not named yet: one and the same for all lines of a question. */
const NOBODY_YET = 'not-named-yet';

/** All its reads are still to come: of the term, or of each game or night. */
export function promiseOfLine(line: PlanLine, kind: KindToPlan): PromiseToPlan {
  const reads = line.reads ?? 0;
  return {
    ...kind,
    id: line.id,
    source: 'offer',
    dealId: line.dealId ?? line.id,
    sponsorId: line.sponsorId ?? NOBODY_YET,
    sponsorName: line.sponsorName ?? 'This offer',
    categoryId: line.categoryId ?? NOBODY_YET,
    counting: line.counting,
    reads,
    startsOn: line.startsOn as Day,
    endsOn: line.endsOn as Day,
    teamIds: line.teamIds ?? [],
    levels: line.levels ?? [],
    windowKinds: line.windowKinds ?? [],
    blackoutDays: (line.blackoutDays ?? []) as Day[],
    leastPerGame: line.leastPerGame ?? null,
    mostPerGame: line.mostPerGame ?? null,
    pinnedGameIds: line.pinnedGameIds ?? [],
    priority: line.priority ?? 2,
    separation: line.separation ?? 'window',
    owed: () => reads,
  };
}

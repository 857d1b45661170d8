import { changeBehind } from '../../domain/planning/board/change.ts';
import { isOfCompany } from '../../domain/planning/plan-fault.ts';
import type { PlanFault, PlanFaultCode } from '../../domain/planning/plan-fault.ts';
import type { PlanRead, PlanSeason } from '../../domain/planning/season.ts';
import { faultInWords } from '../../domain/planning/words/fault.ts';
import { namesOf } from '../../domain/planning/words/names.ts';
import { refuse } from '../../domain/refusals.ts';
import type { RefusalCode, RefusalDetails } from '../../domain/refusals.ts';

/** The refusal of each wall; wishes are told on the board and refuse nothing. */
const REFUSAL_OF: Partial<Record<PlanFaultCode, RefusalCode>> = {
  'unknown-promise': 'unknown-commitment',
  'unknown-game': 'placement-game-not-open',
  'unknown-window': 'unknown-window',
  'place-taken-twice': 'placement-place-taken',
  'window-full': 'window-full',
  'group-full': 'place-group-full',
  'window-not-of-kind': 'window-not-of-the-kind',
  'game-not-of-slot': 'placement-game-not-covered',
  'more-than-slot': 'placement-more-than-owed',
  'sponsors-per-game': 'read-kind-full',
  'most-per-game': 'placement-most-per-game',
  'fixed-read-gone': 'night-locked',
  'locked-night-touched': 'night-locked',
  'competitors-in-window': 'competitors-too-close',
  'competitors-next-to-each-other': 'competitors-too-close',
  'competitors-in-game': 'competitors-too-close',
};

/** What stands in the way of one change of a list. */
export interface InTheWay {
  readonly index: number;
  readonly code: RefusalCode;
  readonly details: RefusalDetails;
  readonly sentence: string;
}

/** The walls that changes would break, each laid to the change it comes from. */
export function inTheWay(faults: readonly PlanFault[], spots: readonly (PlanRead | null)[], season: PlanSeason): InTheWay[] {
  const names = namesOf(season);
  return faults.flatMap((fault) => {
    const code = fault.severity === 'wall' ? REFUSAL_OF[fault.code] : undefined;
    if (code === undefined) return [];
    const sentence = faultInWords(fault, names);
    const details: RefusalDetails = { what: sentence, places: fault.limit ?? 0, most: fault.limit ?? 0, readKind: names.readKind(fault.promiseId) };
    return [{ index: changeBehind(fault, spots), code, details, sentence }];
  });
}

/** Walls first; competitors only where nobody says why they may stand there. */
export function withoutCompany(faults: readonly PlanFault[], overrideReason: string | null | undefined): PlanFault[] {
  return overrideReason ? faults.filter((fault) => !isOfCompany(fault)) : [...faults];
}

/**
 * One change is refused with its own code; of several, each refused one is named with its place in the list.
 *
 * @throws Refused the code of the wall, or `board-changes-refused`
 */
export function refuseChanges(ways: readonly InTheWay[], changes: number): void {
  const [first] = ways;
  if (first === undefined) return;
  const errors = { changes: Object.fromEntries(ways.toReversed().map((way) => [String(way.index), way.sentence])) };
  if (changes === 1) refuse(first.code, first.details, errors);
  const isCompanyAlone = ways.every((way) => way.code === 'competitors-too-close');
  if (isCompanyAlone) refuse('competitors-too-close', first.details, errors);
  refuse('board-changes-refused', { refused: Object.keys(errors.changes).length, changes }, errors);
}

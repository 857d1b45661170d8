import { refuse, sentenceOfRefusal } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import type { PlanLine } from '../facts/plan-line.ts';
import type { AskedLineDto } from './promise-check.dto.ts';

/** Whose reads are asked about, and over which days where a line does not say. */
export interface AskedDeal {
  readonly sponsorId: string | null;
  readonly categoryId: string | null;
  readonly startsOn: string;
  readonly endsOn: string;
  /** the offer or contract they stand in */
  readonly dealId?: string;
}

/**
 * Lines as the season's facts take them; each has an id from here on.
 *
 * @throws Refused `least-above-most`, `ends-before-it-starts`, at the field of the form
 */
export function planLines(lines: readonly AskedLineDto[], deal: AskedDeal): PlanLine[] {
  return lines.map((line, place): PlanLine => {
    const { leastPerGame, mostPerGame } = line;
    if (leastPerGame != null && mostPerGame != null && leastPerGame > mostPerGame) {
      refuse('least-above-most', {}, { lines: { [place]: { leastPerGame: sentenceOfRefusal('least-above-most') } } });
    }
    const [startsOn, endsOn] = [line.startsOn ?? deal.startsOn, line.endsOn ?? deal.endsOn];
    if (endsOn < startsOn) refuse('ends-before-it-starts', {}, { lines: { [place]: { endsOn: sentenceOfRefusal('ends-before-it-starts') } } });
    return { ...line, ...deal, id: line.id ?? newId(), startsOn, endsOn };
  });
}

import type { Cents } from '../../domain/money.ts';

/** How many more mentions of a commitment are likely. Expected, never planned: nobody knows when a shot falls. */
export interface ForecastView {
  commitmentId: string;
  contractId: string;
  sponsorName: string;
  readKindName: string;
  /** counted so far, in so many games that are signed off */
  counted: number;
  gamesCounted: number;
  /** games that are not signed off yet */
  gamesLeft: number;
  /** more that are expected, to a tenth */
  expected: number;
  /** more, in nine of ten seasons like this between these, both included; half of them lie at or below the middle */
  low: number;
  middle: number;
  high: number;
  readsAtLeast: number | null;
  readsAtMost: number | null;
  /** that the least is reached by what happens, between 0 and 1; null where no least was promised */
  chanceOfLeast: number | null;
  /** that more happen than are paid for, between 0 and 1; null where there is no most */
  chanceOfMost: number | null;
  /** price of all reads of the commitment if as many more fall as all but one in twenty seasons stay below; null where the price is fixed */
  likelyMostCents: Cents | null;
  /** games of earlier seasons that the forecast leans on; 0 where it leans on a general assumption */
  earlierGames: number;
}

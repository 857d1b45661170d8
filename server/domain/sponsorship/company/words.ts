import { dayInWords } from '../../day.ts';
import type { Day } from '../../day.ts';
import type { WindowKind } from '../../season/sport-rules.ts';
import type { Obstacle } from './in-the-way.ts';
import type { RightTerms } from './rights.ts';

const WINDOWS: Readonly<Record<WindowKind, string>> = {
  pregame: 'before the game', betweenPeriods: 'between periods', timeOut: 'in time-outs', halftime: 'at halftime', postgame: 'after the game', deadBall: 'at dead balls',
};

/** "Bank or credit union at Tamarack Ridge High School, at halftime and in time-outs" */
export function rightInWords(right: Pick<RightTerms, 'categoryName' | 'schoolName' | 'reach' | 'gameIds' | 'windowKinds'>): string {
  const school = right.schoolName === null ? '' : ` at ${right.schoolName}`;
  const games = right.gameIds.length === 1 ? 'one named game' : `${right.gameIds.length} named games`;
  const within = right.reach === 'season' ? '' : right.reach === 'game' ? `, in ${games}` : `, ${right.windowKinds.map((kind) => WINDOWS[kind]).join(' and ')}`;
  return `${right.categoryName}${school}${within}`;
}

/** With its year: a right may run past the season in which it is in the way. */
const through = (endsOn: Day | null): string => (endsOn === null ? '' : ` through ${dayInWords(endsOn)}, ${endsOn.slice(0, 4)}`);

/** What is in the way, in one sentence without its period; it names the deal. */
export function obstacleInWords(obstacle: Obstacle): string {
  switch (obstacle.because) {
    case 'exclusive': {
      const { right } = obstacle;
      return `${right.sponsorName} has the exclusive right to ${rightInWords(right)}${through(right.endsOn)} (${right.dealName})`;
    }
    case 'reserved': {
      const { categoryName, schoolName, heldBy, endsOn } = obstacle.reserved;
      return `${categoryName}${schoolName === null ? '' : ` at ${schoolName}`} is reserved${through(endsOn)}: held by ${heldBy}`;
    }
    case 'dealThere': {
      const { deal, right } = obstacle;
      if (deal.isOffered) return `${deal.sponsorName} was offered to be a sponsor of ${right.categoryName},${through(deal.endsOn)} (${deal.dealName}), so nobody else can be promised to be the only one`;
      return `${deal.sponsorName} is a sponsor of ${right.categoryName} already,${through(deal.endsOn)} (${deal.dealName}), so nobody else can be the only one`;
    }
    case 'blocked':
      return `The department does not take sponsors of the category ${obstacle.categoryName}`;
  }
}

import type { Day } from '../server/domain/day.ts';
import { addDays, weekdayOf } from '../server/domain/day.ts';

const TUESDAY = 2;
const FRIDAY = 5;

/** The Tuesdays and Fridays around the day of telling, so that the demo is in mid-season on any day of any year. */
export class Calendar {
  constructor(readonly today: Day) {}

  /**
   * A game day counted from today: -1 is the last Tuesday or Friday that has passed, 1 the next one, which may be today.
   *
   * @throws RangeError for 0, which is no game day
   */
  gameDay(place: number): Day {
    if (place === 0) throw new RangeError('game days are counted from 1 forward and from -1 back');
    const step = Math.sign(place);
    let day = step > 0 ? this.today : addDays(this.today, -1);
    for (let found = 0; ; day = addDays(day, step)) {
      if (weekdayOf(day) !== TUESDAY && weekdayOf(day) !== FRIDAY) continue;
      found += step;
      if (found === place) return day;
    }
  }

  /** A day so many days before a game day. */
  before(place: number, days: number): Day {
    return addDays(this.gameDay(place), -days);
  }

  /** A day so many days after a game day, never later than today. */
  after(place: number, days: number): Day {
    const day = addDays(this.gameDay(place), days);
    return day > this.today ? this.today : day;
  }

  get seasonStartsOn(): Day {
    return this.before(-12, 10);
  }

  get seasonEndsOn(): Day {
    return addDays(this.gameDay(12), 7);
  }
}

import { dayText } from '../../format/day.ts';
import { count, numberText } from '../../words/count.ts';
import { chanceText } from '../forecast/forecast-words.ts';
import type { Fulfillment, LineForecast, LineFulfillment, NightFulfillment, ReadGiven } from './types.ts';

const WHAT: Readonly<Record<ReadGiven['what'], string>> = {
  given: 'Read',
  extra: 'Read, extra',
  makegood: 'Read instead of one that was missed',
  logged: 'Read, not signed off yet',
  notRead: 'Not read',
  cutShort: 'Cut short, not counted',
  takenBack: 'Taken back',
};

/** What became of a read: "Not read: no time". */
export function whatText({ what, why, forMissedOn }: ReadGiven): string {
  const words = what === 'makegood' && forMissedOn !== null ? `Read instead of one missed on ${dayText(forMissedOn)}` : WHAT[what];
  return why === null ? words : `${words}: ${why}`;
}

export function copyText({ copyTitle, copyVersionNumber }: ReadGiven): string {
  return copyTitle === null ? '–' : `${copyTitle}, version ${copyVersionNumber}`;
}

const HOW: Readonly<Record<NonNullable<NightFulfillment['attendanceHow']>, string>> = { tickets: 'by tickets', counted: 'counted', estimated: 'estimated', signOff: 'as signed off' };

export function attendanceText({ attendance, attendanceHow }: NightFulfillment): string {
  if (attendance === null) return 'not recorded';
  return attendanceHow === null ? numberText(attendance) : `${numberText(attendance)}, ${HOW[attendanceHow]}`;
}

export function gamesText({ games }: NightFulfillment): string {
  return games.length === 0 ? 'No game of this contract' : games.map((game) => (game.status === 'cancelled' || game.status === 'postponed' ? `${game.label} (${game.status})` : game.label)).join('; ');
}

/** How a line stands, in one sentence. */
export function standText({ standing, counting, gamesInAll, gamesPlayed }: LineFulfillment): string {
  const { promised, given, madeGood, credited, released, carried, owed, expectedByNow, behind } = standing;
  const isByShots = counting === 'onOccurrence';
  if (isByShots && promised === 0) return `${gamesPlayed === 0 ? 'No game has been played yet' : `Nothing that is mentioned happened in ${count(gamesPlayed, 'game')}`}, so nothing is owed.`;
  const others: [number, string][] = [[madeGood, 'made good'], [credited, 'credited'], [released, 'released'], [carried, 'carried over'], [owed, 'still owed']];
  const settled = [`${numberText(given)} given`, ...others.filter(([reads]) => reads > 0).map(([reads, how]) => `${numberText(reads)} ${how}`)].join(', ');
  const played = `${numberText(gamesPlayed)} of ${count(gamesInAll, 'game')} played`;
  const pace = isByShots ? `by what happened, ${numberText(expectedByNow)} should have been given by now` : `${numberText(expectedByNow)} should have been given by now`;
  const late = behind > 0 ? `, so it is behind by ${numberText(behind)}` : '';
  return `${capital(count(promised, 'read'))} promised: ${settled}.${gamesPlayed === 0 ? '' : ` ${capital(played)}; ${pace}${late}.`}`;
}

const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;

/** The last point of a pace in words. */
export function paceText({ on, expected, given }: LineFulfillment['pace'][number]): string {
  return `By ${dayText(on, 'weekday')}: ${numberText(given)} given, where ${numberText(expected)} should have been.`;
}

/** The forecast in sentences, the chance first. */
export function forecastText({ chanceAllGiven, expectedFinal, low, high }: LineForecast, owed: number): string {
  if (owed === 0 && chanceAllGiven === 1) return `Likely to end at ${numberText(expectedFinal)} given.`;
  const range = low === high ? numberText(low) : `${numberText(low)} to ${numberText(high)}`;
  const chance = chanceAllGiven === null ? '' : `The chance that everything still owed is given is ${chanceText(chanceAllGiven)}. `;
  return `${chance}About ${numberText(expectedFinal)} will have been given at the end (${range} in nine of ten seasons like this).`;
}

export function chanceOfContract({ chanceAllGiven, sum }: Fulfillment): string {
  if (sum.owed === 0 && chanceAllGiven === 1) return 'nothing is owed';
  return chanceAllGiven === null ? 'nobody can say' : chanceText(chanceAllGiven);
}

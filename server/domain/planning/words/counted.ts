import { dayInWords } from '../../day.ts';

export { dayInWords } from '../../day.ts';
import type { Day } from '../../day.ts';
import type { WindowKind } from '../../season/sport-rules.ts';

const SMALL = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'];

/** Windows by their kind, with the verb that follows them. */
const WINDOWS: Readonly<Record<WindowKind, string>> = {
  pregame: 'pregame',
  betweenPeriods: 'the breaks between periods',
  timeOut: 'the time-outs',
  halftime: 'halftime',
  postgame: 'the time after the game',
  deadBall: 'the dead balls',
};

/** A whole number from 0 in a sentence: words up to twelve, "no" for none, then digits with commas. */
export function numberInWords(count: number): string {
  return SMALL[count] ?? String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}

/** "One read", "three reads", "13 reads", "no reads": the number in words and the real plural. */
export function countedInWords(count: number, one: string, several = `${one}s`): string {
  return `${numberInWords(count)} ${count === 1 ? one : several}`;
}

/** "A", "A and B", "A, B and C". */
export function listInWords(names: readonly string[]): string {
  return names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** Kinds of windows in the order given: "halftime and the time-outs". */
export function windowsInWords(kinds: readonly WindowKind[]): string {
  return listInWords(kinds.map((kind) => WINDOWS[kind]));
}

/** Whether the windows named take "are". */
export function areSeveral(kinds: readonly WindowKind[]): boolean {
  return kinds.length > 1 || ['betweenPeriods', 'timeOut', 'deadBall'].includes(kinds[0] ?? '');
}

export interface NamedGame {
  readonly label: string;
  readonly playedOn: Day;
}

/** "Herons at Kestrels on Jan 9", "the two games on Jan 9", "the seven games from Jan 9 to Feb 6"; games in the order of play. */
export function gamesInWords(games: readonly NamedGame[]): string {
  const [first] = games;
  const last = games.at(-1);
  if (first === undefined || last === undefined) return 'no game';
  if (games.length === 1) return `${first.label} on ${dayInWords(first.playedOn)}`;
  if (first.playedOn === last.playedOn) return `the ${numberInWords(games.length)} games on ${dayInWords(first.playedOn)}`;
  return `the ${numberInWords(games.length)} games from ${dayInWords(first.playedOn)} to ${dayInWords(last.playedOn)}`;
}

/** The first letter large, the rest as it is. */
export function asSentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

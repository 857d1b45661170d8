/** Where and when a line of an offer is read. Days are `YYYY-MM-DD`. */
export interface OfferedWhere {
  readonly teams: readonly string[];
  readonly levels: readonly string[];
  /** kinds of windows, where only some are meant */
  readonly windows: readonly string[];
  readonly startsOn: string | null;
  readonly endsOn: string | null;
  readonly blackoutDays: readonly string[];
  readonly pinned: readonly { readonly playedOn: string; readonly label: string }[];
  readonly leastPerGame: number | null;
  readonly mostPerGame: number | null;
  readonly dueOn: string | null;
}

const LEVELS: Readonly<Record<string, string>> = { varsity: 'varsity', juniorVarsity: 'junior varsity', sophomore: 'sophomore', freshman: 'freshman', middleSchool: 'middle school' };
const WINDOWS: Readonly<Record<string, string>> = { pregame: 'before the game', betweenPeriods: 'between periods', timeOut: 'in time-outs', halftime: 'at halftime', postgame: 'after the game', deadBall: 'while the ball is dead' };

/** In short pieces, each of which can stand alone; nothing where the line says nothing of its own. */
export function whereAndWhen(where: OfferedWhere, day: (on: string) => string): string[] {
  const { teams, levels, windows, startsOn, endsOn, blackoutDays, pinned, leastPerGame, mostPerGame, dueOn } = where;
  return [
    teams.length === 0 ? '' : `games of ${listed(teams)}`,
    levels.length === 0 ? '' : `${listed(levels.map((level) => LEVELS[level] ?? level))} games only`,
    windows.length === 0 ? '' : windowWords(windows),
    startsOn && endsOn ? `${day(startsOn)} to ${day(endsOn)}` : startsOn ? `from ${day(startsOn)} on` : endsOn ? `until ${day(endsOn)}` : '',
    blackoutDays.length === 0 ? '' : `not on ${listed(blackoutDays.map(day))}`,
    pinned.length === 0 ? '' : `for sure on ${listed(pinned.map(({ playedOn, label }) => `${day(playedOn)} (${label})`))}`,
    leastPerGame ? `at least ${leastPerGame} in a game` : '',
    mostPerGame === null ? '' : `at most ${mostPerGame} in a game`,
    dueOn === null ? '' : `by ${day(dueOn)}`,
  ].filter((piece) => piece !== '');
}

/** "at halftime and in time-outs" */
export function windowWords(kinds: readonly string[]): string {
  return listed(kinds.map((kind) => WINDOWS[kind] ?? kind));
}

function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`;
}

import type { Moment } from './script.ts';

/** One name a script may use in `{{ … }}`. */
export interface ScriptVariable {
  readonly name: string;
  /** What it stands for, for the list beside the editor. */
  readonly sentence: string;
  readonly example: string | number | Readonly<Record<string, string | boolean>>;
  /** Nothing stands in it on some nights: a script asks first, `{% if singer %}…{% endif %}`. */
  readonly mayBeEmpty: boolean;
}

const NEXT = { opponentName: 'Quarry Bend', isHome: true, level: 'varsity', dayText: 'Friday, December 11', clockText: '7:00 PM', placeName: 'Alder Fieldhouse' } as const;

const always = <Name extends string>(name: Name, example: ScriptVariable['example'], sentence: string) => ({ name, example, sentence, mayBeEmpty: false }) as const;
const sometimes = <Name extends string>(name: Name, example: ScriptVariable['example'], sentence: string) => ({ name, example, sentence, mayBeEmpty: true }) as const;

/**
 * Every name a script may use, with an example. The editor's list, the check of a script while it is
 * written and the packet itself go by this one table.
 */
export const SCRIPT_VARIABLES = [
  always('department', 'Tamarack Ridge Athletics', 'The athletic department.'),
  always('day', 'Friday, December 4, 2026', 'The day of the night, in words.'),
  always('greeting', 'Good evening', '“Good morning”, “Good afternoon” before five, “Good evening” after, by the start of the first game.'),
  always('tonight', 'tonight', '“tonight”, or “today” where the first game begins before five.'),
  always('venue', 'Alder Fieldhouse', 'The place the games are in.'),
  sometimes('floor', 'the Perch', 'The name of the floor or field inside the venue.'),
  always('sport', 'basketball', 'The sport of the game.'),
  always('playingArea', 'floor', 'What is played on: floor, court, field, mat or diamond.'),
  always('period', 'quarter', 'What a period is called: quarter, half, set, inning or period.'),
  sometimes('halftimeMinutes', 10, 'The minutes of halftime, in sports that have one.'),
  always('gameCount', 2, 'How many games the night has.'),
  always('level', 'varsity', 'The level of the game.'),
  always('starts', '7:00 PM', 'When the game begins.'),
  sometimes('laterGame', 'Herons at Kestrels, varsity', 'The game after this one on the same night.'),
  always('homeSchool', 'Tamarack Ridge High School', 'The home school.'),
  always('homeShortName', 'Tamarack Ridge', 'The home school, in short.'),
  always('homeNickname', 'Kestrels', 'The home team’s nickname.'),
  sometimes('homeHeadCoach', 'Ngozi Okonkwo', 'The head coach of the home team.'),
  always('visitorSchool', 'Port Ansel High School', 'The visiting school.'),
  always('visitorShortName', 'Port Ansel', 'The visiting school, in short.'),
  always('visitorNickname', 'Herons', 'The visiting team’s nickname.'),
  sometimes('visitorHeadCoach', 'Delphine Arkwright', 'The head coach of the visitors.'),
  sometimes('announcer', 'Casimir Thornquist', 'Who announces, of the people of the night.'),
  sometimes('singer', 'Xochitl Barros', 'Who sings the anthem, of the people of the night.'),
  sometimes('colourGuard', 'the Tamarack Ridge color guard', 'Who presents the colors, of the people of the night.'),
  sometimes('officials', 'Roland Petrakis, Judith Amsel and Delia Marchbanks', 'The officials, of the people of the night.'),
  sometimes('presenter', 'Siobhán Pike', 'Who hands over the game ball, of the people of the night.'),
  sometimes('honouree', 'Łukasz Halvorsen', 'Who is honored, of the people of the night.'),
  sometimes('honoursTitle', 'Senior night', 'The title of the honors list, where its opening is read.'),
  sometimes('honoursCount', 14, 'How many are on the honors list.'),
  sometimes('sponsor', 'Juniper & Pike Hardware', 'The sponsor, where something is presented.'),
  sometimes('presents', 'game ball', 'What the sponsor presents.'),
  sometimes('copy', 'Juniper & Pike Hardware, forty Alder Street.', 'The sponsor’s approved words, where something is presented.'),
  sometimes('nextGame', NEXT, 'The next game: nextGame.opponentName, .dayText, .clockText, .isHome, .placeName, .level.'),
  sometimes('nextHomeGame', NEXT, 'The next game at home, with the same parts.'),
  sometimes('exitsText', 'There are four exits: two at the lobby end, and one in each far corner.', 'The exits of the venue, in its own words.'),
  sometimes('defibrillatorPlace', 'in the lobby, left of the ticket window', 'Where the defibrillator hangs.'),
  sometimes('evacuationText', 'Please leave the building now by the nearest exit.', 'The venue’s own words for leaving the building.'),
  sometimes('weatherText', 'The weather outside is not safe. Please stay indoors.', 'The venue’s own words for bad weather.'),
  sometimes('injuryText', '[[say nothing while a player is down]]', 'The venue’s own words or direction when somebody is hurt.'),
  sometimes('threatText', 'Please listen to the staff near you.', 'The district’s own words for a threat.'),
] as const satisfies readonly ScriptVariable[];

export type VariableName = (typeof SCRIPT_VARIABLES)[number]['name'];

/** Every variable with its example, as a script is tried while it is written. */
export const EXAMPLE_VARIABLES: Readonly<Record<VariableName, unknown>> = Object.fromEntries(
  SCRIPT_VARIABLES.map((variable) => [variable.name, variable.example]),
) as Record<VariableName, unknown>;

/** The same with nothing in what may be empty: the night nobody sings and no next game is set. */
export const EMPTIEST_VARIABLES: Readonly<Record<VariableName, unknown>> = Object.fromEntries(
  SCRIPT_VARIABLES.map((variable) => [variable.name, variable.mayBeEmpty ? null : variable.example]),
) as Record<VariableName, unknown>;

const THERE_IN: Readonly<Partial<Record<VariableName, Moment>>> = { sponsor: 'sponsorPresentation', presents: 'sponsorPresentation', copy: 'sponsorPresentation', honoursTitle: 'honours', honoursCount: 'honours' };

/** Whether something always stands in a variable where a script of this moment is read. */
export function isAlwaysThere(name: VariableName, moment: Moment | null): boolean {
  return moment !== null && THERE_IN[name] === moment;
}

export const NEXT_GAME_PARTS: readonly string[] = Object.keys(NEXT);

const PLAYING_AREAS: Readonly<Record<string, string>> = {
  basketball: 'floor', volleyball: 'court', football: 'field', soccer: 'field', wrestling: 'mat', baseball: 'diamond', softball: 'diamond',
};

/** What a sport is played on, in the word a crowd knows; a sport not in the table is played on a field. */
export function playingAreaOf(sport: string): string {
  return PLAYING_AREAS[sport] ?? 'field';
}

/** "Good afternoon" and "today" before five; an unknown start is an evening's. @param startsText such as "7:00 PM" */
export function greetingAt(startsText: string): { readonly greeting: string; readonly tonight: string } {
  const clock = /\b(\d{1,2}):(\d{2}) ([AP])M\b/.exec(startsText);
  const hour = clock ? (Number(clock[1]) % 12) + (clock[3] === 'P' ? 12 : 0) : 19;
  const greeting = hour < 12 ? 'Good morning' : hour < 17 ? 'Good afternoon' : 'Good evening';
  return { greeting, tonight: hour < 17 ? 'today' : 'tonight' };
}

/** "A", "A and B", "A, B and C"; null for nobody. */
export function namesInARow(names: readonly string[]): string | null {
  if (names.length < 2) return names[0] ?? null;
  return `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

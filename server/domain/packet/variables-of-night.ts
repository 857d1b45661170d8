import { profileAt } from './game-windows.ts';
import type { GameForPacket, NightForPacket } from './night-for-packet.ts';
import { greetingAt, namesInARow, playingAreaOf } from './script-variables.ts';
import type { VariableName } from './script-variables.ts';

export type Variables = Readonly<Record<string, unknown>>;

function namesIn(night: NightForPacket, role: string): string | null {
  return namesInARow(night.people.filter((person) => person.role === role).map((person) => person.name));
}

/** What a script may speak of. Every name is always there, so that a misspelt one is an error. */
export function variablesOf(night: NightForPacket, game: GameForPacket, place: number): Readonly<Record<VariableName, unknown>> {
  const later = night.games[place + 1];
  const profile = profileAt(night, game);
  const halftime = profile?.breaks.find((rest) => rest.halftime);
  const { venue } = night;
  return {
    department: night.departmentName, day: night.dayText, ...greetingAt(night.games[0]?.startsText ?? ''), venue: venue.name, floor: venue.floorName,
    gameCount: night.games.length, sport: game.sport, playingArea: playingAreaOf(game.sport), period: profile?.periods.name ?? 'period',
    halftimeMinutes: halftime === undefined ? null : Math.round((night.settings.halftimeSeconds ?? halftime.seconds) / 60), level: game.level, starts: game.startsText,
    homeSchool: game.home.schoolName, homeShortName: game.home.shortName, homeNickname: game.home.nickname, homeHeadCoach: game.home.headCoach,
    visitorSchool: game.visitors.schoolName, visitorShortName: game.visitors.shortName, visitorNickname: game.visitors.nickname, visitorHeadCoach: game.visitors.headCoach,
    laterGame: later === undefined ? null : `${later.visitors.nickname} at ${later.home.nickname}, ${later.level}`,
    singer: namesIn(night, 'singer'), colourGuard: namesIn(night, 'colourGuard'), presenter: namesIn(night, 'presenter'), honouree: namesIn(night, 'honouree'),
    officials: namesIn(night, 'official'), announcer: namesIn(night, 'announcer'), nextGame: night.nextGame, nextHomeGame: night.nextHomeGame,
    sponsor: null, copy: null, presents: null, honoursTitle: null, honoursCount: null,
    exitsText: venue.exitsText, evacuationText: venue.evacuationText, weatherText: venue.weatherText,
    injuryText: venue.injuryText, threatText: venue.threatText, defibrillatorPlace: venue.defibrillatorPlace,
  };
}

/** The colours and anthem come once, before the varsity game, or before the last where there is none. */
export function mainGameOf<G extends { readonly level: string }>(games: readonly G[]): G | undefined {
  return games.find((game) => game.level === 'varsity') ?? games.at(-1);
}

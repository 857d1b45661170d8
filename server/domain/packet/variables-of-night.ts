import type { GameForPacket, NightForPacket } from './night-for-packet.ts';

export type Variables = Readonly<Record<string, unknown>>;

function namesIn(night: NightForPacket, role: string): string | null {
  const names = night.people.filter((person) => person.role === role).map((person) => person.name);
  if (names.length === 0) return null;
  return names.length === 1 ? names[0]! : `${names.slice(0, -1).join(', ')} and ${names.at(-1)!}`;
}

/** What a script may speak of. Every name is always there, so that a misspelt one is an error. */
export function variablesOf(night: NightForPacket, game: GameForPacket, place: number): Variables {
  const later = night.games[place + 1];
  const { venue } = night;
  return {
    department: night.departmentName, day: night.dayText, venue: venue.name, floor: venue.floorName,
    gameCount: night.games.length, sport: game.sport, level: game.level, starts: game.startsText,
    homeSchool: game.home.schoolName, homeShortName: game.home.shortName, homeNickname: game.home.nickname, homeHeadCoach: game.home.headCoach,
    visitorSchool: game.visitors.schoolName, visitorShortName: game.visitors.shortName, visitorNickname: game.visitors.nickname, visitorHeadCoach: game.visitors.headCoach,
    laterGame: later === undefined ? null : `${later.visitors.nickname} at ${later.home.nickname}, ${later.level}`,
    singer: namesIn(night, 'singer'), colourGuard: namesIn(night, 'colourGuard'), presenter: namesIn(night, 'presenter'), honouree: namesIn(night, 'honouree'),
    officials: namesIn(night, 'official'), announcer: namesIn(night, 'announcer'), nextGame: night.nextGame, nextHomeGame: night.nextHomeGame,
    sponsor: null, copy: null, presents: null, honoursTitle: null,
    exitsText: venue.exitsText, evacuationText: venue.evacuationText, weatherText: venue.weatherText,
    injuryText: venue.injuryText, threatText: venue.threatText, defibrillatorPlace: venue.defibrillatorPlace,
  };
}

/** The colours and anthem come once, before the varsity game, or before the last where there is none. */
export function mainGameOf(games: readonly GameForPacket[]): GameForPacket | undefined {
  return games.find((game) => game.level === 'varsity') ?? games.at(-1);
}

import { CueBuilder } from './cue-builder.ts';
import type { Variables } from './cue-builder.ts';
import { ANTHEM_FIRST_VERSE } from './default-scripts.ts';
import { gameSheet } from './game-sheet.ts';
import { lineUpSegments, teamSheet } from './line-up.ts';
import type { GameForPacket, NightForPacket, PacketWindow } from './night-for-packet.ts';
import type { Packet } from './packet.ts';
import { findGaps } from './readiness.ts';
import { namesNotUsed, withoutNamesAnywhere } from './redaction.ts';
import type { Render, Script } from './script.ts';
import { tableCard } from './table-card.ts';

function personIn(night: NightForPacket, role: string): string | null {
  return night.people.find((person) => person.role === role)?.name ?? null;
}

/** What a script may speak of. Every name is always there, so that a misspelt one is an error. */
function variablesOf(night: NightForPacket, game: GameForPacket, place: number): Variables {
  const later = night.games[place + 1];
  const { venue } = night;
  return {
    department: night.departmentName, day: night.dayText, venue: venue.name, floor: venue.floorName,
    gameCount: night.games.length, level: game.level, starts: game.startsText,
    homeSchool: game.home.schoolName, homeShortName: game.home.shortName, homeNickname: game.home.nickname,
    visitorSchool: game.visitors.schoolName, visitorShortName: game.visitors.shortName, visitorNickname: game.visitors.nickname,
    laterGame: later === undefined ? null : `${later.visitors.nickname} at ${later.home.nickname}, ${later.level}`,
    singer: personIn(night, 'singer'), presenter: personIn(night, 'presenter'), honouree: personIn(night, 'honouree'),
    announcer: personIn(night, 'announcer'), nextGame: night.nextGame, nextHomeGame: night.nextHomeGame,
    sponsor: null, copy: null, presents: null,
    exitsText: venue.exitsText, evacuationText: venue.evacuationText, weatherText: venue.weatherText,
    injuryText: venue.injuryText, threatText: venue.threatText, defibrillatorPlace: venue.defibrillatorPlace,
  };
}

/** The colours and anthem come once, before the varsity game, or before the last where there is none. */
function mainGameOf(games: readonly GameForPacket[]): GameForPacket | undefined {
  return games.find((game) => game.level === 'varsity') ?? games.at(-1);
}

function reads(builder: CueBuilder, game: GameForPacket, window: PacketWindow, variables: Variables, wanted: (place: number) => boolean = () => true): void {
  const inWindow = game.placements.filter((placement) => placement.window === window);
  for (const placement of [...inWindow].sort((one, other) => one.place - other.place)) {
    if (wanted(placement.place)) builder.placement(placement, game.gameId, variables);
  }
}

function pregame(builder: CueBuilder, night: NightForPacket, game: GameForPacket, place: number, variables: Variables): void {
  const { settings } = night;
  if (place === 0) {
    for (const moment of ['welcome', 'conduct', 'mustCarryPregame'] as const) builder.moment(moment, game.gameId, 'pregame', variables);
  }
  if (game === mainGameOf(night.games)) {
    if (settings.prayer) builder.moment('prayer', game.gameId, 'pregame', variables);
    builder.moment('anthem', game.gameId, 'pregame', variables, (script) =>
      script.key.includes('sung') ? settings.anthem === 'sung' : script.key.includes('played') ? settings.anthem === 'played' : true);
    builder.verse(ANTHEM_FIRST_VERSE, game.gameId);
  }
  reads(builder, game, 'pregame', variables);
  for (const side of ['visitors', 'home'] as const) {
    const sheet = teamSheet(game, side);
    builder.lineUp(sheet, game.gameId, variables, lineUpSegments(sheet, settings.wordsPerMinute));
  }
}

function play(builder: CueBuilder, game: GameForPacket, variables: Variables): void {
  for (const mention of game.mentions) builder.mention(mention, game.gameId, game.home.nickname);
  reads(builder, game, 'deadBall', variables);
  reads(builder, game, 'timeout', variables);
  builder.moment('periodScore', game.gameId, 'betweenPeriods', variables);
  reads(builder, game, 'betweenPeriods', variables, (place) => place <= 1);
  builder.moment('halftime', game.gameId, 'halftime', variables);
  builder.moment('mustCarryHalftime', game.gameId, 'halftime', variables);
  builder.moment('floorSafety', game.gameId, 'halftime', variables);
  reads(builder, game, 'halftime', variables);
  builder.moment('concession', game.gameId, 'halftime', variables);
  reads(builder, game, 'betweenPeriods', variables, (place) => place > 1);
}

/**
 * The packet of a night: welcome, colours and anthem, sponsor presentations, visiting and home
 * line-ups, the reads of each window, halftime, the next game; then the forms and the emergency texts.
 * The same night gives the same packet. A student whose family chose otherwise is named nowhere in it,
 * not even where a script or a sponsor's words do so.
 *
 * @param library the scripts of the department
 * @param render fills a template in and throws when a variable is unknown
 * @source order of a night: common practice, no source
 */
export function composePacket(night: NightForPacket, library: readonly Script[], render: Render): Packet {
  const builder = new CueBuilder(night, library, render);
  night.games.forEach((game, place) => {
    const variables = variablesOf(night, game, place);
    pregame(builder, night, game, place, variables);
    play(builder, game, variables);
    reads(builder, game, 'postgame', variables);
    builder.moment(place === night.games.length - 1 ? 'postgame' : 'betweenGames', game.gameId, 'postgame', variables);
  });
  const main = mainGameOf(night.games);
  if (main !== undefined) {
    const variables = variablesOf(night, main, night.games.indexOf(main));
    builder.moment('vehicleNotice', null, null, variables);
    for (const moment of ['injury', 'weather', 'evacuation', 'threat'] as const) builder.emergency(moment, variables);
  }
  return finished(night, builder);
}

function finished(night: NightForPacket, builder: CueBuilder): Packet {
  const { venue } = night;
  const main = mainGameOf(night.games);
  const redacted: string[] = [];
  const open: Omit<Packet, 'readiness'> = {
    nightId: night.nightId,
    departmentName: night.departmentName,
    title: night.title ?? (main === undefined ? night.departmentName : `${main.visitors.shortName} ${main.visitors.nickname} at ${main.home.shortName} ${main.home.nickname}`),
    dayText: night.dayText,
    venueText: venue.floorName === null ? venue.name : `${venue.name}, ${venue.floorName}`,
    cues: builder.cues,
    games: night.games.map((game) => gameSheet(game, night.settings)),
    card: tableCard(builder.cues, night.games),
    runOfShow: [],
    windows: [],
    nextTimeOut: [],
    paper: night.settings.paper,
    people: night.people,
    emergency: { exitsText: venue.exitsText, defibrillatorPlace: venue.defibrillatorPlace },
    nextGame: night.nextGame,
    nextHomeGame: night.nextHomeGame,
    sponsoredSeconds: builder.cues.filter((cue) => cue.isSponsored).reduce((sum, cue) => sum + cue.seconds, 0),
  };
  const names = namesNotUsed(night);
  const clean = withoutNamesAnywhere(open, names, (text) => redacted.push(text));
  const gaps = findGaps(night, builder.cues, builder.broken, redacted);
  return { ...clean, readiness: withoutNamesAnywhere(gaps, names, () => undefined) };
}

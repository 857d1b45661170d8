import { afterTheGame, noticesAndEmergencies } from './closing.ts';
import { withCodes } from './cue-codes.ts';
import { CueBuilder } from './cue-builder.ts';
import { duringTheGame } from './during-the-game.ts';
import { gameSheet } from './game-sheet.ts';
import { profileAt } from './game-windows.ts';
import { halftimeCaution } from './halftime.ts';
import type { NightForPacket } from './night-for-packet.ts';
import { nextTimeOut } from './next-time-out.ts';
import { beforeTheGame } from './opening.ts';
import type { Cue, Packet } from './packet.ts';
import { countedBack } from './pregame-clock.ts';
import { findGaps } from './readiness.ts';
import type { TextRedacted } from './readiness.ts';
import { namesNotUsed, withoutNamesAnywhere } from './redaction.ts';
import { runOfShow } from './run-of-show.ts';
import type { Render, Script } from './script.ts';
import type { Pronouncing } from './syllables.ts';
import { BY_RULE } from './syllables.ts';
import { wordsNotKnown } from './spoken-time.ts';
import { tableCard } from './table-card.ts';
import { mainGameOf, variablesOf } from './variables-of-night.ts';
import { voiceAt } from './voice.ts';
import { whoText } from './who-must-be-where.ts';
import { windowLoads } from './window-load.ts';

/**
 * The packet of a night: welcome, colours and anthem, sponsor presentations, visiting and home
 * line-ups, the reads of each window, halftime, the next game; then the notices and the emergency texts.
 * The same night gives the same packet. A student whose family chose otherwise is named nowhere in it,
 * not even where a script or a sponsor's words do so.
 *
 * @param library the scripts of the department
 * @param render fills a template in and throws when a variable is unknown
 * @param pronouncing where syllables are looked up
 * @source order of a night: common practice, no source
 */
export function composePacket(night: NightForPacket, library: readonly Script[], render: Render, pronouncing: Pronouncing = BY_RULE): Packet {
  const builder = new CueBuilder(night, library, render, voiceAt(night.settings.wordsPerMinute, pronouncing));
  night.games.forEach((game, place) => {
    const variables = variablesOf(night, game, place);
    beforeTheGame(builder, game, place, variables);
    duringTheGame(builder, game, place, variables);
    afterTheGame(builder, game, place, variables);
  });
  const main = mainGameOf(night.games);
  if (main !== undefined) noticesAndEmergencies(builder, variablesOf(night, main, night.games.indexOf(main)));
  return finished(night, builder);
}

/** The cues with what only the whole night tells: codes, the clock counted back, who must be where. */
function placed(night: NightForPacket, cues: readonly Cue[]): Cue[] {
  const starts = countedBack(cues, night.games);
  return withCodes(cues, night.games).map((cue) => ({
    ...cue,
    startsText: starts.get(cue.cueKey) ?? null,
    whoText: whoText(cue, night),
    caution: cue.caution ?? halftimeCaution(night, cue),
  }));
}

/** Where no dictionary is at hand, what has other letters than English is taken for unknown. */
function unknownIn(pronouncing: Pronouncing): (name: string) => readonly string[] {
  if (pronouncing.known !== null) return (name) => wordsNotKnown(name, pronouncing);
  return (name) => name.split(/\s+/).filter((word) => /[^\p{ASCII}]/u.test(word));
}

function finished(night: NightForPacket, builder: CueBuilder): Packet {
  const names = namesNotUsed(night);
  const redacted: TextRedacted[] = [];
  const cues = placed(night, builder.cues).map((cue) =>
    withoutNamesAnywhere(cue, names, (text) => redacted.push({ cue, text, scriptId: builder.scriptIds.get(cue.cueKey) ?? null })));
  const windows = windowLoads(night, cues);
  const clean = withoutNamesAnywhere(open(night, cues, windows), names, (text) => redacted.push({ cue: null, text, scriptId: null }));
  const { broken, empty } = builder;
  const gaps = findGaps({ night, cues, windows, broken, empty, redacted, wordsNotKnown: unknownIn(builder.voice.pronouncing) });
  return { ...clean, readiness: withoutNamesAnywhere(gaps, names, () => undefined) };
}

function open(night: NightForPacket, cues: readonly Cue[], windows: Packet['windows']): Omit<Packet, 'readiness'> {
  const { venue } = night;
  const main = mainGameOf(night.games);
  return {
    nightId: night.nightId,
    departmentName: night.departmentName,
    title: night.title ?? (main === undefined ? night.departmentName : `${main.visitors.shortName} ${main.visitors.nickname} at ${main.home.shortName} ${main.home.nickname}`),
    dayText: night.dayText,
    venueText: venue.floorName === null ? venue.name : `${venue.name}, ${venue.floorName}`,
    cues,
    games: night.games.map((game) => gameSheet(game, night.settings, profileAt(night, game))),
    card: tableCard(cues, night.games),
    runOfShow: runOfShow(night, cues),
    windows,
    nextTimeOut: nextTimeOut(night, cues),
    paper: night.settings.paper,
    people: night.people,
    emergency: { exitsText: venue.exitsText, defibrillatorPlace: venue.defibrillatorPlace },
    nextGame: night.nextGame,
    nextHomeGame: night.nextHomeGame,
    sponsoredSeconds: cues.filter((cue) => cue.isSponsored).reduce((sum, cue) => sum + cue.seconds, 0),
  };
}

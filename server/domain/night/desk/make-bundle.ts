import type { Instant } from '../../instant.ts';
import { profileAt } from '../../packet/game-windows.ts';
import type { GameForPacket, NightForPacket } from '../../packet/night-for-packet.ts';
import type { Cue, GameSheet, Packet } from '../../packet/packet.ts';
import { happeningKey } from '../happening-key.ts';
import type { DeskCue, DeskGame, DeskMention, DeskSettings, NightBundle } from './bundle.ts';
import { holdTextsOf, requestScriptsOf } from './fixed-texts.ts';

/** What a bundle is made of besides the packet and its night. */
export interface BundleFacts {
  /** IANA name of the department's zone */
  readonly zone: string;
  readonly madeAt: Instant;
  readonly contentDigest: string;
  readonly takesPublicRequests: boolean;
}

/** A game of this many minutes is reckoned with where nothing better is known. @source common practice, no source */
const USUAL_MINUTES = 90;

/**
 * All that a table needs for a night, out of the packet and the night it was composed from. Names are taken from
 * the packet alone, so that whoever is not announced by name is named nowhere in it.
 */
export function makeBundle(packet: Packet, night: NightForPacket, { zone, madeAt, contentDigest, takesPublicRequests }: BundleFacts): NightBundle {
  const { nightId, title, dayText, venueText, departmentName, windows, nextTimeOut, emergency } = packet;
  const priorities = new Map(night.games.flatMap((game) => game.placements).map(({ placementId, priority }) => [placementId, priority ?? 2]));
  return {
    nightId, title, dayText, heldOn: night.heldOn, zone, venueText, departmentName, madeAt, contentDigest,
    games: night.games.map((game, place) => deskGame(game, packet.games[place]!, night)),
    cues: packet.cues.map((cue) => deskCue(cue, priorities)),
    windows,
    nextTimeOut,
    mentions: night.games.flatMap((game) => mentionsOf(game, packet.cues)),
    holdTexts: holdTextsOf(packet.cues),
    requestScripts: requestScriptsOf(packet.cues, night.settings.wordsPerMinute),
    people: packet.people.map(({ role, name, sayAs, arrivesText }) => ({ role, name, sayAs, arrivesText })),
    emergency,
    settings: settingsOf(night, takesPublicRequests),
  };
}

function settingsOf({ settings }: NightForPacket, takesPublicRequests: boolean): DeskSettings {
  const { bankShotMention, foulCountsRead, wordsPerMinute } = settings;
  return { bankShotMention, foulCountsRead, wordsPerMinute, takesPublicRequests };
}

function deskGame(game: GameForPacket, sheet: GameSheet, night: NightForPacket): DeskGame {
  const { gameId, level, sport, startsText } = game;
  return {
    gameId, title: sheet.title, level, sport, startsText,
    startsClock: game.startsClock ?? null,
    startsAfterMinutes: game.startsAfterMinutes ?? null,
    usualMinutes: game.usualMinutes ?? USUAL_MINUTES,
    rules: profileAt(night, game),
    visitors: sheet.visitors,
    home: sheet.home,
    ourTeamIds: game.ourTeamIds ?? [game.home.teamId],
  };
}

function deskCue(cue: Cue, priorities: ReadonlyMap<string, number>): DeskCue {
  const { code, number, cueKey, gameId, moment, window, windowKey, title, language, segments, second, seconds, startsText, whoText, caution, usesFallback } = cue;
  const { isSponsored, placementId, commitmentId, sponsorName, sponsorSayAs } = cue;
  const priority = placementId === null ? 2 : (priorities.get(placementId) ?? 2);
  return {
    code, number, cueKey, gameId, moment, window, windowKey, title, language, segments, second, seconds, startsText, whoText, caution, usesFallback,
    isSponsored, placementId, commitmentId, sponsorName, sponsorSayAs, priority,
  };
}

function mentionsOf(game: GameForPacket, cues: readonly Cue[]): DeskMention[] {
  return game.mentions.flatMap(({ cueKey, commitmentId, occurrence, whose, severalCountAsOne = false }) => {
    const cue = cues.find((one) => one.cueKey === cueKey);
    if (!cue) return [];
    // Its first direction says on paper when to read it; the desk says so by itself.
    const segments = cue.segments.slice(1);
    return [{
      commitmentId, cueKey, gameId: game.gameId, code: cue.code, sponsorName: cue.sponsorName ?? '', sponsorSayAs: cue.sponsorSayAs,
      happening: happeningKey(occurrence), occurrence, whose, severalCountAsOne, segments, seconds: cue.seconds,
    }];
  });
}

import { instantOf } from '../../server/domain/instant.ts';
import type { DeskCue, DeskGame, DeskMention, DeskSettings, HoldSituation, HoldText, NightBundle, RequestScript } from '../../server/domain/night/desk/bundle.ts';
import type { DeskEntry, DeskLine, NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import type { RequestKind } from '../../server/domain/night/desk/requests/request.ts';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import { profileAt } from '../../server/domain/packet/game-windows.ts';
import { teamSheet } from '../../server/domain/packet/line-up.ts';
import type { GameForPacket, NightForPacket } from '../../server/domain/packet/night-for-packet.ts';
import type { Cue, Packet } from '../../server/domain/packet/packet.ts';
import { night as packetNight, render } from './packet-night.ts';

const HOLD_MOMENTS: Readonly<Record<string, HoldSituation>> = {
  injury: 'injury', medical: 'medical', weather: 'weather', evacuation: 'evacuation', threat: 'threat', delay: 'delay',
};
const REQUEST_MOMENTS: Readonly<Record<string, RequestKind>> = {
  vehicleNotice: 'vehicle', lostChild: 'lostChild', foundItem: 'foundItem', medical: 'medical', fundraiser: 'fundraiser',
};

function deskCue(cue: Cue, night: NightForPacket): DeskCue {
  const planned = night.games.flatMap((game) => game.placements).find((placement) => placement.cueKey === cue.cueKey);
  const {
    code, number, cueKey, gameId, moment, window, windowKey, title, language, segments, second, seconds, isSponsored, placementId, commitmentId,
    sponsorName, sponsorSayAs, startsText, whoText, caution, usesFallback,
  } = cue;
  return {
    code, number, cueKey, gameId, moment, window, windowKey, title, language, segments, second, seconds, isSponsored, placementId, commitmentId,
    sponsorName, sponsorSayAs, startsText, whoText, caution, usesFallback, priority: planned?.priority ?? 2,
  };
}

function deskGame(game: GameForPacket, night: NightForPacket): DeskGame {
  return {
    gameId: game.gameId,
    title: `${game.visitors.nickname} at ${game.home.nickname}, ${game.level}`,
    level: game.level, sport: game.sport, startsClock: game.startsClock ?? (game.startsText === '7:00 PM' ? '19:00' : null), startsText: game.startsText,
    startsAfterMinutes: game.startsAfterMinutes ?? null, usualMinutes: 90, rules: profileAt(night, game),
    visitors: teamSheet(game, 'visitors'), home: teamSheet(game, 'home'), ourTeamIds: ['team-kestrels'],
  };
}

function deskMentions(night: NightForPacket, packet: Packet): DeskMention[] {
  return packet.cues.filter((cue) => cue.moment === 'mention').flatMap((cue) => {
    const owed = night.games.flatMap((game) => game.mentions).find((mention) => mention.cueKey === cue.cueKey);
    if (!owed || cue.gameId === null) return [];
    return [{
      commitmentId: owed.commitmentId, cueKey: cue.cueKey, gameId: cue.gameId, code: cue.code, sponsorName: owed.sponsorName, sponsorSayAs: owed.sponsorSayAs,
      happening: 'bankShot', occurrence: owed.occurrence, whose: owed.whose, severalCountAsOne: false, segments: cue.segments, seconds: cue.seconds,
    }];
  });
}

const holdTexts = (packet: Packet): HoldText[] =>
  packet.cues.flatMap((cue) => (HOLD_MOMENTS[cue.moment] ? [{ situation: HOLD_MOMENTS[cue.moment]!, title: cue.title, segments: cue.segments }] : []));

const requestScripts = (packet: Packet): RequestScript[] =>
  packet.cues.flatMap((cue) => {
    const kind = REQUEST_MOMENTS[cue.moment];
    return kind ? [{ kind, title: cue.title, isTableOnly: ['lostChild', 'foundItem', 'medical'].includes(kind), segments: cue.segments }] : [];
  });

/** The bundle of the Kestrels' night against the Herons, or of another night, as a table would store it. */
export function aNightBundle(night: NightForPacket = packetNight(), settings: Partial<DeskSettings> = {}): NightBundle {
  const packet = composePacket(night, DEFAULT_SCRIPTS, render);
  return {
    nightId: night.nightId, title: packet.title, dayText: night.dayText, heldOn: night.heldOn, zone: 'America/Denver', venueText: packet.venueText,
    departmentName: night.departmentName, madeAt: instantOf('2026-12-04T18:00:00Z'), contentDigest: 'digest-1',
    games: night.games.map((game) => deskGame(game, night)), cues: packet.cues.map((cue) => deskCue(cue, night)), windows: packet.windows,
    nextTimeOut: packet.nextTimeOut, mentions: deskMentions(night, packet), holdTexts: holdTexts(packet), requestScripts: requestScripts(packet),
    people: packet.people.map(({ role, name, sayAs, arrivesText }) => ({ role, name, sayAs, arrivesText })), emergency: packet.emergency,
    settings: { bankShotMention: 'nextWindow', foulCountsRead: false, wordsPerMinute: 150, takesPublicRequests: false, ...settings },
  };
}

/** The log of one device, in memory: what is written stands at once, what is taken back stays in it. */
export class DeskLog {
  readonly lines: DeskLine[] = [];

  constructor(readonly deviceId = 'tablet', private readonly gameId: string | null = 'game-1') {}

  write(entry: NewDeskEntry): DeskEntry {
    const sequence = this.lines.length + 1;
    const line: DeskLine = {
      outcome: null, reason: null, gameId: this.gameId, cueKey: null, placementId: null, commitmentId: null, windowKey: null, teamId: null, playerNumber: null,
      period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null, ...entry,
      id: `${this.deviceId}-${sequence}`, deviceId: this.deviceId, sequence, occurredAt: '2026-12-05T02:00:00Z',
      place: 'onDevice', number: null, isOwn: true, sentence: null,
    };
    this.lines.push(line);
    return line;
  }

  takeBack(entryId: string): DeskEntry {
    return this.write({ kind: 'takenBack', takesBackEntryId: entryId });
  }
}

import { Liquid } from 'liquidjs';
import { dayOf } from '../../server/domain/day.ts';
import { DEFAULT_PACKET_SETTINGS, mentionCueKey, placementCueKey } from '../../server/domain/packet/night-for-packet.ts';
import type {
  GameForPacket, MentionForPacket, NightForPacket, PlacementForPacket, PlayerForPacket, TeamForPacket,
} from '../../server/domain/packet/night-for-packet.ts';
import type { Packet } from '../../server/domain/packet/packet.ts';
import type { Render } from '../../server/domain/packet/script.ts';

const liquid = new Liquid({ strictVariables: true, strictFilters: true, ownPropertyOnly: true });
export const render: Render = (template, variables) => liquid.parseAndRenderSync(template, variables) as string;

export function player(number: string, name: string, extra: Partial<PlayerForPacket> = {}): PlayerForPacket {
  return { playerId: `player-${number}`, number, name, sayAs: null, position: 'guard', grade: '11', isStarter: false, announce: 'name', ...extra };
}

export const kestrels: TeamForPacket = {
  teamId: 'team-kestrels', schoolName: 'Tamarack Ridge High School', shortName: 'Tamarack Ridge', nickname: 'Kestrels', sayAs: 'TAM-uh-rack ridge',
  firstColour: '#1F5C3A', secondColour: '#B8632A', headCoach: 'Ngozi Okonkwo', headCoachSayAs: 'en-GO-zee oh-KONG-kwoh',
  roster: [
    player('0', 'Xochitl Marchetti', { sayAs: 'SO-cheel mar-KET-ee', isStarter: true }),
    player('3', 'Siobhán Delacroix-Whitcombe', { sayAs: 'shi-VAWN DEL-uh-krwah WIT-kum', isStarter: true, position: 'forward' }),
    player('12', 'Nguyễn Thị Bảo Ngọc', { sayAs: 'win tee bow NOP', isStarter: true, grade: '12' }),
    player('23', 'Łukasz Wierzbicki', { sayAs: 'WOO-kahsh vyezh-BIT-skee', isStarter: true, position: 'center' }),
    player('44', 'Adaeze Okonkwo', { sayAs: 'ah-DAY-zeh oh-KONG-kwoh', isStarter: true, position: 'forward' }),
    player('10', 'Marisol Quintanar'), player('15', 'Tamsin Orlebar'), player('21', 'Ines Calloway'),
    player('30', 'Ottilie Strand', { announce: 'numberOnly', grade: '10' }),
    player('32', 'Perpetua Lindqvist', { announce: 'aMember' }),
    player('50', 'Wilhelmina Astor', { announce: 'silence' }),
  ],
};

export const herons: TeamForPacket = {
  teamId: 'team-herons', schoolName: 'Port Ansel High School', shortName: 'Port Ansel', nickname: 'Herons', sayAs: null,
  firstColour: '#16264F', secondColour: '#D9A521', headCoach: 'Delphine Arkwright', headCoachSayAs: null,
  roster: [
    player('00', 'Juno Halloran', { isStarter: true }), player('4', 'Britta Sandoval', { isStarter: true }),
    player('11', 'Cosima Vane', { isStarter: true, position: 'forward' }), player('22', 'Rosalind Teague', { isStarter: true, position: 'center' }),
    player('33', 'Zuleika Amari', { sayAs: 'zoo-LAY-kuh ah-MAR-ee', isStarter: true, position: 'forward', announce: 'numberOnly' }),
    player('5', 'Mette Lund'), player('14', 'Fern Gallagher'), player('25', 'Ysolde Prue'),
  ],
};

const windowKeyOf = (window: PlacementForPacket['window'], place: number): string => (window === 'timeout' ? `timeOut${place}` : window === 'betweenPeriods' ? `betweenPeriods${place}` : window);

export function placement(gameId: string, window: PlacementForPacket['window'], place: number, sponsorName: string, extra: Partial<PlacementForPacket> = {}): PlacementForPacket {
  return {
    placementId: `placement-${window}-${place}`, window, windowKey: windowKeyOf(window, place), place, sponsorName, sponsorSayAs: null, readKind: 'Time-out read',
    copyText: `This break comes to you from ${sponsorName}, on Alder Street in Tamarack Ridge. Thank you, ${sponsorName}.`,
    copyVersion: 1, isApproved: true, fallbackText: `We thank ${sponsorName}.`, seconds: 10, cueKey: placementCueKey(gameId, window, place), ...extra,
  };
}

export function mention(gameId: string, extra: Partial<MentionForPacket> = {}): MentionForPacket {
  return {
    commitmentId: 'commitment-bank', occurrence: 'bank shot', whose: 'ours', sponsorName: 'Copperline Credit Union', sponsorSayAs: null,
    readKind: 'Bank-shot mention', copyText: 'Off the glass: Copperline Credit Union.', copyVersion: 2, isApproved: true,
    fallbackText: 'Copperline Credit Union.', seconds: 3, cueKey: mentionCueKey(gameId, 'commitment-bank'), ...extra,
  };
}

export function game(extra: Partial<GameForPacket> = {}): GameForPacket {
  const gameId = extra.gameId ?? 'game-1';
  return {
    gameId, sport: 'basketball', level: 'varsity', startsText: '7:00 PM', home: kestrels, visitors: herons,
    placements: [
      placement(gameId, 'pregame', 1, 'Juniper & Pike Hardware', {
        readKind: 'Game ball', presents: 'game ball',
        copyText: 'Juniper & Pike Hardware: nuts, bolts and neighbors since 1961, at 40 Alder Street.',
      }),
      placement(gameId, 'timeout', 1, 'Halvorsen Orthodontics', { sponsorSayAs: 'HAL-vor-sen' }),
      placement(gameId, 'timeout', 2, 'Okafor Family Insurance', { isApproved: false }),
      placement(gameId, 'betweenPeriods', 1, 'Pinyon Print Works'),
      placement(gameId, 'betweenPeriods', 2, 'Blue Lantern Tire'),
      placement(gameId, 'halftime', 1, 'Snowmelt Creamery', { readKind: 'Concession read' }),
      placement(gameId, 'postgame', 1, "Mirabel's Kitchen"),
    ],
    mentions: [mention(gameId)],
    ...extra,
  };
}

export function night(extra: Partial<NightForPacket> = {}): NightForPacket {
  return {
    nightId: 'night-1', departmentName: 'Tamarack Ridge Athletics', heldOn: dayOf('2026-12-04'), dayText: 'Friday, December 4, 2026', title: null,
    venue: {
      name: 'Alder Fieldhouse', sayAs: null, floorName: 'the Perch', exitsText: 'Exits are behind both baskets and beside the concession stand.',
      defibrillatorPlace: 'on the wall by the trophy case', evacuationText: 'May I have your attention. Please leave the building now by the nearest exit.',
      weatherText: null, injuryText: null, threatText: null,
    },
    games: [game()],
    people: [
      { role: 'announcer', name: 'Rowena Achterberg', sayAs: 'ro-WEE-nuh AHK-ter-berg', arrivesText: '5:45 PM' },
      { role: 'spotter', name: 'Teodor Vance', sayAs: null, arrivesText: '6:15 PM' },
      { role: 'presenter', name: 'Junia Pike', sayAs: null, arrivesText: '6:40 PM' },
    ],
    nextGame: { opponentName: 'Quarry Bend', isHome: false, level: 'varsity', dayText: 'Tuesday, December 8', clockText: '7:00 PM', placeName: 'Quarry Bend' },
    nextHomeGame: { opponentName: 'Linden Falls', isHome: true, level: 'varsity', dayText: 'Friday, December 11', clockText: '7:00 PM', placeName: 'Alder Fieldhouse' },
    settings: DEFAULT_PACKET_SETTINGS,
    ...extra,
  };
}

/** Three games, thirty players a side, every window full: the longest night a table will see. */
export function longNight(): NightForPacket {
  const roster = Array.from({ length: 30 }, (_, place) =>
    player(String(place), place % 3 === 0 ? 'Maximiliana Featherstonehaugh-Nguyễn' : `Siobhán Wierzbicka-${place}`, { isStarter: place < 5, sayAs: 'max-ih-mill-ee-AH-nah FAN-shaw WIN' }));
  const games = ['junior varsity', 'varsity', 'freshman'].map((level, place) => {
    const gameId = `game-${place}`;
    const windows = ['pregame', 'timeout', 'betweenPeriods', 'halftime', 'postgame'] as const;
    return game({
      gameId, level, startsText: place === 0 ? '5:30 PM' : '20 minutes after the game before',
      home: { ...kestrels, roster }, visitors: { ...herons, roster },
      placements: windows.flatMap((window) => [1, 2, 3].map((number) => placement(gameId, window, number, 'Halvorsen Orthodontics and Family Dentistry of Tamarack Ridge'))),
    });
  });
  return night({ games });
}

/** The lines of "before you print". */
export const readinessOf = (packet: Packet): Packet['readiness'] => packet.readiness;

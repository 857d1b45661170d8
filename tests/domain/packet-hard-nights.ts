import type { GameForPacket, NightForPacket, PlacementForPacket } from '../../server/domain/packet/night-for-packet.ts';
import { game, herons, kestrels, longNight, night, placement, player } from './packet-night.ts';

const FORTY_LETTERS = 'Maximiliana Featherstonehaugh-Quintanilla';
const SIXTY_LETTERS = 'The Consolidated Regional High School of Upper Linden Falls';

function squad(size: number, starters: number) {
  return Array.from({ length: size }, (_, place) => player(String(place), place % 4 === 0 ? FORTY_LETTERS : `Siobhán Wierzbicka ${place}`, { isStarter: place < starters, sayAs: 'max-ih-mill-ee-AH-nah FAN-shaw kwin-tah-NEE-yah' }));
}

function manyReads(gameId: string, count: number): PlacementForPacket[] {
  const windows = ['pregame', 'timeout', 'betweenPeriods', 'halftime', 'postgame'] as const;
  return Array.from({ length: count }, (_, place) => placement(gameId, windows[place % 5]!, Math.floor(place / 5) + 1, ['Halvorsen Orthodontics', 'Blue Lantern Tire', 'Okafor Family Insurance'][place % 3]!));
}

/** Nights that try a printer: what is on them, and how the night looks. */
export const HARD_NIGHTS: readonly (readonly [string, () => NightForPacket])[] = [
  ['three games, thirty players a side and every window full', longNight],
  ['sixty players a side with forty letters in a name', () => night({ games: [game({ home: { ...kestrels, roster: squad(60, 11) }, visitors: { ...herons, roster: squad(60, 11) } })] })],
  ['a school of sixty letters and a sponsor of as many', () => night({
    games: [game({
      visitors: { ...herons, schoolName: SIXTY_LETTERS, shortName: SIXTY_LETTERS, nickname: 'Northern Saw-whet Owls', sayAs: 'the con-SOL-ih-day-ted REE-jun-ul of UP-er LIN-den FAWLZ' },
      placements: [placement('game-1', 'timeout', 1, 'Halvorsen, Halvorsen and Okonkwo Family and Cosmetic Dentistry', { sponsorSayAs: 'HAL-vor-sen, HAL-vor-sen and oh-KONG-kwoh' })],
    })],
  })],
  ['a name without a space to break at', () => night({ games: [game({ home: { ...kestrels, roster: [player('7', 'W'.repeat(60), { isStarter: true, sayAs: 'w'.repeat(60) })] } })] })],
  ['no sponsor, no roster, nobody and no next game', () => night({ people: [], nextGame: null, nextHomeGame: null, games: [game({ placements: [], mentions: [], home: { ...kestrels, roster: [], headCoach: null }, visitors: { ...herons, roster: [], headCoach: null } })] })],
  ['no game at all', () => night({ games: [] })],
  ['a hundred reads', () => night({ games: [game({ placements: manyReads('game-1', 100) })] })],
  ['a hundred reads over three games', () => night({ games: ['a', 'b', 'c'].map((gameId): GameForPacket => game({ gameId, level: gameId === 'c' ? 'varsity' : 'freshman', placements: manyReads(gameId, 34) })) })],
  ['right-to-left letters, an emoji and letters the font lacks', () => night({ games: [game({ home: { ...kestrels, roster: [player('4', 'Mina 김 🏀', { isStarter: true }), player('5', '\u202eנועה לוי\u202c', { isStarter: true }), player('6', 'ليلى')] } })] })],
  ['sponsor words of five thousand letters', () => night({ games: [game({ placements: [placement('game-1', 'halftime', 1, 'Blue Lantern Tire', { copyText: `${'Come in out of the cold and bring the whole family along with you tonight. '.repeat(66)}The very last word.` })] })] })],
  ['five thousand letters without a full stop', () => night({ games: [game({ placements: [placement('game-1', 'halftime', 1, 'Blue Lantern Tire', { copyText: `${'and then another word '.repeat(228)}the very last word` })] })] })],
  ['five thousand letters in two hundred paragraphs', () => night({ games: [game({ placements: [placement('game-1', 'halftime', 1, 'Blue Lantern Tire', { copyText: `${'A short line of words.\n\n'.repeat(200)}The very last word.` })] })] })],
  ['a long Spanish text beside the English', () => night({ games: [game({ placements: [placement('game-1', 'halftime', 1, 'Blue Lantern Tire', {
    copyText: 'Come in out of the cold. '.repeat(40), copySecondLanguage: 'es', copySecondText: 'Entre y protéjase del frío con toda la familia. '.repeat(40),
  })] })] })],
  ['forty people', () => night({ people: Array.from({ length: 40 }, (_, place) => ({ role: place === 0 ? 'announcer' : 'color guard', name: `${FORTY_LETTERS} ${place}`, sayAs: 'max-ih-mill-ee-AH-nah FAN-shaw', arrivesText: '5:45 PM' })) })],
];

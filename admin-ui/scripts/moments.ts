import { isLocked, MOMENTS } from '../../server/domain/packet/script.ts';
import { wordFor } from '../words/choices.ts';

const WORDS: Record<string, string> = {
  welcome: 'Welcome', conduct: 'Conduct', substances: 'No tobacco, alcohol or drugs', seating: 'Seating and captions', mustCarryPregame: 'Required by others, pregame', prayer: 'Opening prayer',
  anthem: 'Colors and anthem', sponsorPresentation: 'Sponsor presentation', officials: 'Officials', lineUpVisitors: 'Line-up, visitors', lineUpHome: 'Line-up, home', callsOfPlay: 'Calls of play',
  periodScore: 'Score after a period', mustCarryHalftime: 'Required by others, halftime', halftime: 'Halftime', recognition: 'Recognition at halftime', honours: 'Honors, opening', floorSafety: 'Keep off the floor',
  concession: 'Concession', fundraiser: 'Fundraiser', club: 'Club', camp: 'Camp', betweenGames: 'Between games', postgame: 'After the game', vehicleNotice: 'A vehicle', lostChild: 'A child is waiting',
  foundItem: 'Something was found', medical: 'A doctor is needed', delay: 'The game is delayed', injury: 'Someone is hurt', weather: 'Bad weather', evacuation: 'Clearing the building', threat: 'A threat',
};

const VARIANT_WORDS: Record<string, string> = {
  sungColourGuard: 'Sung, with a color guard', sungFlagInPlace: 'Sung, the flag in place', playedColourGuard: 'Played, with a color guard', playedFlagInPlace: 'Played, the flag in place',
  seniors: 'Seniors', honours: 'Honors',
};

export const momentName = (key: string): string => wordFor(WORDS, key);
export const variantName = (key: string | null): string => wordFor(VARIANT_WORDS, key);
export const MOMENT_CHOICES = MOMENTS.filter((id) => !isLocked(id)).map((id) => ({ id, name: momentName(id) }));

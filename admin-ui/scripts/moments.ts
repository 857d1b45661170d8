import { MOMENTS } from '../../server/domain/packet/script.ts';
import { wordFor } from '../words/choices.ts';

const WORDS: Record<string, string> = {
  welcome: 'Welcome', conduct: 'Conduct', mustCarryPregame: 'Required by others, pregame', prayer: 'Opening prayer', anthem: 'Colours and anthem',
  sponsorPresentation: 'Sponsor presentation', lineUpVisitors: 'Line-up, visitors', lineUpHome: 'Line-up, home', periodScore: 'Score after a period',
  mustCarryHalftime: 'Required by others, halftime', halftime: 'Halftime', floorSafety: 'Keep off the floor', concession: 'Concession',
  betweenGames: 'Between games', postgame: 'After the game', vehicleNotice: 'A vehicle', injury: 'Someone is hurt', weather: 'Bad weather',
  evacuation: 'Clearing the building', threat: 'A threat',
};

export const momentName = (key: string): string => wordFor(WORDS, key);
export const MOMENT_CHOICES = MOMENTS.map((id) => ({ id, name: momentName(id) }));

import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { count } from '../words/count.ts';
import type { MovedLine, MovePreview, NightEffect } from './types.ts';

const are = (number: number, one: string, many: string): string => (number === 1 ? one : many);
const reads = (number: number): string => count(number, 'read');

/** "Concession read: 2 reads are credited, $66.66; 2 planned reads lose their place." */
export function lineInWords(line: MovedLine, { kind }: Pick<MovePreview, 'kind'>): string {
  const { credited, creditedCents, released, added, kept, placesLost, placesMoved, placesKept } = line;
  const isMovedOn = released > 0 && released === added;
  const parts = [
    credited > 0 && `${reads(credited)} ${are(credited, 'is', 'are')} credited, ${moneyText(creditedCents)}`,
    isMovedOn && `${reads(released)} ${are(released, 'goes', 'go')} along to the other night with ${are(released, 'its', 'their')} value`,
    released > 0 && !isMovedOn && `${reads(released)} ${are(released, 'is', 'are')} no longer owed; the value moves on to the reads that remain`,
    added > 0 && !isMovedOn && `${reads(added)} more ${are(added, 'is', 'are')} promised`,
    kept > 0 && !isMovedOn && (kind === 'reschedule' ? `${reads(kept)} ${are(kept, 'comes', 'come')} along` : `${reads(kept)} ${are(kept, 'waits', 'wait')} until the game ${kind === 'postpone' ? 'has a new day' : 'goes on'}`),
    placesLost > 0 && `${count(placesLost, 'planned read')} ${are(placesLost, 'loses its place', 'lose their places')}`,
    placesMoved > 0 && `${count(placesMoved, 'planned read')} ${are(placesMoved, 'keeps its window', 'keep their windows')} on the new day`,
    placesKept > 0 && kept === 0 && `${count(placesKept, 'planned read')} ${are(placesKept, 'waits', 'wait')} where ${are(placesKept, 'it is', 'they are')}`,
  ].filter((part) => part !== false);
  const owed = credited + released + added + kept === 0 && placesLost > 0 ? '. Nothing is credited: it is promised over the whole term and stays owed' : '';
  return `${line.name}: ${parts.join('; ')}${owed}.`;
}

/** What becomes of a night, and of the links that open its table; nothing where nothing changes. */
export function nightInWords({ venueName, heldOn, newHeldOn, isGone, gamesLeft, tableLinks }: NightEffect): string | null {
  const night = `The night at ${venueName} on ${dayText(heldOn, 'weekday')}`;
  const links = tableLinks.length === 0 ? '' : ` ${count(tableLinks.length, 'link')} to its table ${are(tableLinks.length, 'is', 'are')} given out`;
  if (newHeldOn) return `${night} moves to ${dayText(newHeldOn, 'weekday')}.${links ? `${links} for the old day; give out ${are(tableLinks.length, 'a new one', 'new ones')}.` : ''}`;
  if (isGone) return `${night} is taken out: nothing else is on it.${links ? `${links}; ${are(tableLinks.length, 'it opens', 'they open')} nothing any more.` : ''}`;
  if (gamesLeft === 0) return `${night} has no other game.${links ? `${links}; tell whoever has ${are(tableLinks.length, 'it', 'them')}.` : ''}`;
  return null;
}

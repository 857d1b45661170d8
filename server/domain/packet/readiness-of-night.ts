import { longHalftime, longHalftimeSentence } from './halftime.ts';
import type { NightForPacket } from './night-for-packet.ts';
import { mustFix, worthKnowing } from './readiness-line.ts';
import type { Looked, ReadinessLine } from './readiness.ts';
import { mainGameOf } from './variables-of-night.ts';
import { rolesFor } from './who-must-be-where.ts';

const UNASSIGNED: Readonly<Record<string, { code: string; sentence: string }>> = {
  singer: { code: 'no-singer', sentence: 'The anthem is sung tonight, but no singer is named.' },
  colourGuard: { code: 'no-colour-guard', sentence: 'The colors are presented tonight, but no color guard is named.' },
  presenter: { code: 'no-presenter', sentence: 'A sponsor presents something tonight, but no presenter is named.' },
  honouree: { code: 'no-honouree', sentence: 'Somebody is recognized tonight, but no honoree is named.' },
  official: { code: 'no-officials', sentence: 'The officials are introduced tonight, but none is named.' },
};

/** The people the night's scripts cannot do without. */
function peopleLines({ night, cues }: Looked): ReadinessLine[] {
  const mend = { resource: 'nights', id: night.nightId, tab: 'people' };
  const roles = new Set(night.people.map((person) => person.role));
  const needed = new Set(cues.flatMap((cue) => rolesFor(cue, night.settings).map(({ role }) => role)));
  const missing = [...needed].filter((role) => !roles.has(role)).flatMap((role) => UNASSIGNED[role] ?? []);
  return [
    ...(roles.has('announcer') ? [] : [mustFix('nobody-announcing', 'Nobody is down to announce.', mend)]),
    ...(roles.has('spotter') ? [] : [worthKnowing('no-spotter', 'Nobody is down to keep the tally at the table.', mend)]),
    ...missing.map(({ code, sentence }) => worthKnowing(code, sentence, mend)),
  ];
}

function venueLines({ venue, nightId }: NightForPacket): ReadinessLine[] {
  const mend = venue.venueId === undefined ? { resource: 'nights', id: nightId } : { resource: 'venues', id: venue.venueId, tab: 'edit' };
  const lines: ReadinessLine[] = [];
  if (venue.evacuationText === null || venue.exitsText === null) {
    lines.push(mustFix('no-emergency-text', `${venue.name} has no evacuation text or no exits written down.`, mend));
  }
  if (venue.defibrillatorPlace === null) lines.push(worthKnowing('no-defibrillator-place', `Nobody has written where the defibrillator of ${venue.name} is.`, mend));
  return lines;
}

function gameLines(night: NightForPacket): ReadinessLine[] {
  const lines: ReadinessLine[] = [];
  if (night.games.length === 0) lines.push(mustFix('no-game', 'No game is set for this night.', { resource: 'nights', id: night.nightId }));
  for (const game of night.games.filter(({ movedSinceIssue }) => movedSinceIssue)) {
    const sentence = `The ${game.level} game was moved after packet ${night.issuedNumber ?? ''} was issued: issue it again and swap the pages.`;
    lines.push(mustFix('game-moved', sentence.replace(/ {2,}/g, ' '), { resource: 'nights', id: night.nightId, tab: 'packet' }, game.gameId));
  }
  if (night.games.length > 0 && night.nextGame === null) {
    lines.push(worthKnowing('no-next-game', 'There is no next game to announce at the end.', { resource: 'games', id: null }, mainGameOf(night.games)?.gameId));
  }
  return lines;
}

function halftimeLines(night: NightForPacket): ReadinessLine[] {
  const long = longHalftime(night);
  if (!long) return [];
  const mend = { resource: 'nights', id: night.nightId, tab: 'edit' };
  return [long.minutes > long.longestMinutes ? mustFix('halftime-too-long', longHalftimeSentence(long), mend) : worthKnowing('halftime-long', longHalftimeSentence(long), mend)];
}

/** The night itself: its games, its people, its venue, its halftime. */
export function linesOfNight(looked: Looked): ReadinessLine[] {
  const { night } = looked;
  return [...gameLines(night), ...venueLines(night), ...peopleLines(looked), ...halftimeLines(night)];
}

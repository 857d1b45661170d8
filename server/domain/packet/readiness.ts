import type { GameForPacket, NightForPacket, TeamForPacket, WordsForPacket } from './night-for-packet.ts';
import type { Cue, Packet, WindowLoad } from './packet.ts';

/** One line of "before you print": what is missing, and which record mends it. */
export interface ReadinessLine {
  readonly code: string;
  readonly grade: 'mustFix' | 'worthKnowing';
  readonly sentence: string;
  /** The kind of record to open, by its name in the address: `teams`, `contracts`, `nights`, `venues`, `scripts`. */
  readonly resource: string;
  readonly id: string | null;
  readonly gameId: string | null;
}

type Line = (code: string, grade: ReadinessLine['grade'], sentence: string, resource: string, id: string | null, gameId?: string) => ReadinessLine;
const line: Line = (code, grade, sentence, resource, id, gameId) => ({ code, grade, sentence, resource, id, gameId: gameId ?? null });

function teamLines(game: GameForPacket, team: TeamForPacket): ReadinessLine[] {
  const lines: ReadinessLine[] = [];
  const add = (code: string, grade: ReadinessLine['grade'], sentence: string): void => {
    lines.push(line(code, grade, sentence, 'teams', team.teamId, game.gameId));
  };
  const who = `${team.schoolName} (${game.level})`;
  if (team.roster.length === 0) add('no-roster', 'mustFix', `${who} has no roster.`);
  else if (!team.roster.some((player) => player.isStarter)) add('no-starters', 'worthKnowing', `${who} has no starters marked; the announcer takes them from the book.`);
  if (team.headCoach === null) add('no-head-coach', 'worthKnowing', `${who} has no head coach to introduce.`);
  const numbers = team.roster.map((player) => player.number);
  const twice = [...new Set(numbers.filter((number, place) => numbers.indexOf(number) !== place))];
  for (const number of twice) add('number-clash', 'mustFix', `Two players of ${who} wear number ${number}.`);
  const unsaid = team.roster.filter((player) => player.announce === 'name' && player.sayAs === null && /[^\p{ASCII}]/u.test(player.name));
  if (unsaid.length > 0) {
    add('name-without-say-as', 'worthKnowing', `${who}: nobody has written how to say ${unsaid.map((player) => player.name).join(', ')}.`);
  }
  return lines;
}

function copyLines(game: GameForPacket, words: WordsForPacket, placementId: string | null): ReadinessLine[] {
  const what = `${words.sponsorName} (${words.readKind}, ${game.level})`;
  const has = words.copyText !== null && words.copyText.trim() !== '';
  const fallback = words.fallbackText !== null && words.fallbackText.trim() !== '';
  const add = (code: string, grade: ReadinessLine['grade'], sentence: string): ReadinessLine[] => [
    line(code, grade, sentence, 'placements', placementId, game.gameId),
  ];
  if (has && words.isApproved) return [];
  if (!has && !fallback) return add('no-copy', 'mustFix', `There are no words to read for ${what}.`);
  if (!has) return add('no-copy', 'worthKnowing', `There is no copy for ${what}; the neutral line is printed.`);
  if (fallback) return add('copy-not-approved', 'worthKnowing', `The copy of ${what} is not approved; the neutral line is printed instead.`);
  return add('copy-not-approved', 'mustFix', `The copy of ${what} is not approved and there is no neutral line to read instead.`);
}

function nightLines(night: NightForPacket): ReadinessLine[] {
  const lines: ReadinessLine[] = [];
  const { venue } = night;
  if (night.games.length === 0) lines.push(line('no-game', 'mustFix', 'No game is set for this night.', 'nights', night.nightId));
  if (venue.evacuationText === null || venue.exitsText === null) {
    lines.push(line('no-emergency-text', 'mustFix', `${venue.name} has no evacuation text or no exits written down.`, 'venues', null));
  }
  if (venue.defibrillatorPlace === null) lines.push(line('no-defibrillator-place', 'worthKnowing', `Nobody has written where the defibrillator of ${venue.name} is.`, 'venues', null));
  const roles = new Set(night.people.map((person) => person.role));
  if (!roles.has('announcer')) lines.push(line('nobody-announcing', 'mustFix', 'Nobody is down to announce.', 'nights', night.nightId));
  if (!roles.has('spotter')) lines.push(line('no-spotter', 'worthKnowing', 'Nobody is down to keep the tally at the table.', 'nights', night.nightId));
  if (night.settings.anthem === 'sung' && !roles.has('singer')) lines.push(line('no-singer', 'worthKnowing', 'The anthem is sung tonight, but no singer is named.', 'nights', night.nightId));
  if (night.nextGame === null) lines.push(line('no-next-game', 'worthKnowing', 'There is no next game to announce at the end.', 'games', null));
  if (night.games.some((game) => game.placements.some((placement) => placement.presents)) && !roles.has('presenter')) {
    lines.push(line('no-presenter', 'worthKnowing', 'A sponsor presents something tonight, but no presenter is named.', 'nights', night.nightId));
  }
  return lines;
}

/** What a look at the night before printing goes by. */
export interface Looked {
  readonly night: NightForPacket;
  readonly cues: readonly Cue[];
  readonly windows: readonly WindowLoad[];
  /** the scripts that could not be filled in, each with the reason */
  readonly broken: readonly { readonly title: string; readonly reason: string }[];
  /** texts in which a student was named who is not to be named */
  readonly redactedTexts: readonly string[];
}

/**
 * What is missing before a packet is printed: what must be fixed first, then what is worth knowing.
 */
export function findGaps({ night, cues, broken, redactedTexts }: Looked): ReadinessLine[] {
  const lines = nightLines(night);
  for (const game of night.games) {
    lines.push(...teamLines(game, game.visitors), ...teamLines(game, game.home));
    for (const placement of game.placements) lines.push(...copyLines(game, placement, placement.placementId));
    for (const mention of game.mentions) lines.push(...copyLines(game, mention, null));
  }
  for (const { title, reason } of broken) lines.push(line('script-broken', 'mustFix', `The script “${title}” could not be filled in: ${reason}`, 'scripts', null));
  if (redactedTexts.length > 0) {
    lines.push(line('name-not-to-be-used', 'mustFix', `A text named a student whose family chose otherwise; it now says: “${redactedTexts[0]}”`, 'scripts', null));
  }
  if (cues.length > 0 && night.games.every((game) => game.placements.length + game.mentions.length === 0)) {
    lines.push(line('no-sponsor-reads', 'worthKnowing', 'No sponsor read is planned for this night.', 'nights', night.nightId));
  }
  return lines.sort((one, other) => (one.grade === other.grade ? 0 : one.grade === 'mustFix' ? -1 : 1));
}

/** The lines of "before you print", what must be fixed first. Empty means: print. */
export function readinessOf(packet: Packet): readonly ReadinessLine[] {
  return packet.readiness;
}

export function isReady(packet: Packet): boolean {
  return packet.readiness.every((entry) => entry.grade !== 'mustFix');
}

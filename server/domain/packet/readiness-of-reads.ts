import { foodCaution } from '../sponsorship/food-copy.ts';
import type { GameForPacket, NightForPacket, PlacementForPacket, SponsorFacts, WordsForPacket } from './night-for-packet.ts';
import { profileAt, windowTitle } from './game-windows.ts';
import { mustFix, worthKnowing } from './readiness-line.ts';
import type { Mend } from './readiness-line.ts';
import type { Looked, ReadinessLine } from './readiness.ts';

const isThere = (text: string | null): boolean => text !== null && text.trim() !== '';

/** Words that are missing, not approved, or changed since they were. */
function copyLines(game: GameForPacket, words: WordsForPacket, nightId: string): ReadinessLine[] {
  const { facts } = words;
  const what = `${words.sponsorName} (${words.readKind})`;
  const mend: Mend = facts?.copyId ? { resource: 'copies', id: facts.copyId } : facts ? { resource: 'copies', id: null } : { resource: 'nights', id: nightId, tab: 'placements' };
  const fallback = isThere(words.fallbackText);
  if (isThere(words.copyText) && words.isApproved) {
    if (facts?.waitingVersion == null) return [];
    return [worthKnowing('copy-changed', `The copy of ${what} has a newer version ${facts.waitingVersion} that nobody has approved; version ${words.copyVersion} is read.`, mend, game.gameId)];
  }
  if (!isThere(words.copyText)) {
    return [fallback
      ? worthKnowing('no-copy', `There is no copy for ${what}; the neutral line is printed.`, mend, game.gameId)
      : mustFix('no-copy', `There are no words to read for ${what}.`, mend, game.gameId)];
  }
  return [fallback
    ? worthKnowing('copy-not-approved', `The copy of ${what} is not approved; the neutral line is printed instead.`, mend, game.gameId)
    : mustFix('copy-not-approved', `The copy of ${what} is not approved and there is no neutral line to read instead.`, mend, game.gameId)];
}

function sponsorLines(night: NightForPacket, game: GameForPacket, words: WordsForPacket, facts: SponsorFacts): ReadinessLine[] {
  const lines: ReadinessLine[] = [];
  const contract = { resource: 'contracts', id: facts.contractId };
  if (facts.isBlocked && facts.exceptionApprovedBy === null) {
    lines.push(mustFix('category-blocked', `${words.sponsorName} is in a category the department blocks (${facts.categoryName}), and no exception is recorded.`, contract, game.gameId));
  }
  if (!facts.isSigned) {
    lines.push(mustFix('contract-not-signed', `The contract with ${words.sponsorName} is not signed; the director may let the read stand.`, contract, game.gameId));
  }
  const food = foodCaution({ isFood: facts.isFood, readOn: night.heldOn, clock: game.startsClock ?? null }, night.settings.schoolDayEndsAt ?? '15:00');
  if (food !== null) lines.push(worthKnowing('food-in-school-day', `${words.sponsorName}: ${food}`, { resource: 'sponsors', id: facts.sponsorId }, game.gameId));
  return lines;
}

const distinct = <T>(items: readonly T[]): T[] => [...new Set(items)];

/** Two sponsors of one category in one window. */
function competitorLines(night: NightForPacket, game: GameForPacket): ReadinessLine[] {
  const mend = { resource: 'nights', id: night.nightId, tab: 'placements' };
  const profile = profileAt(night, game);
  return distinct(game.placements.map(({ windowKey }) => windowKey)).flatMap((windowKey) => {
    const within = game.placements.filter((placement) => placement.windowKey === windowKey && placement.facts);
    return distinct(within.map(({ facts }) => facts!.categoryId)).flatMap((categoryId) => {
      const rivals = within.filter(({ facts }) => facts!.categoryId === categoryId);
      const names = distinct(rivals.map(({ sponsorName }) => sponsorName));
      if (names.length < 2) return [];
      const sentence = `${names.join(' and ')} are both in ${rivals[0]!.facts!.categoryName} and both in one window: ${windowTitle(profile, windowKey)} (${game.level}).`;
      return [mustFix('competitors-in-window', sentence, mend, game.gameId)];
    });
  });
}

/** More sponsors of a read kind in a game than it may have: an exclusive kind held twice. */
function exclusiveLines(night: NightForPacket, game: GameForPacket): ReadinessLine[] {
  const reads = [...game.placements, ...game.mentions].filter(({ facts }) => facts);
  return distinct(reads.map(({ facts }) => facts!.readKindId)).flatMap((readKindId) => {
    const ofKind = reads.filter(({ facts }) => facts!.readKindId === readKindId);
    const { sponsorsPerGame } = ofKind[0]!.facts!;
    const names = distinct(ofKind.map(({ sponsorName }) => sponsorName));
    if (names.length <= sponsorsPerGame) return [];
    const sentence = sponsorsPerGame === 1
      ? `${ofKind[0]!.readKind} is for one sponsor a game, and ${names.join(' and ')} hold it in the ${game.level} game.`
      : `${ofKind[0]!.readKind} is for ${sponsorsPerGame} sponsors a game; in the ${game.level} game ${names.join(', ')} hold it.`;
    return [mustFix('exclusive-held-twice', sentence, { resource: 'nights', id: night.nightId, tab: 'placements' }, game.gameId)];
  });
}

const KINDS: Readonly<Record<PlacementForPacket['window'], 'pregame' | 'betweenPeriods' | 'timeOut' | 'halftime' | 'postgame' | 'deadBall'>> = {
  pregame: 'pregame', betweenPeriods: 'betweenPeriods', timeout: 'timeOut', halftime: 'halftime', postgame: 'postgame', deadBall: 'deadBall',
};

/** Reads in a window that belongs to the conference or the association. */
function ownerLines(night: NightForPacket, game: GameForPacket): ReadinessLine[] {
  const owners = game.owners;
  if (!owners) return [];
  return game.placements.flatMap((placement) => {
    const owner = owners.windowOwners[KINDS[placement.window]] ?? owners.windowsOwnedBy;
    if (owner === 'us') return [];
    const sentence = `${placement.sponsorName} is planned into a window of the ${owner} (${windowTitle(profileAt(night, game), placement.windowKey)}, ${game.level}).`;
    return [mustFix('window-not-ours', sentence, { resource: 'nights', id: night.nightId, tab: 'placements' }, game.gameId)];
  });
}

/** Everything about the sponsors of the night: their words, their categories, their contracts, and who else is heard beside them. */
export function linesOfReads({ night, cues }: Looked): ReadinessLine[] {
  const lines = night.games.flatMap((game) => {
    const reads = [...game.placements, ...game.mentions];
    const own = reads.flatMap((words) => [...copyLines(game, words, night.nightId), ...(words.facts ? sponsorLines(night, game, words, words.facts) : [])]);
    return [...own, ...competitorLines(night, game), ...exclusiveLines(night, game), ...ownerLines(night, game)];
  });
  if (cues.length > 0 && night.games.every((game) => game.placements.length + game.mentions.length === 0)) {
    lines.push(worthKnowing('no-sponsor-reads', 'No sponsor read is planned for this night.', { resource: 'nights', id: night.nightId, tab: 'placements' }));
  }
  return lines;
}

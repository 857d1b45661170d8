import { reasonForSponsor } from '../../domain/reports/reason-for-sponsor.ts';
import type { FulfillmentView, NightFulfillment, ReadGiven } from '../fulfillment/fulfillment.dto.ts';
import type { NightOfSponsor, ReadOfSponsor } from './nights-of-sponsor.dto.ts';

export interface PlannedRead {
  nightId: string;
  readKindName: string;
  count: number;
}

/**
 * The nights of all of a sponsor's contracts as one calendar, the first night first.
 *
 * @param ownTitles the titles of the sponsor's own copy: a contract that was handed on may have been read in another's words
 */
export function nightsOfSponsor(views: readonly FulfillmentView[], planned: readonly PlannedRead[], ownTitles: ReadonlySet<string>): NightOfSponsor[] {
  const nights = new Map<string, NightOfSponsor>();
  for (const { contractId, nights: ofContract } of views) {
    for (const night of ofContract) {
      const known = nights.get(night.nightId) ?? emptyNight(night);
      const games = night.games.filter((game) => !known.games.some((other) => other.gameId === game.gameId));
      const reads = night.reads.map((read) => readOfSponsor(read, contractId, ownTitles));
      nights.set(night.nightId, { ...known, games: [...known.games, ...games], reads: [...known.reads, ...reads] });
    }
  }
  for (const { nightId, readKindName, count } of planned) nights.get(nightId)?.planned.push({ readKindName, count });
  return [...nights.values()]
    .map((night) => ({ ...night, reads: night.reads.toSorted(byTime) }))
    .toSorted((one, other) => (one.heldOn < other.heldOn ? -1 : one.heldOn > other.heldOn ? 1 : one.nightId < other.nightId ? -1 : 1));
}

function emptyNight({ nightId, heldOn, isSignedOff, attendance, attendanceHow }: NightFulfillment): NightOfSponsor {
  return { nightId, heldOn, isSignedOff, games: [], attendance, attendanceHow, reads: [], planned: [] };
}

function readOfSponsor(read: ReadGiven, contractId: string, ownTitles: ReadonlySet<string>): ReadOfSponsor {
  const { entryId, occurrence, commitmentId, readKindName, gameId, windowName, at, what, atTheTable, forMissedOn, disputeId } = read;
  const isOwn = read.copyTitle !== null && ownTitles.has(read.copyTitle);
  return {
    entryId, occurrence, contractId, commitmentId, readKindName, gameId, windowName, at, what, atTheTable, forMissedOn, disputeId,
    copyTitle: isOwn ? read.copyTitle : null,
    copyVersionNumber: isOwn ? read.copyVersionNumber : null,
    why: reasonForSponsor(read.why),
  };
}

/** What nobody logged has no hour and comes last. */
function byTime(one: ReadOfSponsor, other: ReadOfSponsor): number {
  const [first, second] = [one.at ?? '~', other.at ?? '~'];
  return first < second ? -1 : first > second ? 1 : 0;
}

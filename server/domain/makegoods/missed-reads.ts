import type { Day } from '../day.ts';
import type { SlotShortfall } from './shortfall-of-line.ts';

export const MISSED_BECAUSE = ['windowOver', 'gameCancelled', 'seasonEnding'] as const;
export type MissedBecause = (typeof MISSED_BECAUSE)[number];

/** One read that was to be given and was not. */
export interface MissedRead {
  /** the game or night of a commitment that is counted by it, else null */
  readonly slotId: string | null;
  readonly nightId: string | null;
  readonly gameId: string | null;
  readonly windowKey: string | null;
  readonly placementId: string | null;
  readonly missedOn: Day;
  readonly because: MissedBecause;
  /** in words, as they stand after a colon */
  readonly why: string;
}

/** A missed read that a proposal speaks for. */
export interface MissedClaim {
  readonly proposalId: string;
  readonly slotId: string | null;
  readonly nightId: string | null;
  readonly gameId: string | null;
  readonly placementId: string | null;
  /** the ledger does not know of it yet: nobody answered, or what was agreed waits */
  readonly isPending: boolean;
}

export interface MissedAndClaimed extends MissedRead {
  /** the proposal that speaks for it, or null */
  readonly proposalId: string | null;
  /** still owed, and no proposal speaks for it */
  readonly isOpen: boolean;
}

export interface LineMisses {
  readonly slots: readonly SlotShortfall[];
  /** what the log has of reads that were planned, or shots that fell, and were not read */
  readonly logged: readonly MissedRead[];
  readonly claims: readonly MissedClaim[];
  /** what to call reads of which the log has nothing, the likeliest first; asked for as many as are needed */
  readonly unlogged: (slotId: string | null, count: number) => readonly MissedRead[];
}

/**
 * The missed reads of a line, first to last, each with the proposal that speaks for it. A read given later stands for the
 * earliest that was missed, so of those nobody speaks for the last ones are still owed, and never more than are owed. Where more
 * is short than the log has missed, the rest is named by the games that were called off, and then by the end of the season.
 */
export function missedReadsOf({ slots, logged, claims, unlogged }: LineMisses): MissedAndClaimed[] {
  const found = slots.flatMap((slot) => {
    const left = claims.filter((claim) => claim.slotId === slot.slotId);
    const pending = left.filter((claim) => claim.isPending).length;
    const mine = logged.filter((read) => read.slotId === slot.slotId).map((read) => ({ ...read, proposalId: takeClaim(left, read) }));
    const unclaimed = mine.filter((read) => read.proposalId === null).toSorted(byDay);
    const open = Math.max(0, slot.owed - slot.awaiting - pending);
    const missing = Math.max(0, slot.shortfall - pending - unclaimed.length);
    const named = missing === 0 ? [] : unlogged(slot.slotId, missing + left.length).filter((read) => takeClaim(left, read) === null).slice(0, missing);
    const all = [...unclaimed, ...named.map((read) => ({ ...read, proposalId: null }))];
    const isOpen = new Set(all.slice(Math.max(0, all.length - open)));
    return [...mine.filter((read) => read.proposalId !== null), ...all].map((read) => ({ ...read, isOpen: isOpen.has(read) }));
  });
  return found.toSorted(byDay);
}

const byDay = (one: MissedRead, other: MissedRead): number => (one.missedOn < other.missedOn ? -1 : Number(one.missedOn > other.missedOn));

function takeClaim(claims: MissedClaim[], read: MissedRead): string | null {
  const at = claims.findIndex((claim) =>
    read.placementId !== null ? claim.placementId === read.placementId : claim.placementId === null && claim.nightId === read.nightId && claim.gameId === read.gameId,
  );
  return at < 0 ? null : claims.splice(at, 1)[0]!.proposalId;
}

/** Reads of a line that are beyond giving, with nothing agreed and nothing proposed for them. */
export function openShortfall(slots: readonly SlotShortfall[], claims: readonly MissedClaim[]): number {
  return slots.reduce((sum, slot) => {
    const pending = claims.filter((claim) => claim.slotId === slot.slotId && claim.isPending).length;
    return sum + Math.max(0, slot.shortfall - pending);
  }, 0);
}

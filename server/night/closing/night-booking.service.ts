import { Inject, Injectable } from '@nestjs/common';
import { amendmentOf } from '../../domain/night/sign-off.ts';
import type { ClaimableRead } from '../../domain/night/sign-off.ts';
import { amountsOf } from '../../domain/sponsorship/contract-amounts.ts';
import { covers } from '../../domain/sponsorship/covered-games.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import type { SignedCommitment } from '../../planning/signed-commitments.service.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import type { CountedNight, HeldClaim } from './night-counting.service.ts';
import type { LockedNight } from '../log/night-log.service.ts';

export interface NightBooked {
  counted: number;
  released: number;
  earnedCents: number;
}

/** One entry's reads as they are booked: several happenings answered by one mention are one event of several reads. */
interface EntryToCount {
  entryId: string;
  commitment: SignedCommitment;
  reads: ClaimableRead[];
}

interface Change {
  toCount: EntryToCount[];
  toRelease: HeldClaim[];
}

/** Takes what a night comes to into the ledgers, and holds a claim for every read counted. */
@Injectable()
export class NightBooking {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(TermLedger) private readonly ledger: TermLedger,
  ) {}

  /** Books the difference between what is counted and what should be; before sign-off that is everything. */
  async book(night: LockedNight, counted: CountedNight): Promise<NightBooked> {
    const change = changeOf(counted);
    const terms = [...new Set([...counted.commitments.values()].filter((one) => one.termState !== 'draft' && one.termState !== 'closed').map((one) => one.termId))].sort();
    await this.work.lock(Term, terms);
    const positions = await this.ledger.positions(terms);
    const events = new Map<string, string>();
    const claimed = new Map(counted.claims.map((claim) => [claim.entryId, claim]));
    let earnedCents = 0;
    for (const termId of terms) {
      const position = positions.get(termId);
      const happenings = position ? happeningsOf(termId, night, counted, change, position) : [];
      if (happenings.length === 0) continue;
      const told = happenings.map((happening) => ({
        happening,
        because: {
          cause: 'night',
          causeId: night.id,
          occurredOn: night.heldOn,
          ...(happening.kind === 'readTakenBack' ? { takesBackEventId: claimed.get(happening.readId)?.eventId ?? null } : {}),
        },
      }));
      const booked = await this.ledger.happen(termId, told);
      happenings.forEach((happening, place) => {
        if (happening.kind === 'readCounted' || happening.kind === 'makegoodGiven') events.set(happening.readId, booked.eventIds[place]!);
      });
      earnedCents += amountsOf(booked.position).revenueCents - (booked.before ? amountsOf(booked.before).revenueCents : 0);
    }
    await this.moveClaims(night, change, events);
    const recounted = change.toCount.reduce((sum, one) => sum + one.reads.length, 0);
    const before = new Set(change.toRelease.map(keyOf));
    const kept = change.toCount.flatMap((one) => one.reads).filter((read) => before.has(keyOf(read))).length;
    return { counted: recounted - kept, released: change.toRelease.length - kept, earnedCents };
  }

  private async moveClaims(night: LockedNight, { toCount, toRelease }: Change, events: ReadonlyMap<string, string>): Promise<void> {
    if (toRelease.length > 0) {
      await this.work.sql('delete from counted_read where department_id = $1 and id = any($2::uuid[])', [toRelease.map((claim) => claim.id)]);
    }
    const rows = toCount.flatMap(({ entryId, commitment, reads }) =>
      reads.map(({ gameId, cueKey, occurrence }) => ({ id: newId(), nightId: night.id, gameId, cueKey, occurrence, entryId, commitmentId: commitment.id, eventId: events.get(entryId)! })),
    );
    await this.work.add('counted_read', rows);
  }
}

const keyOf = (claim: { entryId: string; gameId: string; cueKey: string; occurrence: number }): string =>
  `${claim.entryId} ${claim.gameId} ${claim.cueKey} ${claim.occurrence}`;

/** An entry whose reads changed at all is taken back whole and counted anew, because it is one event. */
function changeOf({ claims, count, commitments }: CountedNight): Change {
  const { count: fresh, release } = amendmentOf(claims, count.reads);
  const touched = new Set([...fresh, ...release].map((one) => one.entryId));
  const toRelease = claims.filter((claim) => touched.has(claim.entryId));
  const toCount: EntryToCount[] = [];
  for (const entryId of touched) {
    const reads = count.reads.filter((read): read is ClaimableRead => read.entryId === entryId && read.outcome === 'counts' && read.gameId !== null);
    const commitment = reads[0] && commitments.get(reads[0].commitmentId);
    if (commitment) toCount.push({ entryId, commitment, reads });
  }
  return { toCount, toRelease };
}

function happeningsOf(termId: string, night: LockedNight, counted: CountedNight, change: Change, position: Position): Happening[] {
  const ofTerm = [...counted.commitments.values()].filter((one) => one.termId === termId);
  const ids = new Set(ofTerm.map((one) => one.id));
  const takenBack = [...new Set(change.toRelease.filter((claim) => ids.has(claim.commitmentId)).map((claim) => claim.entryId))];
  const replacing = replacementsOf(counted, takenBack, position);
  return [
    ...takenBack.map((readId): Happening => ({ kind: 'readTakenBack', readId })),
    ...ofTerm.flatMap((one) => occurrencesOf(one, counted, position)),
    ...ofTerm.flatMap((one) => gamesPlayedOf(one, counted, position)),
    ...change.toCount
      .filter((one) => ids.has(one.commitment.id))
      .map((one) => replacing(one) ?? readCounted(one, night, position)),
  ];
}

function readCounted({ entryId, commitment, reads }: EntryToCount, night: LockedNight, position: Position): Happening {
  const gameId = slotFor(commitment, reads[0]!.gameId, night.id, position);
  return { kind: 'readCounted', readId: entryId, lineId: commitment.id, gameId, ...(reads.length > 1 ? { times: reads.length } : {}) };
}

/**
 * Tells reads that were planned as replacements: they settle what was missed. One more than was agreed is a read like
 * any other, so that it never holds up a sign-off.
 */
function replacementsOf({ makegoods }: CountedNight, takenBack: readonly string[], position: Position): (one: EntryToCount) => Happening | null {
  const agreed = position.lines.flatMap((line) => line.slots.flatMap((slot) => slot.makegoods));
  const left = new Map(agreed.map((one) => [one.makegoodId, one.replacements - one.given]));
  for (const readId of takenBack) {
    const makegoodId = position.reads[readId]?.makegoodId;
    if (makegoodId !== undefined) left.set(makegoodId, (left.get(makegoodId) ?? 0) + 1);
  }
  return ({ entryId, commitment, reads }) => {
    const planned = makegoods.get(reads[0]!.placementId ?? '');
    const free = planned ? (left.get(planned.makegoodId) ?? 0) : 0;
    if (!planned || planned.commitmentId !== commitment.id || free === 0) return null;
    left.set(planned.makegoodId, free - 1);
    return { kind: 'makegoodGiven', makegoodId: planned.makegoodId, readId: entryId };
  };
}

/** Per night the night's id stands for the game; where the contract was signed before the game had a night, the game's own. */
function slotFor(commitment: SignedCommitment, gameId: string, nightId: string, position: Position): string {
  if (commitment.counting !== 'perNight') return gameId;
  const slots = position.lines.find((line) => line.terms.lineId === commitment.id)?.slots ?? [];
  return !slots.some((slot) => slot.gameId === nightId) && slots.some((slot) => slot.gameId === gameId) ? gameId : nightId;
}

function occurrencesOf(one: SignedCommitment, { count }: CountedNight, position: Position): Happening[] {
  return (count.occurrences.get(one.id) ?? []).flatMap((occurrence): Happening[] => {
    const occurrenceId = `${occurrence.entryIds[0]}/${one.id}`;
    const isCounted = position.occurrences[occurrenceId] !== undefined;
    if (occurrence.stands === isCounted) return [];
    return [occurrence.stands ? { kind: 'occurrenceCounted', occurrenceId, lineId: one.id } : { kind: 'occurrenceTakenBack', occurrenceId }];
  });
}

/** A line without a minimum at a fixed price earns with the games that were played. */
function gamesPlayedOf(one: SignedCommitment, { games }: CountedNight, position: Position): Happening[] {
  const line = position.lines.find((it) => it.terms.lineId === one.id);
  if (line?.terms.kind !== 'reads' || line.terms.gamesPlanned === undefined) return [];
  const { gamesPlayed } = line;
  return games
    .filter((game) => game.status === 'played' && covers(one, game) && !gamesPlayed.includes(game.id))
    .map((game): Happening => ({ kind: 'gamePlayed', lineId: one.id, gameId: game.id }));
}

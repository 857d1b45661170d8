import type { PromiseToPlan } from '../../domain/planning/facts/promise-to-plan.ts';
import type { LinePosition, Position } from '../../domain/sponsorship/position.ts';
import { readsOfLine, readsOfSlot } from '../../domain/sponsorship/slot-reads.ts';
import type { SignedCommitment } from '../signed-commitments.service.ts';

/** A read whose place is on a night that is held, or on a game that waits, and that nobody has signed off: it is spoken for. */
export interface ReadElsewhere {
  readonly promiseId: string;
  readonly nightId: string;
  readonly seasonId: string;
}

export interface MakegoodToPlan {
  readonly id: string;
  readonly commitmentId: string;
  readonly readKindId: string;
  readonly readKindName: string;
  readonly placeGroup: string | null;
  readonly sponsorsPerGame: number;
  readonly seconds: number;
  readonly kindWindows: string[];
}

function lineOf(position: Position | undefined, commitmentId: string): LinePosition | undefined {
  return position?.lines.find((line) => line.terms.lineId === commitmentId);
}

/** Missed reads for which others were agreed: they are owed, and their replacements have places of their own. */
function awaitingMakegood(slots: LinePosition['slots']): number {
  return slots.flatMap((slot) => slot.makegoods).reduce((sum, makegood) => sum + makegood.missed - makegood.settled, 0);
}

/** What a commitment owes over its whole term, without the reads for which others were agreed. */
export function owedOverTerm(commitmentId: string, position: Position | undefined): number {
  const line = lineOf(position, commitmentId);
  return line === undefined ? 0 : readsOfLine(line).owed - awaitingMakegood(line.slots);
}

/**
 * What a signed commitment still owes by its ledger, less what is spoken for elsewhere.
 *
 * @param kept reads of the term that are left for other seasons the commitment reaches into
 */
export function promiseOfCommitment(one: SignedCommitment, position: Position | undefined, elsewhere: readonly ReadElsewhere[], kept = 0): PromiseToPlan {
  const line = lineOf(position, one.id);
  const spokenFor = elsewhere.filter((read) => read.promiseId === one.id);
  return {
    ...one,
    source: 'commitment',
    dealId: one.contractId,
    seconds: one.defaultSeconds,
    kindWindows: one.windows,
    // Narrowed already.
    windowKinds: [],
    owed: (key) => {
      if (line === undefined) return 0;
      if (key === null) return Math.max(0, owedOverTerm(one.id, position) - spokenFor.length - kept);
      const slot = line.slots.find((it) => it.gameId === key);
      if (slot === undefined) return 0;
      return Math.max(0, readsOfSlot(line, slot).owed - awaitingMakegood([slot]) - spokenFor.filter((read) => read.nightId === key).length);
    },
  };
}

/** The replacements that a makegood still owes; they are read in the windows of their own kind, over the games of the commitment. */
export function promiseOfMakegood(makegood: MakegoodToPlan, one: SignedCommitment, position: Position | undefined, elsewhere: readonly ReadElsewhere[]): PromiseToPlan {
  const agreed = lineOf(position, one.id)?.slots.flatMap((slot) => slot.makegoods).find((it) => it.makegoodId === makegood.id);
  const spokenFor = elsewhere.filter((read) => read.promiseId === makegood.id).length;
  const owed = Math.max(0, (agreed?.replacements ?? 0) - (agreed?.given ?? 0) - spokenFor);
  const { id, readKindId, readKindName, placeGroup, sponsorsPerGame, seconds, kindWindows } = makegood;
  return {
    ...one,
    ...{ id, readKindId, readKindName, placeGroup, sponsorsPerGame, seconds, kindWindows },
    source: 'makegood',
    dealId: one.contractId,
    counting: 'perTerm',
    windowKinds: [],
    leastPerGame: null,
    mostPerGame: null,
    pinnedGameIds: [],
    owed: () => owed,
  };
}

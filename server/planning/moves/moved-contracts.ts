import { amountsOf } from '../../domain/sponsorship/contract-amounts.ts';
import { movedLines } from '../../domain/planning/moves/moved-lines.ts';
import type { MovedContract, MovedLineView, NightEffect } from './move-preview.dto.ts';
import type { ContractOfTerm, MoveTrace, PlacedOnGame } from './move-traces.service.ts';

/** What a move did to each contract, from what stood before and after it. */
export function movedContracts(before: MoveTrace, after: MoveTrace, keys: ReadonlySet<string>): MovedContract[] {
  return before.contracts.flatMap(({ termId, ...contract }) => {
    const [was, now] = [before.positions.get(termId), after.positions.get(termId)];
    if (!was || !now) return [];
    const lines = linesOf(contract, movedLines(was, now, keys), before.placements, after);
    const memos = after.memos.filter((memo) => memo.contractId === contract.contractId && !before.memos.some((one) => one.id === memo.id));
    const toBillChangeCents = amountsOf(now).toBillCents - amountsOf(was).toBillCents;
    if (lines.length === 0 && memos.length === 0 && toBillChangeCents === 0) return [];
    return [{
      ...contract,
      lines,
      creditedCents: lines.reduce((sum, line) => sum + line.creditedCents, 0),
      memos: memos.map(({ id: _id, contractId: _contractId, ...memo }) => memo),
      toBillChangeCents,
    }];
  });
}

/** The lines with reads that changed, and those that only have a place in the game. */
function linesOf({ contractId }: Omit<ContractOfTerm, 'termId'>, moved: ReturnType<typeof movedLines>, placedBefore: readonly PlacedOnGame[], after: MoveTrace): MovedLineView[] {
  const placed = placedBefore.filter((one) => one.contractId === contractId);
  const others = [...new Map(placed.map((one) => [one.commitmentId, one.readKindName]))]
    .filter(([lineId]) => !moved.some((line) => line.lineId === lineId))
    .map(([lineId, name]) => ({ lineId, name, credited: 0, creditedCents: 0, released: 0, added: 0, kept: 0 }));
  return [...moved, ...others].map((line) => ({ ...line, ...placesOf(placed.filter((one) => one.commitmentId === line.lineId), after.placements) }));
}

function placesOf(before: readonly PlacedOnGame[], after: readonly PlacedOnGame[]): Pick<MovedLineView, 'placesLost' | 'placesMoved' | 'placesKept'> {
  const of = new Map(after.map((one) => [one.id, one]));
  const stands = before.filter((one) => of.has(one.id));
  const moved = stands.filter((one) => of.get(one.id)!.nightId !== one.nightId || of.get(one.id)!.heldOn !== one.heldOn);
  return { placesLost: before.length - stands.length, placesMoved: moved.length, placesKept: stands.length - moved.length };
}

/** What becomes of the nights of the game. */
export function nightEffects(before: MoveTrace, after: MoveTrace): NightEffect[] {
  return before.nights.map(({ nightId, venueName, heldOn, tableLinks }) => {
    const night = after.nights.find((one) => one.nightId === nightId);
    return { nightId, venueName, heldOn, newHeldOn: night && night.heldOn !== heldOn ? night.heldOn : null, isGone: !night, gamesLeft: night?.gamesLeft ?? 0, tableLinks };
  });
}

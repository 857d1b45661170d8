import { assertBalanced, balanceOf } from '../ledger/balances.ts';
import { MONEY } from '../ledger/account.ts';
import { Refused } from '../refusals.ts';
import { amountsOf } from './contract-amounts.ts';
import { isPricedByRead, sumOf } from './line-values.ts';
import type { LinePosition, Position, SlotPosition } from './position.ts';
import { balancesOf } from './position-balances.ts';
import { earnsPerGame, ordinalsOf, readsOfLine, readsOfSlot, settledOrdinals } from './slot-reads.ts';

/** What is broken in a contract's state, one plain sentence each; empty when all holds. */
export function invariantsOf(position: Position): string[] {
  return [
    ...position.lines.flatMap((line) => line.slots.flatMap((slot) => brokenReads(line, slot))),
    ...position.lines.flatMap((line) => brokenValues(line)),
    ...brokenCounts(position),
    ...brokenMoney(position),
    ...brokenDocuments(position),
    ...brokenClose(position),
  ];
}

const unless = (holds: boolean, sentence: string): string[] => (holds ? [] : [sentence]);

function brokenReads(line: LinePosition, slot: SlotPosition): string[] {
  const reads = readsOfSlot(line, slot);
  const { promised, owed, given, madeGood, credited, released, carried, extra } = reads;
  const name = `${line.terms.name} ${slot.gameId ?? ''}`;
  return [
    ...unless(owed + given + madeGood + credited + released + carried === promised, `${name}: settled and owed are not what was promised`),
    ...unless([owed, given, madeGood, credited, released, extra].every((count) => count >= 0), `${name}: a count is below zero`),
    ...unless(extra * owed === 0, `${name}: an extra read waits while one is owed`),
    ...unless(given + extra === slot.counted, `${name}: given and extra are not the reads counted`),
  ];
}

function brokenValues(line: LinePosition): string[] {
  if (isPricedByRead(line.terms)) return unless(line.values.length === 0, `${line.terms.name}: a line priced by the read holds values`);
  return [
    ...unless(line.values.every((value) => Number.isSafeInteger(value) && value >= 0), `${line.terms.name}: a value is below zero`),
    ...unless(line.values.length === ordinalsOf(line), `${line.terms.name}: there is not one value per read`),
    ...unless(earnsPerGame(line) || readsOfLine(line).owed > 0 || sumOf(line.values.slice(settledOrdinals(line))) === 0, `${line.terms.name}: a value waits for no read`),
  ];
}

function brokenCounts(position: Position): string[] {
  const counted = new Map<string, number>();
  for (const read of Object.values(position.reads)) {
    if (read.makegoodId === undefined) counted.set(read.lineId, (counted.get(read.lineId) ?? 0) + read.times);
  }
  return position.lines.flatMap((line) => {
    if (line.terms.kind !== 'reads' || position.opening) return [];
    const inSlots = sumOf(line.slots.map((slot) => slot.counted));
    return unless(inSlots === (counted.get(line.terms.lineId) ?? 0), `${line.terms.name}: counted reads are not the reads of the log`);
  });
}

function brokenMoney(position: Position): string[] {
  const amounts = amountsOf(position);
  const { toBillCents, contractBalanceCents, openCents } = amounts;
  const balances = balancesOf(position);
  const isFixed = position.lines.every((line) => !isPricedByRead(line.terms)) && position.terms.billAtLeastCents === undefined;
  let balanced = true;
  try {
    assertBalanced(balances);
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    balanced = false;
  }
  return [
    ...unless(balanced, 'an entry does not sum to zero'),
    ...unless(!isFixed || toBillCents - contractBalanceCents === openCents, 'the bridge of the two ledgers is broken'),
    ...unless(!isFixed || toBillCents >= 0, 'more is billed than agreed'),
    ...unless(!isFixed || amounts.priceCents >= 0, 'the price is below zero'),
    ...unless(!isFixed || creditedWithoutInvoice(position) <= position.goodsCents, 'more goods are credited than were received'),
    ...unless(balanceOf(balances, 'money', MONEY.contractBalance) === contractBalanceCents, 'the contract balance is not revenue less billed'),
    ...unless(amounts.billedCents === billedBy(position), 'billed is not what the documents come to'),
  ];
}

function billedBy(position: Position): number {
  const documents = position.documents.filter((one) => !one.isVoid);
  return (
    sumOf(documents.map((one) => one.netCents - one.creditedCents - one.carriedCents - one.discountCents)) +
    position.goodsCents -
    creditedWithoutInvoice(position) -
    carriedWithoutInvoice(position)
  );
}

function creditedWithoutInvoice(position: Position): number {
  return sumOf(position.memos.flatMap((memo) => memo.parts).filter((part) => part.invoiceId === undefined).map((part) => part.netCents));
}

/** Goods that were billed and carried over stand on no invoice. */
function carriedWithoutInvoice(position: Position): number {
  const out = sumOf(position.carries.filter((carry) => carry.billedCents > 0).map((carry) => carry.billedCents));
  return out - sumOf(position.documents.map((one) => one.carriedCents));
}

function brokenDocuments(position: Position): string[] {
  return [
    ...position.documents.flatMap((one) => [
      ...unless(one.creditedCents + one.carriedCents + one.discountCents <= one.netCents, `invoice ${one.number}: more is credited than billed`),
      ...unless(one.creditedTaxCents + one.discountTaxCents <= one.taxCents, `invoice ${one.number}: more tax is credited than charged`),
    ]),
    ...readsBilledTwice(position),
  ];
}

function readsBilledTwice(position: Position): string[] {
  const readIds = position.documents.filter((one) => !one.isVoid).flatMap((one) => one.lines.flatMap((line) => line.readIds ?? []));
  return unless(new Set(readIds).size === readIds.length, 'a read stands on two live invoices');
}

function brokenClose(position: Position): string[] {
  if (!position.closed) return [];
  const { toBillCents, contractBalanceCents } = amountsOf(position);
  const owed = sumOf(position.lines.map((line) => readsOfLine(line).owed));
  return unless(owed === 0 && toBillCents === 0 && contractBalanceCents === 0, 'a closed contract is not settled');
}

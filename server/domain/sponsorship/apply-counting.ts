import { daysBetween } from '../day.ts';
import { refuse } from '../refusals.ts';
import type { HappeningOf } from './happening.ts';
import { checkCount, checkOwed, lineOf, slotOf } from './line-of.ts';
import type { LinePosition, MakegoodPosition, Position } from './position.ts';
import { earnsPerGame, readsOfSlot } from './slot-reads.ts';

const readLine = (position: Position, lineId: string): LinePosition => {
  const line = lineOf(position, lineId);
  return line.terms.kind === 'reads' ? line : refuse('not-a-read');
};

export function countRead(position: Position, { readId, lineId, gameId, times = 1 }: HappeningOf<'readCounted'>): void {
  checkCount(times);
  const line = readLine(position, lineId);
  if (position.reads[readId]) refuse('read-counted-twice');
  slotOf(line, gameId).counted += times;
  position.reads[readId] = { lineId, times, ...(gameId === undefined ? {} : { gameId }) };
}

export function takeBackRead(position: Position, { readId }: HappeningOf<'readTakenBack'>): void {
  const read = position.reads[readId] ?? refuse('read-taken-back-already');
  delete position.reads[readId];
  const line = lineOf(position, read.lineId);
  if (read.makegoodId === undefined) {
    slotOf(line, read.gameId).counted -= read.times;
    return;
  }
  const makegood = makegoodOf(line, read.makegoodId);
  makegood.given -= 1;
  makegood.settled = Math.min(makegood.settled, settledBy(makegood));
}

export function countOccurrence(position: Position, { occurrenceId, lineId, times = 1 }: HappeningOf<'occurrenceCounted'>): void {
  checkCount(times);
  const line = readLine(position, lineId);
  if (line.terms.kind !== 'reads' || line.terms.counting !== 'onOccurrence') refuse('not-counted-by-occurrence');
  if (position.occurrences[occurrenceId]) refuse('occurrence-counted-twice');
  slotOf(line, undefined).occurrences += times;
  position.occurrences[occurrenceId] = { lineId, times };
}

export function takeBackOccurrence(position: Position, { occurrenceId }: HappeningOf<'occurrenceTakenBack'>): void {
  const occurrence = position.occurrences[occurrenceId] ?? refuse('occurrence-taken-back-already');
  delete position.occurrences[occurrenceId];
  slotOf(lineOf(position, occurrence.lineId), undefined).occurrences -= occurrence.times;
}

/** A played game earns its share where an occurrence line has a fixed price and no minimum. */
export function countGamePlayed(position: Position, { lineId, gameId }: HappeningOf<'gamePlayed'>): void {
  const line = readLine(position, lineId);
  if (!earnsPerGame(line)) refuse('not-counted-by-game');
  if (line.gamesPlayed.includes(gameId)) refuse('game-counted-as-played');
  line.gamesPlayed.push(gameId);
}

export function takeBackGamePlayed(position: Position, { lineId, gameId }: HappeningOf<'gamePlayedTakenBack'>): void {
  const line = readLine(position, lineId);
  if (!line.gamesPlayed.includes(gameId)) refuse('game-not-counted-as-played');
  line.gamesPlayed = line.gamesPlayed.filter((played) => played !== gameId);
}

export function agreeMakegood(position: Position, happening: HappeningOf<'makegoodAgreed'>): void {
  const { makegoodId, lineId, gameId, missed, replacements } = happening;
  const line = readLine(position, lineId);
  if (line.slots.some((slot) => slot.makegoods.some((one) => one.makegoodId === makegoodId))) refuse('makegood-already-agreed');
  const slot = slotOf(line, gameId);
  const pending = slot.makegoods.reduce((sum, one) => sum + one.missed - one.settled, 0);
  checkCount(replacements);
  checkOwed(line, slot, missed + pending);
  checkCount(missed);
  slot.makegoods.push({ makegoodId, missed, replacements, given: 0, settled: 0 });
}

/** Missed read i of N settles when replacement ⌈i × M / N⌉ of M is given; what is no longer owed settles nothing. */
export function giveMakegood(position: Position, { makegoodId, readId }: HappeningOf<'makegoodGiven'>): void {
  if (position.reads[readId]) refuse('read-counted-twice');
  const line = position.lines.find((one) => one.slots.some((slot) => slot.makegoods.some((it) => it.makegoodId === makegoodId)));
  const slot = line?.slots.find((one) => one.makegoods.some((it) => it.makegoodId === makegoodId));
  if (!line || !slot) return refuse('unknown-makegood');
  const makegood = makegoodOf(line, makegoodId);
  if (makegood.given >= makegood.replacements) refuse('makegood-all-given');
  const { owed } = readsOfSlot(line, slot);
  makegood.given += 1;
  makegood.settled += Math.min(owed, settledBy(makegood) - makegood.settled);
  position.reads[readId] = { lineId: line.terms.lineId, times: 1, makegoodId, ...(slot.gameId === undefined ? {} : { gameId: slot.gameId }) };
}

const settledBy = (makegood: MakegoodPosition) => Math.floor((makegood.given * makegood.missed) / makegood.replacements);

function makegoodOf(line: LinePosition, makegoodId: string): MakegoodPosition {
  const found = line.slots.flatMap((slot) => slot.makegoods).find((one) => one.makegoodId === makegoodId);
  return found ?? refuse('unknown-makegood');
}

const benefitLine = (position: Position, lineId: string, earns: 'onDelivery' | 'overDays'): LinePosition => {
  const line = lineOf(position, lineId);
  if (line.terms.kind !== 'benefit') refuse('not-a-benefit');
  if (line.terms.earns !== earns) refuse(earns === 'overDays' ? 'benefit-earns-on-delivery' : 'benefit-earns-over-days');
  return line;
};

export function deliverBenefit(position: Position, { deliveryId, lineId, quantity }: HappeningOf<'benefitDelivered'>): void {
  checkCount(quantity);
  const line = benefitLine(position, lineId, 'onDelivery');
  if (position.deliveries[deliveryId]) refuse('delivery-counted-twice');
  const slot = slotOf(line, undefined);
  const { owed } = readsOfSlot(line, slot);
  if (quantity > owed) refuse('more-than-promised', { open: owed });
  slot.counted += quantity;
  position.deliveries[deliveryId] = { lineId, quantity };
}

export function takeBackDelivery(position: Position, { deliveryId }: HappeningOf<'benefitDeliveryTakenBack'>): void {
  const delivery = position.deliveries[deliveryId] ?? refuse('delivery-taken-back-already');
  delete position.deliveries[deliveryId];
  slotOf(lineOf(position, delivery.lineId), undefined).counted -= delivery.quantity;
}

/** A benefit over days earns evenly: a share for each day from its first, both ends counted. */
export function earnBenefitThrough(position: Position, { lineId, throughOn }: HappeningOf<'benefitEarnedThrough'>): void {
  const line = benefitLine(position, lineId, 'overDays');
  if (line.terms.kind !== 'benefit' || line.terms.startsOn === undefined) return;
  if (line.earnedThroughOn !== undefined && throughOn < line.earnedThroughOn) {
    refuse('days-go-backwards', { throughOn: line.earnedThroughOn });
  }
  const slot = slotOf(line, undefined);
  const { owed, given } = readsOfSlot(line, slot);
  const days = daysBetween(line.terms.startsOn, throughOn) + 1;
  slot.counted = Math.max(slot.counted, Math.min(days, given + owed));
  line.earnedThroughOn = throughOn;
}

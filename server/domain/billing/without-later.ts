import type { Day } from '../day.ts';
import { applyHappening } from '../sponsorship/apply-happening.ts';
import type { Happening } from '../sponsorship/happening.ts';
import type { Position } from '../sponsorship/position.ts';
import { billedReads } from './live-lines.ts';

/** A happening and the day on which it was. */
export interface HappenedOn {
  happening: Happening;
  occurredOn: Day;
}

/** The day of each read, delivery and played game, by the key that `withoutLater` looks for. */
export function daysOf(happened: readonly HappenedOn[]): Map<string, Day> {
  const days = new Map<string, Day>();
  for (const { happening, occurredOn } of happened) {
    if (happening.kind === 'readCounted' || happening.kind === 'makegoodGiven') days.set(happening.readId, occurredOn);
    if (happening.kind === 'benefitDelivered') days.set(happening.deliveryId, occurredOn);
    if (happening.kind === 'gamePlayed') days.set(`${happening.lineId}/${happening.gameId}`, occurredOn);
  }
  return days;
}

/**
 * The contract as if nothing had been given after a day: later reads, deliveries and played games are taken back by the
 * ledger's own rules. A read that was billed already stays, so that it is not netted against the others.
 *
 * @param lastDay the last day whose reads stay
 * @param days by `daysOf`; what has no day there stays
 */
export function withoutLater(position: Position, lastDay: Day, days: ReadonlyMap<string, Day>): Position {
  const isLater = (key: string) => (days.get(key) ?? lastDay) > lastDay;
  const billed = billedReads(position);
  const later: Happening[] = [
    ...Object.keys(position.reads).flatMap((readId): Happening[] => (!billed.has(readId) && isLater(readId) ? [{ kind: 'readTakenBack', readId }] : [])),
    ...Object.keys(position.deliveries).filter(isLater).map((deliveryId): Happening => ({ kind: 'benefitDeliveryTakenBack', deliveryId })),
    ...position.lines.flatMap(({ terms: { lineId }, gamesPlayed }) =>
      gamesPlayed.filter((gameId) => isLater(`${lineId}/${gameId}`)).map((gameId): Happening => ({ kind: 'gamePlayedTakenBack', lineId, gameId })),
    ),
  ];
  return later.reduce<Position>((before, happening) => applyHappening(before, happening), position);
}

import type { Day } from '../../domain/day.ts';
import type { Position } from '../../domain/sponsorship/position.ts';
import type { BenefitView } from '../../sponsorship/contract-view.ts';
import type { BenefitFulfillment } from './fulfillment.dto.ts';
import type { DeliveryRow } from './fulfillment-rows.service.ts';

/** A benefit with what was delivered of it and by what proof; one over days has its own days, or else its term's. */
export function benefitOf(row: BenefitView, term: { startsOn: Day; endsOn: Day }, position: Position | null, deliveries: readonly DeliveryRow[]): BenefitFulfillment {
  const { id: benefitId, name, quantity, delivered, dueOn, earns } = row;
  const isOverDays = earns === 'overDays';
  return {
    benefitId, name, quantity, delivered, dueOn, earns,
    startsOn: isOverDays ? (row.startsOn ?? term.startsOn) : null,
    endsOn: isOverDays ? (row.endsOn ?? term.endsOn) : null,
    earnedThroughOn: position?.lines.find((line) => line.terms.lineId === benefitId)?.earnedThroughOn as Day | undefined ?? null,
    deliveries: deliveries.filter((one) => one.benefitId === benefitId).map(({ benefitId: _, ...delivery }) => delivery),
  };
}

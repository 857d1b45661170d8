import type { Foreseen } from '../../domain/billing/effect-words.ts';
import { CentsField, CountField, DayField, FlagField, IdField, OptionalTextField, TextField } from '../../platform/http/fields.ts';
import { MOST_CENTS } from '../../sponsorship/amounts.ts';

const OPEN = { optional: true, nullable: true };

class WithReason {
  @TextField(1, 500) reason: string;
  /** without it, today */
  @DayField(OPEN) on?: string | null;
}

class OfCommitment extends WithReason {
  @IdField() commitmentId: string;
  /** where the commitment is counted by the game */
  @IdField(OPEN) gameId?: string | null;
  @CountField(1, 5000) count: number;
}

export class CreditReadsDto extends OfCommitment {
  /** on a trade deal a makegood comes first */
  @FlagField({ optional: true }) insists?: boolean;
}

export class AllowanceDto extends WithReason {
  @CentsField({ least: 1, most: MOST_CENTS }) amountCents: number;
  @FlagField({ optional: true }) insists?: boolean;
}

export class OverbillingDto extends WithReason {}

export class ForfeitDto extends OfCommitment {
  /** the notice that the contract asks for, when and how it was given */
  @TextField(1, 500) notice: string;
}

export class ReleaseDto extends OfCommitment {}

export class MinimumClaimDto {
  @OptionalTextField(500) reason?: string | null;
  @DayField(OPEN) on?: string | null;
}

/** What would happen, or what did: dollars in cents, and the same in words. */
export type ForeseenView = Foreseen;

export interface CreditedView extends Foreseen {
  creditMemoIds: string[];
}

import { Entity } from 'typeorm';
import type { Day } from '../../domain/day.ts';
import type { ProposalBecause } from '../../domain/makegoods/proposal.ts';
import type { Remedy } from '../../domain/makegoods/repair-options.ts';
import { CentsColumn, CountColumn, DayColumn, DepartmentColumn, IdColumn, RefColumn, TextColumn, VersionColumn } from '../../platform/database/columns.ts';

/** What is put to a sponsor for reads that can no longer be given as promised. */
@Entity('makegood_proposal')
export class MakegoodProposal {
  @DepartmentColumn() departmentId: string;
  @IdColumn() id: string;
  @RefColumn() contractId: string;
  @RefColumn() termId: string;
  @RefColumn() commitmentId: string;
  @RefColumn({ nullable: true }) missedGameId: string | null;
  @CountColumn() missedReads: number;
  @TextColumn() because: ProposalBecause;
  @TextColumn() remedy: Remedy;
  @RefColumn({ nullable: true }) replacementReadKindId: string | null;
  @CountColumn({ nullable: true }) replacementReads: number | null;
  @CentsColumn({ nullable: true }) amountCents: number | null;
  @DayColumn() proposedOn: Day;
  @DayColumn({ nullable: true }) shownOn: Day | null;
  @DayColumn({ nullable: true }) answerBy: Day | null;
  @DayColumn({ nullable: true }) acceptedOn: Day | null;
  @DayColumn({ nullable: true }) declinedOn: Day | null;
  @DayColumn({ nullable: true }) withdrawnOn: Day | null;
  @TextColumn({ nullable: true }) answeredByName: string | null;
  @TextColumn({ nullable: true }) answeredHow: 'link' | 'recordedByDirector' | null;
  @TextColumn({ nullable: true }) answerNote: string | null;
  @TextColumn({ nullable: true }) note: string | null;
  @RefColumn({ nullable: true }) makegoodId: string | null;
  @RefColumn({ nullable: true }) settledEventId: string | null;
  @RefColumn({ nullable: true }) carriedToContractId: string | null;
  @DayColumn({ nullable: true }) settledOn: Day | null;
  @TextColumn({ insert: false, update: false }) state: 'open' | 'accepted' | 'settled' | 'declined' | 'withdrawn';
  @VersionColumn() version: number;
}

import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { readsOfLine } from '../../domain/sponsorship/slot-reads.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { ContractHold } from '../../sponsorship/contract-hold.entity.ts';
import { checkGoesOn } from './amending.service.ts';
import type { HoldContractDto, LiftHoldDto } from './change.dto.ts';
import type { Subject } from './change-subjects.service.ts';
import type { AskedChange, PlannedChange } from './contract-changes.service.ts';

/** A held contract keeps what it owes; nothing is posted, planned or printed until the hold is lifted. */
@Injectable()
export class Holding {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `contract-already-held`, `contract-already-ended` */
  hold({ reason }: HoldContractDto, on: Day): AskedChange {
    const plan = async (subject: Subject): Promise<PlannedChange> => {
      checkGoesOn(subject);
      if (await this.holdOf(subject)) refuse('contract-already-held');
      const owed = subject.position.lines.filter((line) => line.terms.kind === 'reads').reduce((sum, line) => sum + readsOfLine(line).owed, 0);
      const cautions = [
        `Nothing is posted: ${owed === 1 ? 'the read owed stays' : `the ${owed} reads owed stay`} owed.`,
        'Reads of this contract are not planned, and packets composed for nights from this day on do not print them, until the hold is lifted. Issued packets stay as they are.',
      ];
      return { on, reason, steps: [], cautions, write: () => this.keep({ contractId: subject.contract.id, heldOn: on, reason }) };
    };
    return { on, plan };
  }

  /** @throws Refused `contract-not-held`, `lifted-before-held` */
  lift({ reason }: LiftHoldDto, on: Day): AskedChange {
    const plan = async (subject: Subject): Promise<PlannedChange> => {
      const hold = (await this.holdOf(subject)) ?? refuse('contract-not-held');
      if (on < hold.heldOn) refuse('lifted-before-held', { heldOn: hold.heldOn });
      const write = () => this.keep({ contractId: subject.contract.id, heldOn: on, reason, liftsHoldId: hold.id });
      return { on, reason, steps: [], cautions: ['Nothing is posted. Reads of this contract are planned and printed again from this day on.'], write };
    };
    return { on, plan };
  }

  private async keep(row: Partial<ContractHold>): Promise<void> {
    await this.work.insert(ContractHold, { ...row, recordedByPersonId: this.work.personId });
  }

  private async holdOf({ contract }: Subject): Promise<ContractHold | null> {
    const rows = await this.work.find(ContractHold, { contractId: contract.id });
    const lifted = new Set(rows.map((row) => row.liftsHoldId));
    return rows.find((row) => row.liftsHoldId === null && !lifted.has(row.id)) ?? null;
  }
}

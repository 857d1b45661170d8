import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { amountText, centsOf } from '../../domain/money.ts';
import { refuse } from '../../domain/refusals.ts';
import { checkNothingOwed } from '../../domain/sponsorship/apply-ending.ts';
import type { Happening, HappeningOf } from '../../domain/sponsorship/happening.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Term } from '../../sponsorship/term.entity.ts';
import type { EndContractDto } from './change.dto.ts';
import type { Subject } from './change-subjects.service.ts';
import type { AskedChange, PlannedChange } from './contract-changes.service.ts';
import type { OpenDocument } from './open-money.service.ts';
import { openCentsOf } from './open-money.service.ts';

const PLANNED = `select count(*) as reads from placement
    join commitment on commitment.department_id = $1 and commitment.id = placement.commitment_id
    join night on night.department_id = $1 and night.id = placement.night_id
  where placement.department_id = $1 and commitment.contract_id = $2 and night.held_on >= $3
    and not exists (select from log_entry where log_entry.department_id = $1 and log_entry.placement_id = placement.id)`;

/** The end of a contract: before its time, when all is settled, and opened again. */
@Injectable()
export class Ending {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  /** @throws Refused `contract-already-ended` */
  end(form: EndContractDto, on: Day): AskedChange {
    const { feeCents = 0, keepsMinimum = false } = form;
    const happening: HappeningOf<'ended'> = {
      kind: 'ended', memoId: newId(), ...(feeCents > 0 ? { feeCents: centsOf(feeCents) } : {}), ...(keepsMinimum ? { keepsMinimum } : {}),
    };
    const plan = async (subject: Subject): Promise<PlannedChange> => ({
      on,
      reason: form.reason ?? null,
      steps: [{ subject, happening }],
      cautions: await this.cautionsOfEnding(subject, on),
      write: () => this.work.update(Term, subject.term.id, null, { endedOn: on }),
    });
    return { on, plan };
  }

  /** @throws Refused `close-with-open-invoices`, `close-with-open-credits`, and as the rule `closed` does */
  close(on: Day): AskedChange {
    const plan = async (subject: Subject): Promise<PlannedChange> => {
      const { documents } = subject;
      checkSettled(subject);
      const receivableCents = centsOf(openCentsOf(documents, 'invoice'));
      const unappliedCents = centsOf(openCentsOf(documents, 'payment', 'memo'));
      const happening: Happening = { kind: 'closed', receivableCents, unappliedCents };
      return { on, reason: null, steps: [{ subject, happening }], cautions: [], write: () => this.work.update(Term, subject.term.id, null, { closedOn: on }) };
    };
    return { on, plan };
  }

  /** @throws Refused `contract-not-closed` */
  reopen(on: Day): AskedChange {
    const plan = async (subject: Subject): Promise<PlannedChange> => ({
      on,
      reason: null,
      steps: [{ subject, happening: { kind: 'reopened' } }],
      cautions: [],
      write: () => this.work.update(Term, subject.term.id, null, { closedOn: null }),
    });
    return { on, plan };
  }

  private async cautionsOfEnding({ contract, documents }: Subject, on: Day): Promise<string[]> {
    const [planned] = await this.work.sql<{ reads: number }>(PLANNED, [contract.id, on]);
    const unpaidCents = openCentsOf(documents, 'invoice');
    return [
      ...(planned && planned.reads > 0 ? [`${planned.reads === 1 ? 'One read is' : `${planned.reads} reads are`} planned on coming nights; packets that are composed from now on leave ${planned.reads === 1 ? 'it' : 'them'} out.`] : []),
      ...(unpaidCents > 0 ? [`${amountText(centsOf(unpaidCents))} on its invoices is not paid yet; a credit memo is used on them first.`] : []),
    ];
  }
}

/** What is owed or open is named first, so that the refusal says what is left to do. */
function checkSettled({ position, documents }: Subject): void {
  if (position.closed) refuse('contract-closed');
  checkNothingOwed(position);
  const open = (...kinds: OpenDocument['kind'][]) => documents.filter((one) => kinds.includes(one.kind) && one.openCents !== 0);
  const textOf = (list: readonly OpenDocument[]) => list.map((one) => `${one.number} (${amountText(centsOf(one.openCents))})`).join(', ');
  if (open('invoice').length > 0) refuse('close-with-open-invoices', { open: textOf(open('invoice')) });
  if (open('payment', 'memo').length > 0) refuse('close-with-open-credits', { open: textOf(open('payment', 'memo')) });
}

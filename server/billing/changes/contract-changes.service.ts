import { Inject, Injectable } from '@nestjs/common';
import type { Day } from '../../domain/day.ts';
import { Refused, sentenceOfRefusal } from '../../domain/refusals.ts';
import type { Happening } from '../../domain/sponsorship/happening.ts';
import { TermLedger } from '../../sponsorship/term-ledger.service.ts';
import { MemoIssue } from '../credits/memo-issue.service.ts';
import type { ChangePreview } from './change.dto.ts';
import { ChangeSubjects } from './change-subjects.service.ts';
import type { Subject } from './change-subjects.service.ts';
import { ChangeViews } from './change-view.service.ts';

export interface PlannedStep {
  subject: Subject;
  happening: Happening;
}

/** What a change comes to, decided on what stood there; the same for looking and for doing. */
export interface PlannedChange {
  on: Day;
  reason: string | null;
  steps: PlannedStep[];
  cautions: string[];
  /** the rows that follow what is booked */
  write: () => Promise<void>;
}

/** A change that a form asks for: when, with which other contract, and how it is decided on what stands there. */
export interface AskedChange {
  on: Day;
  otherContractId?: string;
  plan: (subject: Subject, other: Subject | null) => Promise<PlannedChange>;
}

/** Looks at a change of a contract, or does it: by one plan, so that what is shown is what is posted. */
@Injectable()
export class ContractChanges {
  constructor(
    @Inject(ChangeSubjects) private readonly subjects: ChangeSubjects,
    @Inject(TermLedger) private readonly terms: TermLedger,
    @Inject(MemoIssue) private readonly memos: MemoIssue,
    @Inject(ChangeViews) private readonly views: ChangeViews,
  ) {}

  /** Changes nothing. A refusal is an answer here, save that a contract must be there. */
  async preview(contractId: string, asked: AskedChange): Promise<ChangePreview> {
    const { on } = asked;
    await this.subjects.isThere(contractId);
    try {
      const { subject, planned } = await this.planned(contractId, asked);
      return { on, contracts: await this.views.of(subject, planned), cautions: planned.cautions, refusal: null };
    } catch (error) {
      if (!(error instanceof Refused)) throw error;
      return { on, contracts: [], cautions: [], refusal: { code: error.code, sentence: sentenceOfRefusal(error.code, error.details) } };
    }
  }

  /**
   * Does it: what it is about is locked, then the same plan is made and booked.
   *
   * @throws Refused as the planner and the rules of its happenings do
   */
  async perform(contractId: string, asked: AskedChange): Promise<void> {
    await this.subjects.isThere(contractId);
    await this.subjects.lock(asked.otherContractId === undefined ? [contractId] : [contractId, asked.otherContractId]);
    const { planned } = await this.planned(contractId, asked);
    await this.book(planned);
    await planned.write();
  }

  /** Where something is posted, what earns over days earns through the day of the change before it. */
  private async planned(contractId: string, { on, otherContractId, plan }: AskedChange): Promise<{ subject: Subject; planned: PlannedChange }> {
    const subject = await this.subjects.one(contractId, on);
    const planned = await plan(subject, otherContractId === undefined ? null : await this.subjects.other(otherContractId, on));
    const touched = [...new Set(planned.steps.map((step) => step.subject))];
    const earned = touched.flatMap((one) => one.earnedFirst.map((happening): PlannedStep => ({ subject: one, happening })));
    return { subject, planned: { ...planned, steps: [...earned, ...planned.steps] } };
  }

  private async book(planned: PlannedChange): Promise<void> {
    for (const subject of new Set(planned.steps.map((step) => step.subject))) {
      const happenings = planned.steps.filter((step) => step.subject === subject).map((step) => step.happening);
      const because = { cause: 'contract', causeId: subject.contract.id, occurredOn: planned.on };
      const booked = await this.terms.happen(subject.term.id, happenings.map((happening) => ({ happening, because })));
      await this.memos.issue(subject.contract.id, happenings, booked, planned.on, planned.reason);
    }
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import type { Day } from '../../domain/day.ts';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import type {
  AnswerByLinkDto, MakegoodProposalView, ProposalForSponsor, ProposeMakegoodDto, RecordAnswerDto, SettleProposalDto, ShowProposalDto, WithdrawProposalDto,
} from './makegood-proposal.dto.ts';
import { ProposalAnswers } from './proposal-answers.service.ts';
import { ProposalMaking } from './proposal-making.service.ts';
import { MakegoodProposalViews } from './proposal-views.service.ts';

/** What is put to a sponsor for missed reads, from the proposal to what settles it. */
@Injectable()
export class MakegoodProposals {
  constructor(
    @Inject(ProposalMaking) private readonly making: ProposalMaking,
    @Inject(ProposalAnswers) private readonly answers: ProposalAnswers,
    @Inject(MakegoodProposalViews) private readonly views: MakegoodProposalViews,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  async propose(form: ProposeMakegoodDto): Promise<MakegoodProposalView> {
    return this.views.one(await this.making.propose(form));
  }

  /** From now on the sponsor sees it by its link. */
  async show(id: string, version: number, form: ShowProposalDto): Promise<MakegoodProposalView> {
    await this.making.show(id, version, form);
    return this.views.one(id);
  }

  /** Takes a proposal off the table that is open or waits for a contract; its missed reads may be proposed anew. */
  async withdraw(id: string, version: number, { note }: WithdrawProposalDto): Promise<MakegoodProposalView> {
    await this.answers.withdraw(id, version, { withdrawnOn: await this.departments.today(), ...(note ? { note } : {}) });
    return this.views.one(id);
  }

  /** What the sponsor said, as the director heard it. */
  async accept(id: string, version: number, { name, on, note }: RecordAnswerDto): Promise<MakegoodProposalView> {
    await this.answers.accept(id, version, { name, on: await this.day(on), note: note ?? null, how: 'recordedByDirector' });
    return this.views.one(id);
  }

  async decline(id: string, version: number, { name, on, note }: RecordAnswerDto): Promise<MakegoodProposalView> {
    await this.answers.end(id, version, { declinedOn: await this.day(on), answeredByName: name, answeredHow: 'recordedByDirector', answerNote: note ?? null });
    return this.views.one(id);
  }

  /** Reads that were to be carried over go into the contract that follows, once it is signed. */
  async settle(id: string, version: number, form: SettleProposalDto): Promise<MakegoodProposalView> {
    await this.answers.settle(id, version, form);
    return this.views.one(id);
  }

  /** What this sponsor was shown, and what became of it. */
  async shownTo(sponsorId: string): Promise<ProposalForSponsor[]> {
    return this.views.ofSponsor(sponsorId);
  }

  /**
   * What the sponsor says by its link, of its own proposals alone and only of those it was shown.
   *
   * @throws Refused `not-found`, `makegood-answered-already`, `makegood-answer-late`, `makegood-reads-given-meanwhile`
   */
  async answerByLink(sponsorId: string, proposalId: string, { name, answer, note }: AnswerByLinkDto): Promise<ProposalForSponsor[]> {
    const shown = isId(proposalId) ? (await this.shownTo(sponsorId)).find((one) => one.id === proposalId) : undefined;
    const { answerBy } = shown ?? refuse('not-found');
    const on = await this.departments.today();
    if (answerBy !== null && on > answerBy) refuse('makegood-answer-late', { answerBy });
    const said = { name, note: note ?? null, how: 'link' } as const;
    if (answer === 'accept') await this.answers.accept(proposalId, null, { ...said, on });
    else await this.answers.end(proposalId, null, { declinedOn: on, answeredByName: name, answeredHow: 'link', answerNote: note ?? null });
    return this.shownTo(sponsorId);
  }

  private async day(on: string | null | undefined): Promise<Day> {
    return (on as Day | null | undefined) ?? this.departments.today();
  }
}

import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { NeedsLink } from '../../access/needs.ts';
import { TheLinkVisitor } from '../../access/visitor.ts';
import type { LinkVisitor } from '../../access/visitor.ts';
import { reasonForSponsor } from '../../domain/reports/reason-for-sponsor.ts';
import { AskAboutReadDto } from '../../makegoods/disputes/read-dispute.dto.ts';
import { ReadDisputes } from '../../makegoods/disputes/read-disputes.service.ts';
import { AnswerByLinkDto } from '../../makegoods/proposals/makegood-proposal.dto.ts';
import type { ProposalForSponsor } from '../../makegoods/proposals/makegood-proposal.dto.ts';
import { MakegoodProposals } from '../../makegoods/proposals/makegood-proposals.service.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import type { ProposalsOnPage, QuestionsOnPage } from './answers-of-sponsor.dto.ts';

/** What a sponsor says to the school by its link: yes or no to what is put to it for missed reads, and questions about reads. */
@ApiTags('reports')
@Controller('api/sponsor-page')
export class AnswersOfSponsorController {
  constructor(
    @Inject(MakegoodProposals) private readonly proposals: MakegoodProposals,
    @Inject(ReadDisputes) private readonly disputes: ReadDisputes,
  ) {}

  @Get('proposals')
  @NeedsLink('see own proof')
  async shown(@TheLinkVisitor() visitor: LinkVisitor): Promise<ProposalsOnPage> {
    return onPage(await this.proposals.shownTo(visitor.subjectId));
  }

  /** An accepted credit is a credit memo. */
  @Post('proposals/:proposalId/answer')
  @HttpCode(200)
  @MovesMoney()
  @NeedsLink('answer own proposals')
  async answer(@TheLinkVisitor() visitor: LinkVisitor, @Param('proposalId') proposalId: string, @Body() form: AnswerByLinkDto): Promise<ProposalsOnPage> {
    return onPage(await this.proposals.answerByLink(visitor.subjectId, proposalId, form));
  }

  @Get('questions')
  @NeedsLink('see own proof')
  async asked(@TheLinkVisitor() visitor: LinkVisitor): Promise<QuestionsOnPage> {
    return { questions: await this.disputes.ofSponsor(visitor.subjectId) };
  }

  @Post('questions')
  @HttpCode(200)
  @NeedsLink('ask about own reads')
  async ask(@TheLinkVisitor() visitor: LinkVisitor, @Body() form: AskAboutReadDto): Promise<QuestionsOnPage> {
    return { questions: await this.disputes.ask(visitor.subjectId, form) };
  }
}

/** Why a read was missed is told as far as nobody typed it. */
function onPage(proposals: readonly ProposalForSponsor[]): ProposalsOnPage {
  return { proposals: proposals.map((one) => ({ ...one, missed: one.missed.map((read) => ({ ...read, why: reasonForSponsor(read.why) ?? '' })) })) };
}

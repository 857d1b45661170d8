import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { NeedsLink } from '../../access/needs.ts';
import { TheLinkVisitor } from '../../access/visitor.ts';
import type { LinkVisitor } from '../../access/visitor.ts';
import { CopyService } from '../../sponsorship/copy.service.ts';
import type { MoneyOfSponsorView } from './money-of-sponsor.dto.ts';
import { MoneyOfSponsor } from './money-of-sponsor.service.ts';
import type { NightsOfSponsorView } from './nights-of-sponsor.dto.ts';
import { NightsOfSponsor } from './nights-of-sponsor.service.ts';
import { ApproveByLinkDto, AskForChangeDto } from './sponsor-page.dto.ts';
import type { SponsorPageView } from './sponsor-page.dto.ts';
import { SponsorPageService } from './sponsor-page.service.ts';

/** Reached by a sponsor's link alone; which sponsor it is, the link says. */
@ApiTags('reports')
@Controller('api/sponsor-page')
export class SponsorPageController {
  constructor(
    @Inject(SponsorPageService) private readonly page: SponsorPageService,
    @Inject(MoneyOfSponsor) private readonly money: MoneyOfSponsor,
    @Inject(NightsOfSponsor) private readonly nights: NightsOfSponsor,
    @Inject(CopyService) private readonly copies: CopyService,
  ) {}

  @Get()
  @NeedsLink('see own proof')
  async look(@TheLinkVisitor() visitor: LinkVisitor): Promise<SponsorPageView> {
    return this.page.of(visitor);
  }

  /** What was invoiced, paid, credited and is open, with the documents. */
  @Get('money')
  @NeedsLink('see own money')
  async dollars(@TheLinkVisitor() visitor: LinkVisitor): Promise<MoneyOfSponsorView> {
    return this.money.of(visitor.subjectId);
  }

  /** Night by night: what was read for the sponsor, and what is planned. */
  @Get('nights')
  @NeedsLink('see own proof')
  async calendar(@TheLinkVisitor() visitor: LinkVisitor): Promise<NightsOfSponsorView> {
    return this.nights.of(visitor.subjectId);
  }

  @Post('versions/:versionId/approve')
  @HttpCode(200)
  @NeedsLink('answer own copy')
  async approve(@TheLinkVisitor() visitor: LinkVisitor, @Param('versionId') versionId: string, @Body() { name }: ApproveByLinkDto): Promise<SponsorPageView> {
    await this.copies.approveByLink(visitor.subjectId, versionId, name);
    return this.page.of(visitor);
  }

  @Post('versions/:versionId/ask-for-change')
  @HttpCode(200)
  @NeedsLink('answer own copy')
  async askForChange(@TheLinkVisitor() visitor: LinkVisitor, @Param('versionId') versionId: string, @Body() { name, note }: AskForChangeDto): Promise<SponsorPageView> {
    await this.copies.askForChange(visitor.subjectId, versionId, name, note);
    return this.page.of(visitor);
  }
}

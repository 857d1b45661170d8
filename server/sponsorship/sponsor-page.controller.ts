import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { NeedsLink } from '../access/needs.ts';
import { TheLinkVisitor } from '../access/visitor.ts';
import type { LinkVisitor } from '../access/visitor.ts';
import { ApproveByLinkDto, AskForChangeDto } from './sponsor-page.dto.ts';
import type { SponsorPageView } from './sponsor-page.dto.ts';
import { SponsorPageService } from './sponsor-page.service.ts';

/** Reached by a sponsor's link alone; which sponsor it is, the link says. */
@ApiTags('sponsorship')
@Controller('api/sponsor-page')
export class SponsorPageController {
  constructor(@Inject(SponsorPageService) private readonly page: SponsorPageService) {}

  @Get()
  @NeedsLink('see own copy')
  async look(@TheLinkVisitor() visitor: LinkVisitor): Promise<SponsorPageView> {
    return this.page.of(visitor.subjectId);
  }

  @Post('versions/:versionId/approve')
  @HttpCode(200)
  @NeedsLink('answer own copy')
  async approve(@TheLinkVisitor() visitor: LinkVisitor, @Param('versionId') versionId: string, @Body() form: ApproveByLinkDto): Promise<SponsorPageView> {
    return this.page.approve(visitor.subjectId, versionId, form);
  }

  @Post('versions/:versionId/ask-for-change')
  @HttpCode(200)
  @NeedsLink('answer own copy')
  async askForChange(@TheLinkVisitor() visitor: LinkVisitor, @Param('versionId') versionId: string, @Body() form: AskForChangeDto): Promise<SponsorPageView> {
    return this.page.askForChange(visitor.subjectId, versionId, form);
  }
}

import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { LinkDto } from '../access/link.dto.ts';
import type { LinkView, NewLinkView } from '../access/link.dto.ts';
import { LinkService } from '../access/link.service.ts';
import { Needs } from '../access/needs.ts';
import type { Listed } from '../platform/http/lists.ts';
import { SponsorService } from './sponsor.service.ts';

@ApiTags('sponsorship')
@Controller('api/sponsors/:id/links')
export class SponsorLinkController {
  constructor(
    @Inject(SponsorService) private readonly sponsors: SponsorService,
    @Inject(LinkService) private readonly links: LinkService,
  ) {}

  @Get()
  @Needs('give out links')
  async list(@Param('id') id: string): Promise<Listed<LinkView>> {
    const data = await this.links.of('sponsor', (await this.sponsors.one(id)).id);
    return { data, total: data.length };
  }

  @Post()
  @Needs('give out links')
  async make(@Param('id') id: string, @Body() form: LinkDto): Promise<NewLinkView> {
    return this.links.make('sponsor', (await this.sponsors.one(id)).id, form);
  }

  @Post(':linkId/revoke')
  @HttpCode(200)
  @Needs('give out links')
  async revoke(@Param('id') id: string, @Param('linkId') linkId: string): Promise<LinkView> {
    return this.links.revoke('sponsor', (await this.sponsors.one(id)).id, linkId);
  }
}

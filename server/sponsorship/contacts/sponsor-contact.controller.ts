import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { SponsorView } from '../sponsor.dto.ts';
import { SponsorService } from '../sponsor.service.ts';
import { LoseSponsorDto, SponsorContactDto } from './sponsor-contact.dto.ts';
import type { SponsorContactView } from './sponsor-contact.dto.ts';
import { SponsorContacts } from './sponsor-contact.service.ts';

@ApiTags('sponsorship')
@Controller('api/sponsors/:id')
export class SponsorContactController {
  constructor(
    @Inject(SponsorContacts) private readonly contacts: SponsorContacts,
    @Inject(SponsorService) private readonly sponsors: SponsorService,
  ) {}

  @Get('contacts')
  @Needs('see contracts')
  async list(@Param('id') id: string): Promise<Listed<SponsorContactView>> {
    return this.contacts.of(id);
  }

  @Post('contacts')
  @Needs('make offers')
  async add(@Param('id') id: string, @Body() form: SponsorContactDto): Promise<SponsorContactView> {
    return this.contacts.add(id, form);
  }

  @Post('lose')
  @HttpCode(200)
  @Needs('make offers')
  async lose(@Param('id') id: string, @Body() form: LoseSponsorDto): Promise<SponsorView> {
    await this.contacts.lose(id, form);
    return this.sponsors.one(id);
  }

  @Post('win-back')
  @HttpCode(200)
  @Needs('make offers')
  async winBack(@Param('id') id: string): Promise<SponsorView> {
    await this.contacts.winBack(id);
    return this.sponsors.one(id);
  }
}

import { Controller, Get, HttpCode, Inject, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { ListQuery } from '../platform/http/lists.ts';
import type { Listed } from '../platform/http/lists.ts';
import { AuditService } from './audit.service.ts';
import type { AuditView, SealView } from './audit.dto.ts';
import { Needs } from './needs.ts';
import { SealService } from './seal.service.ts';

@ApiTags('access')
@Controller('api')
export class AuditController {
  constructor(
    @Inject(AuditService) private readonly audits: AuditService,
    @Inject(SealService) private readonly seals: SealService,
  ) {}

  @Get('audit')
  @Needs('see the audit')
  async audit(@Query() query: ListQuery): Promise<Listed<AuditView>> {
    return this.audits.list(query);
  }

  @Get('seals')
  @Needs('see the audit')
  async listSeals(): Promise<Listed<SealView>> {
    return this.seals.list();
  }

  @Post('seals')
  @Needs('change the department')
  @HttpCode(201)
  async seal(): Promise<SealView> {
    return this.seals.seal();
  }
}

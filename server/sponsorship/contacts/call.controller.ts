import { Controller, Get, Inject, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { CallsQuery } from './call.dto.ts';
import type { CallsView } from './call.dto.ts';
import { CallService } from './call.service.ts';

@ApiTags('sponsorship')
@Controller('api/calls')
export class CallController {
  constructor(@Inject(CallService) private readonly calls: CallService) {}

  @Get()
  @Needs('see contracts')
  async ofWeek(@Query() query: CallsQuery): Promise<CallsView> {
    return this.calls.ofWeek(query);
  }
}

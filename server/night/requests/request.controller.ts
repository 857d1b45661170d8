import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs, OrLink } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { Visitor } from '../../access/visitor.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { ApproveRequestDto, DeclineRequestDto, RequestDto } from './request.dto.ts';
import type { NightRequestView } from './request.dto.ts';
import { NightRequests } from './request.service.ts';

@ApiTags('night')
@Controller('api')
export class RequestController {
  constructor(@Inject(NightRequests) private readonly requests: NightRequests) {}

  @Get('nights/:id/requests')
  @Needs('log a night')
  @OrLink('work the table')
  async list(@Param('id') id: string): Promise<Listed<NightRequestView>> {
    const data = await this.requests.of(id);
    return { data, total: data.length };
  }

  @Post('nights/:id/requests')
  @Needs('log a night')
  async ask(@Param('id') id: string, @Body() form: RequestDto): Promise<NightRequestView> {
    return this.requests.ask(id, form);
  }

  @Post('requests/:id/approve')
  @HttpCode(200)
  @Needs('log a night')
  async approve(@Param('id') id: string, @Body() form: ApproveRequestDto, @TheVisitor() visitor: Visitor): Promise<NightRequestView> {
    return this.requests.approve(id, form, visitor);
  }

  @Post('requests/:id/decline')
  @HttpCode(200)
  @Needs('log a night')
  async decline(@Param('id') id: string, @Body() { reason }: DeclineRequestDto, @TheVisitor() visitor: Visitor): Promise<NightRequestView> {
    return this.requests.decline(id, reason, visitor);
  }

  @Post('requests/:id/mark-read')
  @HttpCode(200)
  @Needs('log a night')
  async markRead(@Param('id') id: string, @TheVisitor() visitor: Visitor): Promise<NightRequestView> {
    return this.requests.markRead(id, visitor);
  }
}

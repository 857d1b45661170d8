import { Body, Controller, Get, HttpCode, Inject, Param, Post, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs, OrLink } from '../../access/needs.ts';
import { TheVisitor } from '../../access/visitor.ts';
import type { VisitedRequest, Visitor } from '../../access/visitor.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import { Amendments } from './amendment.service.ts';
import { AmendDto, SettleDto, SignOffDto } from './closing.dto.ts';
import type { AmendView, BookedView, NightTidyView, SignOffView } from './closing.dto.ts';
import { NightClosing } from './night-closing.service.ts';
import { NightTidying } from './night-tidy.service.ts';

@ApiTags('night')
@Controller('api/nights/:id')
export class ClosingController {
  constructor(
    @Inject(NightClosing) private readonly closing: NightClosing,
    @Inject(Amendments) private readonly amendments: Amendments,
    @Inject(NightTidying) private readonly tidying: NightTidying,
  ) {}

  @Get('tidy')
  @Needs('log a night')
  @OrLink('work the table')
  async tidy(@Param('id') id: string, @Req() request: VisitedRequest): Promise<NightTidyView> {
    return this.tidying.show(id, request.visitor?.roles ?? []);
  }

  @Post('sign-off')
  @HttpCode(200)
  @MovesMoney()
  @Needs('sign off a night')
  @OrLink('sign off by link')
  async signOff(@Param('id') id: string, @Body() form: SignOffDto, @Req() request: VisitedRequest): Promise<SignOffView> {
    return this.closing.signOff(id, form, request.visitor?.roles ?? []);
  }

  @Post('settle')
  @HttpCode(200)
  @MovesMoney()
  @Needs('log a night')
  async settle(@Param('id') id: string, @Body() form: SettleDto, @TheVisitor() visitor: Visitor): Promise<BookedView> {
    return this.amendments.settle(id, form, visitor.roles);
  }

  @Post('amend')
  @HttpCode(200)
  @MovesMoney()
  @Needs('amend a night')
  async amend(@Param('id') id: string, @Body() form: AmendDto): Promise<AmendView> {
    return this.amendments.amend(id, form);
  }
}

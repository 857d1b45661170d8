import { Body, Controller, Get, Inject, Param, Post, Req } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyRequest } from 'fastify';
import { Open } from '../../platform/http/open.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { Asking } from './ask.service.ts';
import { AskDto } from './request.dto.ts';
import type { AskFormView, AskedView } from './request.dto.ts';

/** The public form of a night: nobody signs in, the code on the wall says which night it is. */
@ApiTags('night')
@Controller('api/ask/:token')
@OutsideUnit()
export class AskController {
  constructor(@Inject(Asking) private readonly asking: Asking) {}

  @Get()
  @Open()
  async form(@Param('token') token: string): Promise<AskFormView> {
    return this.asking.form(token);
  }

  @Post()
  @Open()
  async ask(@Param('token') token: string, @Body() form: AskDto, @Req() request: FastifyRequest): Promise<AskedView> {
    return this.asking.take(token, form, request.ip);
  }
}

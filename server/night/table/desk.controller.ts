import { Controller, Get, Inject, Param, Req, Res } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Needs, OrLink } from '../../access/needs.ts';
import type { VisitedRequest } from '../../access/visitor.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { Bundles } from './bundle.service.ts';
import { LiveNights } from './live.service.ts';

/** What the page at the scorer's table asks for besides the log. */
@ApiTags('night')
@Controller('api/nights/:id')
export class DeskController {
  constructor(
    @Inject(Bundles) private readonly bundles: Bundles,
    @Inject(LiveNights) private readonly live: LiveNights,
  ) {}

  @Get('bundle')
  @OutsideUnit()
  @Needs('log a night')
  @OrLink('work the table')
  @ApiProduces('application/json')
  async bundle(@Param('id') id: string, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<Buffer> {
    const takesGzip = /\bgzip\b(?!\s*;\s*q=0(?:\.0*)?\s*(?:,|$))/.test(request.headers['accept-encoding'] ?? '');
    const body = await this.bundles.packed(id, takesGzip);
    void reply.headers({ 'content-type': 'application/json; charset=utf-8', 'cache-control': 'no-store', vary: 'accept-encoding', ...(takesGzip ? { 'content-encoding': 'gzip' } : {}) });
    return body;
  }

  @Get('live')
  @OutsideUnit()
  @Needs('log a night')
  @OrLink('work the table')
  @ApiProduces('text/event-stream')
  async news(@Param('id') id: string, @Req() request: FastifyRequest, @Res() reply: FastifyReply): Promise<void> {
    await this.live.open(id, request as VisitedRequest, reply);
  }
}

import { Controller, Get, Inject, Param, Req, Res } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Needs, OrLink } from '../access/needs.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { Bundles } from './bundle.service.ts';

/** What the page at the scorer's table asks for besides the log. */
@ApiTags('night')
@Controller('api/nights/:id')
export class DeskController {
  constructor(@Inject(Bundles) private readonly bundles: Bundles) {}

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
}

import { Body, Controller, HttpCode, Inject, Post, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CONFIG } from '../platform/config/config.ts';
import type { Config } from '../platform/config/config.ts';
import { Open } from '../platform/http/open.ts';
import { OutsideUnit } from '../platform/http/unit.interceptor.ts';
import { addLinkCookie } from './cookie.ts';
import { LinkVisitDto } from './link.dto.ts';
import type { LinkVisitView } from './link.dto.ts';
import { LinkService } from './link.service.ts';
import type { VisitedRequest } from './visitor.ts';

@ApiTags('access')
@Controller('api/link-visits')
@OutsideUnit()
export class LinkVisitController {
  constructor(
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Post()
  @Open()
  @HttpCode(200)
  async start(@Body() form: LinkVisitDto, @Req() request: VisitedRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<LinkVisitView> {
    const { cookie, kind, expiresAt } = await this.links.start(form.token, form.pin ?? null, request.ip);
    addLinkCookie(request, reply, this.config, cookie, new Date(expiresAt));
    return { kind, expiresAt };
  }
}

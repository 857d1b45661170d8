import { createHash } from 'node:crypto';
import { Controller, Get, Inject, Param, Req, Res } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { Open } from '../../platform/http/open.ts';
import { OutsideUnit } from '../../platform/http/unit.interceptor.ts';
import { CalendarFeeds } from './calendar-feeds.service.ts';
import type { FeedCalendar } from './calendar-feed.dto.ts';

/** What a calendar program reads: nobody signs in, the secret in the address says whose calendar it is. */
@ApiTags('season')
@Controller('api/calendars/:token')
@OutsideUnit()
export class CalendarController {
  constructor(@Inject(CalendarFeeds) private readonly feeds: CalendarFeeds) {}

  @Get('games.ics')
  @Open()
  @ApiProduces('text/calendar')
  async games(@Param('token') token: string, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<string | undefined> {
    return this.answer('games', token, request, reply);
  }

  @Get('nights.ics')
  @Open()
  @ApiProduces('text/calendar')
  async nights(@Param('token') token: string, @Req() request: FastifyRequest, @Res({ passthrough: true }) reply: FastifyReply): Promise<string | undefined> {
    return this.answer('nights', token, request, reply);
  }

  /** A program that has these bytes already gets none. */
  private async answer(calendar: FeedCalendar, token: string, request: FastifyRequest, reply: FastifyReply): Promise<string | undefined> {
    const text = await this.feeds.read(calendar, token, request.ip);
    const tag = `"${createHash('sha256').update(text).digest('base64url')}"`;
    // The address holds the secret: no page may pass it on, and nothing between may keep the answer.
    void reply.headers({ etag: tag, 'cache-control': 'private, no-cache', 'referrer-policy': 'no-referrer', 'x-robots-tag': 'noindex' });
    const known = (request.headers['if-none-match'] ?? '').split(',').map((one) => one.trim().replace(/^W\//, ''));
    if (known.includes(tag) || known.includes('*')) {
      void reply.status(304);
      return undefined;
    }
    void reply.headers({ 'content-type': 'text/calendar; charset=utf-8', 'content-disposition': `inline; filename="${calendar}.ics"` });
    return text;
  }
}

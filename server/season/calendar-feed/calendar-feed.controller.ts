import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { CalendarFeedDto } from './calendar-feed.dto.ts';
import type { CalendarFeedView, NewCalendarFeedView } from './calendar-feed.dto.ts';
import { CalendarFeeds } from './calendar-feeds.service.ts';

@ApiTags('season')
@Controller('api/calendar-feeds')
export class CalendarFeedController {
  constructor(@Inject(CalendarFeeds) private readonly feeds: CalendarFeeds) {}

  @Get()
  @Needs('give out links')
  async list(): Promise<{ data: CalendarFeedView[]; total: number }> {
    const data = await this.feeds.list();
    return { data, total: data.length };
  }

  @Post()
  @Needs('give out links')
  async make(@Body() form: CalendarFeedDto): Promise<NewCalendarFeedView> {
    return this.feeds.make(form);
  }

  @Post(':id/revoke')
  @HttpCode(200)
  @Needs('give out links')
  async revoke(@Param('id') id: string): Promise<CalendarFeedView> {
    return this.feeds.revoke(id);
  }
}

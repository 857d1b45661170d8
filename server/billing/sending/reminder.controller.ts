import { Controller, Get, HttpCode, Inject, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import type { Listed } from '../../platform/http/lists.ts';
import { MovesMoney } from '../../platform/http/unit.interceptor.ts';
import type { ReminderView } from './message.dto.ts';
import { ReminderRound } from './reminder-round.service.ts';

@ApiTags('letters')
@Controller('api/reminders')
export class ReminderController {
  constructor(@Inject(ReminderRound) private readonly round: ReminderRound) {}

  /** What would go out today, and what would not and why. */
  @Get()
  @Needs('see money')
  async due(): Promise<Listed<ReminderView>> {
    const data = await this.round.due();
    return { data, total: data.length };
  }

  /** Writes today's reminders now instead of at the next look. */
  @Post()
  @HttpCode(200)
  @MovesMoney()
  @Needs('send letters')
  async write(): Promise<{ written: number }> {
    return { written: await this.round.write() };
  }
}

import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { LockNightDto } from './night-lock.dto.ts';
import type { NightLockView } from './night-lock.dto.ts';
import { NightLocks } from './night-locks.service.ts';

@ApiTags('planning')
@Controller('api/nights')
export class NightLockController {
  constructor(@Inject(NightLocks) private readonly locks: NightLocks) {}

  @Get(':id/lock')
  @Needs('see packets')
  async ofNight(@Param('id') id: string): Promise<NightLockView> {
    return this.locks.ofNight(id);
  }

  @Post(':id/lock')
  @HttpCode(200)
  @Needs('plan placements')
  async lock(@Param('id') id: string, @Body() form: LockNightDto): Promise<NightLockView> {
    return this.locks.lock(id, form.note ?? null);
  }

  @Post(':id/unlock')
  @HttpCode(200)
  @Needs('plan placements')
  async unlock(@Param('id') id: string, @Body() form: LockNightDto): Promise<NightLockView> {
    return this.locks.unlock(id, form.note ?? null);
  }
}

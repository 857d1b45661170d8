import { Body, Controller, Get, HttpCode, Inject, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { Needs } from '../../access/needs.ts';
import { AttendanceDto } from './night-attendance.dto.ts';
import type { NightAttendanceView } from './night-attendance.dto.ts';
import { NightAttendances } from './night-attendance.service.ts';

@ApiTags('night')
@Controller('api/nights/:id/attendance')
export class NightAttendanceController {
  constructor(@Inject(NightAttendances) private readonly attendances: NightAttendances) {}

  @Get()
  @Needs('log a night')
  async show(@Param('id') id: string): Promise<NightAttendanceView> {
    return this.attendances.show(id);
  }

  @Post()
  @HttpCode(200)
  @Needs('amend a night')
  async record(@Param('id') id: string, @Body() form: AttendanceDto): Promise<NightAttendanceView> {
    return this.attendances.record(id, form);
  }
}

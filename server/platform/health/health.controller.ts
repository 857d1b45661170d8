import { Controller, Get, HttpException, Inject } from '@nestjs/common';
import { ApiExcludeController } from '@nestjs/swagger';
import { DataSource } from 'typeorm';
import { Open } from '../http/open.ts';

@ApiExcludeController()
@Controller('health')
@Open()
export class HealthController {
  constructor(@Inject(DataSource) private readonly source: DataSource) {}

  /** The process answers. */
  @Get('live')
  live(): { status: string } {
    return { status: 'live' };
  }

  /** The database answers too, so requests can be served. */
  @Get('ready')
  async ready(): Promise<{ status: string }> {
    await this.source.query('select 1').catch(() => {
      throw new HttpException('the database does not answer', 503);
    });
    return { status: 'ready' };
  }
}

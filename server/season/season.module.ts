import { Module } from '@nestjs/common';
import { SchoolController } from './school.controller.ts';
import { School } from './school.entity.ts';
import { SchoolService } from './school.service.ts';

export const seasonEntities = [School];

@Module({
  controllers: [SchoolController],
  providers: [SchoolService],
  exports: [SchoolService],
})
export class SeasonModule {}

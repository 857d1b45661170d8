import { Global, Module } from '@nestjs/common';
import { Jobs } from './jobs.service.ts';

/** One look for jobs in each process. */
@Global()
@Module({ providers: [Jobs], exports: [Jobs] })
export class JobsModule {}

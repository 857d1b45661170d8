import { Global, Module } from '@nestjs/common';
import { Admissions } from './admission.service.ts';
import { AuditController } from './audit.controller.ts';
import { AuditService } from './audit.service.ts';
import { DepartmentController } from './department.controller.ts';
import { DepartmentService } from './department.service.ts';
import { LinkVisitController } from './link-visit.controller.ts';
import { Link } from './link.entity.ts';
import { LinkService } from './link.service.ts';
import { Membership } from './membership.entity.ts';
import { Person } from './person.entity.ts';
import { PersonController } from './person.controller.ts';
import { PersonService } from './person.service.ts';
import { ReadingRateController } from './reading-rate.controller.ts';
import { ReadingRateService } from './reading-rate.service.ts';
import { SealService } from './seal.service.ts';
import { SessionService } from './session.service.ts';
import { SignInAttempts } from './sign-in-attempts.service.ts';
import { SignInController } from './sign-in.controller.ts';
import { SignInService } from './sign-in.service.ts';
import { NightlySeal } from './nightly-seal.service.ts';
import { NumberService } from './number.service.ts';

export const accessEntities = [Person, Membership, Link];

@Global()
@Module({
  controllers: [SignInController, ReadingRateController, DepartmentController, PersonController, AuditController, LinkVisitController],
  providers: [SessionService, Admissions, SignInAttempts, SignInService, LinkService, DepartmentService, PersonService, ReadingRateService, AuditService, SealService, NightlySeal, NumberService],
  exports: [SessionService, Admissions, SignInService, LinkService, DepartmentService, PersonService, ReadingRateService, SealService, NumberService],
})
export class AccessModule {}

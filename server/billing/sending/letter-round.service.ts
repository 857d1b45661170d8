import { Inject, Injectable } from '@nestjs/common';
import type { OnApplicationBootstrap, OnApplicationShutdown } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { clockAt } from '../../domain/instant.ts';
import type { Instant } from '../../domain/instant.ts';
import { NOWHERE } from '../../platform/database/scope.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Jobs } from '../../platform/jobs/jobs.service.ts';
import { LOG } from '../../platform/log/log.ts';
import type { Log } from '../../platform/log/log.ts';
import { ReminderRound } from './reminder-round.service.ts';

const LOOK_EVERY_MILLISECONDS = 60 * 60 * 1000;
const FIRST_LOOK_MILLISECONDS = 5000;
/** Reminders go out by day, on the clock of the department. */
const FROM_CLOCK = '08:00';
const UNTIL_CLOCK = '18:00';

/** What waits without a job, as after a restored backup: jobs are in no backup. A letter of more than a week ago stays where it is. */
const WAITING = `select message.id from message where message.department_id = $1 and message.recorded_at > now() - interval '7 days'
  and not exists (select 1 from message_event where message_event.department_id = $1 and message_event.message_id = message.id and message_event.kind <> 'tryFailed')`;

/** Every hour: letters that wait without a job get one, and by day the reminders of the day are written. */
@Injectable()
export class LetterRound implements OnApplicationBootstrap, OnApplicationShutdown {
  private clock: NodeJS.Timeout | null = null;
  private first: NodeJS.Timeout | null = null;

  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Jobs) private readonly jobs: Jobs,
    @Inject(ReminderRound) private readonly reminders: ReminderRound,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(LOG) private readonly log: Log,
  ) {}

  onApplicationBootstrap(): void {
    this.first = setTimeout(() => void this.look(), FIRST_LOOK_MILLISECONDS);
    this.clock = setInterval(() => void this.look(), LOOK_EVERY_MILLISECONDS);
    this.first.unref();
    this.clock.unref();
  }

  onApplicationShutdown(): void {
    if (this.first) clearTimeout(this.first);
    if (this.clock) clearInterval(this.clock);
  }

  /** One department after the other; what fails in one is told and does not stop the others. */
  private async look(): Promise<void> {
    const departments = await this.work.runAs(NOWHERE, () => this.work.sqlEverywhere<{ id: string }>('select id from department order by id')).catch(() => []);
    for (const { id } of departments) {
      await this.work
        .runAs({ departmentId: id, personId: null }, () => this.lookInto())
        .catch((error: unknown) => this.log.error({ department: id, error: String(error) }, 'the letters of a department could not be looked after; the next look tries again'));
    }
  }

  private async lookInto(): Promise<void> {
    for (const { id } of await this.work.sql<{ id: string }>(WAITING)) await this.jobs.ask('letter', id);
    const clock = clockAt(new Date().toISOString() as Instant, (await this.departments.here()).zone);
    if (clock >= FROM_CLOCK && clock < UNTIL_CLOCK) await this.reminders.write();
  }
}

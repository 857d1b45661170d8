import type { INestApplicationContext, Type } from '@nestjs/common';
import { DepartmentService } from '../server/access/department.service.ts';
import type { Visitor } from '../server/access/visitor.ts';
import type { Day } from '../server/domain/day.ts';
import { UnitOfWork } from '../server/platform/database/unit-of-work.ts';
import { errands } from '../server/platform/database/scope.ts';
import type { Scope } from '../server/platform/database/scope.ts';
import type { Calendar } from './calendar.ts';
import type { Teller } from './people.ts';

/** Who tells what, and on which day: the services believe it is the day of the story. */
export class Story {
  private readonly work: UnitOfWork;
  private day: Day;

  constructor(
    private readonly app: INestApplicationContext,
    private readonly scopes: Readonly<Record<Teller, Scope>>,
    readonly calendar: Calendar,
    readonly zone: string,
  ) {
    this.work = app.get(UnitOfWork);
    this.day = calendar.today;
    app.get(DepartmentService).today = async () => this.day;
  }

  of<Service>(service: Type<Service>): Service {
    return this.app.get(service);
  }

  /** One unit of work, told as of a day and in somebody's name. */
  async on<T>(day: Day, tell: () => Promise<T>, by: Teller = 'director'): Promise<T> {
    this.day = day;
    try {
      return await this.work.runAs(this.scopes[by], tell);
    } finally {
      this.day = this.calendar.today;
    }
  }

  /** What opens its units of work itself, such as long work. */
  async outside<T>(day: Day, tell: () => Promise<T>, by: Teller = 'director'): Promise<T> {
    this.day = day;
    try {
      return await errands.run({ scope: this.scopes[by], manager: null }, tell);
    } finally {
      this.day = this.calendar.today;
    }
  }

  visitor(by: Teller): Visitor {
    const { departmentId, personId } = this.scopes[by];
    return { departmentId, personId: personId!, roles: [by], tokenHash: '' };
  }

  async today<T>(tell: () => Promise<T>): Promise<T> {
    return this.on(this.calendar.today, tell);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../domain/refusals.ts';
import { UnitOfWork } from '../platform/database/unit-of-work.ts';
import { DepartmentService } from './department.service.ts';
import { Membership } from './membership.entity.ts';
import type { ReadingRateView } from './reading-rate.dto.ts';

@Injectable()
export class ReadingRateService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
  ) {}

  /** The rate of whoever is signed in. */
  async mine(): Promise<ReadingRateView> {
    const { settings } = await this.departments.here();
    return { wordsPerMinute: (await this.membership()).wordsPerMinute, usualWordsPerMinute: settings.wordsPerMinute };
  }

  async change(wordsPerMinute: number | null): Promise<ReadingRateView> {
    const { id, version } = await this.membership();
    await this.work.update(Membership, id, version, { wordsPerMinute });
    return this.mine();
  }

  /** Words a minute of a person of the department: their own, else the department's. */
  async rateOf(personId: string | null): Promise<number> {
    const [own] = personId === null ? [] : await this.work.find(Membership, { personId });
    return own?.wordsPerMinute ?? (await this.departments.here()).settings.wordsPerMinute;
  }

  private async membership(): Promise<Membership> {
    const { personId } = this.work.scope;
    const [own] = personId === null ? [] : await this.work.find(Membership, { personId });
    return own ?? refuse('not-found');
  }
}

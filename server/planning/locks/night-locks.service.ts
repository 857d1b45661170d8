import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { SeasonPlans } from '../proposals/season-plans.service.ts';
import type { NightLockView } from './night-lock.dto.ts';
import { NightLock } from './night-lock.entity.ts';

/** Which nights the planner leaves alone: those whose packet is issued, and those a person locked. */
@Injectable()
export class NightLocks {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(SeasonPlans) private readonly plans: SeasonPlans,
  ) {}

  async isLocked(nightId: string): Promise<boolean> {
    return (await this.work.count(NightLock, { nightId })) > 0;
  }

  /** @throws Refused `not-found`, `night-locked-already` */
  async lock(nightId: string, note: string | null): Promise<NightLockView> {
    await this.hold(nightId);
    await this.moveOn(nightId);
    await this.work.insert(NightLock, { nightId, why: 'person', note, lockedByPersonId: this.work.personId });
    return this.view(nightId);
  }

  /** Once its packet is issued, a night is locked. In the unit that stores the issue, which held the night before. */
  async lockIssued(nightId: string): Promise<void> {
    const former = await this.work.first(NightLock, { nightId });
    if (former?.why === 'issued') return;
    await this.moveOn(nightId);
    if (former) await this.work.update(NightLock, former.id, null, { why: 'issued' });
    else await this.work.insert(NightLock, { nightId, why: 'issued', note: null, lockedByPersonId: this.work.scope.personId });
  }

  /**
   * What is printed may then be planned anew, so an issued night asks why.
   *
   * @throws Refused `not-found`, `night-not-locked`, `unlock-without-note`
   */
  async unlock(nightId: string, note: string | null): Promise<NightLockView> {
    await this.hold(nightId);
    const lock = (await this.work.first(NightLock, { nightId })) ?? refuse('night-not-locked');
    await this.moveOn(nightId);
    if (lock.why === 'issued' && note === null) refuse('unlock-without-note', {}, { note: 'is missing' });
    // The audit keeps what stood in the row when it went.
    if (note !== null) await this.work.update(NightLock, lock.id, null, { note });
    await this.work.remove(NightLock, { id: lock.id });
    return this.view(nightId);
  }

  /** @throws Refused `not-found` */
  async ofNight(nightId: string): Promise<NightLockView> {
    if (!isId(nightId) || (await this.gamesOf(nightId)) === null) return refuse('not-found');
    return this.view(nightId);
  }

  private async view(nightId: string): Promise<NightLockView> {
    const lock = await this.work.first(NightLock, { nightId });
    return { nightId, isLocked: lock !== null, why: lock?.why ?? null, note: lock?.note ?? null };
  }

  /**
   * Keeps everybody else from the night and from the plan of its season until the unit ends, in that order of locks.
   *
   * @throws Refused `not-found`
   */
  async hold(nightId: string): Promise<void> {
    await this.plans.lockWith((isId(nightId) ? await this.gamesOf(nightId) : null) ?? refuse('not-found'));
    await this.work.sql('select 1 from night where department_id = $1 and id = $2 for update', [nightId]);
  }

  /** A lock is of the plan: whoever works one out meanwhile has to look again. */
  private async moveOn(nightId: string): Promise<void> {
    await this.plans.moveOnWith((await this.gamesOf(nightId)) ?? []);
  }

  private async gamesOf(nightId: string): Promise<string[] | null> {
    const rows = await this.work.sql<{ gameId: string | null }>(
      `select game_night.game_id as "gameId" from night left join game_night on game_night.department_id = night.department_id and game_night.night_id = night.id
        where night.department_id = $1 and night.id = $2`,
      [nightId],
    );
    return rows.length === 0 ? null : rows.flatMap((row) => row.gameId ?? []);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { mayUse } from '../../domain/access/rights.ts';
import type { Role } from '../../domain/access/rights.ts';
import { statusAtSignOff, whyNotSignOff } from '../../domain/night/sign-off.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { settlementsOf } from './closing.dto.ts';
import type { SignOffDto, SignOffView } from './closing.dto.ts';
import { NightBooks } from './night-books.service.ts';
import type { GameOfNight } from './night-books.service.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { LockedNight } from '../log/night-log.service.ts';
import { RequestAnswers } from '../requests/request-answers.service.ts';
import { Settlements } from './settlement.service.ts';

/** Closes a night: one tap by an adult, one unit of work for both ledgers. */
@Injectable()
export class NightClosing {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(Settlements) private readonly settlements: Settlements,
    @Inject(NightBooks) private readonly books: NightBooks,
    @Inject(RequestAnswers) private readonly requests: RequestAnswers,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  /**
   * What was read moves from owed to given, and earns. What is still open holds nothing up: it does not count yet.
   *
   * @param roles of whoever is signed in; none for the bearer of a link
   */
  async signOff(nightId: string, form: SignOffDto, roles: readonly Role[]): Promise<SignOffView> {
    const night = await this.log.lock(nightId);
    const games = await this.books.games(nightId);
    await this.refuseUnlessOver(night, games, form, roles);
    const entries = await this.log.entries(nightId);
    const decisions = settlementsOf(form.decisions);
    if (decisions.length > 0 && roles.length === 0) refuse('role-missing');
    await this.settlements.keep(nightId, decisions, entries, null);
    const signed = await this.sign(nightId, form);
    const booked = await this.books.takeIn(night, entries, null);
    await this.requests.expireOpen(nightId);
    await this.notices.tell('night', nightId);
    const after = games.map(({ id, status, hasLog }) => ({ id, status: statusAtSignOff(status, hasLog) }));
    return { night: { id: night.id, heldOn: night.heldOn, state: 'signedOff', games: after }, ...signed, counted: booked.counted, earnedCents: booked.earnedCents };
  }

  private async sign(nightId: string, form: SignOffDto): Promise<{ signedOffAt: string; signedOffByName: string }> {
    const { personId } = this.work.scope;
    const name = form.name ?? null;
    if (personId === null && name === null) refuse('sign-off-without-name', {}, { name: 'is missing' });
    const note = [form.note, form.overrideReason && `Signed off before its day: ${form.overrideReason}`].filter(Boolean).join('\n') || null;
    await this.work.add('sign_off', [{
      id: newId(), nightId, note, signedOffByPersonId: personId, signedOffByLinkId: this.work.tableLinkId, signedOffByName: name,
      attendance: form.attendance ?? null, bookAgrees: form.bookAgrees ?? null, bookWords: form.bookWords ?? null,
    }]);
    const [row] = await this.work.sql<{ signedOffAt: string; signedOffByName: string }>(
      `select recorded_at as "signedOffAt", coalesce(signed_off_by_name, person.name) as "signedOffByName" from sign_off
         left join person on person.id = sign_off.signed_off_by_person_id where sign_off.department_id = $1 and night_id = $2`,
      [nightId],
    );
    return row!;
  }

  private async refuseUnlessOver(night: LockedNight, games: readonly GameOfNight[], form: SignOffDto, roles: readonly Role[]): Promise<void> {
    const no = whyNotSignOff({ heldOn: night.heldOn, isSignedOff: night.isSignedOff, games }, await this.departments.today());
    const isOverridden = no === 'night-not-yet-held' && form.overrideReason && mayUse(roles, 'override a refusal');
    if (no && !isOverridden) refuse(no);
  }
}

import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { LinkService } from '../../access/link.service.ts';
import type { LinkView } from '../../access/link.dto.ts';
import { requestsEndAt } from '../../domain/night/request-hours.ts';
import { refuse } from '../../domain/refusals.ts';
import { CONFIG } from '../../platform/config/config.ts';
import type { Config } from '../../platform/config/config.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { LockedNight } from '../log/night-log.service.ts';
import type { OpenedRequestFormView, RequestFormView } from './request.dto.ts';

/** Opens and closes the public form of a night. A code that was printed stays good until another takes its place. */
@Injectable()
export class RequestForms {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async of(nightId: string): Promise<RequestFormView> {
    const night = await this.log.night(nightId);
    const [row] = await this.work.sql<{ isOpen: boolean }>('select takes_requests as "isOpen" from night where department_id = $1 and id = $2', [nightId]);
    const endsAt = await this.endOf(night);
    const isOver = night.isSignedOff || endsAt <= new Date().toISOString();
    return { isOpen: row!.isOpen && !isOver, hasCode: (await this.codes(nightId)).length > 0, endsAt };
  }

  async open(nightId: string): Promise<OpenedRequestFormView> {
    const night = await this.openNight(nightId);
    const address = (await this.codes(nightId)).length > 0 ? null : await this.makeCode(night);
    await this.switch(nightId, true);
    return { ...(await this.of(nightId)), address };
  }

  async close(nightId: string): Promise<RequestFormView> {
    await this.log.lock(nightId);
    await this.switch(nightId, false);
    return this.of(nightId);
  }

  /** The one that hangs in the lobby opens nothing from now on. */
  async newCode(nightId: string): Promise<OpenedRequestFormView> {
    const night = await this.openNight(nightId);
    for (const { id } of await this.codes(nightId)) await this.links.revoke('request', nightId, id);
    const address = await this.makeCode(night);
    await this.switch(nightId, true);
    return { ...(await this.of(nightId)), address };
  }

  private async openNight(nightId: string): Promise<LockedNight> {
    const night = await this.log.lock(nightId);
    if (night.isSignedOff || (await this.endOf(night)) <= new Date().toISOString()) refuse('requests-of-night-over');
    return night;
  }

  private async makeCode(night: LockedNight): Promise<string> {
    const { token } = await this.links.make('request', night.id, { label: 'Public form', expiresAt: await this.endOf(night) });
    return `${this.config.publicUrl ?? ''}/night/#ask/${token}`;
  }

  private async codes(nightId: string): Promise<LinkView[]> {
    return (await this.links.of('request', nightId)).filter(({ state }) => state === 'open');
  }

  private async endOf({ heldOn }: LockedNight): Promise<ReturnType<typeof requestsEndAt>> {
    return requestsEndAt(heldOn, (await this.departments.here()).zone);
  }

  private async switch(nightId: string, isOpen: boolean): Promise<void> {
    await this.work.sql('update night set takes_requests = $3, version = version + 1 where department_id = $1 and id = $2 and takes_requests <> $3', [nightId, isOpen]);
  }
}

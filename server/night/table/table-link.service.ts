import { randomInt } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { LinkService, cookieOf } from '../../access/link.service.ts';
import type { LinkView } from '../../access/link.dto.ts';
import type { LinkVisitor, Visitor } from '../../access/visitor.ts';
import { mayUse } from '../../domain/access/rights.ts';
import { addSeconds } from '../../domain/instant.ts';
import type { Instant } from '../../domain/instant.ts';
import { ownLinkEndsAt, tableHours } from '../../domain/night/table-hours.ts';
import type { TableHours } from '../../domain/night/table-hours.ts';
import { refuse } from '../../domain/refusals.ts';
import { CONFIG } from '../../platform/config/config.ts';
import type { Config } from '../../platform/config/config.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { LockedNight } from '../log/night-log.service.ts';
import type { NewTableLinkView, TableLinkDto, TableView } from './table.dto.ts';

/** A link that ends sooner is made anew when its person opens the desk. */
const ENOUGH_HOURS = 12;

/** Ways to a night's table without a sign-in: given out by the director, or the own one of somebody who signed in. */
@Injectable()
export class TableLinks {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Those given out and those of people who signed in, the newest first. */
  async of(nightId: string): Promise<LinkView[]> {
    return this.links.of('table', (await this.log.night(nightId)).id);
  }

  async giveOut(nightId: string, { label, maySignOff }: TableLinkDto): Promise<NewTableLinkView> {
    const night = await this.log.night(nightId);
    if (night.isSignedOff) refuse('night-already-signed-off');
    const pin = String(randomInt(1_000_000)).padStart(6, '0');
    const { opensAt, endsAt } = await this.hoursOf(night);
    const { token, ...link } = await this.links.make('table', night.id, { label, notBeforeAt: opensAt, expiresAt: endsAt }, { pin, maySignOff });
    return { ...link, pin, address: `${this.config.publicUrl ?? ''}/night/#link/${token}` };
  }

  async revoke(nightId: string, linkId: string): Promise<LinkView> {
    return this.links.revoke('table', (await this.log.night(nightId)).id, linkId);
  }

  /** Exchanges a sign-in for the person's own link to one table; a good one that this browser holds already stays. */
  async openFor(visitor: Visitor, nightId: string, held: readonly string[]): Promise<{ cookie: string; table: TableView }> {
    const enough = addSeconds(nowAt(), ENOUGH_HOURS * 3600);
    for (const cookie of held) {
      const good = await this.links.visitorOf([cookie], (one) => one.state === 'open' && one.subjectId === nightId && one.personId === visitor.personId && one.endsAt > enough);
      if (good) return { cookie, table: viewOf(good) };
    }
    return this.work.run(async () => {
      const night = await this.log.night(nightId);
      const endsAt = ownLinkEndsAt(await this.hoursOf(night), nowAt());
      const { token, personName } = await this.links.make('table', night.id, { label: null, expiresAt: endsAt }, { personId: visitor.personId });
      const table = { nightId: night.id, workerName: personName ?? '', maySignOff: mayUse(visitor.roles, 'sign off a night'), endsAt, kind: 'own' as const };
      return { cookie: cookieOf(token, null), table };
    });
  }

  /** @throws Refused `link-not-good` where none of these cookies opens a table, or not that of the night asked for */
  async tableOf(held: readonly string[], nightId: string | undefined): Promise<TableView> {
    const visitor = await this.links.visitorOf(held, (one) => one.kind === 'table' && one.state === 'open' && (nightId === undefined || one.subjectId === nightId));
    return visitor ? viewOf(visitor) : refuse('link-not-good');
  }

  private async hoursOf(night: LockedNight): Promise<TableHours> {
    return tableHours(night.heldOn, (await this.departments.here()).zone, nowAt());
  }
}

function nowAt(): Instant {
  return new Date().toISOString() as Instant;
}

function viewOf({ subjectId, workerName, maySignOff, endsAt, personId }: LinkVisitor): TableView {
  return { nightId: subjectId, workerName, maySignOff, endsAt, kind: personId === null ? 'givenOut' : 'own' };
}

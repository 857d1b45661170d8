import { createHash } from 'node:crypto';
import { Inject, Injectable } from '@nestjs/common';
import { DepartmentService } from '../../access/department.service.ts';
import { LinkService } from '../../access/link.service.ts';
import { readForm } from '../../domain/night/desk/requests/request-form.ts';
import { PUBLIC_REQUEST_KINDS } from '../../domain/night/desk/requests/request.ts';
import { LONGEST_LIMIT_SECONDS, waitSeconds } from '../../domain/night/request-limits.ts';
import { refuse } from '../../domain/refusals.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightService } from '../../season/night.service.ts';
import { NightLog } from '../log/night-log.service.ts';
import type { AskDto, AskFormView, AskedView } from './request.dto.ts';

const STATE = `select takes_requests and not exists (select from sign_off where sign_off.department_id = $1 and sign_off.night_id = night.id) as "isOpen"
  from night where department_id = $1 and id = $2`;

/** Whoever asks in one night is answered one after the other, so that a limit is a limit. */
const ONE_AT_A_TIME = `select pg_advisory_xact_lock(hashtextextended($1::text || $2, 10))`;

const LATELY = `select id, extract(epoch from clock_timestamp() - asked_at)::float8 as "secondsAgo", coalesce(address_hash = $3, false) as "isSameAddress" from night_request
  where department_id = $1 and night_id = $2 and source = 'public' and asked_at > now() - make_interval(secs => $4)`;

/** What the public asks. Nobody is known here: a token says which night of which department, and nothing else is told or taken. */
@Injectable()
export class Asking {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(LinkService) private readonly links: LinkService,
    @Inject(DepartmentService) private readonly departments: DepartmentService,
    @Inject(NightService) private readonly nights: NightService,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  async form(token: string): Promise<AskFormView> {
    return this.inNightOf(token, async (nightId, hasEnded) => {
      const { title } = await this.nights.one(nightId);
      const { name } = await this.departments.here();
      return { title, departmentName: name, kinds: PUBLIC_REQUEST_KINDS, isOpen: !hasEnded && (await this.isOpen(nightId)) };
    });
  }

  /** @throws Refused `requests-closed`, `malformed` with a sentence for each field, `asked-too-often` with the seconds to wait */
  async take(token: string, { id, kind, fields: raw, website }: AskDto, address: string): Promise<AskedView> {
    return this.inNightOf(token, async (nightId, hasEnded) => {
      if (hasEnded || !(await this.isOpen(nightId))) refuse('requests-closed');
      // Whoever fills in what nobody sees is no person; it is told the same and nothing is kept.
      if (website) return { state: 'waiting' };
      const { fields, sentences } = readForm(kind, { ...raw });
      if (Object.keys(sentences).length > 0) refuse('malformed', {}, { fields: sentences });
      const addressHash = createHash('sha256').update(`${token} ${address}`).digest('hex');
      if (await this.isThere(nightId, id, addressHash)) return { state: 'waiting' };
      if ((await this.log.hold(nightId)).isSignedOff) refuse('requests-closed');
      await this.work.add('night_request', [{ id, nightId, source: 'public', kind, fields, addressHash }]);
      await this.notices.tell('requests', nightId);
      return { state: 'waiting' };
    });
  }

  /** Whether this very request came before, its answer lost. @throws Refused `asked-too-often` */
  private async isThere(nightId: string, id: string, addressHash: string): Promise<boolean> {
    await this.work.sql(ONE_AT_A_TIME, [nightId]);
    const lately = await this.work.sql<{ id: string; secondsAgo: number; isSameAddress: boolean }>(LATELY, [nightId, addressHash, LONGEST_LIMIT_SECONDS]);
    if (lately.some((one) => one.id === id.toLowerCase())) return true;
    const seconds = waitSeconds(lately);
    if (seconds === 0) return false;
    const waitSentence = seconds < 90 ? `${seconds} second${seconds === 1 ? '' : 's'}` : `${Math.ceil(seconds / 60)} minutes`;
    return refuse('asked-too-often', { waitSentence, retryAfterSeconds: seconds });
  }

  private async isOpen(nightId: string): Promise<boolean> {
    const [night] = await this.work.sql<{ isOpen: boolean }>(STATE, [nightId]);
    return night?.isOpen ?? false;
  }

  private async inNightOf<T>(token: string, work: (nightId: string, hasEnded: boolean) => Promise<T>): Promise<T> {
    const visitor = await this.links.visitorOf([token], ({ kind }) => kind === 'request');
    if (!visitor) return refuse('not-found');
    return this.work.runAs({ departmentId: visitor.departmentId, personId: null }, () => work(visitor.subjectId, visitor.state !== 'open'));
  }
}

import { Inject, Injectable } from '@nestjs/common';
import type { Visitor } from '../../access/visitor.ts';
import { mayUse } from '../../domain/access/rights.ts';
import { formNamesPerson, readForm } from '../../domain/night/desk/requests/request-form.ts';
import type { RequestAnswer, RequestAnswerKind } from '../../domain/night/desk/requests/request.ts';
import { approvedRequests } from '../../domain/night/desk/requests/requests-of-night.ts';
import type { RequestEntry } from '../../domain/night/desk/requests/requests-of-night.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { Notices } from '../../platform/database/notices.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { NightLog } from '../log/night-log.service.ts';
import { RequestAnswers } from './request-answers.service.ts';
import type { KeptRow } from './request-answers.service.ts';
import type { ApproveRequestDto, NightRequestView, RequestDto } from './request.dto.ts';

const ENTRIES = `select log_entry.id, log_entry.kind, log_entry.reason, log_entry.detail, log_entry.takes_back_entry_id as "takesBackEntryId", log_entry.occurred_at as "occurredAt",
    coalesce(person.name, link.label) as "loggedByName"
  from log_entry left join person on person.id = log_entry.logged_by_person_id
  left join link on link.department_id = $1 and link.id = log_entry.logged_by_link_id
 where log_entry.department_id = $1 and log_entry.night_id = $2 and log_entry.kind in ('request', 'requestAnswered', 'takenBack') order by log_entry.number`;

type NamedEntry = RequestEntry & { loggedByName: string | null };

/** The requests of a night, wherever they were asked. */
@Injectable()
export class NightRequests {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(NightLog) private readonly log: NightLog,
    @Inject(RequestAnswers) private readonly answers: RequestAnswers,
    @Inject(Notices) private readonly notices: Notices,
  ) {}

  async of(nightId: string): Promise<NightRequestView[]> {
    const night = await this.log.night(nightId);
    const entries = await this.work.sql<NamedEntry>(ENTRIES, [nightId]);
    const { waiting, approved, ended } = approvedRequests(entries, await this.answers.of(nightId), night.isSignedOff);
    const nameOf = new Map(entries.map((entry) => [entry.id, entry.loggedByName]));
    return [...waiting, ...approved, ...ended].map((request) => ({
      ...request,
      answers: request.answers.map((answer) => ({ ...answer, answeredByName: answer.answeredByName ?? nameOf.get(answer.entryId ?? '') ?? null })),
    }));
  }

  /** What the office writes down for the table. */
  async ask(nightId: string, { kind, fields: raw }: RequestDto): Promise<NightRequestView> {
    const night = await this.log.hold(nightId);
    if (night.isSignedOff) refuse('requests-closed');
    const { fields, sentences } = readForm(kind, { ...raw });
    if (Object.keys(sentences).length > 0) refuse('malformed', {}, { fields: sentences });
    const id = newId();
    await this.work.add('night_request', [{ id, nightId, source: 'office', kind, fields }]);
    await this.notices.tell('requests', nightId);
    return this.one(nightId, id);
  }

  async approve(id: string, form: ApproveRequestDto, visitor: Visitor): Promise<NightRequestView> {
    const name = await this.nameOf(visitor);
    const allowedBy = form.nameAllowedBy ?? (mayUse(visitor.roles, 'override a refusal') ? name : null);
    return this.answer(id, 'approved', { answeredByName: name, nameAllowedBy: allowedBy, wordsChecked: form.wordsChecked ?? false });
  }

  async decline(id: string, reason: string, visitor: Visitor): Promise<NightRequestView> {
    return this.answer(id, 'declined', { reason, answeredByName: await this.nameOf(visitor) });
  }

  async markRead(id: string, visitor: Visitor): Promise<NightRequestView> {
    return this.answer(id, 'read', { answeredByName: await this.nameOf(visitor) });
  }

  private async answer(id: string, answer: RequestAnswerKind, more: Partial<RequestAnswer>): Promise<NightRequestView> {
    const empty = { reason: null, nameAllowedBy: null, wordsChecked: false, entryId: null, answeredByName: null };
    return viewOf(await this.answers.answer(id, { ...empty, ...more, answer, answeredAt: new Date().toISOString() }));
  }

  private async one(nightId: string, id: string): Promise<NightRequestView> {
    return viewOf((await this.answers.of(nightId)).find((row) => row.id === id) ?? refuse('not-found'));
  }

  private async nameOf({ personId }: Visitor): Promise<string | null> {
    const [person] = await this.work.sqlEverywhere<{ name: string }>('select name from person where id = $1', [personId]);
    return person?.name ?? null;
  }
}

function viewOf({ nightId: _, ...row }: KeptRow): NightRequestView {
  return { ...row, namesPerson: formNamesPerson(row.kind, row.fields) };
}

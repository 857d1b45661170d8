import { Inject, Injectable } from '@nestjs/common';
import { refuse } from '../../domain/refusals.ts';
import { isId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Conditions, contains, pageOf } from '../../platform/http/lists.ts';
import type { Listed } from '../../platform/http/lists.ts';
import type { MessageEventView, MessageListQuery, MessageView, WholeMessageView } from './message.dto.ts';
import type { Attachment } from './message.entity.ts';

/** What came last decides: a letter that was handed over can still come back. */
const STATE = `case when became.bounced then 'bounced' when became.sent then 'sent' when became.refused then 'refused' when became.given_up then 'givenUp' else 'queued' end`;

const VIEW = `message.id, message.kind, message.about_id as "aboutId", message.sponsor_id as "sponsorId", sponsor.name as "sponsorName",
  message.payer_id as "payerId", payer.name as "payerName", message.to_address as "toAddress", message.subject, ${STATE} as state,
  became.failed as "failedTries", message.recorded_at as "recordedAt", person.name as "writtenByName", message.again_because as "againBecause"`;

const FROM = `from message
  left join sponsor on sponsor.department_id = message.department_id and sponsor.id = message.sponsor_id
  left join payer on payer.department_id = message.department_id and payer.id = message.payer_id
  left join person on person.id = message.written_by_person_id
  cross join lateral (select coalesce(bool_or(kind = 'bounced'), false) as bounced, coalesce(bool_or(kind = 'handedOver'), false) as sent,
      coalesce(bool_or(kind = 'refused'), false) as refused, coalesce(bool_or(kind = 'givenUp'), false) as given_up, count(*) filter (where kind = 'tryFailed') as failed
    from message_event where message_event.department_id = $1 and message_event.message_id = message.id) as became`;

const SORTS = {
  recordedAt: 'message.recorded_at',
  kind: 'message.kind',
  toAddress: 'message.to_address',
  subject: 'message.subject',
  state: STATE,
  sponsorName: 'sponsor.name collate "und-x-icu"',
};

const EVENTS = `select id, kind, detail, recorded_at as "recordedAt" from message_event where department_id = $1 and message_id = $2 order by recorded_at, id`;

/** The log of what was sent to whom, and what became of it. */
@Injectable()
export class MessageViews {
  constructor(@Inject(UnitOfWork) private readonly work: UnitOfWork) {}

  async list(query: MessageListQuery): Promise<Listed<MessageView>> {
    const on = new Conditions('message.department_id')
      .add('message.id = any(?::uuid[])', query.id)
      .add('message.sponsor_id = ?', query.sponsorId)
      .add('message.about_id = ?', query.aboutId)
      .add('message.kind = ?', query.kind)
      .add(`${STATE} = ?`, query.state)
      .add('(message.subject ilike ? or message.to_address ilike ? or sponsor.name ilike ? or payer.name ilike ?)', contains(query.q));
    const [count] = await this.work.sql<{ total: number }>(`select count(*) as total ${FROM} where ${on.where}`, on.parameters);
    const sorted = { ...query, sort: query.sort ?? '-recordedAt' };
    const data = await this.work.sql<MessageView>(`select ${VIEW} ${FROM} where ${on.where} ${pageOf(sorted, SORTS, 'message.id')}`, on.parameters);
    return { data, total: count?.total ?? 0 };
  }

  async one(id: string): Promise<WholeMessageView> {
    if (!isId(id)) return refuse('not-found');
    const [row] = await this.work.sql<WholeMessageView & { attachments: unknown }>(
      `select ${VIEW}, message.from_name as "fromName", message.reply_to as "replyTo", message.body, message.attachments ${FROM} where message.department_id = $1 and message.id = $2`,
      [id],
    );
    if (!row) return refuse('not-found');
    const attachments = (row.attachments as unknown as Attachment[]).map((one) => one.name);
    return { ...row, attachments, events: await this.work.sql<MessageEventView>(EVENTS, [id]) };
  }
}

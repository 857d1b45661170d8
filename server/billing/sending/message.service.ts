import { Inject, Injectable } from '@nestjs/common';
import { isMailAddress, oneLine, onceKeyOf } from '../../domain/billing/letters/letter.ts';
import { refuse } from '../../domain/refusals.ts';
import { newId } from '../../platform/database/ids.ts';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Jobs } from '../../platform/jobs/jobs.service.ts';
import type { Draft } from './draft.ts';
import { Drafts } from './drafts.service.ts';
import { MessageEvent } from './message-event.entity.ts';
import { Message } from './message.entity.ts';
import type { BouncedDto, LetterDto, LetterPreview, SendLetterDto } from './message.dto.ts';
import { MessageViews } from './message-view.service.ts';

/** A letter is written once and queued in the same unit of work; what hands it over is a job. */
@Injectable()
export class MessageService {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Drafts) private readonly drafts: Drafts,
    @Inject(MessageViews) private readonly views: MessageViews,
    @Inject(Jobs) private readonly jobs: Jobs,
  ) {}

  async preview(form: LetterDto): Promise<LetterPreview> {
    const draft = await this.drafts.draw(form);
    const { kind, aboutId, toAddress, subject, body } = draft;
    return { kind, aboutId, toAddress, subject, body, attachments: draft.attachments.map((one) => one.name), writtenBefore: await this.writtenBefore(draft) };
  }

  /** @throws Refused `no-address`, `address-not-good`, `letter-went-already`, `reason-missing` */
  async send(form: SendLetterDto): Promise<string> {
    const draft = await this.drafts.draw(form);
    const before = await this.writtenBefore(draft);
    if (before > 0 && !form.again) refuse('letter-went-already', { times: before === 1 ? 'once' : `${before} times` });
    if (before > 0 && !form.reason) refuse('reason-missing', {}, { reason: 'Say why this letter goes once more.' });
    const subject = form.subject ? oneLine(form.subject) : draft.subject;
    const edited = { ...draft, toAddress: form.toAddress ?? draft.toAddress, subject, body: form.body ?? draft.body };
    return this.write(edited, before + 1, before > 0 ? (form.reason ?? null) : null);
  }

  /** Writes a letter down and asks for it to be handed over. */
  async write(draft: Draft, sending = 1, againBecause: string | null = null): Promise<string> {
    const { kind, aboutId, sponsorId, payerId, toAddress, fromName, subject, body } = draft;
    if (toAddress === null) return refuse('no-address', { name: draft.toName }, { toAddress: 'Write an address.' });
    if (!isMailAddress(toAddress)) refuse('address-not-good', { address: toAddress }, { toAddress: 'This is no address that letters can be sent to.' });
    const id = newId();
    const replyTo = draft.replyTo !== null && isMailAddress(draft.replyTo) ? draft.replyTo : null;
    await this.work.insert(Message, {
      id, kind, aboutId, sponsorId, payerId, toAddress, replyTo, subject, body, againBecause,
      fromName: oneLine(fromName),
      attachments: [...draft.attachments],
      onceKey: onceKeyOf(kind, aboutId, draft.which, sending),
      writtenByPersonId: this.work.scope.personId,
    });
    await this.jobs.ask('letter', id);
    return id;
  }

  /** A letter that came back is told by a person: the mailbox to which it comes back is not read here. */
  async bounced(id: string, { detail }: BouncedDto): Promise<void> {
    const { state } = await this.views.one(id);
    if (state !== 'sent') refuse('letter-not-sent');
    await this.work.insert(MessageEvent, { messageId: id, kind: 'bounced', detail });
  }

  private async writtenBefore({ kind, aboutId, which }: Draft): Promise<number> {
    const key = onceKeyOf(kind, aboutId, which, 1);
    const [row] = await this.work.sql<{ times: number }>('select count(*) as times from message where department_id = $1 and (once_key = $2 or starts_with(once_key, $3))', [key, `${key}:again `]);
    return row?.times ?? 0;
  }
}

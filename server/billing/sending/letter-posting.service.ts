import { Inject, Injectable } from '@nestjs/common';
import type { OnModuleInit } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.ts';
import { Jobs } from '../../platform/jobs/jobs.service.ts';
import type { Job } from '../../platform/jobs/jobs.service.ts';
import { MailSender } from '../../platform/mail/mail-sender.ts';
import type { MailOutcome } from '../../platform/mail/mail.ts';
import { InvoiceViews } from '../invoices/invoice-view.service.ts';
import { AttachmentPrinting } from './attachment-printing.service.ts';
import { MessageEvent } from './message-event.entity.ts';
import type { MessageEventKind } from './message-event.entity.ts';
import { Message } from './message.entity.ts';

const MAY_HAVE_ARRIVED = 'The connection was lost after the whole letter was handed over, so it may have arrived. It goes once more with the same Message-ID, by which a mail server knows it again. ';

/**
 * Hands a letter over. Done twice, the second time finds what became of it and does nothing; only a crash between the
 * mail server's yes and our own note of it sends it once more, and then with the same Message-ID.
 */
@Injectable()
export class LetterPosting implements OnModuleInit {
  constructor(
    @Inject(UnitOfWork) private readonly work: UnitOfWork,
    @Inject(Jobs) private readonly jobs: Jobs,
    @Inject(MailSender) private readonly sender: MailSender,
    @Inject(AttachmentPrinting) private readonly printing: AttachmentPrinting,
    @Inject(InvoiceViews) private readonly invoices: InvoiceViews,
  ) {}

  onModuleInit(): void {
    this.jobs.handle('letter', (job) => this.post(job));
    this.jobs.handle('letter-given-up', (job) => this.giveUp(job));
  }

  private async post({ subjectId }: Job): Promise<void> {
    const message = await this.work.run(() => this.waiting(subjectId));
    if (!message) return;
    const outcome = await this.handOver(message);
    await this.work.run(() => this.note(message.id, outcome));
    if (outcome.kind === 'failed') throw new Error('the letter waits for its next try');
  }

  private async handOver(message: Message): Promise<MailOutcome> {
    const { id, fromName, replyTo, toAddress, subject, body } = message;
    try {
      const attachments = await this.printing.papersOf(message);
      return await this.sender.send({ id, fromName, replyTo, to: toAddress, subject, text: body, isAutomatic: message.writtenByPersonId === null, attachments });
    } catch (error) {
      return { kind: 'failed', detail: `The letter could not be made ready: ${String(error).slice(0, 300)}`, mayHaveArrived: false };
    }
  }

  /** The letter, where it still waits and what it says is still so. */
  private async waiting(id: string): Promise<Message | null> {
    const message = await this.work.first(Message, { id });
    if (!message || (await this.isSettled(id))) return null;
    const why = await this.whyNot(message);
    if (why === null) return message;
    await this.add(id, 'givenUp', why);
    return null;
  }

  private async isSettled(id: string): Promise<boolean> {
    return (await this.work.sql(`select 1 from message_event where department_id = $1 and message_id = $2 and kind <> 'tryFailed' limit 1`, [id])).length > 0;
  }

  private async whyNot({ kind, aboutId }: Message): Promise<string | null> {
    if (kind !== 'invoice' && kind !== 'reminder') return null;
    const { state, balanceCents } = await this.invoices.one(aboutId);
    if (state === 'void') return 'The invoice was voided before the letter went out.';
    return kind === 'reminder' && balanceCents <= 0 ? 'The invoice was settled before the reminder went out.' : null;
  }

  private async note(id: string, outcome: MailOutcome): Promise<void> {
    if (outcome.kind !== 'failed') return this.add(id, outcome.kind, outcome.detail);
    return this.add(id, 'tryFailed', `${outcome.mayHaveArrived ? MAY_HAVE_ARRIVED : ''}${outcome.detail}`);
  }

  private async giveUp({ subjectId }: Job): Promise<void> {
    await this.work.run(async () => {
      if (await this.isSettled(subjectId)) return;
      await this.add(subjectId, 'givenUp', 'No try to hand it over worked. Put right what is named above and send it again.');
    });
  }

  private async add(messageId: string, kind: MessageEventKind, detail: string): Promise<void> {
    await this.work.insert(MessageEvent, { messageId, kind, detail });
  }
}

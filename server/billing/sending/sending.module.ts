import { Module } from '@nestjs/common';
import { SponsorshipModule } from '../../sponsorship/sponsorship.module.ts';
import { BillingModule } from '../billing.module.ts';
import { AccountDrafts } from './account-drafts.service.ts';
import { AttachmentPrinting } from './attachment-printing.service.ts';
import { Drafts } from './drafts.service.ts';
import { InvoiceDrafts } from './invoice-drafts.service.ts';
import { LetterPosting } from './letter-posting.service.ts';
import { LetterRound } from './letter-round.service.ts';
import { MessageEvent } from './message-event.entity.ts';
import { MessageController } from './message.controller.ts';
import { Message } from './message.entity.ts';
import { MessageService } from './message.service.ts';
import { MessageViews } from './message-view.service.ts';
import { ReminderController } from './reminder.controller.ts';
import { ReminderRound } from './reminder-round.service.ts';
import { ThankYouDrafts } from './thank-you-drafts.service.ts';

export const sendingEntities = [Message, MessageEvent];

/** Letters about what the rest of billing issued; nothing of it waits for them. */
@Module({
  imports: [BillingModule, SponsorshipModule],
  controllers: [MessageController, ReminderController],
  providers: [MessageViews, MessageService, InvoiceDrafts, AccountDrafts, ThankYouDrafts, Drafts, AttachmentPrinting, LetterPosting, ReminderRound, LetterRound],
})
export class SendingModule {}

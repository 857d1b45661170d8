export type { LetterPreview, MessageEventView as LetterEvent, MessageView, ReminderView as Reminder, WholeMessageView as Letter } from '../../server/billing/sending/message.dto.ts';

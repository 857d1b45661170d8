export type { AccountLineView as AccountLine, CauseView as Cause, DeliveryLineView as DeliveryLine } from '../../../server/billing/statements/statement.dto.ts';

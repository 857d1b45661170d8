export type { ApplicationView as Application, PaymentView as Payment } from '../../server/billing/payment.dto.ts';

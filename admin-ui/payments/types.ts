export type { ApplicationView as Application, PaymentView as Payment } from '../../server/billing/payments/payment.dto.ts';

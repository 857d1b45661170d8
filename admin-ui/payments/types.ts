export type { ApplicationView as Application, PaymentView as Payment, RefundView as RefundLine } from '../../server/billing/payments/payment.dto.ts';

import { dayText } from '../../platform/typesetting/amount-text.ts';
import type { PlannedInvoice } from '../invoices/invoice-planning.service.ts';

/** Why a run gives a contract no invoice, in a plain sentence; null where it gets one. */
export function whySkipped({ deal, lines, refused, why }: PlannedInvoice): string | null {
  if (refused) return refused.message;
  if (deal.heldOn !== null) return `On hold since ${dayText(deal.heldOn, deal.locale)}: ${deal.holdReason ?? ''}`;
  return lines.length === 0 ? why : null;
}

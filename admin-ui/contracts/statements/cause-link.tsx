import { Go } from '../../fields/go.tsx';
import type { Cause } from './types.ts';

const PAGES: Record<string, (id: string) => string> = {
  night: (id) => `/nights/${id}/show?tab=log`,
  game: (id) => `/games/${id}/show`,
  invoice: (id) => `/invoices/${id}/show`,
  payment: (id) => `/payments/${id}/show`,
  depositSlip: (id) => `/deposit-slips/${id}/show`,
  creditMemo: (id) => `/credit-memos/${id}/show`,
  contract: (id) => `/contracts/${id}/show`,
};

/** What caused a line, linked to its page where there is one. */
export function CauseLink({ cause }: { cause: Cause | null }) {
  if (!cause) return <>–</>;
  const page = PAGES[cause.kind];
  return page ? <Go to={page(cause.id)}>{cause.label}</Go> : <>{cause.label}</>;
}

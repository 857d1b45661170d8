import { REQUEST_TITLES } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { NightRequest } from '../../../server/domain/night/desk/requests/request.ts';
import { useDesk } from '../desk.ts';

const FROM = { table: 'at the table', public: 'by the public form', office: 'from the office' } as const;

/** What a request is, from where and when, by the venue's wall clock. */
export function RequestHead({ request }: { request: NightRequest }) {
  const { zone } = useDesk().bundle;
  const clock = new Intl.DateTimeFormat('en-US', { hour: 'numeric', minute: '2-digit', timeZone: zone }).format(new Date(request.askedAt));
  return (
    <div className="desk-request-head">
      <strong>{REQUEST_TITLES[request.kind]}</strong>
      <span className="desk-soft">{FROM[request.source]}, {clock}</span>
    </div>
  );
}

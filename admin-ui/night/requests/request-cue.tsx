import { requestCue } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { NightRequest } from '../../../server/domain/night/desk/requests/request.ts';
import { useDesk } from '../desk.ts';
import './requests.css';

/** An approved request as it is read: what is said large, what is done apart from it. */
export function RequestCue({ request }: { request: Pick<NightRequest, 'kind' | 'fields'> }) {
  const { requestScripts, settings } = useDesk().bundle;
  const { segments, seconds } = requestCue(request, requestScripts, settings.wordsPerMinute);
  return (
    <div className="desk-request-words">
      {segments.map((segment, place) =>
        segment.kind === 'direction' ? <p key={place} className="desk-request-done">{segment.text}</p> : <p key={place} className="desk-request-said">{segment.text}</p>,
      )}
      {seconds > 0 && <p className="desk-soft">About {seconds} seconds</p>}
    </div>
  );
}

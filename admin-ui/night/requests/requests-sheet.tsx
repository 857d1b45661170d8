import { useState } from 'react';
import { reasonInWords } from '../../../server/domain/night/reason-words.ts';
import { REQUEST_TITLES, requestLine } from '../../../server/domain/night/desk/requests/request-text.ts';
import { REQUEST_KINDS } from '../../../server/domain/night/desk/requests/request.ts';
import type { NightRequest, RequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { RequestCue } from './request-cue.tsx';
import { RequestForm } from './request-form.tsx';
import { RequestHead } from './request-head.tsx';
import { WaitingRequest } from './waiting-request.tsx';
import { useRequests } from './use-requests.ts';
import type { Requests } from './use-requests.ts';
import './requests.css';

const VEHICLE_KEY = 'v';
const ENDED = { read: 'Read', declined: 'Declined', expired: 'Expired' } as const;

/** Everything somebody asked the table to read: written down here, decided here, read from here. */
export function RequestsSheet() {
  const requests = useRequests();
  const { isSignedOff } = useDesk();
  const [kind, setKind] = useState<RequestKind | null>(null);
  const [said, setSaid] = useState<string | null>(null);
  const begin = (next: RequestKind) => {
    setSaid(null);
    setKind(next);
  };
  useKey(isSignedOff || kind !== null ? null : VEHICLE_KEY, 'A vehicle notice', () => begin('vehicle'));
  const done = (sentence: string | null) => {
    setKind(null);
    setSaid(sentence);
  };
  return (
    <div className="desk-requests">
      {kind !== null && <RequestForm key={kind} kind={kind} requests={requests} onDone={done} />}
      {kind === null && !isSignedOff && (
        <section aria-label="Asked at the table">
          <h3>Asked at the table</h3>
          <div className="desk-request-kinds">
            {REQUEST_KINDS.map((one) => (
              <button key={one} type="button" className="desk-button" onClick={() => begin(one)}>
                {REQUEST_TITLES[one]}{one === 'vehicle' && <kbd>{keyName(VEHICLE_KEY)}</kbd>}
              </button>
            ))}
          </div>
        </section>
      )}
      <p role="status" className="desk-request-status">{said}</p>
      <Listed title="To be read" requests={requests.approved} none="Nothing is waiting to be read.">{(request) => <ToRead key={request.id} request={request} requests={requests} />}</Listed>
      <Listed title="Waiting for approval" requests={requests.waiting} none="Nobody is waiting.">{(request) => <WaitingRequest key={request.id} request={request} requests={requests} />}</Listed>
      {requests.ended.length > 0 && <Listed title="Ended" requests={requests.ended} none="">{(request) => <Ended key={request.id} request={request} requests={requests} />}</Listed>}
    </div>
  );
}

function Listed({ title, requests, none, children }: { title: string; requests: readonly NightRequest[]; none: string; children: (request: NightRequest) => React.ReactNode }) {
  return (
    <section aria-label={title}>
      <h3>{title}{requests.length > 0 && ` (${requests.length})`}</h3>
      {requests.length === 0 ? <p className="desk-soft">{none}</p> : <ul className="desk-request-list">{requests.map(children)}</ul>}
    </section>
  );
}

function ToRead({ request, requests }: { request: NightRequest; requests: Requests }) {
  return (
    <li className="desk-request">
      <RequestHead request={request} />
      <RequestCue request={request} />
      <div className="desk-request-actions">
        <button type="button" className="desk-button desk-button-main" onClick={() => void requests.markRead(request)}>{request.kind === 'music' ? 'Played' : 'Read'}</button>
        <TakeBack request={request} requests={requests} what="Not approved after all" />
      </div>
    </li>
  );
}

function Ended({ request, requests }: { request: NightRequest; requests: Requests }) {
  const state = request.state as keyof typeof ENDED;
  const reason = request.answers.findLast(({ answer }) => answer === state)?.reason;
  return (
    <li className="desk-request">
      <RequestHead request={request} />
      <p className="desk-request-line">{requestLine(request.kind, request.fields)}</p>
      <div className="desk-request-actions">
        <span>{request.kind === 'music' && state === 'read' ? 'Played' : ENDED[state]}{reason ? `: ${reasonInWords(reason)}` : ''}</span>
        {state !== 'expired' && <TakeBack request={request} requests={requests} what="Take back" />}
      </div>
    </li>
  );
}

function TakeBack({ request, requests, what }: { request: NightRequest; requests: Requests; what: string }) {
  const undo = requests.undo(request);
  return undo && <button type="button" className="desk-button" onClick={() => void undo()}>{what}</button>;
}

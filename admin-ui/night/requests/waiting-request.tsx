import { useState } from 'react';
import { requestLine } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { NightRequest } from '../../../server/domain/night/desk/requests/request.ts';
import { ApprovalFields, useApproval } from './approval.tsx';
import { RequestHead } from './request-head.tsx';
import type { Requests } from './use-requests.ts';

const REASONS = ['No time left tonight', 'Not for this crowd', 'Cannot be checked', 'Asked already'];

/** One request that waits: approved with one tap, declined with a reason. */
export function WaitingRequest({ request, requests }: { request: NightRequest; requests: Requests }) {
  const [declines, setDeclines] = useState(false);
  const [words, setWords] = useState('');
  const { approval, setApproval, problem, given } = useApproval(request.kind, request.fields);
  const approve = () => {
    const allowed = given();
    if (allowed) void requests.approve(request, allowed);
  };
  return (
    <li className="desk-request">
      <RequestHead request={request} />
      <p className="desk-request-line">{requestLine(request.kind, request.fields)}</p>
      <ApprovalFields kind={request.kind} fields={request.fields} approval={approval} onChange={setApproval} />
      {problem && <p className="desk-notice desk-notice-bad" role="alert">{problem}</p>}
      <div className="desk-request-actions">
        <button type="button" className="desk-button desk-button-main" onClick={approve}>Approve</button>
        <button type="button" className="desk-button" aria-expanded={declines} onClick={() => setDeclines(!declines)}>Decline…</button>
      </div>
      {declines && (
        <div className="desk-request-usual" role="group" aria-label="Why it is declined">
          {REASONS.map((reason) => <button key={reason} type="button" className="desk-button" onClick={() => void requests.decline(request, reason)}>{reason}</button>)}
          <form className="desk-request-other" onSubmit={(event) => { event.preventDefault(); if (words.trim()) void requests.decline(request, words.trim()); }}>
            <input className="desk-input" aria-label="Another reason" placeholder="Another reason" maxLength={200} value={words} onChange={(event) => setWords(event.target.value)} />
            <button type="submit" className="desk-button">Decline</button>
          </form>
        </div>
      )}
    </li>
  );
}

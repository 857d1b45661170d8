import { useId, useState } from 'react';
import { formNamesPerson } from '../../../server/domain/night/desk/requests/request-form.ts';
import { whyNotAnswer } from '../../../server/domain/night/desk/requests/request-states.ts';
import type { RequestRefusal } from '../../../server/domain/night/desk/requests/request-states.ts';
import type { RequestFields, RequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import type { Approval } from './use-requests.ts';

/** As the server says them; its whole table of refusals would be a tenth of the page. */
const SENTENCES: Readonly<Record<RequestRefusal, string>> = {
  'request-answered-already': 'This request is answered already.',
  'request-names-person': 'A person may be named here, so the director has to allow it first. Say who allowed it.',
  'request-words-unchecked': 'Read the words of the song from end to end first, then say that they are checked.',
  'request-declined-without-reason': 'Say in a few words why the request is declined.',
};

/** What has to be known before a request is approved: who allowed a name, that a song's words were read. Mostly nothing. */
export function ApprovalFields({ kind, fields, approval, onChange }: { kind: RequestKind; fields: RequestFields; approval: Approval; onChange: (approval: Approval) => void }) {
  const id = useId();
  return (
    <>
      {formNamesPerson(kind, fields) && (
        <div className="desk-request-field">
          <label htmlFor={id}>A person may be named. Who allowed it?</label>
          <input id={id} className="desk-input" autoComplete="off" maxLength={120} value={approval.nameAllowedBy ?? ''} onChange={(event) => onChange({ ...approval, nameAllowedBy: event.target.value })} aria-describedby={`${id}-hint`} />
          <span id={`${id}-hint`} className="desk-soft">The director’s name. Without it the request can be declined, not approved.</span>
        </div>
      )}
      {kind === 'music' && (
        <label className="desk-request-check">
          <input type="checkbox" checked={approval.wordsChecked ?? false} onChange={(event) => onChange({ ...approval, wordsChecked: event.target.checked })} />
          I read the words of the song from end to end.
        </label>
      )}
    </>
  );
}

/** The sentence that says what is still missing for an approval, or null. */
export function whyNotApprove(kind: RequestKind, fields: RequestFields, { nameAllowedBy = null, wordsChecked = false }: Approval): string | null {
  const no = whyNotAnswer({ state: 'waiting', kind, namesPerson: formNamesPerson(kind, fields) }, { answer: 'approved', reason: null, nameAllowedBy, wordsChecked });
  return no && SENTENCES[no];
}

/** The approval of one request while it is being decided, and what keeps it from being given. */
export function useApproval(kind: RequestKind, fields: RequestFields) {
  const [approval, setApproval] = useState<Approval>({});
  const [problem, setProblem] = useState<string | null>(null);
  const given = (): Approval | null => {
    const no = whyNotApprove(kind, fields, approval);
    setProblem(no);
    return no === null ? approval : null;
  };
  return { approval, setApproval, problem, given };
}

import { useRef, useState } from 'react';
import { REQUEST_FORMS, readForm } from '../../../server/domain/night/desk/requests/request-form.ts';
import type { FieldSentences } from '../../../server/domain/night/desk/requests/request-form.ts';
import { REQUEST_TITLES } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { RequestFields, RequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import { ApprovalFields, useApproval } from './approval.tsx';
import { FieldInput } from './field-input.tsx';
import { RequestCue } from './request-cue.tsx';
import type { Requests } from './use-requests.ts';

/** Somebody stands at the table: their request is written down, and approved at once or kept for later. */
export function RequestForm({ kind, requests, onDone }: { kind: RequestKind; requests: Requests; onDone: (said: string | null) => void }) {
  const forms = REQUEST_FORMS[kind];
  const [raw, setRaw] = useState<Record<string, string>>({});
  const [sentences, setSentences] = useState<FieldSentences>({});
  const { fields } = readForm(kind, raw);
  const { approval, setApproval, problem, given } = useApproval(kind, fields);
  const isKept = useRef(false);
  const write = (key: string, value: string) => {
    setRaw({ ...raw, [key]: value });
    setSentences(Object.fromEntries(Object.entries(sentences).filter(([other]) => other !== key)));
  };
  const keep = async (approves: boolean) => {
    // A thumb that taps twice asks once.
    if (isKept.current) return;
    const read: { fields: RequestFields; sentences: FieldSentences } = readForm(kind, raw);
    setSentences(read.sentences);
    if (Object.keys(read.sentences).length > 0) return;
    const allowed = approves ? given() : null;
    if (approves && allowed === null) return;
    isKept.current = true;
    try {
      await requests.ask(kind, read.fields, allowed);
    } catch {
      // Asked for again, it would be stored twice: the desk keeps what is not stored yet.
      onDone('It waits in the red line above and is stored from there. Do not log it again.');
      return;
    }
    onDone(approves ? `${REQUEST_TITLES[kind]} is to be read.` : `${REQUEST_TITLES[kind]} waits for approval.`);
  };
  return (
    <form className="desk-request-form" aria-label={REQUEST_TITLES[kind]} noValidate onSubmit={(event) => { event.preventDefault(); void keep(true); }}>
      <h3>{REQUEST_TITLES[kind]}</h3>
      {forms.map((form, place) => (
        <FieldInput key={form.key} form={form} value={raw[form.key] ?? ''} sentence={sentences[form.key] ?? null} hasFocus={place === 0} onChange={(value) => write(form.key, value)} />
      ))}
      {forms.length === 0 && <><p>The words are fixed. Nothing is added to them.</p><RequestCue request={{ kind, fields: {} }} /></>}
      <ApprovalFields kind={kind} fields={fields} approval={approval} onChange={setApproval} />
      {problem && <p className="desk-notice desk-notice-bad" role="alert">{problem}</p>}
      <div className="desk-request-actions">
        <button type="submit" className="desk-button desk-button-main">Approve, to be read</button>
        {forms.length > 0 && <button type="button" className="desk-button" onClick={() => void keep(false)}>Keep for later</button>}
        <button type="button" className="desk-button" onClick={() => onDone(null)}>Leave</button>
      </div>
    </form>
  );
}

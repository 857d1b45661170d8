import { useState } from 'react';
import type { FormEvent } from 'react';
import { REQUEST_FORMS, readForm } from '../../../server/domain/night/desk/requests/request-form.ts';
import type { FieldSentences } from '../../../server/domain/night/desk/requests/request-form.ts';
import { REQUEST_TITLES } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { PublicRequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import { FieldInput } from '../requests/field-input.tsx';
import { newId } from '../store/ids.ts';
import { sendRequest } from './ask.ts';

/** One request of the public form. What cannot be taken is said beside its field. */
export function AskForm({ token, kind, onEnd, onBack }: { token: string; kind: PublicRequestKind; onEnd: (end: 'sent' | 'closed') => void; onBack: () => void }) {
  const [id] = useState(newId);
  const [raw, setRaw] = useState<Record<string, string>>({});
  const [website, setWebsite] = useState('');
  const [sentences, setSentences] = useState<FieldSentences>({});
  const [problem, setProblem] = useState<string | null>(null);
  const [isSending, setIsSending] = useState(false);
  const write = (key: string, value: string) => {
    setRaw({ ...raw, [key]: value });
    setSentences(Object.fromEntries(Object.entries(sentences).filter(([other]) => other !== key)));
    setProblem(null);
  };
  const send = async (event: FormEvent) => {
    event.preventDefault();
    const read = readForm(kind, raw);
    setSentences(read.sentences);
    setProblem(Object.keys(read.sentences).length > 0 ? 'Look at the marked fields.' : null);
    if (Object.keys(read.sentences).length > 0 || isSending) return;
    setIsSending(true);
    const asked = await sendRequest(token, { id, kind, fields: read.fields, website });
    setIsSending(false);
    if (asked.is === 'sent' || asked.is === 'closed') return onEnd(asked.is);
    setProblem(asked.sentence);
    if (asked.is === 'again') setSentences(asked.sentences);
  };
  return (
    <form className="desk-ask-form" noValidate onSubmit={(event) => void send(event)}>
      <h2>{REQUEST_TITLES[kind]}</h2>
      {REQUEST_FORMS[kind].map((form, place) => (
        <FieldInput key={form.key} form={form} value={raw[form.key] ?? ''} sentence={sentences[form.key] ?? null} hasFocus={place === 0} onChange={(value) => write(form.key, value)} />
      ))}
      <div className="desk-ask-unseen" aria-hidden="true">
        <label htmlFor="website">Website</label>
        <input id="website" name="website" tabIndex={-1} autoComplete="off" value={website} onChange={(event) => setWebsite(event.target.value)} />
      </div>
      <p className="desk-soft">Plain words only, please: no names of people and no web addresses. Someone at the table decides what is read.</p>
      {problem && <p className="desk-notice desk-notice-bad" role="alert">{problem}</p>}
      <div className="desk-request-actions">
        <button type="submit" className="desk-button desk-button-main">{isSending ? 'Sending…' : 'Send to the table'}</button>
        <button type="button" className="desk-button" onClick={onBack}>Back</button>
      </div>
    </form>
  );
}

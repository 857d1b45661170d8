import { useEffect, useState } from 'react';
import type { PublicRequestKind } from '../../../server/domain/night/desk/requests/request.ts';
import { REQUEST_TITLES } from '../../../server/domain/night/desk/requests/request-text.ts';
import type { AskFormView } from '../../../server/night/requests/request.dto.ts';
import { AskForm } from './ask-form.tsx';
import { readAskForm } from './ask.ts';
import './ask.css';

type Reached = { is: 'looking' } | { is: 'away' } | { is: 'there'; form: AskFormView | null };

/** The public form of a night, on the phone of somebody in the building. It stores nothing and knows nobody. */
export function AskPage({ token }: { token: string }) {
  const [reached, setReached] = useState<Reached>({ is: 'looking' });
  const [end, setEnd] = useState<'sent' | 'closed' | null>(null);
  const [kind, setKind] = useState<PublicRequestKind | null>(null);
  const look = (code: string) => readAskForm(code).then((form) => setReached({ is: 'there', form }), () => setReached({ is: 'away' }));
  useEffect(() => void look(token), [token]);
  const form = reached.is === 'there' ? reached.form : null;
  const isClosed = end === 'closed' || (reached.is === 'there' && !form?.isOpen);
  return (
    <main className="desk-ask">
      <header>
        <h1>Ask the announcer</h1>
        {form && <p className="desk-soft">{form.title}<br />{form.departmentName}</p>}
      </header>
      {reached.is === 'looking' && <p role="status">Looking for tonight’s form…</p>}
      {reached.is === 'away' && (
        <>
          <p role="alert">The network did not answer.</p>
          <button type="button" className="desk-button desk-button-main" onClick={() => { setReached({ is: 'looking' }); void look(token); }}>Try again</button>
        </>
      )}
      {isClosed && <p role="status" className="desk-ask-end">The form is closed. Please come to the scorer’s table.</p>}
      {!isClosed && end === 'sent' && (
        <div role="status" className="desk-ask-end">
          <p><strong>Your request is at the table.</strong></p>
          <p>Someone at the table decides what is read, and when.</p>
          <button type="button" className="desk-button" onClick={() => { setEnd(null); setKind(null); }}>Ask something else</button>
        </div>
      )}
      {!isClosed && end === null && form && kind === null && (
        <section aria-label="What is it about?">
          <h2>What is it about?</h2>
          <div className="desk-ask-kinds">
            {form.kinds.map((one) => <button key={one} type="button" className="desk-button" onClick={() => setKind(one)}>{REQUEST_TITLES[one]}</button>)}
          </div>
          <p>Someone at the table decides what is read. A lost child, something found, a medical matter: please come to the scorer’s table.</p>
        </section>
      )}
      {!isClosed && end === null && form && kind !== null && <AskForm key={kind} token={token} kind={kind} onEnd={setEnd} onBack={() => setKind(null)} />}
    </main>
  );
}

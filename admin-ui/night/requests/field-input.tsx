import { useId } from 'react';
import { focusOnArrival } from '../shell/focus.ts';
import type { RequestField } from '../../../server/domain/night/desk/requests/request-form.ts';
import './requests.css';

/** One field of a request's form, for the table and for the public: large, with the keyboard that fits it. */
export function FieldInput({ form, value, sentence, hasFocus, onChange }: { form: RequestField; value: string; sentence: string | null; hasFocus: boolean; onChange: (value: string) => void }) {
  const id = useId();
  const said = sentence === null ? undefined : `${id}-no`;
  const same = {
    id, value, className: 'desk-input', autoComplete: 'off', ref: hasFocus ? focusOnArrival : null, 'aria-describedby': [said, `${id}-hint`].filter(Boolean).join(' '), 'aria-invalid': sentence !== null,
    // Longer than is taken, so that a pasted text is told about and not cut.
    maxLength: form.mostCharacters + 40,
  } as const;
  return (
    <div className="desk-request-field">
      <label htmlFor={id}>{form.label}</label>
      {form.form === 'lines' ? (
        <textarea {...same} rows={3} onChange={(event) => onChange(event.target.value)} />
      ) : (
        <input
          {...same} type="text" spellCheck={form.form !== 'plate'} autoCapitalize={form.form === 'plate' ? 'characters' : 'off'}
          data-plate={form.form === 'plate' || undefined} onChange={(event) => onChange(event.target.value)}
        />
      )}
      {sentence !== null && <span id={said} className="desk-request-no">{form.label} {sentence}.</span>}
      <span id={`${id}-hint`} className="desk-soft">{form.hint}</span>
      {form.usual.length > 0 && (
        <div className="desk-request-usual">
          {form.usual.map((text) => (
            <button key={text} type="button" className="desk-button" aria-pressed={value === text} onClick={() => onChange(text)}>{text}</button>
          ))}
        </div>
      )}
    </div>
  );
}

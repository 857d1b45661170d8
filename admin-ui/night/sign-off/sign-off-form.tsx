import { useState } from 'react';
import { waitingCount } from '../../../server/domain/night/desk/waiting-count.ts';
import type { Desk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import type { useSignOff } from './use-sign-off.ts';

interface Props {
  desk: Desk;
  isSending: boolean;
  refusal: string | null;
  onSend: ReturnType<typeof useSignOff>['send'];
}

const BOOK = [['agrees', 'It agrees'], ['differs', 'It differs'], ['open', 'Not compared']] as const;
const LARGEST_CROWD = 200_000;

/** Everything but the tap is optional. */
export function SignOffForm({ desk: { lines, unstoredCount, workerName }, isSending, refusal, onSend }: Props) {
  const [attendance, setAttendance] = useState('');
  const [book, setBook] = useState<(typeof BOOK)[number][0]>('open');
  const [bookWords, setBookWords] = useState('');
  const [note, setNote] = useState('');
  const [name, setName] = useState(workerName);
  const waiting = waitingCount(lines, unstoredCount) > 0;
  const isWrong = attendance !== '' && !(/^\d{1,6}$/.test(attendance) && Number(attendance) <= LARGEST_CROWD);
  const isReady = !waiting && !isSending && !isWrong && name.trim() !== '';
  const send = (): void => {
    if (!isReady) return;
    void onSend({
      name: name.trim(), attendance: attendance === '' ? null : Number(attendance), bookAgrees: book === 'open' ? null : book === 'agrees',
      bookWords: book === 'differs' ? bookWords.trim() || null : null, note: note.trim() || null,
    });
  };
  useKey('s', 'Sign off the night', send);
  return (
    <div className="desk-sign-off">
      <label className="desk-field">Attendance, if somebody counted
        <input className="desk-input desk-sign-off-count" inputMode="numeric" value={attendance} onChange={(event) => setAttendance(event.target.value.trim())} aria-invalid={isWrong} aria-describedby={isWrong ? 'attendance-wrong' : undefined} />
        {isWrong && <span id="attendance-wrong" className="desk-sign-off-wrong">Digits only, such as 412.</span>}
      </label>
      <fieldset className="desk-choices">
        <legend>The sheet and the official scorer’s book</legend>
        {BOOK.map(([value, label]) => (
          <label key={value} className="desk-choice"><input type="radio" name="book" checked={book === value} onChange={() => setBook(value)} />{label}</label>
        ))}
        <label className="desk-field">What differs
          <input className="desk-input" maxLength={300} disabled={book !== 'differs'} value={bookWords} onChange={(event) => setBookWords(event.target.value)} />
        </label>
      </fieldset>
      <label className="desk-field">Note for the office
        <textarea className="desk-input" rows={2} maxLength={1000} value={note} onChange={(event) => setNote(event.target.value)} />
      </label>
      <label className="desk-field">Who signs off
        <input className="desk-input" maxLength={80} value={name} autoComplete="name" onChange={(event) => setName(event.target.value)} />
      </label>
      {refusal && <p className="desk-notice desk-notice-bad" role="alert">{refusal}</p>}
      <p id="adult" className="desk-adult">I am an adult responsible tonight.</p>
      <button type="button" className="desk-button desk-button-main desk-sign-off-button" disabled={!isReady} aria-describedby="adult" onClick={send}>
        {isSending ? 'Signing off…' : waiting ? 'Waits for the entries on this device' : 'Sign off the night'} <kbd>{keyName('s')}</kbd>
      </button>
    </div>
  );
}

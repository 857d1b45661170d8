import { useLayoutEffect, useState } from 'react';
import type { DeskLine } from '../../../server/domain/night/desk/desk-entry.ts';
import { frozenLog } from '../../../server/domain/night/desk/frozen-log.ts';
import { sentenceOfLine } from '../../../server/domain/night/desk/line-sentence.ts';
import { mayGoBackByOneTap } from '../../../server/domain/night/desk/one-tap.ts';
import { takenBackIds } from '../../../server/domain/night/take-back.ts';
import { useDesk } from '../desk.ts';
import { NoteForm } from './note-form.tsx';
import './log-sheet.css';

const PLACES = { onDevice: 'on this device', onServer: 'on the server', needsAttention: 'needs attention' } as const;
const AT_FIRST = 60;

const lastFirst = (lines: readonly DeskLine[]): string[] => lines.map(({ id }) => id).toReversed();

/** The log, the last line first, as it stood when it was opened: no line moves under a thumb. Nothing is edited: a line is taken back with one tap, and that is a line too. */
export function LogSheet() {
  const { lines, bundle } = useDesk();
  const [shown, setShown] = useState(AT_FIRST);
  const [frozenIds, setFrozenIds] = useState(() => lastFirst(lines));
  const { shown: frozen, newCount } = frozenLog(lines, frozenIds);
  const gone = takenBackIds(lines);
  // Where nothing stood, nothing can move.
  const isEmpty = frozenIds.length === 0 && lines.length > 0;
  useLayoutEffect(() => {
    if (isEmpty) setFrozenIds(lastFirst(lines));
  }, [isEmpty, lines]);
  return (
    <>
      <NoteForm onStored={(id) => setFrozenIds((ids) => [id, ...ids.filter((other) => other !== id)])} />
      <button type="button" className="desk-button desk-log-new" disabled={newCount === 0} onClick={() => setFrozenIds(lastFirst(lines))}>
        {newCount === 0 ? 'No new lines' : newCount === 1 ? '1 new line' : `${newCount} new lines`}
      </button>
      {lines.length === 0 && <p>Nothing is logged yet.</p>}
      <ol className="desk-log" reversed>
        {frozen.slice(0, shown).map((line) => (
          <LogLine key={line.id} line={line} sentence={sentenceOfLine(line, bundle, lines)} isGone={gone.has(line.id)} />
        ))}
      </ol>
      {frozen.length > shown && <button type="button" className="desk-button" onClick={() => setShown(shown + 200)}>Show earlier lines</button>}
    </>
  );
}

function LogLine({ line, sentence, isGone }: { line: DeskLine; sentence: string; isGone: boolean }) {
  const { takeBack, isSignedOff } = useDesk();
  const canGoBack = mayGoBackByOneTap(line) && !isGone && !isSignedOff;
  return (
    <li className="desk-log-line" data-gone={isGone}>
      <div className="desk-log-words">
        <span className="desk-log-sentence">{isGone ? <s>{sentence}</s> : sentence}</span>
        <span className="desk-soft">{[line.number === null ? null : `No. ${line.number}`, PLACES[line.place], line.isOwn ? null : 'from another device', isGone ? 'taken back' : null].filter(Boolean).join(', ')}</span>
        {line.sentence && <span className="desk-log-care">{line.sentence}</span>}
      </div>
      {canGoBack && <button type="button" className="desk-button" aria-label={`Take back: ${sentence}`} onClick={() => void takeBack(line.id).catch(() => {})}>Take back</button>}
    </li>
  );
}

import { useState } from 'react';
import { focusOnArrival } from '../shell/focus.ts';
import { periodName } from '../../../server/domain/night/desk/sheet/period.ts';
import { currentPeriod } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import type { Table } from './use-table.ts';

/** The official scorer's count is the count: period by period the sheet agrees with the book, or it is noted how it differs. */
export function BookChecks({ table }: { table: Table }) {
  const { write } = useDesk();
  const sheet = table.sheet!;
  const [differs, setDiffers] = useState<number | null>(null);
  const [words, setWords] = useState('');
  const latest = Math.max(1, sheet.ended.length || currentPeriod(sheet));
  const say = (period: number, detail: Record<string, unknown>): void => {
    void write({ kind: 'book', gameId: table.game.gameId, period: periodName(sheet.rules, period), detail }).catch(() => undefined);
    setDiffers(null);
    setWords('');
  };
  useKey('a', 'Agrees with the book', () => say(latest, { agrees: true }));
  useKey('d', 'Differs from the book', () => setDiffers(latest));
  return (
    <section className="desk-book" aria-label="The book">
      <h3>The official book</h3>
      {Array.from({ length: latest }, (_, place) => place + 1).map((period) => {
        const name = periodName(sheet.rules, period);
        const check = sheet.book[period];
        return (
          <div key={period} className="desk-book-row">
            <p><b>{name}</b> {check === undefined ? 'not compared yet' : check.agrees ? 'agrees' : `differs: ${check.words}`}</p>
            <button type="button" className="desk-button" aria-label={`${name} agrees with the book`} onClick={() => say(period, { agrees: true })}>Agrees {period === latest && <kbd>{keyName('a')}</kbd>}</button>
            <button type="button" className="desk-button" aria-label={`${name} differs from the book`} aria-expanded={differs === period} onClick={() => setDiffers(differs === period ? null : period)}>Differs {period === latest && <kbd>{keyName('d')}</kbd>}</button>
          </div>
        );
      })}
      {differs !== null && (
        <form className="desk-book-words" onSubmit={(event) => {
          event.preventDefault();
          if (words.trim() !== '') say(differs, { agrees: false, words: words.trim() });
        }}>
          <label><span>What differs, {periodName(sheet.rules, differs)}</span><input className="desk-input" ref={focusOnArrival} maxLength={200} value={words} onChange={(event) => setWords(event.target.value)} /></label>
          <button type="submit" className="desk-button" disabled={words.trim() === ''}>Note it</button>
        </form>
      )}
    </section>
  );
}

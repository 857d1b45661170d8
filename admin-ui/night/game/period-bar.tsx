import { useRef } from 'react';
import { goesIntoExtraPeriods, periodName } from '../../../server/domain/night/desk/sheet/period.ts';
import { currentPeriod, isOver } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { useBounceGuard } from '../shell/bounce.ts';
import { setAtHand, useAtHand } from './at-hand.ts';
import type { Table } from './use-table.ts';

/** Which period is played, what the clock shows for the next tap, and the end of the period. */
export function PeriodBar({ table }: { table: Table }) {
  const { write } = useDesk();
  const { clock } = useAtHand();
  const field = useRef<HTMLInputElement>(null);
  const isBounce = useBounceGuard();
  const sheet = table.sheet!;
  const { rules } = sheet;
  const last = Math.max(table.period, rules.periods.count, currentPeriod(sheet)) + (goesIntoExtraPeriods(rules) ? 1 : 0);
  const end = (): void => {
    if (isOver(sheet) || isBounce('end')) return;
    void write({ kind: 'periodEnd', ...table.place() }).catch(() => undefined);
    setAtHand({ period: null });
  };
  useKey('e', 'End of the period', end);
  useKey('/', 'Type the clock', () => field.current?.focus());
  return (
    <div className="desk-period">
      <label><span>Period</span>
        <select className="desk-input" value={table.period} onChange={(event) => {
          setAtHand({ gameId: table.game.gameId, period: Number(event.target.value) });
          // No key is heard while a field has the focus.
          event.currentTarget.blur();
        }}>
          {Array.from({ length: last }, (_, place) => <option key={place} value={place + 1}>{periodName(rules, place + 1)}</option>)}
        </select>
      </label>
      {rules.periods.seconds !== null && (
        <label><span>Clock, for the next tap <kbd>{keyName('/')}</kbd></span>
          <input ref={field} className="desk-input" value={clock} placeholder="M:SS" maxLength={5} autoComplete="off" onChange={(event) => setAtHand({ clock: event.target.value })}
            onKeyDown={(event) => event.key === 'Enter' && field.current?.blur()} />
        </label>
      )}
      <button type="button" className="desk-button" disabled={isOver(sheet)} onClick={end}>End of {table.periodText} <kbd>{keyName('e')}</kbd></button>
    </div>
  );
}

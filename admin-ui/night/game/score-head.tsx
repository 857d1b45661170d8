import type { TableSheet, TeamCount } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import { isCoachDisqualified, isSetPlayedOut, setsWon } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import { teamFoulsOf } from '../../../server/domain/night/desk/sheet/team-fouls.ts';
import { timeOutsLeft } from '../../../server/domain/night/desk/sheet/time-outs.ts';
import type { TeamSheet } from '../../../server/domain/packet/packet.ts';
import { teamLook } from './team-look.ts';
import type { Table } from './use-table.ts';

const EARNS = { none: 'no shots', oneAndOne: 'one and one', two: 'two shots' } as const;
const LEFT: Readonly<Record<string, [string, string]>> = { full: ['full time-out', 'full'], thirty: ['thirty', 'thirty'], conference: ['conference', 'conferences'] };

/** What is left, for the table; more than the rules give is kept and marked. */
function TimeOuts({ sheet, team, period }: { sheet: TableSheet; team: TeamCount; period: number }) {
  const kinds = timeOutsLeft(sheet, team, period);
  if (kinds.length === 0) return null;
  const isOver = kinds.some(({ over }) => over > 0);
  return (
    <p className={isOver ? 'desk-facts desk-facts-care' : 'desk-facts'}>
      Left: {kinds.map(({ name, left, over }) => (over > 0 ? `${over} too many ${LEFT[name]?.[0] ?? name}` : `${left} ${LEFT[name]?.[left === 1 ? 0 : 1] ?? name}`)).join(', ')}
    </p>
  );
}

function TeamHead({ team, count, side, table }: { team: TeamSheet; count: TeamCount; side: 'visitors' | 'home'; table: Table }) {
  const sheet = table.sheet!;
  const fouls = teamFoulsOf(sheet, count, table.period);
  const { sets, scores } = sheet.rules;
  const counted = scores.filter((score) => score.points === 0).map((score) => `${score.words.toLowerCase()}s ${count.counts[score.what] ?? 0}`);
  return (
    <section className="desk-score" style={teamLook(team)} aria-label={`${team.nickname}, score and fouls`}>
      <p className="desk-score-team"><span className="desk-team-mark" aria-hidden="true" />{team.nickname}</p>
      <p className="desk-score-points">{sets === null ? count.total : (count.points[table.period - 1] ?? 0)}{sets && <small> sets {setsWon(sheet, side)}</small>}</p>
      {fouls && (
        <p className={fouls.nextEarns === 'none' ? 'desk-facts' : 'desk-facts desk-bonus'}>
          <b>{fouls.count}</b> team {fouls.count === 1 ? 'foul' : 'fouls'}, next: {EARNS[fouls.nextEarns]}
        </p>
      )}
      {counted.length > 0 && <p className="desk-facts">{counted.join(', ')}</p>}
      {sheet.rules.teamFouls && <p className="desk-facts desk-facts-care desk-coach">{isCoachDisqualified(sheet.rules, count) ? 'Head coach must leave' : ''}</p>}
      <TimeOuts sheet={sheet} team={count} period={table.period} />
    </section>
  );
}

/** Score, fouls and time-outs of both teams: for the table, not for the microphone. Its height never changes. */
export function ScoreHead({ table }: { table: Table }) {
  const sheet = table.sheet!;
  return (
    <>
      <div className="desk-scores">
        <TeamHead team={table.visitors} count={sheet.visitors} side="visitors" table={table} />
        <TeamHead team={table.home} count={sheet.home} side="home" table={table} />
      </div>
      {sheet.rules.sets && <p className="desk-facts" role="status">{isSetPlayedOut(sheet, table.period) ? 'This set is played out: log its end.' : ''}</p>}
    </>
  );
}

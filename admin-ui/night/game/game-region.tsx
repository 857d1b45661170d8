import { useState } from 'react';
import { createPortal } from 'react-dom';
import { isDisqualified } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import type { TeamCount } from '../../../server/domain/night/desk/sheet/table-sheet.ts';
import { useDesk } from '../desk.ts';
import { keyName, useKey } from '../keys.ts';
import { setAtHand } from './at-hand.ts';
import { BookChecks } from './book-checks.tsx';
import { Bouts } from './bouts.tsx';
import { LastCall } from './last-call.tsx';
import { NumberGrid } from './number-grid.tsx';
import { PeriodBar } from './period-bar.tsx';
import { RosterSheet } from './roster-sheet.tsx';
import { ScoreHead } from './score-head.tsx';
import { useTable } from './use-table.ts';
import type { Table } from './use-table.ts';
import { useTaps } from './use-taps.ts';
import { WhatBar } from './what-bar.tsx';
import { whatsOf } from './whats.ts';
import './game.css';

/** Which of the night's games is played. */
function GameChoice({ table }: { table: Table }) {
  const { bundle } = useDesk();
  if (bundle.games.length < 2) return null;
  return (
    <div className="desk-more-buttons" role="group" aria-label="Which game">
      {bundle.games.map((game) => <button key={game.gameId} type="button" className="desk-button" aria-pressed={game.gameId === table.game.gameId} onClick={() => setAtHand({ gameId: game.gameId, period: null })}>{game.level}</button>)}
    </div>
  );
}

function markOf(table: Table, count: TeamCount) {
  return (number: string) => {
    const player = count.players[number];
    if (!player || player.fouls === 0) return null;
    const isOut = isDisqualified(table.sheet!.rules, player);
    return { text: String(player.fouls), words: `${player.fouls === 1 ? '1 foul' : `${player.fouls} fouls`}${isOut ? ', out of the game' : ''}`, isOut };
  };
}

function hintOf({ what, who, trouble }: ReturnType<typeof useTaps>, table: Table): string {
  if (trouble !== null) return trouble;
  const team = [table.visitors, table.home].find((one) => one.teamId === who?.teamId)?.nickname;
  if (what !== null) return what.isTeams ? `${what.words}: tap the team.` : `${what.words}: tap the number.`;
  return who === null ? 'Tap what happened, and the number.' : `${team}${who.playerNumber === null ? '' : `, number ${who.playerNumber}`}: tap what happened.`;
}

/** Both teams' numbers and what can happen: two taps make an entry. */
function Play({ table }: { table: Table }) {
  const taps = useTaps(table);
  const sheet = table.sheet!;
  const whats = whatsOf(sheet.rules);
  const isActive = taps.what !== null || taps.who !== null;
  useKey(isActive ? 'Escape' : null, 'Leave the half-made entry', taps.clear);
  return (
    <>
      <p className={taps.trouble ? 'desk-hint desk-facts-care' : 'desk-hint'} role="status">{hintOf(taps, table)}</p>
      <WhatBar title="What happened" whats={whats.filter((what) => !what.isRare)} chosen={taps.what} onTap={taps.tapWhat} />
      <div className="desk-teams">
        <NumberGrid team={table.visitors} chosen={taps.who} onPick={taps.tapWho} markOf={markOf(table, sheet.visitors)} typeKey="[" />
        <NumberGrid team={table.home} chosen={taps.who} onPick={taps.tapWho} markOf={markOf(table, sheet.home)} typeKey="]" />
      </div>
      <WhatBar title="What happens rarely" whats={whats.filter((what) => what.isRare)} chosen={taps.what} onTap={taps.tapWhat} />
    </>
  );
}

/** The sheet of the game: score, fouls, time-outs, the announcement of each entry, and whether the book agrees. */
function WholeGame({ table }: { table: Table }) {
  const [isRosterOpen, setRosterOpen] = useState(false);
  useKey('w', 'Who wears what tonight', () => setRosterOpen(true));
  const isBouts = table.sheet!.rules.bouts.length > 0;
  return (
    <>
      <ScoreHead table={table} />
      <LastCall table={table} />
      {isBouts ? <Bouts table={table} /> : <Play key={table.game.gameId} table={table} />}
      {!isBouts && <PeriodBar table={table} />}
      {!isBouts && <BookChecks table={table} />}
      <button type="button" className="desk-button" onClick={() => setRosterOpen(true)}>Who wears what tonight <kbd>{keyName('w')}</kbd></button>
      {isRosterOpen && createPortal(<RosterSheet table={table} onClose={() => setRosterOpen(false)} />, document.body)}
    </>
  );
}

/**
 * The game at the table. Who only reads has none of it; a spotter who keeps the tally needs the period, so that
 * happenings can be matched; the whole of it stands in the full way of working.
 */
export function GameRegion() {
  const { way } = useDesk();
  const table = useTable();
  if (way === 'reads' || table === null) return null;
  return (
    <div className="desk-game">
      <h2>{table.game.title}</h2>
      <GameChoice table={table} />
      {table.sheet === null && <p className="desk-soft">The house knows no sheet for this sport. Reads, mentions and notes are logged as ever.</p>}
      {table.sheet !== null && (way === 'full' ? <WholeGame table={table} /> : table.sheet.rules.bouts.length === 0 && <PeriodBar table={table} />)}
    </div>
  );
}

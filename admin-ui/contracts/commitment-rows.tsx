import { Typography } from '@mui/material';
import type { ReactNode } from 'react';
import { useGetMany } from 'react-admin';
import { dayText } from '../format/day.ts';
import { moneyText } from '../format/money.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import { Rows } from '../lists/rows.tsx';
import { COUNTING_WORDS, LEVEL_WORDS, SEPARATION_WORDS, WINDOW_WORDS, wordFor } from '../words/choices.ts';
import { count, numberText } from '../words/count.ts';
import { Behind } from './list.tsx';
import type { Commitment, Contract } from './types.ts';

/** What narrows a commitment, a line each: windows, days without a read, how often in one game, how far apart. */
export function finerText(commitment: Commitment): string[] {
  const { windowKinds = [], blackoutDays = [], leastPerGame, mostPerGame, separation } = commitment;
  const inOneGame = [leastPerGame ? `at least ${leastPerGame}` : '', mostPerGame ? `at most ${mostPerGame}` : ''].filter(Boolean).join(', ');
  return [
    windowKinds.length > 0 ? `Only ${windowKinds.map((kind) => wordFor(WINDOW_WORDS, kind).toLowerCase()).join(', ')}` : '',
    inOneGame ? `In one game ${inOneGame}` : '',
    blackoutDays.length > 0 ? `Not on ${blackoutDays.map((day) => dayText(day)).join('; ')}` : '',
    separation && separation !== 'window' ? `Competitors: ${wordFor(SEPARATION_WORDS, separation).toLowerCase()}` : '',
  ].filter(Boolean);
}

const Finer = ({ children }: { children: ReactNode }) => <Typography variant="body2" sx={{ color: 'text.secondary' }}>{children}</Typography>;

function PromisedAloud({ gameIds }: { gameIds: readonly string[] }) {
  const { data = [] } = useGetMany<{ id: string; label: string; playedOn: string }>('games', { ids: [...gameIds] });
  return <Finer>Promised aloud for {data.length > 0 ? data.map((game) => `${game.label} (${dayText(game.playedOn)})`).join(', ') : count(gameIds.length, 'game')}</Finer>;
}

/** A commitment in words: "24 reads over the whole term". */
export function promiseText(commitment: Commitment): string {
  const levels = commitment.levels.length > 0 ? `, ${commitment.levels.map((level) => wordFor(LEVEL_WORDS, level).toLowerCase()).join(' and ')} only` : '';
  if (commitment.counting !== 'onOccurrence') return `${count(commitment.reads, 'read')} ${wordFor(COUNTING_WORDS, commitment.counting).toLowerCase()}${levels}`;
  const least = commitment.readsAtLeast ? `, at least ${commitment.readsAtLeast}` : '';
  const most = commitment.readsAtMost ? `, at most ${commitment.readsAtMost}` : '';
  return `Each time it happens${least}${most}${levels}`;
}

export function CommitmentRows({ contract }: { contract: Contract }) {
  const commitments = contract.commitments ?? [];
  const signed = contract.term.state !== 'draft';
  if (commitments.length === 0) return <EmptyList>No reads are promised yet. Edit the draft and add a line.</EmptyList>;
  return (
    <Rows<Commitment>
      label="Reads promised"
      rows={commitments}
      columns={[
        { label: 'Read kind', show: (one) => one.readKindName },
        { label: 'Promised', show: (one) => <>{promiseText(one)}{finerText(one).map((line) => <Finer key={line}>{line}</Finer>)}{one.pinnedGameIds.length > 0 && <PromisedAloud gameIds={one.pinnedGameIds} />}</> },
        { label: 'Rate', numeric: true, show: (one) => (one.priceEachCents === null ? moneyText(one.rateCents) : `${moneyText(one.priceEachCents)} each`) },
        ...(signed
          ? [
              { label: 'Given', numeric: true, show: (one: Commitment) => (one.standing ? `${numberText(one.standing.given)} of ${numberText(one.standing.promised)}` : '–') },
              { label: 'Owed', numeric: true, show: (one: Commitment) => numberText(one.standing?.owed) },
              { label: 'Not signed off', numeric: true, show: (one: Commitment) => numberText(one.standing?.loggedNotSignedOff) },
              { label: 'Pace', show: (one: Commitment) => <Behind behind={one.standing?.behind} /> },
            ]
          : []),
      ]}
    />
  );
}

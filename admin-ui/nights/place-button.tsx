import { useGetList, useGetMany } from 'react-admin';
import { useWatch } from 'react-hook-form';
import { useServer } from '../api/use-server.ts';
import type { Makegood } from '../contracts/credits/types.ts';
import type { Contract } from '../contracts/types.ts';
import { CommandButton } from '../forms/command-button.tsx';
import type { Game } from '../games/types.ts';
import { ChoiceInput } from '../inputs/choice-input.tsx';
import { windowName, windowsOn } from '../seasons/sports.ts';
import { gameOfNight } from './game-words.ts';
import type { Night } from './types.ts';

function WindowField({ games }: { games: readonly Game[] }) {
  const gameId = useWatch({ name: 'gameId' }) as string | undefined;
  const game = games.find((one) => one.id === gameId);
  const windows = game ? windowsOn(game.sport, game.playedOn, game.windowsOwnedBy).filter((window) => window.places > 0) : [];
  return <ChoiceInput source="windowKey" label="Window" choices={windows.map(({ key }) => ({ id: key, name: windowName(key) }))} required helperText={game && windows.length === 0 ? 'The windows of this game are not ours.' : ''} />;
}

/** Replacements agreed for missed reads of this commitment that have no place yet. */
function MakegoodField({ contracts }: { contracts: readonly Contract[] }) {
  const commitmentId = useWatch({ name: 'commitmentId' }) as string | undefined;
  const contract = contracts.find((one) => one.commitments?.some((commitment) => commitment.id === commitmentId));
  const { data } = useServer<{ data: Makegood[] }>(contract ? `/contracts/${contract.id}/makegoods` : null);
  const open = (data?.data ?? []).filter((one) => one.commitmentId === commitmentId && one.placed < one.replacements);
  if (open.length === 0) return null;
  const choices = open.map((one) => ({ id: one.id, name: `${one.replacementReadKindName}, for ${one.missed} missed` }));
  return <ChoiceInput source="makegoodId" label="Makes good" choices={choices} helperText="Leave it empty for one of the promised reads themselves." />;
}

/** One read, placed by hand. */
export function PlaceButton({ night }: { night: Night }) {
  const { data: contracts = [] } = useGetList<Contract>('contracts', { filter: { state: 'signed' }, pagination: { page: 1, perPage: 100 }, sort: { field: 'sponsorName', order: 'ASC' } });
  const { data: games = [] } = useGetMany<Game>('games', { ids: night.games.map((game) => game.id) });
  const commitments = contracts.flatMap((contract) => (contract.commitments ?? []).map((one) => ({ id: one.id!, name: `${contract.sponsorName}: ${one.readKindName}` })));
  return (
    <CommandButton
      label="Place a read"
      title="Place a read"
      explains="One read of a signed contract, in one window of one game of this night."
      path="/placements"
      body={({ makegoodId, ...read }) => ({ ...read, ...(makegoodId ? { makegoodId } : {}) })}
      success="The read has its place."
    >
      <ChoiceInput source="commitmentId" label="Promised" choices={commitments} required />
      <MakegoodField contracts={contracts} />
      <ChoiceInput source="gameId" label="Game" choices={night.games.map((game) => ({ id: game.id, name: gameOfNight(game) }))} required />
      <WindowField games={games.filter(Boolean)} />
    </CommandButton>
  );
}

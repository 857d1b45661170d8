import { Go } from '../fields/go.tsx';
import { dayText } from '../format/day.ts';
import { choiceFilter, findFilter, pickFilter } from '../lists/filters.tsx';
import { ListPage } from '../lists/list-page.tsx';
import { GAME_STATUSES, LEVEL_WORDS, wordFor } from '../words/choices.ts';
import { GameStatus } from './status.tsx';
import type { Game } from './types.ts';

export const GameList = () => (
  <ListPage<Game>
    title="Games"
    addLabel="Add a game"
    sort={{ field: 'playedOn', order: 'ASC' }}
    filters={[findFilter(), pickFilter('seasonId', 'seasons', 'Season'), choiceFilter('status', 'State', GAME_STATUSES)]}
    empty="No games yet. Import the schedule as a file, or add games one by one; each home game makes or joins a night."
    columns={[
      { label: 'Game', show: (game) => <Go resource="games" id={game.id}>{game.label}</Go> },
      { label: 'Day', sortBy: 'playedOn', show: (game) => dayText(game.playedOn, 'weekday') },
      { label: 'Starts', sortBy: 'startsAt', show: (game) => game.startsAtShown || 'No hour yet' },
      { label: 'Level', sortBy: 'level', show: (game) => wordFor(LEVEL_WORDS, game.level) },
      { label: 'Venue', show: (game) => game.venueName ?? '–' },
      { label: 'State', sortBy: 'status', show: (game) => <GameStatus status={game.status} /> },
    ]}
  />
);

import { Box } from '@mui/material';
import { useGetMany } from 'react-admin';
import { dayText } from '../format/day.ts';
import type { Game } from '../games/types.ts';
import { EmptyList } from '../lists/empty-list.tsx';
import type { Team } from '../teams/types.ts';
import { LEVEL_WORDS, WINDOW_WORDS, wordFor } from '../words/choices.ts';
import type { Offer, OfferedRead } from './types.ts';
import { askedText } from './words.ts';

interface Names {
  teams: readonly Team[];
  games: readonly Game[];
}

/** Where and when a line is read, in short pieces; empty where it says nothing of its own. */
function whereText(line: OfferedRead, { teams, games }: Names): string {
  const named = <T extends { id: string }>(ids: readonly string[], all: readonly T[], show: (one: T) => string): string => ids.flatMap((id) => all.filter((one) => one?.id === id).map(show)).join(', ');
  const pieces = [
    line.teamIds.length > 0 && `games of ${named(line.teamIds, teams, (team) => team.label)}`,
    line.levels.length > 0 && line.levels.map((level) => wordFor(LEVEL_WORDS, level).toLowerCase()).join(' and '),
    line.windowKinds.length > 0 && line.windowKinds.map((kind) => wordFor(WINDOW_WORDS, kind).toLowerCase()).join(', '),
    line.startsOn && `from ${dayText(line.startsOn)}`,
    line.endsOn && `until ${dayText(line.endsOn)}`,
    line.blackoutDays.length > 0 && `not on ${line.blackoutDays.map((day) => dayText(day)).join(', ')}`,
    line.pinnedGameIds.length > 0 && `promised aloud for ${named(line.pinnedGameIds, games, (game) => `${game.label} (${dayText(game.playedOn)})`)}`,
    line.leastPerGame && `at least ${line.leastPerGame} in a game`,
    line.mostPerGame && `at most ${line.mostPerGame} in a game`,
    line.priority === 1 && 'served first when places are short',
    line.priority === 3 && 'served last when places are short',
  ];
  return pieces.filter(Boolean).join(' · ');
}

export function WhatIsOffered({ offer }: { offer: Offer }) {
  const ids = <K extends 'teamIds' | 'pinnedGameIds'>(key: K): string[] => [...new Set(offer.readLines.flatMap((line) => line[key]))];
  const { data: teams = [] } = useGetMany<Team>('teams', { ids: ids('teamIds') }, { enabled: ids('teamIds').length > 0 });
  const { data: games = [] } = useGetMany<Game>('games', { ids: ids('pinnedGameIds') }, { enabled: ids('pinnedGameIds').length > 0 });
  if (offer.readLines.length + offer.benefitLines.length === 0) return <EmptyList>Nothing is offered yet. Edit the draft and add a line.</EmptyList>;
  return (
    <Box component="ul" sx={{ mt: 0, pl: 2.5 }}>
      {offer.readLines.map((line) => {
        const where = whereText(line, { teams, games });
        return <li key={line.id}>{askedText(line)}{where && <Box component="span" sx={{ display: 'block', color: 'text.secondary' }}>{where}</Box>}</li>;
      })}
      {offer.benefitLines.map((line) => <li key={line.id}>{line.quantity} × {line.name}{line.dueOn && `, by ${dayText(line.dueOn)}`}</li>)}
    </Box>
  );
}

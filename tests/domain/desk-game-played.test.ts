import { expect, test } from 'vitest';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { gamePlayed } from '../../server/domain/night/desk/sheet/game-played.ts';
import { DeskLog } from './desk-night.ts';

const games = [{ gameId: 'junior' }, { gameId: 'varsity' }];
const of = (gameId: string | null, kind: NewDeskEntry['kind']): NewDeskEntry => ({ gameId, kind, teamId: 'team-kestrels' });

test.each<[string, NewDeskEntry[], string | null]>([
  ['nothing is logged', [], null],
  ['only reads are logged', [of('varsity', 'read')], null],
  ['a foul of the varsity follows a basket of the junior varsity', [of('junior', 'basket'), of('varsity', 'foul')], 'varsity'],
  ['the junior varsity is still played', [of('junior', 'basket')], 'junior'],
  ['a book check of the first game comes after the second has begun', [of('varsity', 'substitution'), of('junior', 'book')], 'varsity'],
  ['a hold of no game comes last', [of('varsity', 'timeOut'), of(null, 'hold')], 'varsity'],
  ['a game of another night comes last', [of('varsity', 'score'), of('elsewhere', 'score')], 'varsity'],
  ...(['happening', 'foul', 'basket', 'score', 'substitution', 'timeOut', 'periodEnd', 'serve', 'batter', 'bout'] as const).map((kind): [string, NewDeskEntry[], string] => [`${kind} of the varsity comes last`, [of('junior', 'foul'), of('varsity', kind)], 'varsity']),
])('the log tells the game where %s', (_, entries, gameId) => {
  const log = new DeskLog();
  for (const entry of entries) log.write(entry);
  expect(gamePlayed(games, log.lines)?.gameId ?? null).toBe(gameId);
});

test('a line that is taken back tells no game', () => {
  const log = new DeskLog();
  log.write(of('junior', 'foul'));
  log.takeBack(log.write(of('varsity', 'foul')).id);
  expect(gamePlayed(games, log.lines)?.gameId).toBe('junior');
});

import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { changeWhenAdded, changeWhenCancelled, EFFECT_ON_COMMITMENTS } from '../../server/domain/planning/moves.ts';
import { covers, readsPromised } from '../../server/domain/sponsorship/covered-games.ts';
import type { CommitmentTerms, CoveredGame } from '../../server/domain/sponsorship/covered-games.ts';
import { REFUSALS } from '../../server/domain/refusals.ts';
import { canCancel, canPostpone, canReschedule, GAME_MOVES, GAME_STATUSES, statusAfter, whyNotDelete, whyNotMove } from '../../server/domain/season/game.ts';
import type { GameMove } from '../../server/domain/season/game.ts';
import { floorClashes, groupIntoNights, shownStarts, spokenClock } from '../../server/domain/season/night.ts';
import type { GameOfDay } from '../../server/domain/season/night.ts';

describe('a game moves from state to state', () => {
  const allowed = 'planned underWay suspended played postponed cancelled'.split(' ');
  test.each([
    ['start', 'planned'],
    ['suspend', 'underWay'],
    ['resume', 'suspended'],
    ['finish', 'planned underWay suspended'],
    ['postpone', 'planned'],
    ['reschedule', 'planned postponed'],
    ['cancel', 'planned suspended postponed'],
  ] as const)('%s is allowed from %s and refused from every other state', (move, from) => {
    for (const status of GAME_STATUSES) {
      expect(whyNotMove({ status }, move), status).toBe(from.split(' ').includes(status) ? null : GAME_MOVES[move].refusal);
    }
    expect(allowed).toContain(statusAfter(move));
  });

  test('every refusal of a move has a sentence', () => {
    for (const move of Object.keys(GAME_MOVES) as GameMove[]) expect(REFUSALS[GAME_MOVES[move].refusal].sentence).toMatch(/\.$/);
  });

  test('a game with a log stays on its day but may still be cancelled', () => {
    const logged = { status: 'planned', hasLog: true } as const;
    expect([canPostpone(logged), canReschedule(logged), canCancel(logged)]).toEqual([false, false, true]);
    expect(whyNotMove(logged, 'postpone')).toBe('game-has-log');
  });

  test('only a planned or postponed game without a log can be deleted', () => {
    expect(whyNotDelete({ status: 'postponed' })).toBeNull();
    expect(whyNotDelete({ status: 'played' })).toBe('game-cannot-be-deleted');
    expect(whyNotDelete({ status: 'planned', hasLog: true })).toBe('game-has-log');
  });
});

const perGame: CommitmentTerms = {
  id: 'gameBall', counting: 'perGame', reads: 2, startsOn: dayOf('2026-12-01'), endsOn: dayOf('2027-02-28'), teamIds: ['varsityBoys'], levels: [],
  blackoutDays: [dayOf('2026-12-25')],
};
const game: CoveredGame = {
  id: 'herons', playedOn: dayOf('2026-12-04'), movedFromOn: null, status: 'planned', class: 'regular', level: 'varsity',
  announced: true, isHome: true, teamIds: ['varsityBoys', 'heronsBoys'],
};

describe('which games a commitment counts over', () => {
  test.each([
    ['a regular home game', {}, true],
    ['a conference home game', { class: 'conference' }, true],
    ['an invitational', { class: 'invitational' }, false],
    ['a state-series game', { class: 'stateSeries' }, false],
    ['an away game', { isHome: false }, false],
    ['a game nobody announces', { announced: false }, false],
    ['a game of another team', { teamIds: ['varsityGirls'] }, false],
    ['a game on the last day', { playedOn: dayOf('2027-02-28') }, true],
    ['a game after the last day', { playedOn: dayOf('2027-03-01') }, false],
    ['a game moved past the last day', { playedOn: dayOf('2027-03-01'), movedFromOn: dayOf('2027-02-27') }, true],
    ['a game on the day before a blackout day', { playedOn: dayOf('2026-12-24') }, true],
    ['a game on a blackout day', { playedOn: dayOf('2026-12-25') }, false],
    ['a game moved onto a blackout day', { playedOn: dayOf('2026-12-25'), movedFromOn: dayOf('2026-12-18') }, false],
    ['a game moved away from a blackout day', { playedOn: dayOf('2026-12-26'), movedFromOn: dayOf('2026-12-25') }, true],
  ] as const)('%s counts: %s', (_, change, counts) => {
    expect(covers(perGame, { ...game, ...change })).toBe(counts);
  });

  test('a commitment of junior varsity leaves varsity out', () => {
    expect(covers({ ...perGame, levels: ['juniorVarsity'] }, game)).toBe(false);
  });

  test('two reads a game over three games, one cancelled and one postponed, are four; over a doubleheader night two', () => {
    const games = [game, { ...game, id: 'b', status: 'cancelled' as const }, { ...game, id: 'c', status: 'postponed' as const }];
    expect(readsPromised(perGame, games, () => null)).toBe(4);
    expect(readsPromised({ ...perGame, counting: 'perNight' }, [game, { ...game, id: 'b' }], () => 'friday')).toBe(2);
    expect(readsPromised({ ...perGame, counting: 'perTerm', reads: 24 }, games, () => null)).toBe(24);
  });
});

describe('what a move of a game does to commitments', () => {
  test('a moved game takes its reads along and a postponed one keeps them', () => {
    expect([EFFECT_ON_COMMITMENTS.reschedule, EFFECT_ON_COMMITMENTS.postpone]).toEqual(['takesReadsAlong', 'keepsReads']);
  });

  const reads = { promised: 2, given: 1, settled: 0 };
  test('a cancelled game credits what was not given, or its value moves on', () => {
    expect(changeWhenCancelled(perGame, game, reads, 'credit', false)).toMatchObject({ credited: 1, released: 0 });
    expect(changeWhenCancelled(perGame, game, reads, 'valueMovesOn', false)).toMatchObject({ credited: 0, released: 1 });
    expect(changeWhenCancelled(perGame, game, { ...reads, settled: 1 }, 'credit', false)).toBeNull();
  });

  test('a cancelled game changes nothing for reads counted over the term or on occurrence', () => {
    for (const counting of ['perTerm', 'onOccurrence'] as const) {
      expect(changeWhenCancelled({ ...perGame, counting }, game, reads, 'credit', false)).toBeNull();
    }
  });

  test('reads counted per night wait while another game of the night is held', () => {
    const perNight = { ...perGame, counting: 'perNight' as const };
    expect(changeWhenCancelled(perNight, game, reads, 'credit', true)).toBeNull();
    expect(changeWhenCancelled(perNight, game, reads, 'credit', false)).toMatchObject({ credited: 1 });
  });

  test('an added regular-season game promises more, an added invitational does not', () => {
    expect(changeWhenAdded(perGame, game, false)).toMatchObject({ promised: 2 });
    expect(changeWhenAdded(perGame, { ...game, class: 'invitational' }, false)).toBeNull();
    expect(changeWhenAdded(perGame, { ...game, class: 'stateSeries' }, false)).toBeNull();
    expect(changeWhenAdded({ ...perGame, counting: 'perNight' }, game, true)).toBeNull();
  });
});

const jv: GameOfDay = {
  id: 'jv', startsClock: '17:30', startsAfterGameId: null, startsAfterMinutes: null, usualMinutes: 75,
  playedOn: dayOf('2026-12-04'), venueId: 'fieldhouse', floorId: 'perch', announced: true,
};
const varsity: GameOfDay = { ...jv, id: 'varsity', startsClock: null, startsAfterGameId: 'jv', startsAfterMinutes: 20, usualMinutes: 90 };

describe('a night', () => {
  test('the varsity game floats twenty minutes after the JV game', () => {
    expect(shownStarts([varsity, jv])).toEqual([
      { gameId: 'varsity', clock: '19:05', floating: true, words: '20 minutes after the game before, about 7:05 PM' },
      { gameId: 'jv', clock: '17:30', floating: false, words: '5:30 PM' },
    ]);
  });

  test('two games that wait for each other have no clock', () => {
    const ring = [{ ...varsity, startsAfterGameId: 'jv' }, { ...jv, startsClock: null, startsAfterGameId: 'varsity', startsAfterMinutes: 5 }];
    expect(shownStarts(ring).map((start) => start.clock)).toEqual([null, null]);
  });

  test('noon, midnight and a game after midnight are shown as people say them', () => {
    expect([spokenClock('12:00'), spokenClock('00:05'), spokenClock('23:59')]).toEqual(['12:00 PM', '12:05 AM', '11:59 PM']);
    const late = shownStarts([{ ...jv, startsClock: '23:30' }, varsity]);
    expect(late[1]?.clock).toBe('01:05');
  });

  test('JV and varsity at one venue on one day are one night, the first game first', () => {
    const nights = groupIntoNights([
      varsity, jv, { ...jv, id: 'away', venueId: null }, { ...jv, id: 'quiet', announced: false }, { ...jv, id: 'next', playedOn: dayOf('2026-12-08') },
    ]);
    expect(nights).toEqual([
      { heldOn: '2026-12-04', venueId: 'fieldhouse', gameIds: ['jv', 'varsity'] },
      { heldOn: '2026-12-08', venueId: 'fieldhouse', gameIds: ['next'] },
    ]);
  });

  test('two games on one floor at one time are warned of, one after the other are not', () => {
    const other = { ...jv, id: 'girls', startsClock: '18:44' };
    expect(floorClashes([jv, other]).map((clash) => clash.gameIds)).toEqual([['jv', 'girls']]);
    expect(floorClashes([jv, { ...other, startsClock: '18:45' }])).toEqual([]);
    expect(floorClashes([jv, { ...other, floorId: 'annex' }])).toEqual([]);
    expect(floorClashes([jv, varsity])).toEqual([]);
  });
});

import { describe, expect, test } from 'vitest';
import type { Day } from '../../server/domain/day.ts';
import { mustFix, worthKnowing } from '../../server/domain/packet/readiness-line.ts';
import { glanceOf } from '../../server/domain/reports/glance.ts';
import type { GlanceNight } from '../../server/domain/reports/glance.ts';
import { unplacedReads } from '../../server/domain/reports/unplaced-reads.ts';
import type { GameOfNight } from '../../server/domain/reports/unplaced-reads.ts';

// Source of fourteen days and of what is owed in a game: common practice, no source.
const TODAY = '2026-12-01' as Day;
const night = (more: Partial<GlanceNight> = {}): GlanceNight => ({ nightId: 'n', heldOn: '2026-12-04' as Day, isSignedOff: false, attendance: null, lines: [], placed: 4, mentions: 0, unplaced: 0, packetIssued: null, packetBecause: null, ...more });
const noRoster = mustFix('no-roster', 'Port Ansel High School (varsity) has no roster.', { resource: 'teams', id: 't' });
const noStarters = worthKnowing('no-starters', 'Tamarack Ridge High School (varsity) has no starters marked.', { resource: 'teams', id: 'u' });

test.each([
  ['2026-12-01', 'mend'],
  ['2026-12-15', 'mend'],
  ['2026-12-16', 'ahead'],
] as const)('a roster that is missing for the night of %s is told as “%s”', (heldOn, state) => {
  expect(glanceOf(night({ heldOn: heldOn as Day, lines: [noRoster] }), TODAY).rosters).toMatchObject({ state, words: 'No roster', to: '/teams/t/show' });
});

test('the worst comes first and the rest are counted', () => {
  expect(glanceOf(night({ lines: [noStarters, noRoster] }), TODAY).rosters).toEqual({
    state: 'mend', words: 'No roster, 1 more', sentences: [noRoster.sentence, noStarters.sentence], to: '/teams/t/show',
  });
});

test('what is only worth knowing waits as well while its night is far', () => {
  expect(glanceOf(night({ heldOn: '2027-02-05' as Day, lines: [noStarters] }), TODAY).rosters).toMatchObject({ state: 'ahead', words: 'No starters' });
});

describe('a packet', () => {
  test.each([
    [{ packetIssued: null }, 'look', 'Not issued'],
    [{ packetIssued: 2 }, 'done', 'Packet 2'],
    [{ packetIssued: 2, packetBecause: 'change' as const }, 'mend', 'Out of date'],
    [{ packetIssued: 2, packetBecause: 'choice' as const }, 'mend', 'Issue again'],
  ])('with %j is told as “%s”, %s', (more, state, words) => {
    expect(glanceOf(night(more), TODAY).packet).toMatchObject({ state, words });
  });
});

describe('a night that is over', () => {
  const over = { heldOn: '2026-11-30' as Day };
  test('and not signed off is to be signed off, and asks for nothing else', () => {
    const cells = glanceOf(night({ ...over, lines: [noRoster], unplaced: 2 }), TODAY);
    expect(cells.signOff).toMatchObject({ state: 'mend', to: '/nights/n/show?tab=tidy' });
    expect(Object.values(cells).filter(({ state }) => state !== 'none')).toHaveLength(1);
  });
  test('and signed off asks how many came, zero being an answer', () => {
    expect(glanceOf(night({ ...over, isSignedOff: true }), TODAY).attendance).toMatchObject({ state: 'look', words: 'Not recorded' });
    expect(glanceOf(night({ ...over, isSignedOff: true, attendance: 0 }), TODAY).attendance).toMatchObject({ state: 'done', words: '0' });
  });
});

describe('reads without a place', () => {
  const game = (id: string, nightId: string, more: Partial<GameOfNight> = {}): GameOfNight => ({ id, nightId, playedOn: '2026-12-04' as Day, movedFromOn: null, status: 'planned', class: 'regular', level: 'varsity', announced: true, isHome: true, teamIds: ['k'], ...more });
  const promise = (counting: 'perGame' | 'perNight' | 'perTerm' | 'onOccurrence', reads: number) => ({ id: 'c', counting, reads, startsOn: null, endsOn: null, teamIds: [], levels: [] });
  const games = [game('jv', 'n', { level: 'juniorVarsity' }), game('v', 'n')];
  const placed = [{ nightId: 'n', gameId: 'v', commitmentId: 'c', reads: 2 }];
  test.each([
    ['perGame', 2, 2],
    ['perNight', 3, 1],
    ['perNight', 2, 0],
    ['perTerm', 9, 0],
    ['onOccurrence', 9, 0],
  ] as const)('promised %s, %i: %i are missing where two are placed in the second of two games', (counting, reads, missing) => {
    expect(unplacedReads([promise(counting, reads)], games, placed).get('n') ?? 0).toBe(missing);
  });
  test('more reads in one game do not stand for another', () => {
    expect(unplacedReads([promise('perGame', 1)], games, placed).get('n')).toBe(1);
  });
});

import { expect, test } from 'vitest';
import { nearestPackage, nextPackage } from '../../server/domain/reports/next-package.ts';
import type { LineRecord, PackageOnOffer } from '../../server/domain/reports/next-package.ts';
import { whatFollows } from '../../server/domain/reports/what-follows.ts';
import type { FollowFacts } from '../../server/domain/reports/what-follows.ts';

const line = (more: Partial<LineRecord> = {}): LineRecord => ({
  readKindId: 'concession', name: 'Concession read', counting: 'perTerm', quantity: 24, atMost: null, due: 24, given: 23, games: 12, seen: null, rateCents: 4_200, rateFrom: 'nextSeason', ...more,
});

// Nine in ten is common practice, no source: 22 of 24 is 91.7 %, 21 of 24 is 87.5 %.
test.each<[string, Partial<LineRecord>, number, number, number]>([
  ['nearly all', {}, 24, 24, 100_800],
  ['just nine in ten', { due: 20, given: 18 }, 24, 24, 100_800],
  ['22 of 24', { given: 22 }, 24, 24, 100_800],
  ['21 of 24, the first that falls short', { given: 21 }, 21, 21, 88_200],
  ['half', { given: 12 }, 12, 12, 50_400],
  ['a half read rounds up', { quantity: 5, due: 10, given: 5 }, 3, 3, 12_600],
  ['nothing given at all', { given: 0 }, 0, 0, 0],
  ['nothing due yet', { due: 0, given: 0 }, 24, 24, 100_800],
  ['more than was due by now', { due: 10, given: 11 }, 24, 24, 100_800],
  ['two a game', { counting: 'perGame', quantity: 2, due: 24, given: 24 }, 2, 24, 100_800],
  ['two a game of which one was given', { counting: 'perGame', quantity: 2, due: 24, given: 12 }, 1, 12, 50_400],
  ['a banner that hung', { readKindId: null, name: 'Banner', counting: null, quantity: 1, due: 1, given: 1 }, 1, 1, 4_200],
])('of %s so many are promised again', (_, more, quantity, countAtRate, worthCents) => {
  const { lines } = nextPackage([line(more)], 0, []);
  expect(lines.map((one) => [one.quantity, one.countAtRate, one.worthCents])).toEqual(countAtRate === 0 ? [] : [[quantity, countAtRate, worthCents]]);
});

// Gamma(2 + 28, 1 + 10): 30 / 11 a game, 32.7 in twelve games.
test.each<[string, Partial<LineRecord>, number, number]>([
  ['between the least and the most', { quantity: 10, atMost: 40 }, 10, 33],
  ['above the most', { quantity: 10, atMost: 30 }, 10, 30],
  ['below the least', { quantity: 36, atMost: 60 }, 33, 33],
  ['nothing counted yet', { quantity: 10, atMost: 30, seen: { occurrences: 0, games: 0 } }, 10, 10],
  ['no shot in twelve games', { quantity: 10, atMost: 30, seen: { occurrences: 0, games: 12 } }, 2, 2],
])('mentions on occurrence, %s, are expected as the posterior has it', (_, more, quantity, countAtRate) => {
  const { lines } = nextPackage([line({ counting: 'onOccurrence', seen: { occurrences: 28, games: 10 }, ...more })], 0, []);
  expect(lines.map((one) => [one.quantity, one.countAtRate])).toEqual([[quantity, countAtRate]]);
});

const packages: PackageOnOffer[] = [
  { id: 'small', name: 'Bleachers', priceCents: 40_000, carries: '8 × Concession read' },
  { id: 'home', name: 'Home court', priceCents: 95_000, carries: '20 × Concession read, 1 × Banner' },
  { id: 'large', name: 'Captain', priceCents: 150_000, carries: '40 × Concession read' },
];

test.each<[string, number, number, string | null]>([
  ['the nearest', 100_800, 70_000, 'home'],
  ['not one below what was paid, however near', 100_800, 95_001, 'large'],
  ['one at what was paid', 100_800, 95_000, 'home'],
  ['of two as near, the cheaper', 122_500, 0, 'home'],
  ['none, where all cost less', 100_800, 150_001, null],
])('of the packages %s stands beside it', (_, around, floor, id) => {
  expect(nearestPackage(packages, around, floor)?.id ?? null).toBe(id);
});

test.each<[string, Partial<LineRecord>, string]>([
  ['kept', { due: 24, given: 24 }, '24 of 24 given; 2 a game, 24 in all, again at $42.00'],
  ['half of it', { due: 24, given: 12 }, '12 of 24 given; 1 a game, 12 in all, as many as could be given, at $42.00'],
  ['nearly all of it', { quantity: 1, due: 6, given: 5 }, '5 of 6 given; 1 a game, 12 in all, again at $42.00'],
])('of a read each game, %s, it says how many a game and in all', (_, more, words) => {
  expect(nextPackage([line({ counting: 'perGame', quantity: 2, ...more })], 0, []).words).toContain(words);
});

test('a suggestion says why in sentences', () => {
  expect(nextPackage([line()], 90_000, packages).words).toBe('Concession read: 23 of 24 given; 24 again at $42.00 is $1,008.00. Package “Home court” at $950.00 carries 20 × Concession read, 1 × Banner.');
  const two = [line({ given: 12, rateFrom: 'thisSeason' }), line({ readKindId: null, name: 'Banner on the north rail', counting: null, quantity: 1, due: 1, given: 1, rateCents: 10_000, rateFrom: 'contract' })];
  expect(nextPackage(two, 90_000, []).words).toBe(
    'Concession read: 12 of 24 given; 12, as many as could be given, at $42.00 is $504.00 by this season’s rate card. Banner on the north rail: 1 of 1 given; 1 again at $100.00 is $100.00, the contract’s own price. In all that is $604.00.',
  );
  expect(nextPackage([line({ counting: 'onOccurrence', quantity: 10, atMost: 40, seen: { occurrences: 28, games: 10 } })], 0, []).words).toBe('Concession read: 28 in 10 games let expect 33 in 12; 33 at $42.00 is $1,386.00.');
  expect(nextPackage([], 0, packages.slice(0, 1)).worthCents).toBe(0);
});

const contract = { id: 'c2', number: 'C-2028-0001', title: 'Game balls', isDraft: false, followsAs: 'renewal', yearNumber: 1 } as const;
const offer = { id: 'o1', title: 'Game balls again', state: 'open', declinedReason: null } as const;

test.each<[Partial<FollowFacts>, string, string]>([
  [{}, 'nothing', 'Nothing yet'],
  [{ contract }, 'signed', 'Renewed: C-2028-0001'],
  [{ contract: { ...contract, followsAs: null } }, 'signed', 'Signed again: C-2028-0001'],
  [{ contract: { ...contract, followsAs: 'year', yearNumber: 2 }, years: 3 }, 'carriedOn', 'Carried on as year 2 of 3'],
  [{ contract: { ...contract, isDraft: true, number: null } }, 'drafted', 'A contract is drawn up, not signed'],
  [{ contract: { ...contract, isDraft: true, number: null }, offers: [offer] }, 'offered', 'Offered: Game balls again'],
  [{ offers: [{ ...offer, state: 'draft' }] }, 'drafted', 'An offer is drawn up: Game balls again'],
  [{ offers: [{ ...offer, state: 'declined', declinedReason: 'Moves away' }] }, 'declined', 'Declined: Moves away'],
  [{ offers: [{ ...offer, state: 'lapsed' }] }, 'declined', 'The offer lapsed: Game balls again'],
  [{ offers: [{ ...offer, state: 'withdrawn' }] }, 'nothing', 'Nothing yet'],
  [{ yearNumber: 1, years: 3 }, 'yearsLeft', 'Year 2 of 3 comes next'],
  [{ yearNumber: 3, years: 3 }, 'nothing', 'Nothing yet'],
  [{ lostOn: '2027-04-01' as never, lostReason: 'The store closed' }, 'lost', 'Lost: The store closed'],
])('what follows %o is told as %s', (facts, state, words) => {
  expect(whatFollows({ yearNumber: 1, years: 1, contract: null, offers: [], lostOn: null, lostReason: null, ...facts })).toMatchObject({ state, words });
});

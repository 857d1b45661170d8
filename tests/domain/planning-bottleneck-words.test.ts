import { expect, test } from 'vitest';
import { addDays, dayOf } from '../../server/domain/day.ts';
import type { Bottleneck } from '../../server/domain/planning/season.ts';
import { bottleneckInWords } from '../../server/domain/planning/words/bottleneck.ts';
import type { BottleneckNames, NamedPromise } from '../../server/domain/planning/words/bottleneck.ts';
import { countedInWords, dayInWords, gamesInWords, listInWords, numberInWords, windowsInWords } from '../../server/domain/planning/words/counted.ts';

const promise = (sponsorName: string, more: Partial<NamedPromise> = {}): NamedPromise => ({ sponsorName, readKindName: 'Concession read', sponsorsPerGame: 3, mostPerGame: null, isThis: false, ...more });

const PROMISES: Record<string, NamedPromise> = {
  creamery: promise('Snowmelt Creamery'),
  creameryToo: promise('Snowmelt Creamery'),
  orthodontics: promise('Halvorsen Orthodontics'),
  kitchen: promise('Mirabel’s Kitchen'),
  insurance: promise('Okafor Family Insurance'),
  tire: promise('Blue Lantern Tire'),
  ball: promise('Juniper & Pike Hardware', { readKindName: 'Sponsored game ball', sponsorsPerGame: 1 }),
  offer: promise('Pinyon Print Works', { isThis: true, mostPerGame: 2 }),
  ballOffer: promise('Pinyon Print Works', { isThis: true, readKindName: 'Sponsored game ball', sponsorsPerGame: 1 }),
};

/** g1 is Saturday, January 9; the next ones are days later. */
const DAYS = [0, 7, 14, 21, 28, 28, 28];
const GAMES = new Map(DAYS.map((days, place) => [`g${place + 1}`, { label: 'Herons at Kestrels', playedOn: addDays(dayOf('2027-01-09'), days) }]));
const SEVEN = [...GAMES.keys()];

const names: BottleneckNames = { game: (id) => GAMES.get(id), promise: (id) => PROMISES[id], this: 'this offer' };
const said = (bottleneck: Partial<Bottleneck>) =>
  bottleneckInWords({ promiseIds: ['offer'], gameIds: SEVEN, windowKinds: ['halftime'], needed: 40, places: 33, because: 'places', ...bottleneck }, names);

/** The first sentence is the one of the job; the rest are this project's own. */
test.each<[Partial<Bottleneck>, string]>([
  [
    { promiseIds: ['offer', 'orthodontics', 'creamery', 'creameryToo'] },
    'Halftime of the seven games from Jan 9 to Feb 6 is full: Halvorsen Orthodontics, Snowmelt Creamery and this offer together need 40 places there, 33 exist.',
  ],
  [{ gameIds: ['g1'], needed: 4, places: 3 }, 'Halftime of Herons at Kestrels on Jan 9 is full: this offer needs four places there, three exist.'],
  [{ gameIds: ['g5', 'g6'], needed: 2, places: 1 }, 'Halftime of the two games on Feb 6 is full: this offer needs two places there, one exists.'],
  [{ windowKinds: ['timeOut'], needed: 13, places: 12 }, 'The time-outs of the seven games from Jan 9 to Feb 6 are full: this offer needs 13 places there, twelve exist.'],
  [{ windowKinds: ['halftime', 'timeOut'], needed: 10_000, places: 112 }, 'Halftime and the time-outs of the seven games from Jan 9 to Feb 6 are full: this offer needs 10,000 places there, 112 exist.'],
  [{ windowKinds: ['pregame'], needed: 1, places: 0 }, 'Pregame of the seven games from Jan 9 to Feb 6 has no place for a sponsor read: this offer needs one place there.'],
  [{ windowKinds: ['timeOut'], needed: 5, places: 0 }, 'The time-outs of the seven games from Jan 9 to Feb 6 have no place for a sponsor read: this offer needs five places there.'],
  [
    { promiseIds: ['creamery', 'orthodontics', 'kitchen', 'insurance', 'offer'] },
    'Halftime of the seven games from Jan 9 to Feb 6 is full: Halvorsen Orthodontics, Mirabel’s Kitchen, Okafor Family Insurance, Snowmelt Creamery and this offer together need 40 places there, 33 exist.',
  ],
  [
    { promiseIds: ['creamery', 'orthodontics', 'kitchen', 'insurance', 'tire', 'offer'] },
    'Halftime of the seven games from Jan 9 to Feb 6 is full: Blue Lantern Tire, Halvorsen Orthodontics, Mirabel’s Kitchen, two other sponsors and this offer together need 40 places there, 33 exist.',
  ],
  [
    { promiseIds: ['ball', 'ballOffer'], because: 'sponsorsPerGame', needed: 14, places: 7, windowKinds: ['pregame'] },
    'Sponsored game ball is sold to at most one sponsor in a game: in the seven games from Jan 9 to Feb 6 Juniper & Pike Hardware and this offer together need 14 reads, seven fit.',
  ],
  [{ because: 'mostPerGame', needed: 20, places: 14 }, 'This offer needs 20 reads in the seven games from Jan 9 to Feb 6, and with at most two in a game 14 fit.'],
  [{ because: 'mostPerGame', needed: 3, places: 1, gameIds: ['g1'] }, 'This offer needs three reads in Herons at Kestrels on Jan 9, and with at most two in a game one fits.'],
  [
    { because: 'noGames', gameIds: [], needed: 12, places: 0 },
    'This offer needs twelve reads, and there is no game for them: none that we announce at home and that is still to come falls on these teams, levels and days.',
  ],
  [
    { because: 'noGames', gameIds: [], needed: 1, places: 0, promiseIds: ['creamery'] },
    'Snowmelt Creamery needs one read, and there is no game for it: none that we announce at home and that is still to come falls on these teams, levels and days.',
  ],
])('bottleneck %#', (bottleneck, sentence) => {
  expect(said(bottleneck)).toBe(sentence);
});

test.each<[NamedPromise['reach'], string]>([
  [{ gameIds: ['g1'], windowKinds: ['halftime'], isLocked: false }, 'Halftime of Herons at Kestrels on Jan 9 has no place for a sponsor read: this offer needs two places there.'],
  [{ gameIds: ['g1'], windowKinds: [], isLocked: false }, 'Herons at Kestrels on Jan 9 has no window for this read kind: this offer needs two reads there.'],
  [{ gameIds: ['g1', 'g2'], windowKinds: ['halftime'], isLocked: true }, 'The two games from Jan 9 to Jan 16 are on locked nights, to which nothing is added: this offer needs two reads there.'],
  [{ gameIds: [], windowKinds: [], isLocked: false }, 'This offer needs two reads, and there is no game for them: none that we announce at home and that is still to come falls on these teams, levels and days.'],
])('where games are there and none takes a read, it is said why %#', (reach, sentence) => {
  const bottleneck: Bottleneck = { promiseIds: ['offer'], gameIds: [], windowKinds: [], needed: 2, places: 0, because: 'noGames' };
  expect(bottleneckInWords(bottleneck, { ...names, promise: (id) => (PROMISES[id] && reach ? { ...PROMISES[id], reach } : undefined) })).toBe(sentence);
});

test('what is not known any more is left out of the sentence', () => {
  expect(said({ promiseIds: ['gone', 'offer'], gameIds: ['gone', 'g1'] })).toBe('Halftime of Herons at Kestrels on Jan 9 is full: this offer needs 40 places there, 33 exist.');
  expect(said({ promiseIds: ['gone'], gameIds: ['g1'] })).toBe('Halftime of Herons at Kestrels on Jan 9 is full: what is promised needs 40 places there, 33 exist.');
});

test('numbers up to twelve are words, and thousands have their commas', () => {
  expect([0, 1, 12, 13, 999, 1_000, 10_000, 1_234_567].map(numberInWords)).toEqual(['no', 'one', 'twelve', '13', '999', '1,000', '10,000', '1,234,567']);
  expect([0, 1, 2].map((count) => countedInWords(count, 'read'))).toEqual(['no reads', 'one read', 'two reads']);
});

test('days, games, windows and lists are named as people say them', () => {
  expect(['2027-01-09', '2026-12-31'].map((day) => dayInWords(dayOf(day)))).toEqual(['Jan 9', 'Dec 31']);
  expect(gamesInWords([])).toBe('no game');
  expect(windowsInWords(['pregame', 'betweenPeriods', 'postgame', 'deadBall'])).toBe('pregame, the breaks between periods, the time after the game and the dead balls');
  expect([[], ['A'], ['A', 'B'], ['A', 'B', 'C']].map(listInWords)).toEqual(['', 'A', 'A and B', 'A, B and C']);
});

import { describe, expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { inTheWay } from '../../server/domain/sponsorship/company/in-the-way.ts';
import { limitsOf, windowsForbidden } from '../../server/domain/sponsorship/company/limits.ts';
import type { DealAsked, DealThere, ExclusiveRight, ReservedRight, RightTerms } from '../../server/domain/sponsorship/company/rights.ts';
import { obstacleInWords } from '../../server/domain/sponsorship/company/words.ts';

const right: ExclusiveRight = {
  id: 'right', categoryId: 'bank', categoryName: 'Bank or credit union', reach: 'season', schoolId: null, schoolName: null,
  startsOn: dayOf('2026-12-01'), endsOn: dayOf('2027-03-13'), gameIds: [], windowKinds: [],
  sponsorId: 'copperline', sponsorName: 'Copperline Credit Union', dealName: 'contract C-2026-0003',
};
const asked: DealAsked = {
  sponsorId: 'other', categoryId: 'bank', categoryName: 'Bank or credit union', isBlocked: false,
  startsOn: dayOf('2027-01-01'), endsOn: dayOf('2027-02-28'), schoolIds: ['tamarack'], pinnedGameIds: [], rights: [],
};
const reserved: ReservedRight = {
  id: 'reserved', categoryId: 'bank', categoryName: 'Bank or credit union', heldBy: 'Ridge Valley School District, banking contract',
  schoolId: null, schoolName: null, startsOn: dayOf('2026-07-01'), endsOn: dayOf('2027-06-30'),
};
const deal: DealThere = {
  dealId: 'contract', isOffered: false, sponsorId: 'copperline', sponsorName: 'Copperline Credit Union', categoryId: 'bank', dealName: 'contract C-2026-0003',
  startsOn: dayOf('2026-12-01'), endsOn: dayOf('2027-03-13'), schoolIds: ['tamarack'], pinnedGameIds: ['herons'],
};
const own: RightTerms = { ...right, id: 'own' };
const none = { exclusive: [], reserved: [], deals: [] };
const becauses = (...args: Parameters<typeof inTheWay>): string[] => inTheWay(...args).map((one) => one.because);

describe('a deal meets an exclusive right of another sponsor', () => {
  test.each([
    ['that begins on its last day', { startsOn: dayOf('2027-02-28') }, {}, true],
    ['that begins on the day after it', { startsOn: dayOf('2027-03-01') }, {}, false],
    ['that ends on its first day', { endsOn: dayOf('2027-01-01') }, {}, true],
    ['that ended the day before it', { endsOn: dayOf('2026-12-31') }, {}, false],
    ['of the same sponsor', { sponsorId: 'other' }, {}, false],
    ['to another category', { categoryId: 'tire' }, {}, false],
    ['at its own school', { schoolId: 'tamarack' }, {}, true],
    ['at another school', { schoolId: 'quarry' }, {}, false],
    ['at a school, the deal being read everywhere', { schoolId: 'quarry' }, { schoolIds: null }, true],
    ['in named games', { reach: 'game', gameIds: ['herons'] }, {}, false],
    ['in a game in which a read of the deal was promised aloud', { reach: 'game', gameIds: ['herons'] }, { pinnedGameIds: ['herons'] }, true],
    ['in windows', { reach: 'window', windowKinds: ['halftime'] }, {}, false],
  ] as [string, Partial<ExclusiveRight>, Partial<DealAsked>, boolean][])('%s', (_, change, mine, isInTheWay) => {
    expect(becauses({ ...asked, ...mine }, { ...none, exclusive: [{ ...right, ...change }] })).toEqual(isInTheWay ? ['exclusive'] : []);
  });
});

describe('a deal that asks for an exclusive right', () => {
  test.each([
    ['over days on which another sponsor has a contract', {}, {}, true],
    ['that ends on the first day of that contract', { endsOn: dayOf('2026-12-01') }, {}, true],
    ['that ends before that contract begins', { startsOn: dayOf('2026-11-01'), endsOn: dayOf('2026-11-30') }, {}, false],
    ['at another school than that contract', { schoolId: 'quarry' }, {}, false],
    ['at another school, that contract being read everywhere', { schoolId: 'quarry' }, { schoolIds: null }, true],
    ['in a window only', { reach: 'window', windowKinds: ['halftime'] }, {}, false],
    ['in a game that was promised aloud to the other', { reach: 'game', gameIds: ['herons'] }, {}, true],
    ['in another game', { reach: 'game', gameIds: ['quarry'] }, {}, false],
    ['beside a contract of its own', {}, { sponsorId: 'other' }, false],
  ] as [string, Partial<RightTerms>, Partial<DealThere>, boolean][])('%s', (_, mine, change, isInTheWay) => {
    const rights = [{ ...own, ...mine }];
    expect(becauses({ ...asked, rights }, { ...none, deals: [{ ...deal, ...change }] })).toEqual(isInTheWay ? ['dealThere'] : []);
  });

  test.each([
    ['two named games, none shared', { reach: 'game', gameIds: ['a'] }, { reach: 'game', gameIds: ['b'] }, false],
    ['two named games, one shared', { reach: 'game', gameIds: ['a', 'b'] }, { reach: 'game', gameIds: ['b', 'c'] }, true],
    ['halftime and time-outs', { reach: 'window', windowKinds: ['halftime'] }, { reach: 'window', windowKinds: ['timeOut'] }, false],
    ['halftime twice', { reach: 'window', windowKinds: ['halftime'] }, { reach: 'window', windowKinds: ['halftime', 'timeOut'] }, true],
    ['a named game and halftime', { reach: 'game', gameIds: ['a'] }, { reach: 'window', windowKinds: ['halftime'] }, true],
    ['halftime at one school and at another', { reach: 'window', windowKinds: ['halftime'], schoolId: 'tamarack' }, { reach: 'window', windowKinds: ['halftime'], schoolId: 'quarry' }, false],
  ] as [string, Partial<RightTerms>, Partial<RightTerms>, boolean][])('meets a right of another that claims the same: %s', (_, mine, theirs, isInTheWay) => {
    const rights = [{ ...own, ...mine }];
    expect(becauses({ ...asked, rights }, { ...none, exclusive: [{ ...right, ...theirs }] })).toEqual(isInTheWay ? ['exclusive'] : []);
  });
});

test.each([
  ['on its last day', { endsOn: dayOf('2027-01-01') }, true],
  ['that ended the day before', { endsOn: dayOf('2026-12-31') }, false],
  ['until further notice', { endsOn: null }, true],
  ['at another school', { schoolId: 'quarry' }, false],
] as [string, Partial<ReservedRight>, boolean][])('a deal meets a reserved category %s', (_, change, isInTheWay) => {
  expect(becauses(asked, { ...none, reserved: [{ ...reserved, ...change }] })).toEqual(isInTheWay ? ['reserved'] : []);
});

test('what is in the way is said in words that name the deal', () => {
  const found = inTheWay({ ...asked, isBlocked: true, rights: [own] }, { exclusive: [right], reserved: [reserved], deals: [deal] });
  expect(found.map(obstacleInWords)).toEqual([
    'The department does not take sponsors of the category Bank or credit union',
    'Bank or credit union is reserved through Jun 30, 2027: held by Ridge Valley School District, banking contract',
    'Copperline Credit Union has the exclusive right to Bank or credit union through Mar 13, 2027 (contract C-2026-0003)',
    'Copperline Credit Union is a sponsor of Bank or credit union already, through Mar 13, 2027 (contract C-2026-0003), so nobody else can be the only one',
  ]);
  const [offered] = inTheWay({ ...asked, rights: [own] }, { ...none, deals: [{ ...deal, dealId: 'offer', isOffered: true, dealName: 'offer O-2027-0002' }] });
  expect([offered!.againstId, obstacleInWords(offered!)]).toEqual(['offer', 'Copperline Credit Union was offered to be a sponsor of Bank or credit union, through Mar 13, 2027 (offer O-2027-0002), so nobody else can be promised to be the only one']);
  const [one] = inTheWay({ ...asked, pinnedGameIds: ['a'] }, { ...none, exclusive: [{ ...right, reach: 'game', gameIds: ['a', 'b'], schoolName: 'Tamarack Ridge' }] });
  expect(obstacleInWords(one!)).toBe('Copperline Credit Union has the exclusive right to Bank or credit union at Tamarack Ridge, in 2 named games through Mar 13, 2027 (contract C-2026-0003)');
});

test('a right over windows or games limits the plans of competitors, one over the days limits none', () => {
  const games = [
    { gameId: 'before', playedOn: dayOf('2026-11-30'), schoolId: 'tamarack' }, { gameId: 'first', playedOn: dayOf('2026-12-01'), schoolId: 'tamarack' },
    { gameId: 'elsewhere', playedOn: dayOf('2026-12-02'), schoolId: 'quarry' }, { gameId: 'last', playedOn: dayOf('2027-03-13'), schoolId: 'tamarack' },
  ];
  const limits = windowsForbidden([
    right, { ...right, reach: 'window', windowKinds: ['halftime'], schoolId: 'tamarack' }, { ...right, reach: 'game', gameIds: ['before', 'away'] },
  ], games);
  expect(limits.map(({ gameIds, windowKinds }) => [gameIds, windowKinds])).toEqual([[['first', 'last'], ['halftime']], [['before'], null]]);
  expect(limitsOf(limits, { categoryId: 'bank', sponsorId: 'other' })).toHaveLength(2);
  expect(limitsOf(limits, { categoryId: 'bank', sponsorId: 'copperline' })).toEqual([]);
  expect(limitsOf(limits, { categoryId: 'tire', sponsorId: 'other' })).toEqual([]);
});

import { expect, test } from 'vitest';
import { keepOut } from '../../server/domain/planning/company/keep-out.ts';
import type { CompanyLimit } from '../../server/domain/sponsorship/company/limits.ts';

const promise = { sponsorId: 'quarry', categoryId: 'hardware', kindWindows: ['timeOut2', 'halftime', 'timeOut'] };
const games = [{ id: 'a' }, { id: 'b' }];
const limit: CompanyLimit = { categoryId: 'hardware', categoryName: 'Hardware', sponsorId: 'juniper', sponsorName: 'Juniper & Pike Hardware', dealName: 'contract C-2027-0001', gameIds: ['a'], windowKinds: null };

test.each([
  ['a named game of a competitor', {}, ['b'], ['timeOut2', 'halftime', 'timeOut']],
  ['a game that is not left', { gameIds: ['gone'] }, ['a', 'b'], ['timeOut2', 'halftime', 'timeOut']],
  ['the time-outs of one of the games', { windowKinds: ['timeOut'] }, ['a', 'b'], ['halftime']],
  ['the time-outs of a game that is not left', { gameIds: ['gone'], windowKinds: ['timeOut'] }, ['a', 'b'], ['timeOut2', 'halftime', 'timeOut']],
  ['a game of its own', { sponsorId: 'quarry' }, ['a', 'b'], ['timeOut2', 'halftime', 'timeOut']],
  ['a game of another category', { categoryId: 'bank' }, ['a', 'b'], ['timeOut2', 'halftime', 'timeOut']],
] as [string, Partial<CompanyLimit>, string[], string[]][])('a sponsor is planned around %s', (_, change, gameIds, windows) => {
  const kept = keepOut(promise, games, [{ ...limit, ...change }]);
  expect([kept.games.map((game) => game.id), kept.promise.kindWindows]).toEqual([gameIds, windows]);
});

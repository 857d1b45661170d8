import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, dayOf } from '../../server/domain/day.ts';
import type { HappenedOn } from '../../server/domain/billing/without-later.ts';
import { centsOf } from '../../server/domain/money.ts';
import { Refused } from '../../server/domain/refusals.ts';
import { initialsOfPerson } from '../../server/domain/reports/at-the-table.ts';
import { brokenFloorsOf } from '../../server/domain/reports/broken-floors.ts';
import { paceByDay } from '../../server/domain/reports/pace.ts';
import { missedReadOf, readsThatStand } from '../../server/domain/reports/reads-that-stand.ts';
import { applyHappening, positionOf } from '../../server/domain/sponsorship/apply-happening.ts';
import type { ReadLine } from '../../server/domain/sponsorship/contract-terms.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { readsOfLine } from '../../server/domain/sponsorship/slot-reads.ts';
import { standingOf } from '../../server/domain/sponsorship/standing.ts';

const FIRST = dayOf('2026-12-01');

const signed = (...lines: Partial<ReadLine>[]): Happening => ({
  kind: 'signed',
  terms: {
    contractId: 'contract', priceCents: centsOf(10_000), cancelledGame: 'credit',
    lines: lines.map((line, place) => ({ kind: 'reads', lineId: `line${place}`, name: 'Concession read', counting: 'perTerm', pricing: 'fixed', reads: 3, rateCents: centsOf(1_000), ...line })),
  },
});
const read = (readId: string, gameId = 'g1', times = 1, lineId = 'line0'): Happening => ({ kind: 'readCounted', readId, lineId, gameId, times });

/** What happened, a day after the other. */
const told = (...happenings: Happening[]): HappenedOn[] => happenings.map((happening, place) => ({ happening, occurredOn: addDays(FIRST, place) }));
const stand = (...happenings: Happening[]) => readsThatStand(positionOf(happenings)!, told(...happenings)).map((one) => `${one.readId}${one.part > 0 ? `/${one.part}` : ''} ${one.what} ${one.settles}`);

describe('the reads that stand', () => {
  test('beyond the promise the last of the ledger are extra, whatever night they are of', () => {
    expect(stand(signed({ reads: 2 }), read('a'), read('b'), read('c'))).toEqual(['a given 1', 'b given 1', 'c extra 0']);
  });

  test('one that is taken back makes room for the one that was extra', () => {
    expect(stand(signed({ reads: 2 }), read('a'), read('b'), read('c'), { kind: 'readTakenBack', readId: 'a' })).toEqual(['b given 1', 'c given 1']);
  });

  test('one mention for three happenings is three reads, of which only the last is extra', () => {
    expect(stand(signed({ reads: 3 }), read('a'), read('b', 'g1', 3))).toEqual(['a given 1', 'b given 1', 'b/1 given 1', 'b/2 extra 0']);
  });

  test('counted by the game each game has its own promise', () => {
    const games = [{ gameId: 'g1', reads: 1 }, { gameId: 'g2', reads: 1 }];
    expect(stand(signed({ counting: 'perGame', reads: 1, games }), read('a', 'g1'), read('b', 'g1'), read('c', 'g2'), read('d', 'g3'))).toEqual(['a given 1', 'b extra 0', 'c given 1', 'd extra 0']);
  });

  test('of three replacements for two missed the second and the third settle one each', () => {
    const agreed: Happening = { kind: 'makegoodAgreed', makegoodId: 'm', lineId: 'line0', missed: 2, replacements: 3 };
    const give = (readId: string): Happening => ({ kind: 'makegoodGiven', makegoodId: 'm', readId });
    expect(stand(signed({ reads: 3 }), read('a'), agreed, give('x'), give('y'), give('z'))).toEqual(['a given 1', 'x makegood 0', 'y makegood 1', 'z makegood 1']);
  });

  test.each([
    [1, 2, 3, 1],
    [2, 2, 3, 1],
    [3, 2, 3, 2],
    [1, 4, 2, 1],
    [2, 4, 2, 3],
    [1, 1, 1, 1],
  ])('replacement %i for %i missed by %i stands for missed read %i', (replacement, missed, replacements, stands) => {
    expect(missedReadOf(replacement, missed, replacements)).toBe(stands);
  });
});

describe('pace by day', () => {
  test('whatever happens, its last day says what the standing says', () => {
    const step = fc.oneof(
      fc.record({ kind: fc.constant('read' as const), game: fc.integer({ min: 1, max: 4 }), times: fc.integer({ min: 1, max: 2 }) }),
      fc.record({ kind: fc.constant('back' as const), which: fc.nat({ max: 30 }) }),
      fc.record({ kind: fc.constant('credit' as const), count: fc.integer({ min: 1, max: 3 }) }),
      fc.record({ kind: fc.constant('makegood' as const), missed: fc.integer({ min: 1, max: 3 }), replacements: fc.integer({ min: 1, max: 4 }) }),
      fc.record({ kind: fc.constant('replace' as const), which: fc.nat({ max: 5 }) }),
    );
    fc.assert(fc.property(fc.integer({ min: 1, max: 12 }), fc.array(step, { maxLength: 40 }), (reads, steps) => {
      const happenings: Happening[] = [signed({ reads })];
      steps.forEach((one, place) => {
        const makegoods = happenings.flatMap((happening) => (happening.kind === 'makegoodAgreed' ? [happening.makegoodId] : []));
        const counted = happenings.flatMap((happening) => (happening.kind === 'readCounted' || happening.kind === 'makegoodGiven' ? [happening.readId] : []));
        const next: Happening =
          one.kind === 'read' ? read(`r${place}`, `g${one.game}`, one.times)
          : one.kind === 'back' ? { kind: 'readTakenBack', readId: counted[one.which % Math.max(1, counted.length)] ?? 'none' }
          : one.kind === 'credit' ? { kind: 'readsCredited', lineId: 'line0', count: one.count }
          : one.kind === 'makegood' ? { kind: 'makegoodAgreed', makegoodId: `m${place}`, lineId: 'line0', missed: one.missed, replacements: one.replacements }
          : { kind: 'makegoodGiven', makegoodId: makegoods[one.which % Math.max(1, makegoods.length)] ?? 'none', readId: `r${place}` };
        try {
          applyHappening(positionOf(happenings), next);
          happenings.push(next);
        } catch (refusal) {
          if (!(refusal instanceof Refused)) throw refusal;
        }
      });
      const position = positionOf(happenings)!;
      const line = position.lines[0]!;
      const { given, madeGood, extra } = readsOfLine(line);
      const stands = readsThatStand(position, told(...happenings));
      expect(stands.filter((one) => one.what === 'extra')).toHaveLength(extra);
      const playedOn = [FIRST, addDays(FIRST, 1), addDays(FIRST, 100)];
      const pace = paceByDay({ line, gamesInAll: 4, playedOn, reads: stands, settled: given + madeGood, occurredOn: [] });
      const standing = standingOf(position, 'line0', { gamesInAll: 4, gamesPlayed: 3, loggedNotSignedOff: 0 });
      expect(pace.at(-1)).toEqual({ on: addDays(FIRST, 100), expected: standing.expectedByNow, given: given + madeGood });
    }), { numRuns: 300, seed: 7 });
  });

  test('what was given before the books began is there from the first day', () => {
    const { terms } = signed({ reads: 8 }) as Extract<Happening, { kind: 'signed' }>;
    const opened: Happening = { kind: 'openingPosition', terms, given: [{ lineId: 'line0', count: 3 }], billedCents: centsOf(0), paidCents: centsOf(0), invoiceId: 'before' };
    const happened = told(opened, read('a'));
    const position = positionOf(happened.map(({ happening }) => happening))!;
    expect(paceByDay({ line: position.lines[0]!, gamesInAll: 4, playedOn: [FIRST, addDays(FIRST, 1)], reads: readsThatStand(position, happened), settled: 4, occurredOn: [] })).toEqual([
      { on: FIRST, expected: 2, given: 3 },
      { on: addDays(FIRST, 1), expected: 4, given: 4 },
    ]);
  });
});

test.each([
  [null, []],
  [0, []],
  [1, ['g2']],
  [2, ['g2', 'g3']],
])('at least %s a game is broken in %o', (least, broken) => {
  const games = [{ gameId: 'g1', given: 2 }, { gameId: 'g2', given: 0 }, { gameId: 'g3', given: 1 }];
  expect(brokenFloorsOf(least, games).map((game) => game.gameId)).toEqual(broken);
});

test.each([
  ['Bram Okonkwo', 'B. O.'],
  ['Xochitl de la Cruz-Marlowe', 'X. D. L.'],
  ['  łukasz  wren ', 'Ł. W.'],
  ['0042', 'at the table'],
])('%s is written %s', (name, written) => {
  expect(initialsOfPerson(name)).toBe(written);
});

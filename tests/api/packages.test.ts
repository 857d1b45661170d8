import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

describe('a rate card', () => {
  test('is copied to another season so much higher, and leaves what has a price there', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 0);
    const { director } = department;
    const next = await director.make('/api/seasons', { name: 'Basketball 2027-28', sport: 'basketball', startsOn: '2027-11-20', endsOn: '2028-03-13' });
    const price = (seasonId: string, of: Record<string, unknown>, priceCents: number) => director.make('/api/rate-card-lines', { seasonId, ...of, priceCents });
    await price(season.seasonId, { readKindId: season.readKinds.gameBall }, 7_500);
    await price(season.seasonId, { benefitName: 'Banner' }, 40_000);
    await price(next.id, { benefitName: 'Banner' }, 45_000);
    const answer = await director.make('/api/rate-card-lines/copies', { fromSeasonId: season.seasonId, toSeasonId: next.id, increaseBasisPoints: 300 });
    expect(answer.copied.map((line: any) => [line.readKindName, line.priceCents])).toEqual([['Sponsored game ball', 7_725]]);
    expect(answer.left).toEqual([{ name: 'Banner', priceCents: 45_000, code: 'rate-already-set', sentence: 'The rate card of this season has a price for that already.' }]);
    const again = await director.make('/api/rate-card-lines/copies', { fromSeasonId: season.seasonId, toSeasonId: next.id });
    expect([again.copied, again.left.length]).toEqual([[], 2]);
    const itself = await director.post('/api/rate-card-lines/copies', { fromSeasonId: next.id, toSeasonId: next.id });
    expect([itself.status, itself.body.code]).toEqual([422, 'rate-card-onto-itself']);
  });
});

describe('a package', () => {
  test('says what its lines cost one by one, and what each is worth at its price', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 3);
    const { director } = department;
    await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 10_000 });
    const form = {
      seasonId: season.seasonId, name: 'Courtside', priceCents: 100_000,
      lines: [
        { readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 6 },
        { readKindId: season.readKinds.concession, counting: 'perGame', quantity: 2, rateCents: 5_000, mostPerGame: 2 },
        { benefitName: 'Banner on the north rail', quantity: 1, rateCents: 40_000 },
      ],
    };
    const made = await director.make('/api/packages', form);
    // 6 × 100.00 + 3 games × 2 × 50.00 + 400.00
    expect([made.worthCents, made.gamesCounted, made.isOffered]).toEqual([130_000, 3, true]);
    expect(made.lines.map((line: any) => [line.readKindName ?? line.benefitName, line.rateCents, line.countAtRate, line.worthCents])).toEqual([
      ['Sponsored game ball', 10_000, 6, 60_000], ['Concession read', 5_000, 6, 30_000], ['Banner on the north rail', 40_000, 1, 40_000],
    ]);
    // Shares of 1,000.00 by largest remainder: 461.54 + 230.77 + 307.69.
    expect(made.values.map((line: any) => line.valueCents)).toEqual([46_154, 23_077, 30_769]);
    expect(made.values[0].each).toEqual([{ count: 2, cents: 7_693 }, { count: 4, cents: 7_692 }]);

    const changed = await director.patch(`/api/packages/${made.id}`, { isOffered: false }, { version: made.version });
    expect([changed.status, changed.body.isOffered, changed.body.lines.length]).toEqual([200, false, 3]);
    expect((await director.look(`/api/packages?seasonId=${season.seasonId}&isOffered=true`)).data).toEqual([]);
    expect((await director.look(`/api/packages?seasonId=${season.seasonId}&isOffered=false`)).data.map((one: any) => one.name)).toEqual(['Courtside']);
    expect((await director.post('/api/packages', form)).body.code).toBe('package-name-taken');
  });

  test('signed at its price is worth line by line what it said', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 3);
    const { director } = department;
    const made = await director.make('/api/packages', { seasonId: season.seasonId, name: 'Reads', priceCents: 70_001, lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 6, rateCents: 7_500 }, { readKindId: season.readKinds.concession, counting: 'perGame', quantity: 1, rateCents: 4_000 }] });
    const contract = await director.make('/api/contracts', {
      sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'From the package',
      term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 70_001, billingPlan: { kind: 'inFull', on: '2026-11-23' } },
      commitments: made.lines.map((line: any) => ({ readKindId: line.readKindId, counting: line.counting, reads: line.quantity, rateCents: line.rateCents })), benefits: [],
    });
    await director.make(`/api/contracts/${contract.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
    const credit = await director.post(`/api/contracts/${contract.id}/credits/preview`, { commitmentId: contract.commitments[1].id, gameId: season.games[0]!.gameId, count: 1, reason: 'Missed' });
    expect(JSON.stringify(credit.body)).toContain(String(made.values[1].each.at(-1).cents));
  });

  test.each([
    ['with a line of nothing', [{ quantity: 1 }], 'package-line-of-nothing'],
    ['with a line of both', [{ readKindId: 'ball', counting: 'perTerm', benefitName: 'Banner', quantity: 1 }], 'package-line-of-nothing'],
    ['with reads that nobody knows how to count', [{ readKindId: 'ball', quantity: 1 }], 'malformed'],
    ['with no read', [{ readKindId: 'ball', counting: 'perTerm', quantity: 0 }], 'malformed'],
    ['with the least above the most', [{ readKindId: 'ball', counting: 'perTerm', quantity: 4, leastPerGame: 3, mostPerGame: 2 }], 'least-above-most'],
    ['without lines', [], 'malformed'],
  ])('%s is refused', async (_name, lines, code) => {
    const department = await aDepartment();
    const season = await aSeason(department, 0);
    const named = lines.map((line) => ('readKindId' in line ? { ...line, readKindId: season.readKinds.gameBall } : line));
    const { status, body } = await department.director.post('/api/packages', { seasonId: season.seasonId, name: 'Courtside', priceCents: 100_000, lines: named });
    expect([status >= 400, body.code]).toEqual([true, code]);
  });
});

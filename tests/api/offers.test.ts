import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { anOffer, inDays, offerForm } from '../support/offers.ts';
import { aSeason } from '../support/season.ts';

test('a draft of an offer is changed by who saw it last, and deleted', async () => {
  const department = await aDepartment();
  const { director, bookkeeper, announcer } = department;
  const season = await aSeason(department, 0);
  const draft = await anOffer(department, season);
  expect([draft.state, draft.number, draft.holdsInventory, draft.billingPlan, draft.readLines.length]).toEqual(['draft', null, true, { kind: 'inFull', on: '2026-11-20' }, 2]);
  const changed = await director.patch(`/api/offers/${draft.id}`, { title: 'Game balls', priceCents: 60_000 }, { version: draft.version });
  expect([changed.status, changed.body.title, changed.body.priceCents, changed.body.readLines.length]).toEqual([200, 'Game balls', 60_000, 2]);
  expect((await director.patch(`/api/offers/${draft.id}`, { title: 'Late' }, { version: draft.version })).body.code).toBe('stale-version');
  expect((await bookkeeper.patch(`/api/offers/${draft.id}`, { title: 'Late' }, { version: 2 })).status).toBe(403);
  expect((await bookkeeper.get(`/api/offers/${draft.id}`)).status).toBe(200);
  expect((await announcer.get('/api/offers')).status).toBe(403);
  expect((await director.remove(`/api/offers/${draft.id}`)).status).toBe(204);
  expect((await director.get(`/api/offers/${draft.id}`)).status).toBe(404);
});

test('a line keeps what it was written with, in the words of a commitment', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const line = {
    readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000, teamIds: [season.teamId], levels: ['varsity'], leastPerGame: 1, mostPerGame: 2, separation: 'next',
    windowKinds: ['halftime'], blackoutDays: ['2026-12-11'], pinnedGameIds: [season.games[0]!.gameId], priority: 1, startsOn: '2026-12-01', endsOn: '2027-01-31', isTaxed: false,
  };
  const banner = { name: 'Banner at the Perch', quantity: 2, rateCents: 10_000, earns: 'overDays', startsOn: '2026-12-01', endsOn: '2027-01-31' };
  const offer = await anOffer(department, season, { readLines: [line], benefitLines: [banner] });
  expect(offer.readLines).toMatchObject([{ ...line, place: 1, readKindName: 'Concession read' }]);
  expect(offer.benefitLines).toMatchObject([{ ...banner, place: 2 }]);
  const again = await department.director.patch(`/api/offers/${offer.id}`, { benefitLines: [] }, { version: offer.version });
  expect(again.body.readLines).toEqual(offer.readLines);
  expect(again.body.benefitLines).toEqual([]);
});

test('what an offer names in vain is refused by name', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const refused = async (offered: object) => (await director.post('/api/offers', offerForm(season, offered as Record<string, unknown>))).body.code;
  expect(await refused({ sponsorId: department.id })).toBe('unknown-sponsor');
  expect(await refused({ sellerId: department.id })).toBe('unknown-seller');
  expect(await refused({ payerId: department.id })).toBe('unknown-payer');
  expect(await refused({ seasonId: department.id })).toBe('unknown-season');
  expect(await refused({ packageId: department.id })).toBe('unknown-package');
  expect(await refused({ endsOn: '2026-11-19' })).toBe('ends-before-it-starts');
  expect(await refused({ years: 6 })).toBe('malformed');
  expect(await refused({ readLines: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, leastPerGame: 2, mostPerGame: 1 }] })).toBe('least-above-most');
});

test('the values of an offer add up to its price, and it says why where they cannot be worked out', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 3);
  const offer = await anOffer(department, season, { priceCents: 70_001, years: 3, increaseBasisPoints: 250 });
  expect(offer.values.map((line: any) => [line.name, line.count, line.valueCents])).toEqual([['Sponsored game ball', 6, 40_910], ['Concession read', 8, 29_091]]);
  expect(offer.pricesOfYears).toEqual([70_001, 71_751, 73_545]);
  const worthless = await anOffer(department, season, { readLines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 0 }] });
  expect([worthless.values, worthless.valuesTrouble.code]).toEqual([[], 'price-without-rates']);
});

test('offers are found by state, sponsor and season', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  await anOffer(department, season);
  expect((await director.look('/api/offers?state=draft')).total).toBe(1);
  expect((await director.look('/api/offers?state=lapsed')).total).toBe(0);
  expect((await director.look(`/api/offers?sponsorId=${season.sponsorId}&seasonId=${season.seasonId}&q=concession&sort=-attention`)).total).toBe(1);
  expect((await director.look('/api/offers?lapsesSoon=true')).total).toBe(0);
  expect(inDays(0) < inDays(1)).toBe(true);
});

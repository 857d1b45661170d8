import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { inDays } from '../support/offers.ts';
import { aLaterSeason } from '../support/season.ts';

const WAYS = {
  withdrawn: (id: string) => [`/api/offers/${id}/withdraw`, {}],
  declined: (id: string) => [`/api/offers/${id}/decline`, { reason: 'Too dear this year' }],
  accepted: (id: string) => [`/api/offers/${id}/accept`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' }],
} as const satisfies Record<string, (id: string) => readonly [path: string, form: object]>;

test('the places of an offer are free once it is withdrawn, declined or lapsed; once it is signed its contract owes its reads instead', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 1);
  const offer = async (title: string) =>
    director.make('/api/offers', {
      sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, seasonId: season.seasonId, title, priceCents: 20_000, startsOn: season.startsOn, endsOn: season.endsOn, lapsesOn: '2150-11-30',
      readLines: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4_000, windowKinds: ['halftime'] }],
    });
  const put = (id: string) => director.post(`/api/offers/${id}/put`, { putOn: inDays(-20) });
  const waiting = await offer('Waits for the places');
  const fits = async () => (await director.make(`/api/offers/${waiting.id}/promise-checks`)).can;

  for (const way of ['withdrawn', 'declined'] as const) {
    const { id } = await offer(`Is ${way}`);
    expect((await put(id)).status).toBe(200);
    expect(await fits(), `before it is ${way}`).toBe('no');
    await director.make(...WAYS[way](id));
    expect(await fits(), `once it is ${way}`).toBe('yes');
  }

  const lapsing = await offer('Lapses');
  await put(lapsing.id);
  const lapsesOn = async (days: number) => department.ask('update offer set lapses_on = $3 where department_id = $1 and id = $2', [department.id, lapsing.id, inDays(days)]);
  await lapsesOn(0);
  expect(await fits(), 'on its last day').toBe('no');
  await lapsesOn(-1);
  expect(await fits(), 'the day after').toBe('yes');

  const signed = await offer('Is signed');
  await put(signed.id);
  const taken = await director.make(...WAYS.accepted(signed.id));
  expect((await director.look(`/api/contracts/${taken.contractId}`)).standing.owed).toBe(3);
  expect(await fits(), 'once it is signed').toBe('no');
});

test('a contract that was drawn up of an offer keeps its places until it is signed or the offer lapses, and is not in its own way', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 1);
  const offer = async (title: string) =>
    director.make('/api/offers', {
      sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, seasonId: season.seasonId, title, priceCents: 20_000, startsOn: season.startsOn, endsOn: season.endsOn, lapsesOn: '2150-11-30',
      readLines: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4_000, windowKinds: ['halftime'] }],
    });
  const first = await offer('Is drawn up');
  const second = await offer('Waits for the places');
  const put = async (id: string) => (await director.post(`/api/offers/${id}/put`, { putOn: inDays(0) })).body.code ?? 'put';
  expect(await put(first.id)).toBe('put');
  const taken = await director.make(`/api/offers/${first.id}/draft-contract`);
  expect([taken.state, taken.holdsNow]).toEqual(['accepted', true]);
  expect(await put(second.id)).toBe('offer-beyond-places');
  expect((await director.make(`/api/contracts/${taken.contractId}/promise-checks`)).can).toBe('yes');
  await department.ask('update offer set lapses_on = $3 where department_id = $1 and id = $2', [department.id, first.id, inDays(-1)]);
  expect((await director.make(`/api/offers/${second.id}/promise-checks`)).can).toBe('yes');
  await department.ask('update offer set lapses_on = $3 where department_id = $1 and id = $2', [department.id, first.id, inDays(1)]);
  expect((await director.remove(`/api/contracts/${taken.contractId}`)).status).toBe(204);
  expect(await director.look(`/api/offers/${first.id}`)).toMatchObject({ state: 'open', holdsNow: true });
  expect(await put(second.id)).toBe('offer-beyond-places');
});

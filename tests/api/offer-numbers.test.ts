import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { anOffer, inDays } from '../support/offers.ts';
import { aSeason } from '../support/season.ts';

test('offers are numbered without a gap when they are put, and a refused one takes no number', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const banner = { readLines: [], benefitLines: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 10_000 }] };
  const put = (id: string) => director.post(`/api/offers/${id}/put`, { putOn: inDays(0) });
  const numberOf = async (offered = {}) => (await put((await anOffer(department, season, { ...banner, ...offered })).id)).body.number;
  const first = await numberOf();
  expect(first).toMatch(/^O-20\d\d-0001$/);
  const series = first.slice(0, -4);
  for (const [offered, code] of [
    [{ benefitLines: [] }, 'offer-without-lines'],
    [{ lapsesOn: inDays(-1) }, 'offer-lapses-too-soon'],
    [{ billingPlan: { kind: 'installments', installments: [{ on: '2026-12-01', amountCents: 70_001 }] } }, 'installments-exceed-price'],
    [{ benefitLines: [{ name: 'Banner', quantity: 1, rateCents: 0 }] }, 'price-without-rates'],
  ] as const) {
    const draft = await anOffer(department, season, { ...banner, ...offered });
    expect((await put(draft.id)).body.code).toBe(code);
    expect((await director.look(`/api/offers/${draft.id}`)).number).toBeNull();
  }
  const over = await anOffer(department, season, { ...banner, lapsesOn: inDays(-1) });
  expect((await director.post(`/api/offers/${over.id}/put`, { putOn: inDays(-9) })).body.code).toBe('offer-lapses-too-soon');
  expect(await numberOf({ lapsesOn: inDays(0) })).toBe(`${series}0002`);
  const drafts = [];
  for (let one = 0; one < 4; one += 1) drafts.push(await anOffer(department, season, banner));
  const numbers = await Promise.all(drafts.map(async ({ id }) => (await put(id)).body.number));
  expect(numbers.sort()).toEqual(['0003', '0004', '0005', '0006'].map((end) => `${series}${end}`));
  expect((await put(drafts[0]!.id)).body.code).toBe('offer-already-put');
  const { body } = await director.patch(`/api/offers/${drafts[0]!.id}`, { title: 'Other words' }, { version: 2 });
  expect(body.code).toBe('offer-not-a-draft');
});

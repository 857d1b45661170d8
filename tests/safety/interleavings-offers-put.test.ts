import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aLaterSeason } from '../support/season.ts';
import { ordersOf, take, told } from './interleaving.ts';

const ORDERS = ordersOf(['creamery', 'orthodontics']);

test.each(['one after the other', 'all at once'] as const)('two offers that fit only one at a time are put, %s: one is put, and the other is refused with what is full', async (way) => {
  const department = await aDepartment();
  const { director } = department;
  const { seasonId, sponsorId, sellerId, readKinds, games } = await aLaterSeason(department, ORDERS.length);
  // The row that a season's plan is locked by; it is there from the first time somebody planned.
  await department.ask('insert into season_plan (department_id, id, season_id) values ($1, gen_random_uuid(), $2)', [department.id, seasonId]);
  for (const [place, order] of ORDERS.entries()) {
    const day = games[place]!.playedOn;
    const ids = new Map<string, string>();
    for (const title of order) {
      const readLines = [{ readKindId: readKinds.concession, counting: 'perTerm', reads: 2, rateCents: 4_000, windowKinds: ['halftime'] }];
      const { id } = await director.make('/api/offers', { sponsorId, sellerId, seasonId, title, priceCents: 8_000, startsOn: day, endsOn: day, lapsesOn: '2150-11-30', readLines });
      ids.set(title, id);
    }
    const steps = Object.fromEntries(order.map((title) => [title, () => director.post(`/api/offers/${ids.get(title)}/put`, { putOn: '2026-11-20' })]));
    const answers = await take(department, { seasonPlan: seasonId }, steps, order, way);
    const said = told(answers, order);
    expect(order.map((title) => said[title]), order.join(', ')).toEqual(['done', 'offer-beyond-places']);
    expect(answers[order[1]!]!.body.detail).toContain('Juniper & Pike Hardware and this offer together need four places there, three exist.');
    const put = await department.ask('select id from offer where department_id = $1 and put_on is not null and id = any($2::uuid[])', [department.id, [...ids.values()]]);
    expect(put).toEqual([{ id: ids.get(order[0]!) }]);
  }
});

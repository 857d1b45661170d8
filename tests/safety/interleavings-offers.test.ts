import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { anOpenOffer } from '../support/offers.ts';
import { aSeason } from '../support/season.ts';
import { WAYS, ordersOf, take, told } from './interleaving.ts';

const SIGNATURE = { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' };

test.each(WAYS)('an offer is accepted by two and withdrawn by a third, %s: one of them wins, and there is one contract or none', async (way) => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director } = department;
  for (const order of ordersOf(['one accepts', 'another accepts', 'withdrawn'])) {
    const { id, title } = await anOpenOffer(department, season, { title: `${order.join(', ')}`.slice(0, 120) });
    const accept = () => director.post(`/api/offers/${id}/accept`, SIGNATURE);
    const answers = await take(department, { offer: id }, { 'one accepts': accept, 'another accepts': accept, withdrawn: () => director.post(`/api/offers/${id}/withdraw`) }, order, way);
    const said = Object.values(told(answers, order));
    expect(said.filter((one) => one === 'done'), order.join(', ')).toHaveLength(1);
    const { state } = await director.look(`/api/offers/${id}`);
    const { data } = await director.look(`/api/contracts?q=${encodeURIComponent(title)}&perPage=500`);
    expect(data.map((contract: any) => contract.term.state), order.join(', ')).toEqual(state === 'accepted' ? ['signed'] : []);
  }
});

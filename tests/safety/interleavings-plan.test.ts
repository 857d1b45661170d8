import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { accepted, aProposal } from '../support/plan.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import { WAYS, ordersOf, take, told } from './interleaving.ts';

const WAYS_OF_PLANS = WAYS.filter((way) => way !== 'all at once at the books');

test.each(WAYS_OF_PLANS)('two people accept two plans of one season, %s: one plan holds, the other person hears it and loses nothing', async (way) => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 3);
  await aSignedContract(department, season);
  await accepted(director, await aProposal(director, season.seasonId));
  for (const order of ordersOf(['one', 'other'])) {
    const [one, other] = [await aProposal(director, season.seasonId, { kind: 'replan' }), await aProposal(director, season.seasonId, { kind: 'replan' })];
    const accept = (proposal: any) => () => director.post(`/api/plan-proposals/${proposal.id}/accept`, {}, { version: proposal.version });
    const answers = await take(department, { seasonPlan: season.seasonId }, { one: accept(one), other: accept(other) }, order, way);
    const said = told(answers, order);
    expect(Object.values(said).toSorted(), order.join(', ')).toEqual(['done', 'stale-version']);
    const loser = said['one'] === 'done' ? other : one;
    expect((await director.look(`/api/plan-proposals/${loser.id}`)).state).toBe('proposed');
    const placements = await department.ask('select 1 from placement where department_id = $1', [department.id]);
    expect(placements, order.join(', ')).toHaveLength(14);
  }
});

test.each(WAYS_OF_PLANS)('a plan is accepted while a read is placed by hand and a night is locked, %s: the plan knows of both or is refused', async (way) => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 3);
  const contract = await aSignedContract(department, season);
  await director.make('/api/plan/spread', { seasonId: season.seasonId });
  const { data } = await director.look(`/api/nights/${season.games[0]!.nightId}/placements`);
  await director.remove(`/api/placements/${data[0].id}`);
  for (const order of ordersOf(['accepts', 'by hand', 'locks'])) {
    const proposal = await aProposal(director, season.seasonId, { kind: 'replan' });
    const { nightId, gameId } = season.games[1]!;
    const answers = await take(department, { seasonPlan: season.seasonId }, {
      accepts: () => director.post(`/api/plan-proposals/${proposal.id}/accept`, {}, { version: proposal.version }),
      'by hand': () => director.post('/api/placements', { commitmentId: contract.commitments[1].id, gameId, windowKey: 'timeOut3' }),
      locks: () => director.post(`/api/nights/${nightId}/lock`, {}),
    }, order, way);
    const said = told(answers, order);
    expect([said['by hand'], said['locks']], order.join(', ')).toEqual(['done', 'done']);
    expect(said['accepts'], order.join(', ')).toBe(order[0] === 'accepts' ? 'done' : 'stale-version');
    await director.make(`/api/nights/${nightId}/unlock`, { note: 'The test goes on' });
    await director.remove(`/api/placements/${answers['by hand']!.body.id}`);
    const twice = await department.ask('select game_id, window_key, place from placement where department_id = $1 group by 1, 2, 3 having count(*) > 1', [department.id]);
    expect(twice).toEqual([]);
  }
});

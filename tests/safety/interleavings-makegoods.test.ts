import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice } from '../support/season.ts';
import { aShortContract } from '../support/short-contract.ts';
import { WAYS, ordersOf, take, told } from './interleaving.ts';

const WAYS_OF_ANSWERS = WAYS.filter((way) => way !== 'all at once at the books');

test.each(WAYS_OF_ANSWERS)('a proposal is accepted while it is withdrawn, %s: one of the two holds, and the credit is there only with the yes', async (way) => {
  for (const order of ordersOf(['accepts', 'withdraws'])) {
    const short = await aShortContract(await aDepartment());
    const { director } = short.department;
    const proposal = (await short.propose({ remedy: 'credit' })).body;
    const answers = await take(short.department, { contract: short.contractId }, {
      accepts: () => short.accept(proposal),
      withdraws: () => director.post(`/api/makegood-proposals/${proposal.id}/withdraw`, {}, { version: proposal.version }),
    }, order, way);
    const said = told(answers, order);
    expect(Object.values(said).toSorted(), order.join(', ')).toEqual(['done', 'stale-version']);
    const isAccepted = said['accepts'] === 'done';
    expect((await director.look('/api/credit-memos')).total, order.join(', ')).toBe(isAccepted ? 1 : 0);
    expect(await short.standing(), order.join(', ')).toMatchObject(isAccepted ? { owed: 0, credited: 7 } : { owed: 7, credited: 0 });
  }
}, 120_000);

test.each(WAYS)('a proposal is accepted while its read comes in late, %s: a credit never stands for a read that was counted before it', async (way) => {
  for (const order of ordersOf(['accepts', 'comes late'])) {
    const short = await aShortContract(await aDepartment());
    const { director } = short.department;
    const keys = (await short.shortfall()).missed.filter((one: any) => one.isOpen).map((one: any) => one.key);
    const proposal = (await short.propose({ remedy: 'credit' }, keys)).body;
    const [{ id, cueKey, windowKey, gameId }] = short.missedPlacements;
    const device = new TableDevice();
    const entries = [device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId: short.commitmentId, placementId: id, cueKey, windowKey })];
    const answers = await take(short.department, { contract: short.contractId }, {
      accepts: () => short.accept(proposal),
      'comes late': () => director.post(`/api/nights/${short.season.games[0]!.nightId}/amend`, { deviceId: device.deviceId, reason: 'It was read after all', entries }),
    }, order, way);
    const said = told(answers, order);
    expect(said['comes late'], order.join(', ')).toBe('done');
    expect(['done', 'makegood-reads-given-meanwhile'], order.join(', ')).toContain(said['accepts']);
    // Read after it was credited, it is extra; read before, it is given and nothing is credited.
    expect(await short.standing(), order.join(', ')).toMatchObject(said['accepts'] === 'done' ? { given: 33, credited: 7, extra: 1, owed: 0 } : { given: 34, credited: 0, extra: 0, owed: 6 });
  }
}, 120_000);

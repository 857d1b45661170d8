import { describe, expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aContract, aSeason, aSignedContract } from '../support/season.ts';
import { OVERRIDE, aShortContract, giveReplacements } from '../support/short-contract.ts';
import type { ShortContract } from '../support/short-contract.ts';

const openKeys = async (short: ShortContract, count: number): Promise<string[]> => (await short.shortfall()).missed.filter((one: any) => one.isOpen).map((one: any) => one.key).slice(0, count);

// CHECKS.md, section 7, fulfillment vectors: 40 at 25.00, 33 given, 4 made good: 37 fulfilled, 3 short, credit 75.00, earned 925.00.
test('of forty reads 33 are given, 4 are made good by two game balls and 3 are credited: 75.00 back, 925.00 earned, and each is traced', async () => {
  const short = await aShortContract(await aDepartment());
  const { director, bookkeeper } = short.department;
  expect(await short.shortfall()).toMatchObject({ owed: 7, shortfall: 7, open: 7, awaiting: 0, proposed: 0, stillOwed: 7 });

  const four = await short.propose({ remedy: 'otherKind', replacementReadKindId: short.season.readKinds.gameBall, isShown: true, answerBy: '2026-12-31' }, await openKeys(short, 4));
  expect(four.status).toBe(201);
  expect(four.body).toMatchObject({ missedReads: 4, replacementReads: 2, standing: 'waitingForAnswer', words: '2 reads of another kind (Sponsored game ball) for 4 missed reads (Concession read).' });
  const three = (await short.propose({ remedy: 'credit' })).body;
  expect(three).toMatchObject({ missedReads: 3, amountCents: 7_500, standing: 'open', because: 'seasonEnding' });
  expect(await short.shortfall()).toMatchObject({ shortfall: 7, open: 0, proposed: 7, stillOwed: 0, options: [] });

  const agreed = await short.accept(four.body);
  expect(agreed.status).toBe(200);
  expect(agreed.body).toMatchObject({ standing: 'toBeGiven', placed: 2, given: 0, answeredByName: 'Hazel Juniper', answeredHow: 'recordedByDirector' });
  const credited = await short.accept(three);
  expect(credited.body).toMatchObject({ standing: 'settled', settledReads: 3, creditMemoNumber: expect.stringMatching(/^TR-CM/) });
  expect(await bookkeeper.look(`/api/credit-memos/${credited.body.creditMemoId}`)).toMatchObject({ netCents: 7_500, taxCents: 375, reason: '3 reads that were missed' });

  const entries = await giveReplacements(short, 2);
  const traced = await director.look(`/api/makegood-proposals/${four.body.id}`);
  expect(traced).toMatchObject({ standing: 'settled', settledReads: 4, given: 2 });
  // LEDGER.md, row 15: missed i settles when replacement ⌈iM/N⌉ is given.
  expect(traced.missed.map((one: any) => [one.place, one.settledBy.entryId])).toEqual([[1, entries[0].id], [2, entries[0].id], [3, entries[1].id], [4, entries[1].id]]);
  expect(traced.missed[0]).toMatchObject({ nightId: short.season.games[0]!.nightId, missedOn: '2026-12-04', why: 'no time', settledBy: { nightId: short.later.nightId, heldOn: '2026-12-11', windowName: 'Pregame', gameLabel: 'Herons at Kestrels' } });
  const { data: [trace] } = await director.look(`/api/contracts/${short.contractId}/makegood-traces`);
  expect(trace).toMatchObject({ proposalId: four.body.id, missed: [{ missedOn: '2026-12-04', settledBy: { entryId: entries[0].id } }, {}, {}, { place: 4, settledBy: { entryId: entries[1].id } }] });
  expect(await short.standing()).toMatchObject({ promised: 40, given: 33, madeGood: 4, credited: 3, owed: 0, earnedCents: 92_500, billedCents: 92_500, contractBalanceCents: 0 });
  expect(await short.shortfall()).toMatchObject({ owed: 0, shortfall: 0, open: 0 });
});

describe('a proposal', () => {
  test('that two people accept at once is accepted by one, and the other is told that it changed', async () => {
    const short = await aShortContract(await aDepartment());
    const proposal = (await short.propose({ remedy: 'credit' })).body;
    const answers = await Promise.all([short.accept(proposal), short.accept(proposal, { name: 'Bram Pike' })]);
    expect(answers.map((one) => one.status).toSorted()).toEqual([200, 412]);
    expect((await short.department.bookkeeper.look('/api/credit-memos')).total).toBe(1);
    expect(await short.standing()).toMatchObject({ credited: 7, owed: 0 });
  });

  test('whose read was given meanwhile is refused with a sentence, and may be withdrawn and made anew', async () => {
    const short = await aShortContract(await aDepartment());
    const { director } = short.department;
    const proposal = (await short.propose({ remedy: 'credit' }, await openKeys(short, 2))).body;
    const [{ id, cueKey, windowKey, gameId }] = short.missedPlacements;
    const device = new TableDevice();
    await director.make(`/api/nights/${short.season.games[0]!.nightId}/amend`, {
      deviceId: device.deviceId, reason: 'It was read after all', entries: [device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId: short.commitmentId, placementId: id, cueKey, windowKey })],
    });
    const refused = await short.accept(proposal);
    expect([refused.status, refused.body.code, refused.body.detail]).toEqual([
      409, 'makegood-reads-given-meanwhile',
      'Of the 2 reads that this proposal speaks for only 1 are still owed: the others were given meanwhile. Withdraw it and propose for what is left.',
    ]);
    const withdrawn = await director.post(`/api/makegood-proposals/${proposal.id}/withdraw`, {}, { version: proposal.version });
    expect(withdrawn.body).toMatchObject({ standing: 'withdrawn' });
    expect(await short.shortfall()).toMatchObject({ owed: 6, open: 6, proposed: 0 });
    expect((await short.accept(withdrawn.body)).body.code).toBe('makegood-answered-already');
  });

  test('that is declined frees its reads, and what was shown says who answered', async () => {
    const short = await aShortContract(await aDepartment());
    const { director } = short.department;
    const proposal = (await short.propose({ remedy: 'credit' })).body;
    expect((await short.propose({ remedy: 'carryOver' }, (await short.shortfall()).missed.map((one: any) => one.key))).body.code).toBe('missed-read-claimed-twice');
    const shown = await director.post(`/api/makegood-proposals/${proposal.id}/show`, { answerBy: '2026-12-31' }, { version: proposal.version });
    expect(shown.body).toMatchObject({ standing: 'waitingForAnswer', answerBy: '2026-12-31' });
    const declined = await director.post(`/api/makegood-proposals/${proposal.id}/decline`, { name: 'Hazel Juniper', note: 'We want reads' }, { version: shown.body.version });
    expect(declined.body).toMatchObject({ standing: 'declined', answeredByName: 'Hazel Juniper', answerNote: 'We want reads' });
    expect((await short.propose({ remedy: 'carryOver' })).status).toBe(201);
  });

  test.each([
    ['a read that was never missed', { remedy: 'credit' }, ['nothing of the kind'], 'unknown-missed-read'],
    ['another kind and does not say which', { remedy: 'otherKind' }, null, 'makegood-of-nothing'],
    ['a mention that waits for a shot', { remedy: 'otherKind', kind: 'bankShot' }, null, 'makegood-kind-cannot-be-planned'],
    ['too few of another kind', { remedy: 'otherKind', kind: 'gameBall', replacementReads: 2 }, null, 'makegood-worth-less'],
    ['fewer of the same kind', { remedy: 'moreReads', replacementReads: 6 }, null, 'makegood-worth-less'],
  ])('for %s is refused by its name', async (_what, { kind, ...form }: Record<string, any>, keys, code) => {
    const short = await aShortContract(await aDepartment());
    const named = kind ? { replacementReadKindId: short.season.readKinds[kind as 'gameBall'] } : {};
    expect((await short.propose({ ...form, ...named }, keys ?? undefined)).body.code).toBe(code);
  });

  test('for more reads than there are free places is agreed, and waits to be placed', async () => {
    const short = await aShortContract(await aDepartment());
    const proposal = (await short.propose({ remedy: 'moreReads' })).body;
    expect((await short.accept(proposal)).body).toMatchObject({ standing: 'toBePlaced', placed: 0, replacementReads: 7 });
    expect(await short.shortfall()).toMatchObject({ owed: 7, awaiting: 7, shortfall: 0 });
    expect((await short.department.director.look('/api/makegood-proposals?standing=toBePlaced')).total).toBe(1);
    expect((await short.department.director.look('/api/makegood-proposals?standing=settled')).total).toBe(0);
  });

  test('to carry over waits until a contract that follows is signed, and goes on there with its value', async () => {
    const short = await aShortContract(await aDepartment());
    const { director } = short.department;
    const proposal = (await short.propose({ remedy: 'carryOver' })).body;
    expect(proposal).toMatchObject({ amountCents: 17_500 });
    const agreed = (await short.accept(proposal)).body;
    expect(agreed).toMatchObject({ standing: 'waitingForContract', settledOn: null });
    const settle = (version: number) => director.post(`/api/makegood-proposals/${proposal.id}/settle`, {}, { version });
    expect((await settle(agreed.version)).body.code).toBe('no-contract-follows');
    const commitments = [{ readKindId: short.season.readKinds.concession, counting: 'perTerm', reads: 10, rateCents: 2_500 }];
    const next = await aContract(short.department, short.season, { title: 'The next year', commitments, priceCents: 25_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
    await short.department.ask(`update contract set follows_contract_id = $1, follows_as = 'renewal' where id = $2`, [short.contractId, next.id]);
    await director.make(`/api/contracts/${next.id}/sign`, { signedOn: '2026-11-24', signedByName: 'Hazel Juniper' });
    const settled = await settle(agreed.version);
    expect(settled.body).toMatchObject({ standing: 'settled', carriedToContractId: next.id, settledReads: 7 });
    expect(await short.standing()).toMatchObject({ owed: 0, carried: 7 });
    expect((await director.look(`/api/contracts/${next.id}`)).standing).toMatchObject({ owed: 17, carried: -7 });
    expect((await settle(settled.body.version)).body.code).toBe('makegood-settled-already');
  });

  test('to carry over may be withdrawn while no contract has come, and its reads may be proposed anew', async () => {
    const short = await aShortContract(await aDepartment());
    const proposal = (await short.propose({ remedy: 'carryOver' })).body;
    const agreed = (await short.accept(proposal)).body;
    const withdrawn = await short.department.director.post(`/api/makegood-proposals/${proposal.id}/withdraw`, {}, { version: agreed.version });
    expect(withdrawn.body).toMatchObject({ standing: 'withdrawn' });
    expect((await short.propose({ remedy: 'credit' })).status).toBe(201);
  });
});

test('a read missed in a game that counts by itself is made good in another game, beside the read that is promised there', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 2);
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 1, rateCents: 2_500, mostPerGame: 1 }];
  const contract = await aSignedContract(department, season, { commitments, priceCents: 5_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  const [line] = contract.commitments;
  const [first, second] = season.games as [(typeof season.games)[0], (typeof season.games)[0]];
  await director.make('/api/placements', { commitmentId: line.id, gameId: second.gameId, windowKey: 'halftime' });
  await director.make(`/api/nights/${first.nightId}/sign-off`, OVERRIDE);
  const look = async () => (await director.look(`/api/contracts/${contract.id}/shortfalls`)).data[0];
  const short = await look();
  expect(short).toMatchObject({ owed: 2, shortfall: 1, open: 1 });
  expect(short.missed).toMatchObject([{ gameId: first.gameId, nightId: first.nightId, missedOn: first.playedOn, slotId: first.gameId, why: 'it was never planned' }]);
  const proposed = await director.make('/api/makegood-proposals', { contractId: contract.id, commitmentId: line.id, missed: [{ key: short.missed[0].key }], remedy: 'moreReads' });
  expect(proposed).toMatchObject({ missedGameId: first.gameId, because: 'windowOver', replacementReads: 1 });
  const agreed = await director.post(`/api/makegood-proposals/${proposed.id}/accept`, { name: 'Hazel Juniper' }, { version: proposed.version });
  expect(agreed.body).toMatchObject({ standing: 'toBeGiven', placed: 1 });
  expect((await director.look(`/api/nights/${second.nightId}/placements`)).data.map((one: any) => one.makegoodId !== null).toSorted()).toEqual([false, true]);
  expect(await look()).toMatchObject({ owed: 2, awaiting: 1, shortfall: 0, open: 0 });
  const device = new TableDevice();
  const entries = (await director.look(`/api/nights/${second.nightId}/placements`)).data.map(({ id, cueKey, windowKey }: any) => device.entry({ kind: 'read', outcome: 'given', gameId: second.gameId, commitmentId: line.id, placementId: id, cueKey, windowKey }));
  await director.make(`/api/nights/${second.nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${second.nightId}/sign-off`, OVERRIDE);
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ given: 1, madeGood: 1, owed: 0 });
  expect((await director.look(`/api/makegood-proposals/${proposed.id}`)).missed).toMatchObject([{ missedOn: first.playedOn, settledBy: { heldOn: second.playedOn } }]);
});

import { expect, test } from 'vitest';
import { accepted, aProposal, solved } from '../support/plan.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** Three game balls a night fit, and three concession reads at halftime; more in the time-outs. */
async function toPlan(gameCount = 3, commitments?: (season: Season) => Record<string, unknown>[]) {
  const department = await aDepartment();
  const season = await aLaterSeason(department, gameCount);
  const contract = await aSignedContract(department, season, commitments ? { commitments: commitments(season) } : {});
  return { department, director: department.director, season, contract };
}

const placementsOf = async ({ director }: Department, season: Season): Promise<any[]> =>
  (await Promise.all(season.games.map(async ({ nightId }) => (await director.look(`/api/nights/${nightId}/placements`)).data))).flat();

const spotsOf = (placements: readonly any[]) => placements.map((one) => `${one.id} ${one.gameId} ${one.windowKey} ${one.place}`).toSorted();

test('a plan is worked out from signed contracts, and only once it is accepted its reads have a place', async () => {
  const { department, director, season, contract } = await toPlan();
  const asked = await director.make('/api/plan-proposals', { seasonId: season.seasonId, kind: 'plan' });
  expect(asked).toMatchObject({ state: 'solving', kind: 'plan', result: null });
  const proposal = await solved(director, asked.id);
  expect(proposal).toMatchObject({ state: 'proposed', failure: null, outOfDateBecause: null });
  expect(proposal.result).toMatchObject({ headline: 'All 14 reads have a place.', shortfallReads: 0, isProven: true, bottlenecks: [], cautions: [] });
  expect(proposal.result.totals).toMatchObject({ owed: 14, before: 0, after: 14, held: 0, added: 14, moved: 0, gone: 0 });
  expect(proposal.result.bySponsor).toEqual([{ sponsorId: season.sponsorId, sponsorName: 'Juniper & Pike Hardware', owed: 14, before: 0, after: 14, held: 0 }]);
  expect(proposal.result.byGame.map((game: any) => game.after).toSorted()).toEqual([4, 5, 5]);
  expect(proposal.result.moves[0]).toMatchObject({ kind: 'new', was: null, why: 'It had no place yet.' });
  expect(await placementsOf(department, season)).toEqual([]);
  const before = await director.look(`/api/seasons/${season.seasonId}/plan`);
  expect(before).toMatchObject({ gamesToCome: 3, owed: 14, planned: 0, atRisk: 14, isCurrent: false, acceptedAt: null, latestProposal: { id: proposal.id, state: 'proposed' } });
  expect(await accepted(director, proposal)).toMatchObject({ state: 'accepted' });
  const placements = await placementsOf(department, season);
  expect(placements.filter((one) => one.commitmentId === contract.commitments[0].id)).toHaveLength(6);
  expect(placements.every((one) => !one.isPinned)).toBe(true);
  const packet = await director.look(`/api/nights/${season.games[0]!.nightId}/packet`);
  const printed = packet.cues.filter((cue: any) => cue.placementId !== null).map((cue: any) => cue.placementId).toSorted();
  expect(printed).toEqual(placements.filter((one) => one.nightId === season.games[0]!.nightId).map((one) => one.id).toSorted());
  expect(await director.look(`/api/seasons/${season.seasonId}/plan`)).toMatchObject({ owed: 14, planned: 14, atRisk: 0, isCurrent: true, changedSince: null, version: proposal.version + 1 });
  expect((await department.announcer.post('/api/plan-proposals', { seasonId: season.seasonId, kind: 'plan' })).status).toBe(403);
});

test('what finds no place is said with the windows that are full, and that no plan can place more', async () => {
  const { director, season } = await toPlan(2, ({ readKinds }) => [{ readKindId: readKinds.gameBall, counting: 'perTerm', reads: 10, rateCents: 7500 }]);
  const { result } = await aProposal(director, season.seasonId);
  expect(result).toMatchObject({ headline: 'Four reads of 10 find no place; no plan can place more.', shortfallReads: 4, isProven: true });
  expect(result.shortfall).toMatchObject([{ sponsorName: 'Juniper & Pike Hardware', readKindName: 'Sponsored game ball', owed: 10, missing: 4 }]);
  expect(result.bottlenecks).toHaveLength(1);
  expect(result.bottlenecks[0]).toContain('Juniper & Pike Hardware');
});

test('replanning after a cancelled game moves nothing but what lost its place, and leaves no more unplaced than a plan from nothing', async () => {
  const { department, director, season } = await toPlan(4, ({ readKinds }) => [
    { readKindId: readKinds.gameBall, counting: 'perTerm', reads: 8, rateCents: 7500 },
    { readKindId: readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4000 },
  ]);
  await accepted(director, await aProposal(director, season.seasonId));
  const before = await placementsOf(department, season);
  const lost = season.games[1]!;
  await director.make(`/api/games/${lost.gameId}/cancel`, { reason: 'Snow' });
  const stayed = spotsOf(before.filter((one) => one.gameId !== lost.gameId));
  expect(await director.look(`/api/seasons/${season.seasonId}/plan`)).toMatchObject({ owed: 16, planned: 12, atRisk: 4, isCurrent: false, changedSince: 'reads lost their place' });
  const replan = await aProposal(director, season.seasonId, { kind: 'replan', because: 'The game was cancelled', gameId: lost.gameId });
  expect(replan.result.totals).toMatchObject({ before: 12, after: 16, stayed: 12, added: 4, moved: 0, movedWithinGame: 0, gone: 0 });
  expect(replan.result.moves[0].why).toBe('It had no place: The game was cancelled.');
  const fresh = await aProposal(director, season.seasonId);
  expect(fresh.result.shortfallReads).toBe(replan.result.shortfallReads);
  await accepted(director, replan);
  const after = await placementsOf(department, season);
  expect(spotsOf(after)).toEqual(expect.arrayContaining(stayed));
  expect(after).toHaveLength(16);
});

test('a locked night, a pinned read and an issued packet stay as they are, and nothing is planned into a locked night', async () => {
  const { department, director, season, contract } = await toPlan();
  const [first, second, third] = season.games as [Season['games'][0], Season['games'][0], Season['games'][0]];
  const pinned = await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId: second.gameId, windowKey: 'pregame', place: 3 });
  await director.make(`/api/nights/${first.nightId}/lock`, { note: 'Senior night is full' });
  expect((await director.post(`/api/nights/${first.nightId}/lock`, {})).body.code).toBe('night-locked-already');
  expect(await director.look(`/api/nights/${first.nightId}/lock`)).toEqual({ nightId: first.nightId, isLocked: true, why: 'person', note: 'Senior night is full' });
  expect(await director.look(`/api/nights/${second.nightId}/lock`)).toMatchObject({ isLocked: false, why: null });
  await director.make(`/api/nights/${third.nightId}/packet-issues`);
  const view = await director.look(`/api/seasons/${season.seasonId}/plan`);
  expect(view.lockedNights.map(({ nightId, why, note }: any) => [nightId, why, note])).toEqual([[first.nightId, 'person', 'Senior night is full'], [third.nightId, 'issued', null]]);
  await accepted(director, await aProposal(director, season.seasonId));
  const placements = await placementsOf(department, season);
  expect(new Set(placements.map((one) => one.gameId))).toEqual(new Set([second.gameId]));
  expect(placements.find((one) => one.id === pinned.id)).toMatchObject({ windowKey: 'pregame', place: 3, isPinned: true });
  expect((await director.post(`/api/nights/${third.nightId}/unlock`, {})).body.code).toBe('unlock-without-note');
  expect(await director.make(`/api/nights/${third.nightId}/unlock`, { note: 'Two sponsors came in late' })).toEqual({ nightId: third.nightId, isLocked: false, why: null, note: null });
  expect((await director.post(`/api/nights/${third.nightId}/unlock`, {})).body.code).toBe('night-not-locked');
  expect((await department.bookkeeper.post(`/api/nights/${third.nightId}/lock`, {})).status).toBe(403);
  const by = await director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId: first.gameId, windowKey: 'pregame' });
  expect(by.isPinned).toBe(true);
});

test('a proposal is refused once the season has changed, saying what, and by its version once another was accepted', async () => {
  const { department, director, season } = await toPlan();
  const [one, other] = [await aProposal(director, season.seasonId), await aProposal(director, season.seasonId)];
  await accepted(director, one);
  expect(await director.post(`/api/plan-proposals/${other.id}/accept`, {}, { version: other.version })).toMatchObject({ status: 412, body: { code: 'stale-version' } });
  const again = await director.look(`/api/plan-proposals/${other.id}`);
  expect(again.outOfDateBecause).toBe('reads were placed, moved or taken out by hand');
  expect(await director.post(`/api/plan-proposals/${other.id}/accept`, {}, { version: again.version })).toMatchObject({ status: 409, body: { code: 'plan-out-of-date' } });
  expect((await director.post(`/api/plan-proposals/${one.id}/accept`, {}, { version: again.version })).body.detail).toBe('This proposal is accepted already, so nothing can be done with it any more.');
  expect((await director.post(`/api/plan-proposals/${one.id}/discard`, {})).body.code).toBe('proposal-not-open');

  const third = await aProposal(director, season.seasonId, { kind: 'replan' });
  await aSignedContract(department, season, { title: 'More' });
  const signed = await director.post(`/api/plan-proposals/${third.id}/accept`, {}, { version: third.version });
  expect([signed.status, signed.body.detail]).toEqual([409, 'This plan was worked out before something changed: a contract was signed (Juniper & Pike Hardware). Work it out again.']);
  const fourth = await aProposal(director, season.seasonId, { kind: 'replan' });
  await director.make(`/api/games/${season.games[2]!.gameId}/postpone`, { reason: 'Snow', to: '2150-12-19', clock: '19:00' });
  expect((await director.look(`/api/plan-proposals/${fourth.id}`)).outOfDateBecause).toBe('a game moved');
  expect((await director.make(`/api/plan-proposals/${fourth.id}/discard`)).state).toBe('discarded');
  expect((await director.post(`/api/plan-proposals/${fourth.id}/accept`, {})).status).toBe(428);
  const list = await director.look(`/api/plan-proposals?seasonId=${season.seasonId}`);
  expect(list.data.map((line: any) => line.state)).toEqual(['discarded', 'proposed', 'proposed', 'accepted']);
});

test('a solve can be cancelled, and one that nobody goes on with reads as failed', async () => {
  const { department, director, season } = await toPlan();
  const asked = await director.make('/api/plan-proposals', { seasonId: season.seasonId, kind: 'plan' });
  const cancelled = await director.post(`/api/plan-proposals/${asked.id}/cancel`, {});
  expect([200, 409]).toContain(cancelled.status);
  const left = await director.make('/api/plan-proposals', { seasonId: season.seasonId, kind: 'plan' });
  await solved(director, left.id);
  await department.ask(`update plan_proposal set state = 'solving', result = null, solved_at = null, asked_at = '2026-01-01T00:00:00Z' where department_id = current_department() and id = $1`, [left.id]);
  expect(await director.look(`/api/plan-proposals/${left.id}`)).toMatchObject({ state: 'failed', failure: 'The server stopped while this plan was worked out. Ask for it again.' });
  expect((await director.post(`/api/plan-proposals/${left.id}/accept`, {}, { version: left.version })).body.detail).toBe('This proposal is without a plan, so nothing can be done with it any more.');
  expect((await director.make(`/api/plan-proposals/${left.id}/discard`)).state).toBe('discarded');
});

test('where nothing is left to play all that is owed is missing, and the sentence says so', async () => {
  const { director, season } = await toPlan(1);
  await director.make(`/api/games/${season.games[0]!.gameId}/cancel`, { reason: 'Snow' });
  const { result } = await aProposal(director, season.seasonId);
  expect(result.headline).toBe('No game is left to play: 14 reads find no place.');
  expect([result.shortfallReads, result.reads, result.bottlenecks.length > 0]).toEqual([14, [], true]);
  expect(await director.look(`/api/seasons/${season.seasonId}/plan`)).toMatchObject({ gamesToCome: 0, owed: 14, planned: 0, atRisk: 14 });
});

test('the replacements of a makegood get places, and a contract on hold none', async () => {
  const { department, director, season, contract } = await toPlan();
  const [ball, concession] = contract.commitments;
  const makegood = (await director.make(`/api/contracts/${contract.id}/makegoods`, {
    commitmentId: ball.id, missed: 2, replacementReadKindId: season.readKinds.concession, replacements: 4, agreedOn: '2150-11-21', agreedWith: 'Hazel Juniper',
  })).data[0];
  const proposal = await aProposal(director, season.seasonId);
  expect(proposal.result.totals.owed).toBe(4 + 8 + 4);
  expect(proposal.result.moves.filter((move: any) => move.source === 'makegood').map((move: any) => move.why)).toEqual(Array(4).fill('It replaces a read that was missed.'));
  await accepted(director, proposal);
  const placements = await placementsOf(department, season);
  expect(placements.filter((one) => one.makegoodId === makegood.id).map((one) => [one.commitmentId, one.readKindId])).toEqual(Array(4).fill([ball.id, season.readKinds.concession]));
  expect(placements.filter((one) => one.commitmentId === concession.id)).toHaveLength(8);
  await director.make(`/api/contracts/${contract.id}/hold`, { reason: 'Unpaid since January', on: '2150-12-01' });
  const held = await aProposal(director, season.seasonId, { kind: 'replan' });
  expect(held.result).toMatchObject({ headline: 'Nothing is left to plan.', totals: { owed: 0, gone: 0 } });
  await accepted(director, held);
  expect(spotsOf(await placementsOf(department, season))).toEqual(spotsOf(placements));
});

test('a least above the most is refused where it is promised, and a most per game holds in the plan', async () => {
  const department = await aDepartment();
  const season = await aLaterSeason(department, 3);
  const { gameBall } = season.readKinds;
  const line = { readKindId: gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 };
  const body = { sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Least above most', term: { seasonId: season.seasonId, startsOn: season.startsOn, endsOn: season.endsOn, pricing: 'fixed', priceCents: 1, billingPlan: { kind: 'installments', installments: [{ on: '2150-11-23', share: 1 }] } } };
  expect((await department.director.post('/api/contracts', { ...body, commitments: [{ ...line, leastPerGame: 2, mostPerGame: 1 }] })).status).toBe(422);
  await aSignedContract(department, season, { commitments: [{ ...line, mostPerGame: 1 }] });
  const { result } = await aProposal(department.director, season.seasonId);
  expect([result.shortfallReads, result.byGame.map((game: any) => game.after)]).toEqual([3, [1, 1, 1]]);
});

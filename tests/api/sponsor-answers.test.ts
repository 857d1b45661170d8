import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aShortContract } from '../support/short-contract.ts';
import type { ShortContract } from '../support/short-contract.ts';
import { Visitor } from '../support/visitor.ts';

async function linkTo({ department: { director } }: ShortContract, sponsorId: string): Promise<Visitor> {
  return Visitor.byLink((await director.make(`/api/sponsors/${sponsorId}/links`, { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' })).token);
}

/** Another sponsor of the department, with a link of its own. */
async function aNeighbour(short: ShortContract): Promise<Visitor> {
  const sponsor = await short.department.director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: short.season.categoryId });
  return linkTo(short, sponsor.id);
}

const givenEntry = async ({ department, commitmentId }: ShortContract): Promise<string> => {
  const [row] = await department.ask<{ entry_id: string }>('select entry_id from counted_read where commitment_id = $1 order by cue_key limit 1', [commitmentId]);
  return row!.entry_id;
};

test('a sponsor accepts by its link what it was shown, once, and with its name', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const link = await linkTo(short, short.season.sponsorId);
  const proposal = (await short.propose({ remedy: 'otherKind', replacementReadKindId: short.season.readKinds.gameBall, note: 'canary-note' })).body;
  expect(await link.look('/api/sponsor-page/proposals')).toEqual({ proposals: [] });
  const path = `/api/sponsor-page/proposals/${proposal.id}/answer`;
  expect((await link.post(path, { name: 'Hazel Juniper', answer: 'accept' })).status).toBe(404);
  await director.post(`/api/makegood-proposals/${proposal.id}/show`, { answerBy: '2099-12-31' }, { version: proposal.version });
  const { proposals: [shown] } = await link.look('/api/sponsor-page/proposals');
  expect(shown).toMatchObject({ id: proposal.id, missedReads: 7, answer: null, answerBy: '2099-12-31' });
  expect(shown.missed.slice(0, 2)).toMatchObject([{ missedOn: '2026-12-04', why: 'no time' }, { missedOn: '2026-12-04', why: 'no time' }]);
  expect(JSON.stringify(shown)).not.toContain('canary');
  expect((await link.post(path, { name: ' ', answer: 'accept' })).status).toBe(400);
  const key = v7();
  const accepted = await link.post(path, { name: 'Hazel Juniper', answer: 'accept' }, { key });
  expect([accepted.status, accepted.body.proposals?.[0]]).toMatchObject([200, { answer: 'accept', answeredByName: 'Hazel Juniper' }]);
  expect((await link.post(path, { name: 'Hazel Juniper', answer: 'accept' }, { key })).status).toBe(200);
  expect((await link.post(path, { name: 'Hazel Juniper', answer: 'decline' })).body.code).toBe('makegood-answered-already');
  expect((await director.look(`/api/makegood-proposals/${proposal.id}`))).toMatchObject({ answeredHow: 'link', answeredByName: 'Hazel Juniper' });
});

test('a credit that a sponsor accepts by its link is a memo at once, used on its open invoice', async () => {
  const short = await aShortContract(await aDepartment());
  const link = await linkTo(short, short.season.sponsorId);
  const proposal = (await short.propose({ remedy: 'credit', isShown: true })).body;
  const { proposals: [answered] } = await link.make(`/api/sponsor-page/proposals/${proposal.id}/answer`, { name: 'Hazel Juniper', answer: 'accept' });
  expect(answered).toMatchObject({ answer: 'accept', standing: 'settled' });
  expect((await link.look('/api/sponsor-page/money')).credits).toHaveLength(1);
});

test('a sponsor that declines leaves its reads to be proposed anew', async () => {
  const short = await aShortContract(await aDepartment());
  const link = await linkTo(short, short.season.sponsorId);
  const proposal = (await short.propose({ remedy: 'credit', isShown: true })).body;
  const { proposals: [answered] } = await link.make(`/api/sponsor-page/proposals/${proposal.id}/answer`, { name: 'Hazel Juniper', answer: 'decline', note: 'We would rather have reads.' });
  expect(answered).toMatchObject({ answer: 'decline', standing: 'declined' });
  expect((await short.propose({ remedy: 'credit' })).status).toBe(201);
});

test('a sponsor asks about a read, and reads the answer without the name of whoever gave it', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const link = await linkTo(short, short.season.sponsorId);
  const entryId = await givenEntry(short);
  const about = { entryId, occurrence: 0, name: 'Hazel Juniper', what: 'We sat in the front row and did not hear it.' };
  const { questions: [asked] } = await link.make('/api/sponsor-page/questions', about);
  expect(asked).toMatchObject({ heldOn: '2026-12-04', what: about.what, outcome: null, answer: null });
  expect((await link.post('/api/sponsor-page/questions', about)).body.code).toBe('read-disputed-already');
  const { nights } = await link.look('/api/sponsor-page/nights');
  expect(nights[0].reads.find((read: any) => read.entryId === entryId)).toMatchObject({ disputeId: asked.id });
  await director.post(`/api/read-disputes/${asked.id}/answer`, { outcome: 'stands', answer: 'The recording has it.' }, { version: 1 });
  const said = await link.look('/api/sponsor-page/questions');
  expect(said.questions).toMatchObject([{ outcome: 'stands', answer: 'The recording has it.' }]);
  expect(JSON.stringify(said)).not.toContain('director');
});

test('a sponsor asks about a read that it misses on a night of its season', async () => {
  const short = await aShortContract(await aDepartment());
  const link = await linkTo(short, short.season.sponsorId);
  const missing = { commitmentId: short.commitmentId, nightId: short.season.games[0]!.nightId, name: 'Hazel Juniper', what: 'There should have been one at halftime.' };
  expect((await link.make('/api/sponsor-page/questions', missing)).questions).toMatchObject([{ entryId: null, heldOn: '2026-12-04' }]);
});

test('what another sponsor is shown, asked or was read answers as if it never was', async () => {
  const short = await aShortContract(await aDepartment());
  const neighbour = await aNeighbour(short);
  const proposal = (await short.propose({ remedy: 'credit', isShown: true })).body;
  const entryId = await givenEntry(short);
  expect(await neighbour.look('/api/sponsor-page/proposals')).toEqual({ proposals: [] });
  expect(await neighbour.look('/api/sponsor-page/questions')).toEqual({ questions: [] });
  const answersTo = async (path: (id: string) => string, body: (id: string) => unknown, ids: string[]) =>
    new Set(await Promise.all(ids.map(async (id) => JSON.stringify(await neighbour.post(path(id), body(id)).then(({ status, body: said }) => [status, { ...said, instance: '' }])))));
  const answered = await answersTo((id) => `/api/sponsor-page/proposals/${id}/answer`, () => ({ name: 'Odell', answer: 'accept' }), [proposal.id, v7()]);
  const asked = await answersTo(() => '/api/sponsor-page/questions', (id) => ({ entryId: id, name: 'Odell', what: 'Whose is it?' }), [entryId, v7()]);
  const missed = await answersTo(() => '/api/sponsor-page/questions', (id) => ({ commitmentId: id, nightId: short.season.games[0]!.nightId, name: 'Odell', what: 'Whose is it?' }), [short.commitmentId, v7()]);
  for (const said of [answered, asked, missed]) expect([said.size, [...said][0]!.startsWith('[404')]).toEqual([1, true]);
});

test('of a contract that was handed on, the new owner sees what was agreed and not who of the former one agreed to it', async () => {
  const short = await aShortContract(await aDepartment());
  const { department: { director }, season } = short;
  const proposal = (await short.propose({ remedy: 'otherKind', replacementReadKindId: season.readKinds.gameBall, isShown: true })).body;
  await short.accept(proposal, { on: '2026-11-26' });
  const sponsor = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Blue Lantern Tire', sponsorId: sponsor.id });
  await director.make(`/api/contracts/${short.contractId}/assign`, { toSponsorId: sponsor.id, toPayerId: payer.id, on: '2026-11-27', reason: 'The store was sold' });
  const { proposals: [seen] } = await (await linkTo(short, sponsor.id)).look('/api/sponsor-page/proposals');
  expect(seen).toMatchObject({ id: proposal.id, answer: 'accept', answeredOn: '2026-11-26', answeredByName: null });
  expect(JSON.stringify(seen)).not.toContain('Hazel');
});

test('a sponsor asks about a read that is there, not about one of its own counting', async () => {
  const short = await aShortContract(await aDepartment());
  const link = await linkTo(short, short.season.sponsorId);
  const about = { entryId: await givenEntry(short), name: 'Hazel Juniper', what: 'We did not hear it.' };
  expect((await link.post('/api/sponsor-page/questions', { ...about, occurrence: 1 })).body.code).toBe('not-found');
  expect((await link.post('/api/sponsor-page/questions', { ...about, occurrence: 0 })).status).toBe(200);
});

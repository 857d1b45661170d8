import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

const SIGNATURE = { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' };

test('a draft may be changed and deleted, a signed contract neither', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const draft = await aContract(department, season);
  const changed = await director.patch(`/api/contracts/${draft.id}`, { title: 'Game balls', term: { priceCents: 60_000 } }, { version: draft.version });
  expect([changed.status, changed.body.title, changed.body.term.priceCents, changed.body.commitments.length]).toEqual([200, 'Game balls', 60_000, 2]);
  expect((await director.patch(`/api/contracts/${draft.id}`, { title: 'Late' }, { version: draft.version })).status).toBe(412);
  expect((await director.remove(`/api/contracts/${draft.id}`)).status).toBe(204);
  const signed = await aSignedContract(department, season);
  expect((await director.patch(`/api/contracts/${signed.id}`, { title: 'Late' }, { version: signed.version })).body.code).toBe('contract-not-a-draft');
  expect((await director.remove(`/api/contracts/${signed.id}`)).body.code).toBe('contract-not-a-draft');
});

test('signing happens once, makes the reads owed and the sponsor active', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const draft = await aContract(department, season);
  const sign = () => director.post(`/api/contracts/${draft.id}/sign`, SIGNATURE);
  const answers = await Promise.all([sign(), sign()]);
  expect(answers.map((answer) => answer.body.code ?? answer.status).sort()).toEqual([200, 'contract-already-signed']);
  const signed = await director.look(`/api/contracts/${draft.id}`);
  expect([signed.number, signed.term.state, signed.standing.owed, signed.standing.toBillCents]).toEqual(['C-2027-0001', 'signed', 14, 70_000]);
  expect((await director.look(`/api/sponsors/${season.sponsorId}`)).status).toBe('active');
  expect((await department.bookkeeper.post(`/api/contracts/${draft.id}/sign`, SIGNATURE)).status).toBe(403);
});

test('a sponsor of a blocked category is refused until the exception and who approved it are recorded', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const category = await director.make('/api/sponsor-categories', { name: 'Vaping', isBlocked: true });
  await director.patch(`/api/sponsors/${season.sponsorId}`, { categoryId: category.id }, { version: 1 });
  const draft = await aContract(department, season);
  const sign = () => director.post(`/api/contracts/${draft.id}/sign`, SIGNATURE);
  expect((await sign()).body).toMatchObject({ code: 'category-blocked', override: 'director' });
  const half = await director.patch(`/api/contracts/${draft.id}`, { categoryException: 'A repair shop on the same premises' }, { version: draft.version });
  expect((await sign()).body.code).toBe('category-blocked');
  await director.patch(`/api/contracts/${draft.id}`, { categoryExceptionApprovedBy: 'School board, 12 November' }, { version: half.body.version });
  expect((await sign()).status).toBe(200);
});

test('a line counted by game owes its reads in each home game of its days', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 3);
  const commitment = { readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 2, rateCents: 7500 };
  const whole = await aSignedContract(department, season, { commitments: [commitment] });
  expect(whole.standing).toMatchObject({ promised: 6, owed: 6 });
  const part = await aSignedContract(department, season, { title: 'Two games', commitments: [{ ...commitment, startsOn: '2026-12-05' }] });
  expect(part.standing.owed).toBe(4);
  const night = await aSignedContract(department, season, { title: 'By the night', commitments: [{ ...commitment, counting: 'perNight', reads: 1 }] });
  expect(night.standing.owed).toBe(3);
});

test('a sponsor is behind when a game was played without its share of the reads', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 3);
  const contract = await aSignedContract(department, season);
  expect((await director.look('/api/contracts?behind=true')).total).toBe(0);
  await director.make(`/api/games/${season.games[0]!.gameId}/play`, { scores: [] });
  const { data } = await director.look('/api/contracts?behind=true');
  expect(data.map((one: any) => [one.id, one.commitments[0].standing.expectedByNow, one.commitments[0].standing.behind])).toEqual([[contract.id, 2, 2]]);
});

test('what cannot be signed is refused by name', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const signing = async (drawn: object) => (await director.post(`/api/contracts/${(await aContract(department, season, drawn)).id}/sign`, SIGNATURE)).body.code;
  const ball = { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 };
  expect(await signing({ commitments: [] })).toBe('contract-without-lines');
  expect(await signing({ commitments: [{ ...ball, rateCents: 0 }] })).toBe('price-without-rates');
  expect(await signing({ commitments: [{ ...ball, counting: 'perGame' }] })).toBe('no-games-covered');
  expect(await signing({ pricing: 'perRead', commitments: [ball] })).toBe('price-beside-price-each');
  expect(await signing({ pricing: 'perRead', priceCents: 0, commitments: [ball] })).toBeUndefined();
  expect((await director.post(`/api/contracts/${department.id}/sign`, SIGNATURE)).status).toBe(404);
});

test('what a draft names in vain, and what is too large, is refused by name', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const term = { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', priceCents: 70_000, billingPlan: { kind: 'inFull', on: '2026-12-01' } };
  const form = { sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Refused', term };
  const code = async (changes: object) => (await director.post('/api/contracts', { ...form, ...changes })).body.code;
  expect(await code({ sellerId: department.id })).toBe('unknown-seller');
  expect(await code({ term: { ...term, endsOn: '2026-11-19' } })).toBe('ends-before-it-starts');
  expect(await code({ term: { ...term, priceCents: 2 ** 53 } })).toBe('malformed');
  expect(await code({ term: { ...term, billingPlan: { kind: 'inFull' } } })).toBe('malformed');
  expect(await code({ term: { ...term, billingPlan: { kind: 'installments', installments: [] } } })).toBe('installments-without-shares');
  expect(await code({ commitments: [{ readKindId: department.id, counting: 'perTerm' }] })).toBe('unknown-read-kind');
  expect(await code({ commitments: [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 5, readsAtMost: 4 }] })).toBe('at-most-below-at-least');
});

test('a contract is taken over in mid-season with what was given, billed and paid before', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  const draft = await aContract(department, season, { priceCents: 120_000, commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5000 }] });
  const open = (given: number, billedCents: number, paidCents: number) =>
    director.post(`/api/contracts/${draft.id}/opening`, { givenByCommitment: [{ commitmentId: draft.commitments[0].id, given }], billedCents, paidCents, asOf: '2026-12-01' });
  expect((await open(25, 0, 0)).body.code).toBe('more-given-than-promised');
  expect((await open(10, 120_001, 0)).body.code).toBe('more-than-to-bill');
  expect((await open(10, 80_000, 80_001)).body.code).toBe('more-paid-than-billed');
  const { body: opened } = await open(10, 80_000, 20_000);
  expect(opened.standing).toMatchObject({ promised: 24, given: 10, owed: 14, toBillCents: 40_000, contractBalanceCents: -30_000, receivableCents: 60_000 });
  const { data } = await bookkeeper.look(`/api/invoices?contractId=${draft.id}`);
  expect(data.map((one: any) => [one.kind, one.balanceCents])).toEqual([['opening', 60_000]]);
  expect((await bookkeeper.post(`/api/invoices/${data[0].id}/void`, { reason: 'Mistake' })).body.code).toBe('opening-stays');
});

test('what was given before the start is laid into the games of its line, the earliest first', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 3);
  const drawn = { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 2, rateCents: 7500 }] };
  const draft = await aContract(department, season, drawn);
  const open = (given: number) => department.director.post(`/api/contracts/${draft.id}/opening`, { givenByCommitment: [{ commitmentId: draft.commitments[0].id, given }], asOf: '2026-12-15' });
  expect((await open(7)).body.code).toBe('more-given-than-promised');
  expect((await open(3)).body.standing).toMatchObject({ promised: 6, given: 3, owed: 3 });
  const first = await department.ask('select sum(amount) as given from posting where department_id = current_department() and to_account = $1 and game_id = $2', ['given', season.games[0]!.gameId]);
  expect(Number(first[0]!['given'])).toBe(2);
});

test('a banner earns when it is delivered, and not more often than was sold', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const contract = await aSignedContract(department, season, { priceCents: 40_000, commitments: [], benefits: [{ name: 'Banner', quantity: 2, rateCents: 20_000 }] });
  const deliver = (quantity: number) => director.post(`/api/contracts/${contract.id}/benefits/${contract.benefits[0].id}/deliveries`, { deliveredOn: '2026-12-04', quantity, proof: 'Photograph of the north wall' });
  expect((await deliver(3)).body.code).toBe('more-than-promised');
  const { body } = await deliver(1);
  expect([body.benefits[0].delivered, body.standing.earnedCents]).toEqual([1, 20_000]);
});

test('copy is approved version by version, and stopped for good', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const copy = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Season line', text: 'This game ball is presented by Juniper & Pike Hardware.', fallbackText: 'Juniper & Pike Hardware.' });
  expect([copy.state, copy.versions.length]).toEqual(['waiting', 1]);
  const approve = () => director.post(`/api/copies/${copy.id}/versions/${copy.versions[0].id}/approve`, { approvedByName: 'Hazel Juniper', approvedOn: '2026-11-21' });
  expect((await approve()).body.state).toBe('approved');
  expect((await approve()).body.code).toBe('copy-already-approved');
  expect((await director.make(`/api/copies/${copy.id}/versions`, { text: 'New words.', startsOn: '2027-01-01' })).versions[0].number).toBe(2);
  expect((await director.make(`/api/copies/${copy.id}/stop`, { stoppedByName: 'Hazel Juniper', reason: 'The store moves' })).state).toBe('stopped');
  expect((await director.post(`/api/copies/${copy.id}/stop`, { stoppedByName: 'Hazel Juniper', reason: 'The store moves' })).body.code).toBe('copy-stopped');
});

import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aLaterSeason, aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import type { Answer } from '../support/visitor.ts';
import { untilSettled } from '../safety/interleaving.ts';

const SIGNATURE = { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' };
const DAYS = { startsOn: '2026-11-20', endsOn: '2027-03-13' };

async function aRival(department: Department, season: Season): Promise<Season> {
  const sponsor = await department.director.make('/api/sponsors', { name: 'Quarry Road Hardware', categoryId: season.categoryId });
  const payer = await department.director.make('/api/payers', { name: 'Quarry Road Hardware', sponsorId: sponsor.id });
  return { ...season, sponsorId: sponsor.id, payerId: payer.id };
}

async function anExclusiveDraft(department: Department, season: Season, more: Record<string, unknown> = {}): Promise<any> {
  const draft = await aContract(department, season);
  const { body } = await department.director.patch(`/api/contracts/${draft.id}`, { exclusivities: [{ categoryId: season.categoryId, reach: 'season', ...DAYS, ...more }] }, { version: draft.version });
  return body;
}

test('a rival of an exclusive sponsor is refused by name, and let in only by an exception that says who approved it', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const rival = await aRival(department, season);
  const first = await anExclusiveDraft(department, season);
  expect(first.exclusivities).toMatchObject([{ words: 'Hardware', reach: 'season' }]);
  const { number } = (await director.post(`/api/contracts/${first.id}/sign`, SIGNATURE)).body;
  const second = await aContract(department, rival);
  const words = `Juniper & Pike Hardware has the exclusive right to Hardware through Mar 13, 2027 (contract ${number})`;
  const { data: [obstacle] } = await director.look(`/api/contracts/${second.id}/in-the-way`);
  expect(obstacle).toMatchObject({ because: 'exclusive', words });
  const refused = await director.post(`/api/contracts/${second.id}/sign`, SIGNATURE);
  expect(refused.body).toMatchObject({ code: 'category-exclusive', override: 'director', detail: `${words}. Record the exception and who approved it, or change the deal.` });
  const exception = { againstIds: [obstacle.againstId], reason: 'Both stores agreed', approvedByName: 'School board', approvedOn: '2026-11-12' };
  expect((await director.post(`/api/contracts/${second.id}/sign`, { ...SIGNATURE, companyException: { ...exception, againstIds: [first.id] } })).body.code).toBe('category-exclusive');
  expect((await director.post(`/api/contracts/${second.id}/sign`, { ...SIGNATURE, companyException: exception })).status).toBe(200);
  expect((await director.look(`/api/contracts/${second.id}`)).companyExceptions).toMatchObject([{ reason: 'Both stores agreed', approvedByName: 'School board', approvedOn: '2026-11-12', against: first.title }]);
});

test('an exclusive right is refused where a rival has a contract already, which is named; over halftime it is allowed', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 1);
  const rival = await aRival(department, season);
  const there = await aContract(department, rival);
  const { number } = (await director.post(`/api/contracts/${there.id}/sign`, SIGNATURE)).body;
  const draft = await anExclusiveDraft(department, season);
  expect((await director.post(`/api/contracts/${draft.id}/sign`, SIGNATURE)).body).toMatchObject({
    code: 'category-exclusive', details: { words: `Quarry Road Hardware is a sponsor of Hardware already, through Mar 13, 2027 (contract ${number}), so nobody else can be the only one` },
  });
  const halftime = await director.patch(`/api/contracts/${draft.id}`, { exclusivities: [{ categoryId: season.categoryId, reach: 'window', windowKinds: ['halftime'], ...DAYS }] }, { version: draft.version });
  expect(halftime.body.exclusivities[0].words).toBe('Hardware, at halftime');
  expect((await director.post(`/api/contracts/${draft.id}/sign`, SIGNATURE)).status).toBe(200);
  const { gameId } = season.games[0]!;
  const rivals = await director.look(`/api/contracts/${there.id}`);
  const place = (windowKey: string) => director.post('/api/placements', { commitmentId: rivals.commitments[1].id, gameId, windowKey });
  expect((await place('halftime')).body.code).toBe('window-exclusive');
  expect((await place('timeOut1')).status).toBe(201);
});

test('a reserved category is refused until an exception is recorded, and what a right lacks is refused at its field', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  const form = { categoryId: season.categoryId, heldBy: 'Ridge Valley School District, hardware contract', startsOn: '2026-07-01' };
  expect((await bookkeeper.post('/api/reserved-categories', form)).status).toBe(403);
  expect((await director.post('/api/reserved-categories', { ...form, endsOn: '2026-06-30' })).body.code).toBe('ends-before-it-starts');
  const reserved = await director.make('/api/reserved-categories', form);
  const draft = await aContract(department, season);
  const sign = (more: object = {}) => director.post(`/api/contracts/${draft.id}/sign`, { ...SIGNATURE, ...more });
  expect((await sign()).body).toMatchObject({ code: 'category-reserved', details: { words: 'Hardware is reserved: held by Ridge Valley School District, hardware contract' } });
  expect((await sign({ companyException: { againstIds: [reserved.id], reason: 'The district agreed', approvedByName: 'The superintendent', approvedOn: '2026-11-12' } })).status).toBe(200);
  expect((await director.remove(`/api/reserved-categories/${reserved.id}`)).body.code).toBe('still-in-use');
  const bare = await aContract(department, season, { title: 'Bare' });
  const patch = (right: object) => director.patch(`/api/contracts/${bare.id}`, { exclusivities: [{ categoryId: season.categoryId, ...DAYS, ...right }] }, { version: bare.version });
  expect((await patch({ reach: 'game' })).body).toMatchObject({ code: 'exclusivity-without-games', errors: { exclusivities: { 0: { gameIds: expect.any(String) } } } });
  expect((await patch({ reach: 'window' })).body.code).toBe('exclusivity-without-windows');
  expect((await patch({ reach: 'season', endsOn: '2026-11-19' })).body.code).toBe('ends-before-it-starts');
  expect((await director.remove(`/api/contracts/${bare.id}`)).status).toBe(204);
});

test('two exclusive sponsors of one category are signed at the same moment: one is told of the other', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const rival = await aRival(department, season);
  const drafts = [await anExclusiveDraft(department, season), await anExclusiveDraft(department, rival)];
  const holder = await department.pool.connect();
  try {
    await holder.query(`begin; set local app.department_id = '${department.id}'`);
    await holder.query('select 1 from sponsor_category where department_id = $1 and id = $2 for update', [department.id, season.categoryId]);
    const answers: Answer[] = [];
    const signing = drafts.map((draft) => director.post(`/api/contracts/${draft.id}/sign`, SIGNATURE).then((answer) => void answers.push(answer)));
    await untilSettled(department, drafts.length, () => answers.length);
    await holder.query('commit');
    await Promise.all(signing);
    expect(answers.map((answer) => answer.body.code ?? 'signed').sort()).toEqual(['category-exclusive', 'signed']);
  } finally {
    holder.release();
  }
  expect((await director.look('/api/contracts?state=signed')).total).toBe(1);
});

test('an offer to a rival is refused when it is put; its exception goes along into the contract, and a blocked category needs one too', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const rival = await aRival(department, season);
  await director.make(`/api/contracts/${(await anExclusiveDraft(department, season)).id}/sign`, SIGNATURE);
  const { sponsorId, sellerId, payerId, seasonId } = rival;
  const draft = (more: object = {}) => director.make('/api/offers', {
    sponsorId, sellerId, payerId, seasonId, title: 'A banner', priceCents: 20_000, ...DAYS, lapsesOn: '2099-01-01',
    benefitLines: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 20_000 }], ...more,
  });
  const offer = await draft();
  const put = (id: string, companyException?: object) => director.post(`/api/offers/${id}/put`, { putOn: '2026-11-20', ...(companyException ? { companyException } : {}) });
  expect((await put(offer.id)).body.code).toBe('category-exclusive');
  const { data: [obstacle] } = await director.look(`/api/offers/${offer.id}/in-the-way`);
  const exception = { againstIds: [obstacle.againstId], reason: 'Both stores agreed', approvedByName: 'School board', approvedOn: '2026-11-12' };
  expect((await put(offer.id, exception)).status).toBeLessThan(300);
  expect((await director.look(`/api/offers/${offer.id}/in-the-way`)).total).toBe(0);
  const accepted = await director.make(`/api/offers/${offer.id}/accept`, SIGNATURE);
  expect((await director.look(`/api/contracts/${accepted.contractId}`)).companyExceptions).toMatchObject([{ approvedByName: 'School board' }]);

  const category = await director.make('/api/sponsor-categories', { name: 'Vaping', isBlocked: true });
  const shop = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: category.id });
  const blocked = await draft({ sponsorId: shop.id, payerId: null, exclusivities: [{ categoryId: category.id, reach: 'season', ...DAYS }] });
  expect(blocked.exclusivities).toMatchObject([{ categoryName: 'Vaping' }]);
  expect((await put(blocked.id)).body).toMatchObject({ code: 'category-blocked', override: 'director' });
  expect((await put(blocked.id, { ...exception, againstIds: [category.id] })).status).toBeLessThan(300);
});

test('a plan keeps the reads of a rival out of the windows that an exclusive right keeps', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 2);
  const rival = await aRival(department, season);
  const days = { startsOn: '2150-11-20', endsOn: '2151-03-13' };
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 4000 }];
  for (const [one, exclusivities] of [[season, [{ categoryId: season.categoryId, reach: 'window', windowKinds: ['halftime'], ...days }]], [rival, []]] as const) {
    const draft = await aContract(department, one, { commitments, priceCents: 16_000, term: days });
    const { body } = await director.patch(`/api/contracts/${draft.id}`, { exclusivities }, { version: draft.version });
    await director.make(`/api/contracts/${body.id}/sign`, SIGNATURE);
  }
  expect(await director.make('/api/plan/spread', { seasonId: season.seasonId })).toMatchObject({ left: [] });
  const placed = (await Promise.all(season.games.map(async ({ nightId }) => (await director.look(`/api/nights/${nightId}/placements`)).data))).flat();
  const windowsOf = (sponsorId: string): string[] => placed.filter((one: any) => one.sponsorId === sponsorId).map((one: any) => one.windowKey.replace(/\d/, ''));
  expect(new Set(windowsOf(rival.sponsorId))).toEqual(new Set(['timeOut']));
  expect(windowsOf(season.sponsorId)).toContain('halftime');
});

test('a contract is not handed on to a rival of an exclusive sponsor, and an exclusive one goes on with its right', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const rival = await aRival(department, season);
  const tire = await director.make('/api/sponsor-categories', { name: 'Tires' });
  const shop = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: tire.id });
  const exclusive = await anExclusiveDraft(department, season);
  const other = await aContract(department, { ...season, sponsorId: shop.id });
  for (const { id } of [exclusive, other]) await director.make(`/api/contracts/${id}/sign`, SIGNATURE);
  const form = { toSponsorId: rival.sponsorId, toPayerId: rival.payerId, reason: 'The store was sold' };
  expect((await director.post(`/api/contracts/${other.id}/assign/preview`, form)).body.refusal.code).toBe('category-exclusive');
  expect((await director.post(`/api/contracts/${other.id}/assign`, form)).body.code).toBe('category-exclusive');
  expect((await director.post(`/api/contracts/${exclusive.id}/assign`, form)).status).toBe(200);
});

/** An offer of a banner, put where it is not refused. */
async function aBanner({ director }: Department, { sponsorId, sellerId, payerId, seasonId }: Season, more: Record<string, unknown> = {}) {
  const { id } = await director.make('/api/offers', {
    sponsorId, sellerId, payerId, seasonId, title: 'A banner', priceCents: 20_000, ...DAYS, lapsesOn: '2099-01-01', benefitLines: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 20_000 }], ...more,
  });
  const inTheWay = async () => (await director.look(`/api/offers/${id}/in-the-way`)).data;
  const put = (againstIds?: string[]) => director.post(`/api/offers/${id}/put`, { putOn: '2026-11-20', ...(againstIds ? { companyException: { ...APPROVED, againstIds } } : {}) });
  return { id, inTheWay, put };
}

const APPROVED = { reason: 'Both stores agreed', approvedByName: 'School board', approvedOn: '2026-11-12' };

test('an exclusive right is not offered beside an open offer to a rival, and an exception against it stands both ways when they sign', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const rival = await aRival(department, season);
  const there = await aBanner(department, rival);
  const { number } = (await there.put()).body;
  const exclusive = await aBanner(department, season, { exclusivities: [{ categoryId: season.categoryId, reach: 'season', ...DAYS }] });
  expect((await exclusive.put()).body).toMatchObject({ code: 'category-exclusive', details: { words: `Quarry Road Hardware was offered to be a sponsor of Hardware, through Mar 13, 2027 (offer ${number}), so nobody else can be promised to be the only one` } });
  expect((await exclusive.put([there.id])).body.state).toBe('open');
  expect((await director.make(`/api/offers/${there.id}/accept`, SIGNATURE)).state).toBe('accepted');
  const { contractId } = await director.look(`/api/offers/${there.id}`);
  expect((await director.post(`/api/offers/${exclusive.id}/accept`, SIGNATURE)).body.code).toBe('category-exclusive');
  const accepted = await director.make(`/api/offers/${exclusive.id}/accept`, { ...SIGNATURE, companyException: { ...APPROVED, againstIds: [contractId] } });
  expect((await director.look(`/api/contracts/${accepted.contractId}`)).companyExceptions.map((one: any) => one.against)).toEqual(['A banner', 'A banner']);
});

test('an exception lets an exclusive right stand beside the contract it names, and beside no other', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  const rival = await aRival(department, season);
  const sign = async () => (await director.make(`/api/contracts/${(await aContract(department, rival)).id}/sign`, SIGNATURE)).id;
  const first = await sign();
  const exclusive = await aBanner(department, season, { holdsInventory: false, exclusivities: [{ categoryId: season.categoryId, reach: 'season', ...DAYS }] });
  expect((await exclusive.inTheWay()).map((one: any) => one.againstId)).toEqual([first]);
  expect((await exclusive.put([first])).body.state).toBe('open');
  const second = await sign();
  expect((await exclusive.inTheWay()).map((one: any) => one.againstId)).toEqual([second]);
  expect((await director.post(`/api/offers/${exclusive.id}/accept`, SIGNATURE)).body.code).toBe('category-exclusive');
});

test('a contract that was drawn up of an offer with an exception is thrown away again, and the exception stays with the offer', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aSeason(department, 0);
  await director.make(`/api/contracts/${(await anExclusiveDraft(department, season)).id}/sign`, SIGNATURE);
  const banner = await aBanner(department, await aRival(department, season));
  await banner.put((await banner.inTheWay()).map((one: any) => one.againstId));
  const { contractId } = await director.make(`/api/offers/${banner.id}/draft-contract`);
  expect((await director.look(`/api/contracts/${contractId}`)).companyExceptions).toHaveLength(1);
  expect((await director.look(`/api/contracts/${contractId}/in-the-way`)).total).toBe(0);
  expect((await director.remove(`/api/contracts/${contractId}`)).status).toBe(204);
  expect(await director.look(`/api/offers/${banner.id}`)).toMatchObject({ state: 'open', exceptions: [{ approvedByName: 'School board' }] });
});

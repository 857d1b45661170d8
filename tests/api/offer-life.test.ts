import { expect, test } from 'vitest';
import { signedPosition } from '../../server/domain/sponsorship/apply-signing.ts';
import { aDepartment } from '../support/department.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import type { Department } from '../support/department.ts';
import { aLapsedOffer, anOffer, anOpenOffer, inDays } from '../support/offers.ts';
import { aSeason } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const SIGNATURE = { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' };

async function aSellingDepartment(games = 0): Promise<{ department: Department; season: Season; director: Department['director'] }> {
  const department = await aDepartment();
  return { department, director: department.director, season: await aSeason(department, games) };
}

test('an open offer is accepted: its contract is signed as it was offered, and owes its reads', async () => {
  const { department, season, director } = await aSellingDepartment(3);
  const offer = await anOpenOffer(department, season, { years: 2, increaseBasisPoints: 300, note: 'Hazel asked for Fridays', benefitLines: [{ name: 'Banner at the Perch', quantity: 2, rateCents: 10_000 }] });
  const { status, body: accepted } = await director.post(`/api/offers/${offer.id}/accept`, SIGNATURE);
  expect([status, accepted.state, accepted.contractNumber]).toEqual([200, 'accepted', 'C-2027-0001']);
  const contract = await director.look(`/api/contracts/${accepted.contractId}`);
  expect(contract).toMatchObject({ sponsorId: season.sponsorId, payerId: season.payerId, title: offer.title, note: offer.note, term: { number: 1, state: 'signed', priceCents: 70_000, signedByName: 'Hazel Juniper' } });
  expect(contract.standing.owed).toBe(14);
  expect(contract.benefits.map((benefit: any) => [benefit.name, benefit.quantity])).toEqual([['Banner at the Perch', 2]]);
  const [row] = await department.ask('select years, increase_basis_points, price_varies_with from contract where department_id = $1 and id = $2', [department.id, contract.id]);
  expect(row).toEqual({ years: 2, increase_basis_points: 300, price_varies_with: 'nothing' });
});

test.each([
  ['reads of the whole term', 70_001, (season: Season) => [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 7, rateCents: 7500 }, { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 9, rateCents: 3333 }]],
  ['reads of each game and each night', 99_999, (season: Season) => [{ readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 2, rateCents: 7500, blackoutDays: ['2026-12-11'] }, { readKindId: season.readKinds.concession, counting: 'perNight', reads: 3, rateCents: 4100 }]],
  ['mentions of what happens', 50_000, (season: Season) => [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', rateCents: 500 }, { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 11, rateCents: 700 }]],
])('the values of the contract are those of the offer to the cent: %s', async (_, priceCents, linesFor) => {
  const { department, season, director } = await aSellingDepartment(3);
  const offer = await anOpenOffer(department, season, { priceCents, readLines: linesFor(season), benefitLines: [{ name: 'Banner', quantity: 3, rateCents: 10_000 }] });
  expect(offer.values.reduce((sum: number, line: any) => sum + line.valueCents, 0)).toBe(priceCents);
  const { body: accepted } = await director.post(`/api/offers/${offer.id}/accept`, SIGNATURE);
  const events = await department.ask(`select happening from ledger_event where department_id = $1 and happening->>'kind' = 'signed'`, [department.id]);
  const signed = signedPosition(events[0]!['happening'].terms);
  expect(accepted.contractId).toBeTruthy();
  expect(signed.lines.map((line) => line.values)).toEqual(offer.values.map((line: any) => line.each.flatMap(({ count, cents }: any) => Array.from({ length: count }, () => cents))));
});

test('an offer priced by the read becomes a contract priced by the read', async () => {
  const { department, season, director } = await aSellingDepartment();
  const offer = await anOpenOffer(department, season, {
    pricing: 'perRead', priceCents: 0, billAtMostCents: 50_000, billingPlan: { kind: 'perReadInArrears' },
    readLines: [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtMost: 40, rateCents: 500, priceEachCents: 450 }],
  });
  expect(offer.values).toMatchObject([{ isPricedByRead: true, each: [{ cents: 450 }] }]);
  const { body } = await director.post(`/api/offers/${offer.id}/accept`, SIGNATURE);
  expect(await director.look(`/api/contracts/${body.contractId}`)).toMatchObject({ term: { pricing: 'perRead', priceCents: 0, billAtMostCents: 50_000, billingPlan: { kind: 'perReadInArrears' } }, commitments: [{ priceEachCents: 450, readsAtMost: 40 }] });
});

test('an offer is accepted once, and neither a draft, a declined nor a withdrawn one is', async () => {
  const { department, season, director } = await aSellingDepartment();
  const accept = async (id: string) => (await director.post(`/api/offers/${id}/accept`, SIGNATURE)).body.code;
  const open = await anOpenOffer(department, season);
  expect(await accept(open.id)).toBeUndefined();
  expect(await accept(open.id)).toBe('offer-already-accepted');
  expect((await director.post(`/api/offers/${open.id}/withdraw`)).body.code).toBe('offer-already-accepted');
  expect(await accept((await anOffer(department, season)).id)).toBe('offer-not-put');
  const declined = await anOpenOffer(department, season);
  expect((await director.make(`/api/offers/${declined.id}/decline`, { reason: 'Too dear this year' })).state).toBe('declined');
  expect(await accept(declined.id)).toBe('offer-declined');
  const withdrawn = await anOpenOffer(department, season);
  expect((await director.make(`/api/offers/${withdrawn.id}/withdraw`)).state).toBe('withdrawn');
  expect(await accept(withdrawn.id)).toBe('offer-withdrawn');
  expect((await director.look('/api/contracts')).total).toBe(1);
  expect((await department.bookkeeper.post(`/api/offers/${open.id}/accept`, SIGNATURE)).status).toBe(403);
});

test('an offer that has lapsed is taken up only with a reason, which the contract keeps', async () => {
  const { department, season, director } = await aSellingDepartment();
  const lapsed = await aLapsedOffer(department, season);
  expect([lapsed.state, lapsed.holdsNow, lapsed.lapsesInDays]).toEqual(['lapsed', false, null]);
  expect((await director.look('/api/offers?state=lapsed')).data.map((offer: any) => offer.id)).toEqual([lapsed.id]);
  const refused = await director.post(`/api/offers/${lapsed.id}/accept`, SIGNATURE);
  expect(refused.body).toMatchObject({ code: 'offer-lapsed', override: 'director', details: { lapsesOn: inDays(-1) } });
  expect((await director.post(`/api/offers/${lapsed.id}/extend`, { lapsesOn: inDays(9) })).body.code).toBe('offer-lapsed-already');
  const { body } = await director.post(`/api/offers/${lapsed.id}/accept`, { ...SIGNATURE, overrideReason: 'The paper came on time and lay in the mail room' });
  expect((await director.look(`/api/contracts/${body.contractId}`)).note).toContain('lay in the mail room');
});

test('an offer holds through its last day, and is extended to a later one only', async () => {
  const { department, season, director } = await aSellingDepartment();
  const open = await anOpenOffer(department, season, { lapsesOn: inDays(0) });
  expect([open.state, open.holdsNow, open.lapsesInDays]).toEqual(['open', true, 0]);
  expect((await director.look('/api/offers?lapsesSoon=true')).total).toBe(1);
  expect((await director.post(`/api/offers/${open.id}/extend`, { lapsesOn: inDays(0) })).body.code).toBe('offer-lapses-no-later');
  expect((await director.make(`/api/offers/${open.id}/extend`, { lapsesOn: inDays(8) })).lapsesInDays).toBe(8);
  expect((await director.look('/api/offers?lapsesSoon=true')).total).toBe(0);
});

test('what holds places and lapses within a week stands on top of the list', async () => {
  const { department, season, director } = await aSellingDepartment();
  const add = async (title: string, days: number, more = {}) => anOpenOffer(department, season, { title, lapsesOn: inDays(days), ...more });
  await anOffer(department, season, { title: 'Draft' });
  await aLapsedOffer(department, season, { title: 'Lapsed' });
  await add('Far', 20);
  await add('Soon, holding nothing', 2, { holdsInventory: false });
  await add('Soon', 7);
  await add('Sooner', 3);
  expect((await director.look('/api/offers')).data.map((offer: any) => offer.title)).toEqual(['Sooner', 'Soon', 'Soon, holding nothing', 'Far', 'Draft', 'Lapsed']);
});

test('an offer is made again as a draft of its own, for as many days', async () => {
  const { department, season, director } = await aSellingDepartment();
  const lapsed = await aLapsedOffer(department, season, { benefitLines: [{ name: 'Banner', quantity: 1, rateCents: 10_000 }], increaseBasisPoints: 250, years: 2 });
  const again = await director.make(`/api/offers/${lapsed.id}/again`);
  expect([again.state, again.number, again.lapsesOn, again.years]).toEqual(['draft', null, inDays(14), 2]);
  const words = (offer: any) => [...offer.readLines, ...offer.benefitLines].map(({ id: _, offerId: _offer, ...line }: any) => line);
  expect(words(again)).toEqual(words(lapsed));
  expect(again.readLines[0].id).not.toBe(lapsed.readLines[0].id);
});

test('a draft contract is made without a signature, and throwing it away opens the offer again', async () => {
  const { department, season, director } = await aSellingDepartment();
  const open = await anOpenOffer(department, season, { payerId: null });
  const { body: taken } = await director.post(`/api/offers/${open.id}/draft-contract`);
  expect(taken.state).toBe('accepted');
  const contract = await director.look(`/api/contracts/${taken.contractId}`);
  expect([contract.term.state, contract.number, contract.payerId, contract.standing.owed]).toEqual(['draft', null, season.payerId, 0]);
  expect((await director.remove(`/api/contracts/${contract.id}`)).status).toBe(204);
  expect((await director.look(`/api/offers/${open.id}`)).state).toBe('open');
});

test('who pays is asked for where the sponsor has two payers', async () => {
  const { department, season, director } = await aSellingDepartment();
  const other = await director.make('/api/payers', { name: 'Pike family', sponsorId: season.sponsorId });
  const open = await anOpenOffer(department, season, { payerId: null });
  expect((await director.post(`/api/offers/${open.id}/accept`, SIGNATURE)).body).toMatchObject({ code: 'offer-without-payer', errors: { payerId: 'is missing' } });
  expect((await director.look(`/api/offers/${open.id}`)).state).toBe('open');
  const { body } = await director.post(`/api/offers/${open.id}/accept`, { ...SIGNATURE, payerId: other.id });
  expect((await director.look(`/api/contracts/${body.contractId}`)).payerName).toBe('Pike family');
});

test('the paper of an offer shows what signing will credit, and the office copy what the sponsor is not given', async () => {
  const { department, season, director } = await aSellingDepartment(2);
  const offer = await anOpenOffer(department, season, {
    priceVariesWith: 'attendance', note: 'Hazel likes Fridays', years: 2, increaseBasisPoints: 300,
    readLines: [{ readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 2, rateCents: 7500, teamIds: [season.teamId], pinnedGameIds: [season.games[0]!.gameId] }],
  });
  const [paper, office] = await Promise.all(['', '?office=true'].map(async (query) => (await pagesOfPdf((await director.bytes(`/api/offers/${offer.id}/pdf${query}`)).bytes)).join(' ')));
  for (const words of ['Juniper & Pike Hardware', 'Kestrels Varsity boys', '2 in each game, 4 in all', '$175.00 a read', 'December 4, 2026 (Herons at Kestrels)', 'Price: $700.00', 'Year 2: $721.00', 'Billed in full on November 20, 2026']) expect(paper).toContain(words);
  for (const words of ['tax adviser', 'Hazel likes Fridays']) {
    expect(paper).not.toContain(words);
    expect(office).toContain(words);
  }
});

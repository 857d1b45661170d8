import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aContract, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';
import { aSponsorProof, fiveHundredNights } from '../support/sponsor-proof.ts';
import { Visitor } from '../support/visitor.ts';

const LATER = '2099-01-01T00:00:00.000Z';

/** Everything that a sponsor's link can look at. */
const LOOKS = ['/api/sponsor-page', '/api/sponsor-page/money', '/api/sponsor-page/nights'];

async function linkOf({ director }: Department, sponsorId: string): Promise<Visitor> {
  return Visitor.byLink((await director.make(`/api/sponsors/${sponsorId}/links`, { label: 'Hazel Juniper, owner', expiresAt: LATER })).token);
}

/** A second sponsor of the same department, each of whose words would be seen at once on another's page. */
async function aNeighbour({ director, bookkeeper }: Department, season: Season) {
  const sponsor = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId, note: 'canary-note' });
  const payer = await director.make('/api/payers', { name: 'Blue Lantern Payables', sponsorId: sponsor.id });
  const copy = await director.make('/api/copies', { sponsorId: sponsor.id, readKindId: season.readKinds.concession, title: 'canary-copy', fallbackText: 'Blue Lantern Tire.', text: 'Blue Lantern Tire, on Quarry Road.' });
  const seller = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB', contactName: 'Odell Marsh' });
  const contract = await director.make('/api/contracts', {
    sponsorId: sponsor.id, sellerId: seller.id, payerId: payer.id, title: 'canary-contract', note: 'canary-note',
    term: { seasonId: season.seasonId, startsOn: season.startsOn, endsOn: season.endsOn, pricing: 'fixed', priceCents: 987_600, billingPlan: { kind: 'inFull', on: '2026-11-23' } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 13, rateCents: 4000 }], benefits: [{ name: 'canary-banner', quantity: 1, rateCents: 5000 }],
  });
  await director.make(`/api/contracts/${contract.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Ines Quill' });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const payment = await bookkeeper.make('/api/payments', { sellerId: seller.id, payerId: payer.id, receivedOn: '2026-12-01', method: 'check', reference: 'canary-check', amountCents: 1000, applications: [{ invoiceId: invoice.id, amountCents: 1000 }] });
  return { sponsorId: sponsor.id as string, commitmentId: contract.commitments[0].id as string, ids: [sponsor.id, payer.id, copy.id, seller.id, contract.id, invoice.id, payment.id] as string[], invoiceId: invoice.id as string, number: invoice.number as string };
}

test('a link shows what its sponsor was promised, with price and benefits, and nothing that is still a draft', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { director } = department;
  const seller = await director.look(`/api/sellers/${season.sellerId}`);
  await director.patch(`/api/sellers/${season.sellerId}`, { contactName: 'Odell Marsh', contactPhone: '555-0142', contactEmail: 'odell@tamarack.example' }, { version: seller.version });
  await aContract(department, season, { title: 'Not signed yet' });
  const signed = await aSignedContract(department, season, { benefits: [{ name: 'Banner by the scoreboard', quantity: 1, rateCents: 5000 }] });
  const page = await (await linkOf(department, season.sponsorId)).look('/api/sponsor-page');
  expect(page).toMatchObject({
    departmentName: department.name, sponsorName: 'Juniper & Pike Hardware', zone: 'America/Denver', currency: 'USD', locale: 'en-US', linkEndsAt: LATER,
    contacts: [{ name: 'Tamarack Ridge Athletics', contactName: 'Odell Marsh', phone: '555-0142', email: 'odell@tamarack.example' }], offers: [], copies: [],
  });
  expect(page.contracts).toHaveLength(1);
  expect(page.contracts[0]).toMatchObject({
    contractId: signed.id, state: 'signed', priceCents: 70_000, stillToInvoiceCents: 70_000, sum: { promised: 14, given: 0, stillToCome: 14, extra: 0 },
    lines: [{ readKindName: 'Sponsored game ball', promised: 6, stillToCome: 6 }, { readKindName: 'Concession read', promised: 8, stillToCome: 8 }],
    benefits: [{ name: 'Banner by the scoreboard', quantity: 1, delivered: 0, deliveries: [] }],
  });
});

test('a sponsor without a contract sees an empty page and whom to call', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const bearer = await linkOf(department, season.sponsorId);
  expect(await bearer.look('/api/sponsor-page')).toMatchObject({ contracts: [], offers: [], copies: [], contacts: [{ name: 'Tamarack Ridge Athletics' }] });
  expect(await bearer.look('/api/sponsor-page/money')).toEqual({ sellers: [], invoices: [], credits: [], payments: [] });
});

test('what was invoiced is what was paid, credited, taken off and is open', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { bookkeeper } = department;
  const signed = await aSignedContract(department, season);
  const bill = (on: string) => bookkeeper.make('/api/invoices', { contractId: signed.id, throughDay: on, issuedOn: on });
  const [first, second] = [await bill('2026-11-23'), await bill('2027-01-15')];
  const pay = (reference: string, amountCents: number, applied: [string, number][]) =>
    bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', reference, amountCents, applications: applied.map(([invoiceId, cents]) => ({ invoiceId, amountCents: cents })) });
  await pay('1041', 40_000, [[first.id, 36_750]]);
  await pay('1042', 10_000, [[second.id, 10_000]]);
  const bearer = await linkOf(department, season.sponsorId);
  const money = await bearer.look('/api/sponsor-page/money');
  expect(money.sellers).toMatchObject([{ sellerName: 'Tamarack Ridge Athletics', invoicedCents: 73_500, taxCents: 3_500, paidCents: 46_750, creditedCents: 0, takenOffCents: 0, openCents: 26_750, unusedCents: 3_250 }]);
  const [{ invoicedCents, paidCents, creditedCents, takenOffCents, openCents }] = money.sellers;
  expect(paidCents + creditedCents + takenOffCents + openCents).toBe(invoicedCents);
  expect(money.invoices.map((one: any) => [one.number, one.grossCents, one.balanceCents])).toEqual([[second.number, 36_750, 26_750], [first.number, 36_750, 0]]);
  expect(money.payments.map((one: any) => [one.reference, one.amountCents, one.leftCents]).sort()).toEqual([['1041', 40_000, 3_250], ['1042', 10_000, 0]]);
  expect((await bearer.look('/api/sponsor-page')).contracts[0]).toMatchObject({ priceCents: 70_000, stillToInvoiceCents: 0 });
});

test('a sponsor opens its own papers; those of another sponsor answer like papers that never were', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const neighbour = await aNeighbour(department, season);
  const signed = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: signed.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const bearer = await linkOf(department, season.sponsorId);
  for (const path of [`invoices/${invoice.id}/invoice.pdf`, 'account-statement.pdf']) {
    const { status, bytes } = await bearer.bytes(`/api/sponsor-page/${path}`);
    expect([path, status, bytes.subarray(0, 5).toString()]).toEqual([path, 200, '%PDF-']);
  }
  for (const [noun, paper] of [['invoices', 'invoice.pdf'], ['credit-memos', 'credit-memo.pdf']]) {
    const answers = [];
    for (const id of [neighbour.invoiceId, v7(), 'no-id']) {
      const { status, body } = await bearer.get(`/api/sponsor-page/${noun}/${id}/${paper}`);
      answers.push(JSON.stringify([status, { ...body, instance: '' }]));
    }
    expect(JSON.parse(answers[0]!)[0]).toBe(404);
    expect(new Set(answers).size).toBe(1);
  }
  const theirs = await linkOf(department, neighbour.sponsorId);
  expect((await theirs.bytes(`/api/sponsor-page/invoices/${neighbour.invoiceId}/invoice.pdf`)).status).toBe(200);
  expect((await theirs.get(`/api/sponsor-page/invoices/${invoice.id}/invoice.pdf`)).status).toBe(404);
});

test('a page holds nothing of another sponsor, no student’s name and no note of the office', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const { director, announcer } = department;
  const neighbour = await aNeighbour(department, season);
  await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Opening night', fallbackText: 'Juniper & Pike Hardware.', text: 'Juniper & Pike Hardware, on Third Street.' });
  const signed = await aSignedContract(department, season);
  const [ball, concession] = signed.commitments;
  const { gameId, nightId } = season.games[0]!;
  const device = new TableDevice();
  const entries = [
    device.read(ball.id, gameId, 1),
    device.entry({ kind: 'read', outcome: 'notRead', gameId, commitmentId: concession.id, cueKey: `game:${gameId}/halftime/2`, windowKey: 'halftime', reason: 'other', detail: { words: 'Xochitl Marlowe fainted' } }),
    device.entry({ kind: 'read', outcome: 'cutShort', gameId, commitmentId: concession.id, cueKey: `game:${gameId}/halftime/3`, windowKey: 'halftime', reason: 'noTime', detail: { words: 'Łukasz Wren shot early' } }),
    device.read(neighbour.commitmentId, gameId, 4),
    device.entry({ kind: 'note', detail: { text: 'canary-note of Nguyễn Tam' } }),
  ];
  await announcer.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  const bearer = await linkOf(department, season.sponsorId);
  for (const path of LOOKS) {
    const said = JSON.stringify(await bearer.look(path));
    for (const word of ['canary', 'Blue Lantern', '9876', 'Ines', 'Xochitl', 'Łukasz', 'Wren', 'Nguy', neighbour.number, ...neighbour.ids]) expect([path, word, said.includes(word)]).toEqual([path, word, false]);
  }
});

test('what a link shows is kept by no browser and nothing between', async () => {
  const { link } = await aSponsorProof(await aDepartment());
  for (const path of [...LOOKS, '/api/sponsor-page/account-statement.pdf']) expect([path, (await link.bytes(path)).headers.get('cache-control')]).toEqual([path, 'no-store']);
});

test('a revoked link and one that has ended show nothing of the page, wherever on it somebody is', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const signed = await aSignedContract(department, season);
  const invoice = await department.bookkeeper.make('/api/invoices', { contractId: signed.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const links = `/api/sponsors/${season.sponsorId}/links`;
  const everywhere = [...LOOKS, '/api/sponsor-page/account-statement.pdf', `/api/sponsor-page/invoices/${invoice.id}/invoice.pdf`];
  const revoked = await department.director.make(links, { label: 'Hazel', expiresAt: LATER });
  const brief = await department.director.make(links, { label: 'Two seconds', expiresAt: new Date(Date.now() + 2_000).toISOString() });
  const bearers = [await Visitor.byLink(revoked.token), await Visitor.byLink(brief.token)];
  await department.director.make(`${links}/${revoked.id}/revoke`);
  await new Promise((resolve) => void setTimeout(resolve, 2_200));
  for (const bearer of bearers) {
    for (const path of everywhere) {
      const answer = await bearer.get(path);
      expect([path, answer.status, answer.body.code]).toEqual([path, 401, 'link-not-good']);
      expect(JSON.stringify(answer.body)).not.toContain('Juniper');
    }
  }
});

test('the calendar tells each night with its reads, why one was not read, and how many are planned', async () => {
  const department = await aDepartment();
  const { link, season } = await aSponsorProof(department);
  const { nights } = await link.look('/api/sponsor-page/nights');
  expect(nights.map((night: any) => night.heldOn)).toEqual(season.games.map((game) => game.playedOn));
  const told = nights.map((night: any) => [night.reads.map((read: any) => `${read.readKindName}: ${read.what}`).sort(), night.planned.map((one: any) => `${one.count} × ${one.readKindName}`)]);
  const both = ['Concession read: given', 'Sponsored game ball: given'];
  const toCome = ['1 × Concession read', '1 × Sponsored game ball'];
  expect(told).toEqual([[both, []], [['Concession read: notRead', 'Sponsored game ball: given'], []], [both, []], [[], toCome], [[], toCome]]);
  expect(nights[0].reads.find((read: any) => read.readKindName === 'Sponsored game ball')).toMatchObject({ windowName: 'Pregame', at: '2026-12-05T02:30:00.000Z', copyTitle: 'Game ball', copyVersionNumber: 1, why: null });
  expect(nights[1].reads.find((read: any) => read.what === 'notRead').why).toBe('no time');
  expect(nights[0].games).toMatchObject([{ opponentName: expect.stringContaining('Port Ansel') }]);
  const [contract] = (await link.look('/api/sponsor-page')).contracts;
  expect(contract.lines.map((line: any) => [line.readKindName, line.promised, line.given, line.stillToCome, line.planned, line.gamesPlayed])).toEqual([
    ['Sponsored game ball', 6, 3, 3, 2, expect.any(Number)], ['Concession read', 8, 2, 6, 2, expect.any(Number)], ['Bank-shot mention', 0, 0, 0, 0, expect.any(Number)],
  ]);
  expect(contract.benefits).toMatchObject([{ delivered: 1, deliveries: [{ deliveredOn: '2026-11-30', proof: 'Photograph of November 30, sent to Hazel Juniper' }] }]);
});

test('a contract with no games played tells what is promised and has no nights', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  await aSignedContract(department, season);
  const bearer = await linkOf(department, season.sponsorId);
  expect(await bearer.look('/api/sponsor-page/nights')).toEqual({ nights: [] });
  expect((await bearer.look('/api/sponsor-page')).contracts[0]).toMatchObject({ sum: { promised: 14, given: 0, stillToCome: 14 }, lines: [{ gamesInAll: 0 }, { gamesInAll: 0 }] });
});

test('a sponsor with five hundred nights gets them all, in order', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const signed = await aSignedContract(department, season);
  await fiveHundredNights(department, season, signed.commitments[1].id);
  const { nights } = await (await linkOf(department, season.sponsorId)).look('/api/sponsor-page/nights');
  expect(nights).toHaveLength(500);
  expect(nights.map((night: any) => night.heldOn)).toEqual(nights.map((night: any) => night.heldOn).toSorted());
  expect(nights.every((night: any) => night.reads.length === 1 && night.reads[0].what === 'logged')).toBe(true);
});

test('of a contract that was handed on, each owner sees its own papers, and the new one none of the old one’s name', async () => {
  const department = await aDepartment();
  const { season, contract, link } = await aSponsorProof(department);
  const { director, bookkeeper } = department;
  const neighbour = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Blue Lantern Tire', sponsorId: neighbour.id });
  await director.make(`/api/contracts/${contract.id}/assign`, { toSponsorId: neighbour.id, toPayerId: payer.id, on: '2026-12-20', reason: 'The store was sold' });
  const credited = await bookkeeper.post(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[1].id, count: 6, reason: 'Not read', on: '2027-01-20' });
  expect(credited.status).toBe(201);
  const theirs = await linkOf(department, neighbour.id);
  const money = await theirs.look('/api/sponsor-page/money');
  expect([money.invoices, money.payments, money.credits]).toEqual([[], [], []]);
  expect((await theirs.look('/api/sponsor-page')).contracts).toHaveLength(1);
  const { nights } = await theirs.look('/api/sponsor-page/nights');
  expect(nights[0].reads.map((read: any) => read.copyTitle)).toEqual([null, null]);
  for (const path of LOOKS) expect([path, /Juniper|Hazel/.test(JSON.stringify({ ...(await theirs.look(path)), contacts: [] }).replace('sent to Hazel Juniper', ''))]).toEqual([path, false]);
  expect((await link.look('/api/sponsor-page')).contracts).toEqual([]);
  expect((await link.look('/api/sponsor-page/money')).invoices).toHaveLength(1);
});

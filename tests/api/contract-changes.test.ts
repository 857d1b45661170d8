import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';
import type { Drawn, Season } from '../support/season.ts';

const ON = '2027-01-20';

interface Scene extends Department {
  season: Season;
}

async function aScene(): Promise<Scene> {
  const department = await aDepartment();
  return { ...department, season: await aSeason(department, 0) };
}

/** 24 concession reads for 1,200.00, of which some are given already. */
async function aTerm(scene: Scene, given: number, drawn: Drawn = {}) {
  const { season, director } = scene;
  const draft = await aContract(scene, season, {
    title: 'Concession reads', priceCents: 120_000, billingPlan: { kind: 'inFull', on: '2026-11-23' },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5000 }],
    ...drawn,
  });
  await director.make(`/api/contracts/${draft.id}/opening`, { givenByCommitment: [{ commitmentId: draft.commitments[0].id, given }], billedCents: 0, paidCents: 0, asOf: '2026-11-20' });
  return director.look(`/api/contracts/${draft.id}`);
}

const bill = ({ bookkeeper }: Department, contractId: string) => bookkeeper.make('/api/invoices', { contractId, throughDay: ON, issuedOn: '2026-11-23' });

/** What the postings of the happenings of a kind come to, account by account: debit +, credit -. */
async function postedBy({ ask }: Department, contractId: string, kind: string): Promise<Record<string, number>> {
  const rows = await ask<{ journal: string; account: string; amount: number }>(
    `select posting.journal, side.account, sum(side.amount)::integer as amount from posting
       join ledger_event as event on event.department_id = posting.department_id and event.id = posting.event_id,
       lateral (values (to_account, amount), (from_account, -amount)) as side (account, amount)
      where posting.department_id = current_department() and event.contract_id = $1 and event.happening->>'kind' = $2
      group by posting.journal, side.account having sum(side.amount) <> 0`,
    [contractId, kind],
  );
  return Object.fromEntries(rows.map((row) => [`${row.journal} ${row.account}`, row.amount]));
}

/** Looks at a change, makes it, and asks the ledgers whether they moved by what was shown. */
async function change({ director, ask }: Department, contractId: string, kind: string, form: Record<string, unknown>) {
  const before = await ask<{ id: string }>('select id from posting where department_id = current_department()');
  const preview = await director.make(`/api/contracts/${contractId}/${kind}/preview`, { on: ON, ...form });
  expect(preview.refusal).toBe(null);
  expect(await ask('select id from posting where department_id = current_department()')).toHaveLength(before.length);
  const after = await director.make(`/api/contracts/${contractId}/${kind}`, { on: ON, ...form });
  const booked = await ask<{ id: string; line: string }>(
    `select id, concat_ws(' ', journal, from_account, to_account, amount) as line from posting where department_id = current_department() order by recorded_at, id`,
  );
  const known = new Set(before.map((row) => row.id));
  const shown = preview.contracts.flatMap((one: any) => one.postings.map((it: any) => `${it.journal} ${it.from} ${it.to} ${it.amount}`));
  expect(shown.toSorted()).toEqual(booked.filter((row) => !known.has(row.id)).map((row) => row.line).toSorted());
  const { priceCents, billedCents, toBillCents, contractBalanceCents, revenueCents: earnedCents } = preview.contracts[0].after;
  expect(after.standing).toMatchObject({ priceCents, billedCents, toBillCents, contractBalanceCents, earnedCents });
  return { preview, after };
}

const sentences = (preview: any, place = 0) => preview.contracts[place].sentences.map((one: any) => one.sentence);

test('a contract that ends after 10 of 24 reads, billed whole, owes its open value back by memo and a fee that is billed yet (row 26)', async () => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  await bill(scene, contract.id);
  const { preview, after } = await change(scene, contract.id, 'end', { feeCents: 15_000, reason: 'The store closes' });
  expect(await postedBy(scene, contract.id, 'ended')).toEqual({
    'reads promised': 14, 'reads owed': -14, 'agreed promised': 55_000, 'agreed billed': -70_000, 'agreed toBill': 15_000,
    'money 2100': 85_000, 'money 4050': -15_000, 'money 2150': -73_500, 'money 2200': 3_500,
  });
  expect(sentences(preview)).toEqual([
    'Concession read: 14 fewer promised, 14 fewer owed.',
    'The agreed price falls by 550.00: 700.00 less is billed, 150.00 more is to be billed.',
    '35.00 is taken off sales tax payable and off what is open on invoice TR-2027-0001.',
    '700.00 is taken off unearned revenue and off what is open on invoice TR-2027-0001.',
    '150.00 is added to unbilled receivable and to unread revenue.',
  ]);
  expect(preview.contracts[0].memos).toEqual([{ netCents: 70_000, taxCents: 3_500, grossCents: 73_500, parts: [{ invoiceNumber: 'TR-2027-0001', netCents: 70_000, taxCents: 3_500 }] }]);
  expect([preview.contracts[0].before.receivableCents, preview.contracts[0].after.receivableCents, after.standing.receivableCents]).toEqual([126_000, 52_500, 52_500]);
  expect([after.term.state, after.term.endedOn, after.standing.owed]).toEqual(['ended', ON, 0]);
  expect((await scene.director.post(`/api/contracts/${contract.id}/end`, { on: ON })).body.code).toBe('contract-already-ended');
  expect((await scene.director.post(`/api/contracts/${contract.id}/amend`, { commitmentId: contract.commitments[0].id, reads: 1, priceCents: 100 })).body.code).toBe('contract-already-ended');
  const fee = await scene.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: ON, issuedOn: ON });
  expect([fee.netCents, fee.taxCents]).toEqual([15_000, 750]);
});

test('a contract that ends early with nothing billed leaves what was given to be billed, and no memo', async () => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  const { preview } = await change(scene, contract.id, 'end', {});
  expect(await postedBy(scene, contract.id, 'ended')).toEqual({ 'reads promised': 14, 'reads owed': -14, 'agreed promised': 70_000, 'agreed toBill': -70_000 });
  expect(preview.contracts[0].memos).toEqual([]);
  expect(sentences(preview)).toEqual(['Concession read: 14 fewer promised, 14 fewer owed.', 'The agreed price falls by 700.00: 700.00 less is to be billed.']);
  expect((await bill(scene, contract.id)).netCents).toBe(50_000);
});

test.each([
  [6, 30_000, 'at the rate card', 5000],
  [6, 24_000, 'for less: the open part is shared anew', 4700],
])('amended by +%i for %i cents, %s (row 23)', async (reads, priceCents, _, eachCents) => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  const [lineId] = contract.commitments.map((one: any) => one.id);
  const { preview, after } = await change(scene, contract.id, 'amend', { changes: [{ lineId, reads, priceCents }], newBenefits: [{ name: 'Banner at the Perch', rateCents: 10_000, priceCents: 8000 }] });
  expect(await postedBy(scene, contract.id, 'amended')).toEqual({ 'reads promised': -6, 'reads owed': 6, 'agreed promised': -priceCents - 8000, 'agreed toBill': priceCents + 8000 });
  const line = preview.contracts[0].lines[0];
  expect([line.before.owed, line.after.owed, line.openCentsAfter]).toEqual([14, 20, priceCents === 30_000 ? 14 * 5000 + 6 * 5000 : 20 * eachCents]);
  expect([after.term.priceCents, after.commitments[0].reads, after.benefits[0].name]).toEqual([120_000 + priceCents + 8000, 30, 'Banner at the Perch']);
});

test('several lines are amended at once, a new one with them; fewer than settled is refused in the preview and in the act', async () => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  const [lineId] = contract.commitments.map((one: any) => one.id);
  const path = `/api/contracts/${contract.id}/amend`;
  const tooFew = { changes: [{ lineId, reads: -15, priceCents: -10_000 }] };
  expect((await scene.director.make(`${path}/preview`, tooFew)).refusal).toEqual({ code: 'fewer-than-settled', sentence: 'Already 10 are given or settled, so the promise cannot go below that.' });
  expect((await scene.director.post(path, tooFew)).body.code).toBe('fewer-than-settled');
  expect((await scene.director.post(path, { changes: [] })).body.code).toBe('nothing-to-amend');
  const { after } = await change(scene, contract.id, 'amend', {
    changes: [{ lineId, reads: -4, priceCents: -20_000 }],
    newCommitments: [{ readKindId: scene.season.readKinds.gameBall, counting: 'perTerm', reads: 2, rateCents: 7500, priceCents: 15_000 }],
  });
  expect(after.commitments.map((one: any) => [one.readKindName, one.reads, one.standing.owed])).toEqual([['Concession read', 20, 10], ['Sponsored game ball', 2, 2]]);
  expect(after.standing.priceCents).toBe(115_000);
});

test('the price is lowered by 100.00 after 10 given and all billed (row 24)', async () => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  await bill(scene, contract.id);
  const { after, preview } = await change(scene, contract.id, 'lower-price', { byCents: 10_000, reason: 'The scoreboard was dark in December' });
  expect(await postedBy(scene, contract.id, 'priceLowered')).toEqual({
    'agreed promised': 10_000, 'agreed billed': -10_000, 'money 2100': 10_000, 'money 2200': 500, 'money 2150': -10_500,
  });
  expect(preview.contracts[0].lines[0].openCentsAfter).toBe(60_000);
  expect([after.term.priceCents, after.standing.toBillCents]).toEqual([110_000, 0]);
  const memo = (await scene.bookkeeper.look(`/api/contracts/${contract.id}/account-statement`)).lines.find((line: any) => line.sentence.startsWith('The price'));
  expect(memo.sentence).toBe('The price of what is still to come was lowered by $100.00.');
});

test('5 of one line are swapped for 4 of another at +40.00 (row 27)', async () => {
  const scene = await aScene();
  const { season } = scene;
  const contract = await aSignedContract(scene, season, {
    priceCents: 150_000, commitments: [
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5000 },
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 4, rateCents: 7500 },
    ],
  });
  const [fromLineId, toLineId] = contract.commitments.map((one: any) => one.id);
  const { preview, after } = await change(scene, contract.id, 'swap', { fromLineId, fromReads: 5, toLineId, toReads: 4, priceCents: 4000 });
  expect(await postedBy(scene, contract.id, 'swapped')).toEqual({ 'reads promised': 1, 'reads owed': -1, 'agreed promised': -4000, 'agreed toBill': 4000 });
  expect(sentences(preview)).toEqual(['Concession read: 5 fewer promised, 5 fewer owed.', 'Sponsored game ball: 4 more promised, 4 more owed.', 'The agreed price rises by 40.00: 40.00 more is to be billed.']);
  expect(preview.contracts[0].lines.map((line: any) => line.openCentsAfter)).toEqual([95_000, 59_000]);
  expect(after.commitments.map((one: any) => one.reads)).toEqual([19, 8]);
});

test('2 reads are carried into the next contract, their value billed already; what was carried sums to zero (row 29)', async () => {
  const scene = await aScene();
  const { season, director } = scene;
  const old = await aTerm(scene, 10);
  await bill(scene, old.id);
  const next = await aSignedContract(scene, season, { title: 'Next season' });
  const [lineId, toLineId] = [old.commitments[0].id, next.commitments[1].id];
  const form = { toContractId: next.id, lineId, toLineId, count: 2 };
  const { preview, after } = await change(scene, old.id, 'carry', form);
  expect(after.standing).toMatchObject({ owed: 12, carried: 2, priceCents: 110_000, billedCents: 110_000 });
  expect((await director.look(`/api/contracts/${next.id}`)).standing).toMatchObject({ owed: 16, carried: -2, priceCents: 80_000, billedCents: 10_000, toBillCents: 70_000 });
  expect(preview.contracts.map((one: any) => [one.before.contractBalanceCents, one.after.contractBalanceCents])).toEqual([[-70_000, -60_000], [0, -10_000]]);
  expect(await postedBy(scene, old.id, 'carriedOut')).toMatchObject({ 'reads owed': -2, 'reads carried': 2, 'agreed promised': 10_000, 'agreed billed': -10_000, 'money 2100': 10_000 });
  expect(await postedBy(scene, next.id, 'carriedIn')).toMatchObject({ 'reads owed': 2, 'reads carried': -2, 'agreed promised': -10_000, 'agreed billed': 10_000, 'money 2100': -10_000 });
  expect((await director.post(`/api/contracts/${old.id}/carry`, { ...form, count: 13 })).body.code).toBe('more-than-owed');
});

test('reads are carried neither across sellers of record, nor to another sponsor, nor into the same contract, nor into a draft', async () => {
  const scene = await aScene();
  const { season, director } = scene;
  const old = await aTerm(scene, 10);
  const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
  const creamery = await director.make('/api/sponsors', { name: 'Snowmelt Creamery', categoryId: season.categoryId });
  const cases: [string, string][] = [
    [(await aSignedContract(scene, { ...season, sellerId: boosters.id }, { title: 'Boosters' })).id, 'payment-crosses-sellers'],
    [(await aSignedContract(scene, { ...season, sponsorId: creamery.id }, { title: 'Creamery' })).id, 'carried-to-another-sponsor'],
    [old.id, 'carried-to-itself'],
    [(await aContract(scene, season)).id, 'contract-not-signed'],
    ['01900000-0000-7000-8000-000000000000', 'unknown-contract'],
  ];
  for (const [toContractId, code] of cases) {
    const form = { toContractId, lineId: old.commitments[0].id, toLineId: old.commitments[0].id, count: 1 };
    expect((await director.post(`/api/contracts/${old.id}/carry`, form)).body.code).toBe(code);
    expect((await director.make(`/api/contracts/${old.id}/carry/preview`, form)).refusal.code).toBe(code);
  }
});

test('a contract goes on with its new owner: nothing is posted, issued invoices keep their names, the next ones name the new payer', async () => {
  const scene = await aScene();
  const { season, director, bookkeeper } = scene;
  const contract = await aSignedContract(scene, season);
  const first = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const sponsor = await director.make('/api/sponsors', { name: 'Pinyon Print Works', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Pinyon Print Works', sponsorId: sponsor.id });
  const form = { toSponsorId: sponsor.id, toPayerId: payer.id, reason: 'The store was sold' };
  const { preview, after } = await change(scene, contract.id, 'assign', form);
  expect(preview.contracts[0].postings).toEqual([]);
  expect(preview.cautions.join(' ')).toContain('367.50 on its invoices is not paid yet, and stays with the payer they name.');
  expect([after.sponsorName, after.payerName, after.sellerId]).toEqual(['Pinyon Print Works', 'Pinyon Print Works', season.sellerId]);
  expect(after.assignments).toEqual([{ assignedOn: ON, fromSponsorName: 'Juniper & Pike Hardware', fromPayerName: 'Juniper & Pike Hardware', reason: 'The store was sold' }]);
  const second = await bookkeeper.make('/api/invoices', { contractId: contract.id, issuedOn: ON });
  expect([(await bookkeeper.look(`/api/invoices/${first.id}`)).payerName, second.payerName]).toEqual(['Juniper & Pike Hardware', 'Pinyon Print Works']);
  expect((await director.post(`/api/contracts/${contract.id}/assign`, form)).body.code).toBe('already-the-owner');
  const blocked = await director.make('/api/sponsor-categories', { name: 'Vaping', isBlocked: true });
  const vapes = await director.make('/api/sponsors', { name: 'Blue Lantern Vapes', categoryId: blocked.id });
  expect((await director.post(`/api/contracts/${contract.id}/assign`, { ...form, toSponsorId: vapes.id })).body.code).toBe('category-blocked');
});

test('a contract closes only when nothing is owed, to bill or open, each named; then with zeros; and opens again', async () => {
  const scene = await aScene();
  const { season, director, bookkeeper } = scene;
  const contract = await aTerm(scene, 24, { title: 'All given' });
  const owing = await aTerm(scene, 22, { title: 'Two owed' });
  const close = async (id: string) => (await director.post(`/api/contracts/${id}/close`, { on: ON })).body;
  expect((await close(owing.id)).detail).toBe('Still owed: 2 of Concession read. Give, make good, credit or end them first.');
  expect((await close(contract.id)).detail).toBe('1,200.00 is still to be billed or credited.');
  const invoice = await bill(scene, contract.id);
  expect((await close(contract.id)).detail).toBe(`Still open: ${invoice.number} (1,260.00). Take in, credit or write off what is left of these invoices first.`);
  const payment = await bookkeeper.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: ON, method: 'check', amountCents: 130_000, applications: [{ invoiceId: invoice.id, amountCents: 126_000 }],
  });
  expect((await close(contract.id)).detail).toBe(`Still unused: ${payment.number} (40.00). Apply these credits to an invoice or refund them first.`);
  const other = await aTerm(scene, 24, { title: 'Takes the rest', priceCents: 4000 });
  const rest = await bill(scene, other.id);
  await bookkeeper.make(`/api/payments/${payment.id}/applications`, { invoiceId: rest.id, amountCents: 4000 });
  const { after } = await change(scene, contract.id, 'close', {});
  expect([after.term.state, after.term.closedOn, after.standing.owed, after.standing.toBillCents, after.standing.contractBalanceCents, after.standing.receivableCents]).toEqual(['closed', ON, 0, 0, 0, 0]);
  expect((await close(contract.id)).code).toBe('contract-closed');
  const again = await change(scene, contract.id, 'reopen', {});
  expect([again.after.term.state, again.after.term.closedOn]).toEqual(['signed', null]);
  expect((await director.post(`/api/contracts/${contract.id}/reopen`)).body.code).toBe('contract-not-closed');
});

test('the explanation of a contract is made of sums that add up to what the contract page shows', async () => {
  const scene = await aScene();
  const contract = await aTerm(scene, 10);
  await bill(scene, contract.id);
  await scene.director.make(`/api/contracts/${contract.id}/lower-price`, { byCents: 10_000, on: ON });
  const { sums, reads, consult } = await scene.bookkeeper.look(`/api/contracts/${contract.id}/explanation`);
  for (const one of sums) expect([one.key, one.rows.reduce((sum: number, row: any) => sum + row.amountCents, 0)]).toEqual([one.key, one.total.amountCents]);
  const { standing } = await scene.director.look(`/api/contracts/${contract.id}`);
  expect(Object.fromEntries(sums.map((one: any) => [one.key, one.total.amountCents]))).toEqual({
    moves: standing.priceCents, price: standing.priceCents, earned: standing.earnedCents, billed: standing.billedCents, balance: standing.contractBalanceCents, bridge: 60_000, tax: 5500, unpaid: standing.receivableCents,
  });
  expect(reads[0].parts).toEqual([{ words: 'given', count: 10 }, { words: 'still owed', count: 14 }]);
  expect(consult).toBe('Consult the business office: ASC 606 for clubs and private schools, GASB for public districts.');
  const draft = await aContract(scene, scene.season);
  expect((await scene.bookkeeper.look(`/api/contracts/${draft.id}/explanation`)).sums).toEqual([]);
  expect((await scene.announcer.get(`/api/contracts/${contract.id}/explanation`)).status).toBe(403);
});

test('an unpaid sponsor’s contract is ended first; then what was earned and not paid is written off, and nothing unearned with it (row 36)', async () => {
  const scene = await aScene();
  const { director, bookkeeper } = scene;
  const contract = await aTerm(scene, 10);
  const invoice = await bill(scene, contract.id);
  expect((await bookkeeper.post(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 126_000, reason: 'The store closed' })).body.code).toBe('write-off-before-ending');
  await change(scene, contract.id, 'end', {});
  const { waitingWriteOff } = await bookkeeper.make(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 52_500, reason: 'The store closed' });
  await director.make(`/api/write-off-requests/${waitingWriteOff.id}/approve`, { on: ON });
  const { after } = await change(scene, contract.id, 'close', {});
  expect([after.term.state, after.standing.earnedCents, after.standing.receivableCents]).toEqual(['closed', 50_000, 0]);
});

test('a contract paid in goods that ends early: what came in goods beyond what was given is credited, by a memo that names no invoice', async () => {
  const scene = await aScene();
  const { season, director, bookkeeper } = scene;
  const made = await aContract(scene, season, {
    title: 'Game balls for reads', priceCents: 120_000, billingPlan: { kind: 'inFull', on: '2026-11-23' },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 24, rateCents: 5000 }],
  });
  await director.patch(`/api/contracts/${made.id}`, { isInKind: true }, { version: made.version });
  await director.make(`/api/contracts/${made.id}/opening`, { givenByCommitment: [{ commitmentId: made.commitments[0].id, given: 2 }], billedCents: 0, paidCents: 0, asOf: '2026-11-20' });
  await bookkeeper.make(`/api/contracts/${made.id}/goods`, { receivedOn: '2026-12-01', what: 'Twelve game balls', amountCents: 60_000 });
  const { preview, after } = await change(scene, made.id, 'end', {});
  expect(preview.contracts[0].memos).toEqual([{ netCents: 50_000, taxCents: 0, grossCents: 50_000, parts: [{ invoiceNumber: null, netCents: 50_000, taxCents: 0 }] }]);
  expect(after.standing).toMatchObject({ priceCents: 10_000, billedCents: 10_000, toBillCents: 0, contractBalanceCents: 0 });
  expect((await director.post(`/api/contracts/${made.id}/close`, { on: ON })).body.code).toBe('close-with-open-credits');
});

test('a banner that earns over its days earns the days that passed before its contract ends, shown first and booked first', async () => {
  const scene = await aScene();
  const banner = { name: 'Banner above the Perch', rateCents: 10_000, earns: 'overDays', startsOn: '2027-01-11', endsOn: '2027-01-30' };
  const contract = await aSignedContract(scene, scene.season, { priceCents: 10_000, commitments: [], benefits: [banner] });
  const { preview, after } = await change(scene, contract.id, 'end', { on: '2027-01-12' });
  expect(await postedBy(scene, contract.id, 'benefitEarnedThrough')).toMatchObject({ 'money 2100': 1000 });
  expect([preview.contracts[0].before.revenueCents, preview.contracts[0].after.revenueCents, after.standing.priceCents]).toEqual([0, 1000, 1000]);
});

test('what posts nothing books no days either: a hold leaves a banner as it stands', async () => {
  const scene = await aScene();
  const banner = { name: 'Banner above the Perch', rateCents: 10_000, earns: 'overDays', startsOn: '2027-01-11', endsOn: '2027-01-30' };
  const contract = await aSignedContract(scene, scene.season, { priceCents: 10_000, commitments: [], benefits: [banner] });
  const { after } = await change(scene, contract.id, 'hold', { reason: 'The store is being rebuilt' });
  expect(after.standing.earnedCents).toBe(0);
});

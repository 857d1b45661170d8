import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aLaterSeason, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** Forty concession reads for 1,000.00, at 25.00 each; 5 % tax. */
async function fortyReads(department: Department, season: Season, more: Record<string, unknown> = {}) {
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 40, rateCents: 2_500 }];
  return aSignedContract(department, season, { commitments, priceCents: 100_000, billingPlan: { kind: 'inFull', on: '2026-11-20' }, ...more });
}

/** Logs so many reads in a game, and replacements of a makegood beside them, and signs the night off. */
async function give({ director }: Department, { gameId, nightId }: Season['games'][number], commitmentId: string, count: number, makegoodId?: string, replacements = 0) {
  const device = new TableDevice();
  const entries: Record<string, unknown>[] = Array.from({ length: count }, (_, cue) => device.read(commitmentId, gameId, cue + 30));
  for (let place = 0; place < replacements; place += 1) {
    const { id, cueKey, windowKey } = await director.make('/api/placements', { commitmentId, gameId, windowKey: place < 2 ? 'pregame' : 'halftime', makegoodId });
    entries.push(device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId, placementId: id, cueKey, windowKey }));
  }
  await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries });
  await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
}

// CHECKS.md, section 7, fulfillment vectors: 40 at 25.00, 33 given, 4 made good: 37 fulfilled, 3 short, credit 75.00, earned 925.00.
test('of forty reads 33 are given and 4 made good, so 3 are short, 75.00 is credited and 925.00 is earned', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 2);
  const contract = await fortyReads(department, season);
  const [line] = contract.commitments;
  await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const agreement = { commitmentId: line.id, missed: 4, replacementReadKindId: season.readKinds.gameBall, replacements: 2, agreedOn: '2026-12-05', agreedWith: 'Hazel Juniper' };
  const { data: [makegood] } = await director.make(`/api/contracts/${contract.id}/makegoods`, agreement);
  expect((await director.post(`/api/contracts/${contract.id}/makegoods`, { ...agreement, missed: 37 })).body.code).toBe('more-than-owed');
  await give(department, season.games[0]!, line.id, 33);
  await give(department, season.games[1]!, line.id, 0, makegood.id, 2);
  const standing = async () => (await director.look(`/api/contracts/${contract.id}`)).standing;
  expect(await standing()).toMatchObject({ promised: 40, given: 33, madeGood: 4, owed: 3, earnedCents: 92_500 });
  const credited = await bookkeeper.make(`/api/contracts/${contract.id}/credits`, { commitmentId: line.id, count: 3, reason: 'Three were not given', on: '2026-12-12' });
  expect(credited).toMatchObject({ memoCents: 7_500, memoTaxCents: 375 });
  expect(await standing()).toMatchObject({ owed: 0, credited: 3, earnedCents: 92_500, billedCents: 92_500, contractBalanceCents: 0 });
});

// CHECKS.md, section 7: over-delivery 43: bonus 3, invoice unchanged.
test('of forty reads 43 are given: three are extra and the invoice is what it was', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await fortyReads(department, season);
  await department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  await give(department, season.games[0]!, contract.commitments[0].id, 43);
  expect((await department.director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ given: 40, extra: 3, earnedCents: 100_000, billedCents: 100_000, receivableCents: 105_000 });
});

test('a credit of what is billed in part comes off what is still to bill first, and its preview changes nothing', async () => {
  const department = await aDepartment();
  const { bookkeeper, director } = department;
  const season = await aSeason(department, 0);
  const halves = { kind: 'installments', installments: [{ on: '2026-11-23', share: 1 }, { on: '2027-01-15', share: 1 }] };
  const contract = await fortyReads(department, season, { billingPlan: halves });
  const [line] = contract.commitments;
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const asked = { commitmentId: line.id, count: 22, reason: 'The gym floor is being laid anew', on: '2026-12-01' };
  const foreseen = await bookkeeper.make(`/api/contracts/${contract.id}/credits/preview`, asked);
  expect(foreseen).toMatchObject({ valueCents: 55_000, unbilledCents: 50_000, memoCents: 5_000, memoTaxCents: 250, owedBefore: 40, owedAfter: 18 });
  expect(foreseen.words).toContain('$500.00 of it was not billed yet and comes off what is still to bill.');
  expect((await bookkeeper.look('/api/credit-memos')).total).toBe(0);
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ owed: 40, toBillCents: 50_000 });
  const { creditMemoIds } = await bookkeeper.make(`/api/contracts/${contract.id}/credits`, asked);
  expect(await bookkeeper.look(`/api/credit-memos/${creditMemoIds[0]}`)).toMatchObject({ grossCents: 5_250, appliedCents: 5_250, reason: asked.reason, contractId: contract.id });
  expect((await bookkeeper.look(`/api/invoices/${invoice.id}`)).balanceCents).toBe(52_500 - 5_250);
  expect((await director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ owed: 18, toBillCents: 0, priceCents: 45_000 });
});

test('a memo on a paid invoice waits as a credit, pays another invoice of the same payer and never one of another seller', async () => {
  const department = await aDepartment();
  const { bookkeeper, director } = department;
  const season = await aSeason(department, 0);
  const contract = await fortyReads(department, season);
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'transfer', amountCents: 105_000, applications: [{ invoiceId: invoice.id, amountCents: 105_000 }] });
  const { creditMemoIds, words } = await bookkeeper.make(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[0].id, count: 2, reason: 'Two were missed', on: '2026-12-02' });
  expect(words.at(-1)).toBe('$52.50 stays as a credit of the payer, to be applied or refunded.');
  const memo = `/api/credit-memos/${creditMemoIds[0]}`;
  expect(await bookkeeper.look(memo)).toMatchObject({ unappliedCents: 5_250, state: 'open' });

  const other = await fortyReads(department, season, { title: 'A second contract' });
  const second = await bookkeeper.make('/api/invoices', { contractId: other.id, throughDay: '2026-12-02', issuedOn: '2026-12-02' });
  const club = await director.make('/api/sellers', { name: 'Kestrel Booster Club', numberPrefix: 'KB', taxBasisPoints: 0 });
  const charge = await bookkeeper.make('/api/charges', { payerId: season.payerId, sellerId: club.id, description: 'Late fee', amountCents: 10_000, issuedOn: '2026-12-02' });
  expect((await bookkeeper.post(`${memo}/applications`, { invoiceId: charge.id, amountCents: 100 })).body.code).toBe('payment-crosses-sellers');
  expect((await bookkeeper.post(`${memo}/applications`, { invoiceId: second.id, amountCents: 5_251 })).body.code).toBe('more-than-unapplied');
  const used = await bookkeeper.make(`${memo}/applications`, { invoiceId: second.id, amountCents: 5_250 });
  expect(used).toMatchObject({ unappliedCents: 0, state: 'used' });
  expect((await bookkeeper.make(`/api/applications/${used.applications[0].id}/take-back`)).unappliedCents).toBe(5_250);
  await bookkeeper.make(`${memo}/refunds`, { amountCents: 5_250, refundedOn: '2026-12-03', method: 'check' });
  expect(await bookkeeper.look(memo)).toMatchObject({ refundedCents: 5_250, unappliedCents: 0 });
});

test('on a trade deal a missed read proposes a makegood, and is credited only where somebody insists', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 0);
  const draft = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Reads for game balls', isInKind: true,
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2026-11-20' } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5_000 }], benefits: [],
  });
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const asked = { commitmentId: draft.commitments[0].id, count: 2, reason: 'Two were missed', on: '2026-12-02' };
  const refused = await bookkeeper.post(`/api/contracts/${draft.id}/credits`, asked);
  expect([refused.status, refused.body.code]).toEqual([422, 'makegood-before-credit']);
  expect(refused.body.detail ?? refused.body.title).toContain('Agree a makegood');
  expect((await bookkeeper.make(`/api/contracts/${draft.id}/credits`, { ...asked, insists: true })).valueCents).toBe(10_000);
});

test('forfeited reads keep their value, released ones move it on, an allowance stands against what is earned; each says so first', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 1);
  const contract = await fortyReads(department, season);
  const path = `/api/contracts/${contract.id}`;
  const commitmentId = contract.commitments[0].id;
  await give(department, season.games[0]!, commitmentId, 10);
  const standing = async () => (await director.look(path)).standing;
  const forfeit = { commitmentId, count: 4, reason: 'Section 6: copy not handed in', notice: 'By e-mail on December 1', on: '2026-12-10' };
  expect((await bookkeeper.make(`${path}/forfeits/preview`, forfeit)).words).toEqual(['30 reads are owed now, 26 afterward.', 'Their value of $100.00 is kept and becomes revenue without a read.']);
  expect((await bookkeeper.post(`${path}/forfeits`, { ...forfeit, notice: '' })).status).toBe(400);
  await bookkeeper.make(`${path}/forfeits`, forfeit);
  expect(await standing()).toMatchObject({ owed: 26, released: 4, earnedCents: 35_000, priceCents: 100_000 });
  expect((await bookkeeper.make(`${path}/releases`, { commitmentId, count: 6, reason: 'Agreed by telephone', on: '2026-12-10' })).words).toEqual(['26 reads are owed now, 20 afterward.', 'Their value moves on to the 20 reads still owed; the price stays.']);
  expect(await standing()).toMatchObject({ owed: 20, earnedCents: 35_000, priceCents: 100_000 });
  const allowed = await bookkeeper.make(`${path}/allowances`, { amountCents: 3_000, reason: 'The horn ran into two reads', on: '2026-12-11' });
  expect(allowed).toMatchObject({ valueCents: 3_000, unbilledCents: 3_000, memoCents: 0, creditMemoIds: [] });
  expect((await bookkeeper.post(`${path}/allowances`, { amountCents: 32_001, reason: 'More than was earned', on: '2026-12-11' })).body.code).toBe('more-than-earned');
  expect((await bookkeeper.post(`${path}/overbilling-credits`, { reason: 'None' })).body.code).toBe('nothing-overbilled');
  expect((await bookkeeper.post(`${path}/minimum-claims`)).body.code).toBe('no-minimum-agreed');
  const { lines } = await director.look(`${path}/delivery-statement`);
  expect(lines.some((one: { sentence: string }) => one.sentence === '4 of Concession read were forfeited by the sponsor. Reason: Section 6: copy not handed in.')).toBe(true);
});

test('a memo on an invoice that was written off undoes the write-off first, and nothing is left to refund', async () => {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 1);
  const contract = await fortyReads(department, season);
  const commitmentId = contract.commitments[0].id;
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  await give(department, season.games[0]!, commitmentId, 40);
  await bookkeeper.make(`/api/invoices/${invoice.id}/write-off-requests`, { amountCents: 105_000, reason: 'The store has closed' });
  const [asked] = await department.ask<{ id: string }>(`select id from write_off where department_id = $1 and step = 'asked'`, [department.id]);
  await director.make(`/api/write-off-requests/${asked!.id}/approve`, {});
  const { creditMemoIds } = await bookkeeper.make(`/api/contracts/${contract.id}/allowances`, { amountCents: 10_000, reason: 'Agreed with the trustee', on: '2026-12-20' });
  expect(await bookkeeper.look(`/api/credit-memos/${creditMemoIds[0]}`)).toMatchObject({ grossCents: 10_500, appliedCents: 10_500, unappliedCents: 0 });
  expect(await bookkeeper.look(`/api/invoices/${invoice.id}`)).toMatchObject({ balanceCents: 0, writtenOffCents: 94_500, appliedCents: 10_500 });
});

test('a placement makes good only what was agreed for its commitment, and no more reads than were agreed', async () => {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, 1);
  const contract = await aSignedContract(department, season);
  const [ball, concession] = contract.commitments;
  const { data: [makegood] } = await director.make(`/api/contracts/${contract.id}/makegoods`, { commitmentId: ball.id, missed: 1, replacementReadKindId: season.readKinds.concession, replacements: 1, agreedOn: '2026-12-01', agreedWith: 'Hazel Juniper' });
  const { gameId, nightId } = season.games[0]!;
  const placed = { gameId, windowKey: 'halftime', makegoodId: makegood.id };
  expect((await director.post('/api/placements', { ...placed, commitmentId: concession.id })).body.code).toBe('makegood-of-another-commitment');
  expect((await director.post('/api/placements', { ...placed, commitmentId: ball.id, windowKey: 'pregame' })).body.code).toBe('window-not-of-the-kind');
  expect(await director.make('/api/placements', { ...placed, commitmentId: ball.id })).toMatchObject({ readKindName: 'Concession read', makegoodId: makegood.id });
  expect((await director.post('/api/placements', { ...placed, commitmentId: ball.id })).body.code).toBe('makegood-all-placed');
  const packet = JSON.stringify(await director.look(`/api/nights/${nightId}/packet`));
  expect(packet).toContain('Concession read');
  // Of six balls five are still to be placed, and the one pregame has three places.
  expect((await director.make('/api/plan/spread', { seasonId: season.seasonId })).left).toMatchObject([{ readKindName: 'Sponsored game ball', notPlaced: 2 }]);
});

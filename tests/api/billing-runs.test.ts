import { describe, expect, test } from 'vitest';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aContract, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const THROUGH = { throughDay: '2026-11-30', issuedOn: '2026-11-30' };

async function aBilledSeason(games = 0): Promise<{ department: Department; season: Season }> {
  const department = await aDepartment();
  return { department, season: await aSeason(department, games) };
}

/** A run answers before it is through; this asks until it is. */
async function finished({ bookkeeper }: Department, id: string): Promise<any> {
  for (let tries = 0; tries < 200; tries += 1) {
    const run = await bookkeeper.look(`/api/billing-runs/${id}`);
    if (run.isFinished) return run;
    await new Promise((wait) => setTimeout(wait, 50));
  }
  throw new Error('the run does not come to its end');
}

async function run(department: Department, form: object = THROUGH): Promise<any> {
  const { id } = await department.bookkeeper.make('/api/billing-runs', form);
  return finished(department, id);
}

const liveInvoices = async ({ bookkeeper }: Department) => (await bookkeeper.look('/api/invoices?sort=number&perPage=100')).data;

describe('a billing run', () => {
  test('bills what is due of every contract, and says of the others why not', async () => {
    const { department, season } = await aBilledSeason();
    const { director } = department;
    const due = await aSignedContract(department, season, { title: 'Due' });
    const later = await aSignedContract(department, season, { title: 'Later', billingPlan: { kind: 'inFull', on: '2026-12-01' } });
    await aContract(department, season, { title: 'Draft' });
    const elsewhere = await director.make('/api/sellers', { name: 'Ridge Foundation', numberPrefix: 'RF', keepsBooksHere: false });
    const club = await director.make('/api/contracts', { ...(await drawn(season, 'Club')), sellerId: elsewhere.id });
    await director.make(`/api/contracts/${club.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
    const before = await department.bookkeeper.look('/api/billing-runs/preview?through=2026-11-30&issuedOn=2026-11-30');
    expect(before.contracts.map((one: any) => [one.contractTitle, one.isSkipped, one.grossCents, one.why])).toEqual([
      ['Club', true, 0, 'This seller of record keeps its books elsewhere; here only its reads are kept.'],
      ['Due', false, 36_750, 'Due through 2026-11-30.'],
      ['Later', true, 0, 'The next part falls due after 2026-11-30.'],
    ]);
    expect(before.totals).toEqual([{ sellerId: season.sellerId, sellerName: 'Tamarack Ridge Athletics', invoices: 1, netCents: 35_000, grossCents: 36_750 }]);
    expect(await liveInvoices(department)).toEqual([]);
    const done = await run(department);
    expect(done).toMatchObject({ contracts: 3, done: 3, issued: 1, skipped: 2, netCents: 35_000, grossCents: 36_750, isRunning: false });
    expect(done.lines.map((line: any) => [line.contractId, line.outcome, line.invoiceNumber])).toEqual(
      expect.arrayContaining([[due.id, 'issued', 'TR-2027-0001'], [later.id, 'skipped', null], [club.id, 'skipped', null]]),
    );
  });

  test('gives nothing more when it is repeated', async () => {
    const { department, season } = await aBilledSeason();
    await aSignedContract(department, season);
    expect((await run(department)).issued).toBe(1);
    expect(await run(department)).toMatchObject({ issued: 0, skipped: 1, grossCents: 0 });
    expect((await liveInvoices(department)).map((one: any) => one.number)).toEqual(['TR-2027-0001']);
  });

  test('two at once give what one gives, and the numbers have no gap', async () => {
    const { department, season } = await aBilledSeason();
    for (let one = 0; one < 4; one += 1) await aSignedContract(department, season, { title: `Contract ${one}` });
    const runs = await Promise.all([run(department), run(department), run(department)]);
    expect(runs.reduce((sum, one) => sum + one.issued, 0)).toBe(4);
    expect((await liveInvoices(department)).map((one: any) => [one.number, one.grossCents])).toEqual([1, 2, 3, 4].map((number) => [`TR-2027-000${number}`, 36_750]));
  });

  test('says nothing of a contract whose books are busy: it stays unfinished and is gone on with', async () => {
    const { department, season } = await aBilledSeason();
    const contract = await aSignedContract(department, season);
    const busy = await application.ownerPool.connect();
    try {
      await busy.query(`begin; set local app.department_id = '${department.id}'`);
      await busy.query('select 1 from contract where department_id = $1 and id = $2 for update', [department.id, contract.id]);
      const { id } = await department.bookkeeper.make('/api/billing-runs', THROUGH);
      await expect.poll(async () => (await department.bookkeeper.look(`/api/billing-runs/${id}`)).isRunning, { timeout: 20_000 }).toBe(false);
      expect(await department.bookkeeper.look(`/api/billing-runs/${id}`)).toMatchObject({ contracts: 1, done: 0, isFinished: false });
      await busy.query('rollback');
      await department.bookkeeper.make(`/api/billing-runs/${id}/continue`);
      expect(await finished(department, id)).toMatchObject({ done: 1, issued: 1, skipped: 0 });
    } finally {
      busy.release(true);
    }
  });

  test('that broke off after a batch goes on where it stood', async () => {
    const { department, season } = await aBilledSeason();
    const contracts = [];
    for (let one = 0; one < 3; one += 1) contracts.push(await aSignedContract(department, season, { title: `Contract ${one}` }));
    // As a server leaves it that was killed between two batches: the run is written down, one contract is dealt with.
    const first = await run(department, { ...THROUGH, throughDay: '2026-11-22' });
    expect(first).toMatchObject({ issued: 0, skipped: 3 });
    const id = '01900000-0000-7000-8000-000000000001';
    await department.ask(
      `insert into billing_run (department_id, id, through_day, issued_on, contract_ids) values ($1, $2, '2026-11-30', '2026-11-30', $3::uuid[])`,
      [department.id, id, contracts.map((one) => one.id)],
    );
    await department.ask(
      `insert into billing_run_line (department_id, id, billing_run_id, contract_id, outcome, why) values ($1, gen_random_uuid(), $2, $3, 'skipped', 'Nothing was due.')`,
      [department.id, id, contracts[0].id],
    );
    expect(await department.bookkeeper.look(`/api/billing-runs/${id}`)).toMatchObject({ contracts: 3, done: 1, isFinished: false, isRunning: false, startedByName: null });
    await Promise.all([department.bookkeeper.make(`/api/billing-runs/${id}/continue`), department.bookkeeper.make(`/api/billing-runs/${id}/continue`)]);
    expect(await finished(department, id)).toMatchObject({ done: 3, issued: 2, skipped: 1, netCents: 70_000 });
    expect(await liveInvoices(department)).toHaveLength(2);
  });

  test('skips with its sentence a contract that a rule refuses, and bills the others', async () => {
    const { department, season } = await aBilledSeason();
    await aSignedContract(department, season, { title: 'Too large a deposit', billingPlan: { kind: 'depositAndArrears', depositCents: 70_001, depositOn: '2026-11-23' } });
    await aSignedContract(department, season, { title: 'Just right', billingPlan: { kind: 'depositAndArrears', depositCents: 70_000, depositOn: '2026-11-23' } });
    const done = await run(department);
    expect(done.lines.map((line: any) => [line.contractTitle, line.outcome, line.why])).toEqual([
      ['Just right', 'issued', 'Due through 2026-11-30.'],
      ['Too large a deposit', 'skipped', 'Only 700.00 of this contract is still to be billed.'],
    ]);
    expect((await liveInvoices(department)).map((one: any) => one.number)).toEqual(['TR-2027-0001']);
  });

  test('leaves alone what is on hold, and bills one seller only where one is named', async () => {
    const { department, season } = await aBilledSeason();
    const boosters = await department.director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB' });
    const held = await aSignedContract(department, season, { title: 'Held' });
    await department.ask(
      `insert into contract_hold (department_id, id, contract_id, held_on, reason) values ($1, gen_random_uuid(), $2, '2026-11-25', 'Unpaid since the fall.')`,
      [department.id, held.id],
    );
    const club = await department.director.make('/api/contracts', { ...(await drawn(season, 'Club')), sellerId: boosters.id });
    await department.director.make(`/api/contracts/${club.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
    expect((await run(department, { ...THROUGH, sellerId: season.sellerId })).lines.map((line: any) => [line.outcome, line.why])).toEqual([['skipped', 'On hold since November 25, 2026: Unpaid since the fall.']]);
    expect((await run(department, { ...THROUGH, sellerId: boosters.id })).lines[0]).toMatchObject({ outcome: 'issued', invoiceNumber: 'KB-2027-0001', netCents: 35_000 });
  });

  test('is refused where there is no contract, and seen by nobody who sees no money', async () => {
    const { department } = await aBilledSeason();
    expect((await department.bookkeeper.post('/api/billing-runs', THROUGH)).body.code).toBe('run-is-not-billable');
    expect((await department.announcer.get('/api/billing-runs/preview')).status).toBe(403);
  });
});

describe('a plan through the API', () => {
  test('bills installments of fixed amounts, the last with the rest; more than the price is refused at signing', async () => {
    const { department, season } = await aBilledSeason();
    const plan = (...amounts: number[]) => ({ kind: 'installments', installments: amounts.map((amountCents, place) => ({ on: `2026-11-2${place}`, amountCents })) });
    const over = await aContract(department, season, { billingPlan: plan(40_000, 30_001) });
    const refused = await department.director.post(`/api/contracts/${over.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
    expect([refused.body.code, refused.body.detail]).toEqual(['installments-exceed-price', 'The installments come to 700.01, more than the price of 700.00.']);
    await aSignedContract(department, season, { billingPlan: plan(40_000, 20_000) });
    await run(department);
    const [invoice] = await liveInvoices(department);
    expect((await department.bookkeeper.look(`/api/invoices/${invoice.id}`)).lines.map((line: any) => [line.description, line.amountCents])).toEqual([
      ['Installment 1 of 2', 40_000], ['Installment 2 of 2, with the rest of the price', 30_000],
    ]);
  });

  test('bills each played game its even share, and the reads of a month once it is over', async () => {
    const { department, season } = await aBilledSeason(3);
    const { director } = department;
    await aSignedContract(department, season, { title: 'By the game', billingPlan: { kind: 'perGame' } });
    const monthly = await aSignedContract(department, season, { title: 'By the month', billingPlan: { kind: 'perReadInArrears', monthly: true } });
    const [first] = season.games as [(typeof season.games)[0]];
    const device = new TableDevice();
    await director.make(`/api/nights/${first.nightId}/log`, { deviceId: device.deviceId, entries: [device.read(monthly.commitments[1].id, first.gameId, 1)] });
    await director.make(`/api/nights/${first.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    await director.make(`/api/games/${first.gameId}/play`, { scores: [] }).catch(() => undefined);
    const before = await department.bookkeeper.look('/api/billing-runs/preview?through=2026-12-30&issuedOn=2026-12-30');
    expect(before.contracts.map((one: any) => [one.contractTitle, one.isSkipped, one.netCents])).toEqual([['By the game', false, 23_334], ['By the month', true, 0]]);
    const done = await run(department, { throughDay: '2026-12-31', issuedOn: '2026-12-31' });
    expect(done.lines.map((line: any) => [line.contractTitle, line.netCents])).toEqual([['By the game', 23_334], ['By the month', 3_637]].sort());
    const lines = (await Promise.all(done.lines.map((line: any) => department.bookkeeper.look(`/api/invoices/${line.invoiceId}`)))).flatMap((one: any) => one.lines);
    expect(lines.map((line: any) => line.description).sort()).toEqual(['Concession read', 'Game of December 4, 2026 against Port Ansel']);
    expect(lines.find((line: any) => line.description === 'Concession read').nights).toMatchObject([{ id: first.nightId, heldOn: '2026-12-04', reads: 1 }]);
  });

  test('taxes the lines that are taxed and splits what bills the whole', async () => {
    const { department, season } = await aBilledSeason();
    await aSignedContract(department, season, {
      billingPlan: { kind: 'inFull', on: '2026-11-23' },
      commitments: [
        { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7500 },
        { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4000, isTaxed: false },
      ],
    });
    await run(department);
    const [invoice] = await liveInvoices(department);
    // 409.09 of 700.00 is taxed, at 5 %
    expect([invoice.netCents, invoice.taxCents]).toEqual([70_000, 2_045]);
    const whole = await department.bookkeeper.look(`/api/invoices/${invoice.id}`);
    expect(whole.lines.map((line: any) => line.taxCents)).toEqual([2_045]);
  });

  test('numbers an invoice in the fiscal year of its day, whatever the term', async () => {
    const { department, season } = await aBilledSeason();
    const contract = await aSignedContract(department, season);
    const issue = (issuedOn: string) => department.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: issuedOn, issuedOn });
    expect((await issue('2026-11-23')).number).toBe('TR-2027-0001');
    expect((await issue('2027-07-01')).number).toBe('TR-2028-0001');
  });
});

describe('an exemption certificate', () => {
  const file = (text: string) => Buffer.from(text, 'latin1').toString('base64');

  test('is filed with its number and expiry, and given out byte for byte', async () => {
    const { department, season } = await aBilledSeason();
    const path = `/api/payers/${season.payerId}/exemption-files`;
    const { data } = await department.bookkeeper.make(path, { name: 'Certificate 12-3456.pdf', content: file('%PDF-1.7 scan') });
    expect(data).toMatchObject([{ name: 'Certificate 12-3456.pdf', mediaType: 'application/pdf', sizeBytes: 13 }]);
    const paper = await department.bookkeeper.get(`${path}/${data[0].id}`);
    expect([paper.status, paper.headers.get('content-type'), paper.headers.get('content-disposition')]).toEqual([200, 'application/pdf', expect.stringContaining('attachment')]);
  });

  test.each([
    ['2026-11-29', 'Sales tax is charged because exemption certificate 12-3456 expired on November 29, 2026.', 3_500],
    ['2026-11-30', 'Exempt from sales tax, certificate 12-3456, valid through November 30, 2026', 0],
  ])('that ends on %s is told on an invoice of November 30: %s', async (exemptionExpiresOn, words, taxCents) => {
    const { department, season } = await aBilledSeason();
    const payer = await department.director.make('/api/payers', { name: 'Saint Odile Academy', exemptionNumber: '12-3456', exemptionExpiresOn });
    await aSignedContract(department, { ...season, payerId: payer.id }, { billingPlan: { kind: 'inFull', on: '2026-11-23' } });
    const { lines } = await run(department);
    expect((await department.bookkeeper.look(`/api/invoices/${lines[0].invoiceId}`)).taxCents).toBe(taxCents);
    const [row] = (await department.ask('select snapshot from invoice where department_id = $1', [department.id])) as { snapshot: { note: string | null; exemptionReason: string | null } }[];
    expect(row!.snapshot.note ?? row!.snapshot.exemptionReason).toBe(words);
  });

  test.each([
    ['scan.png', '%PDF-1.7', 'file-of-another-kind'],
    ['scan.exe', '%PDF-1.7', 'file-of-another-kind'],
    ['scan.pdf', 'MZ', 'file-of-another-kind'],
    ['pdf', '%PDF-1.7', 'file-of-another-kind'],
    ['scan.pdf', `%PDF-${'1'.repeat(2 * 1024 * 1024 - 4)}`, 'certificate-too-large'],
  ])('%s that is not what it says, or too large, is refused', async (name, text, code) => {
    const { department, season } = await aBilledSeason();
    expect((await department.bookkeeper.post(`/api/payers/${season.payerId}/exemption-files`, { name, content: file(text) })).body.code).toBe(code);
  });
});

async function drawn(season: Season, title: string): Promise<Record<string, unknown>> {
  return {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title,
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 70_000, billingPlan: { kind: 'installments', installments: [{ on: '2026-11-23', share: 1 }, { on: '2027-01-15', share: 1 }] } },
    commitments: [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4000 }], benefits: [],
  };
}

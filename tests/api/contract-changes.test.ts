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
    '35.00 moves from sales tax payable to the unapplied credit of Juniper & Pike Hardware.',
    '700.00 moves from unearned revenue to the unapplied credit of Juniper & Pike Hardware.',
    '150.00 is added to unbilled receivable and to unread revenue.',
  ]);
  expect(preview.contracts[0].memos).toEqual([{ netCents: 70_000, taxCents: 3_500, grossCents: 73_500, parts: [{ invoiceNumber: 'TR-2027-0001', netCents: 70_000, taxCents: 3_500 }] }]);
  expect([after.term.state, after.term.endedOn, after.standing.owed]).toEqual(['ended', ON, 0]);
  expect((await scene.director.post(`/api/contracts/${contract.id}/end`, { on: ON })).body.code).toBe('contract-already-ended');
  expect((await scene.director.post(`/api/contracts/${contract.id}/amend`, { commitmentId: contract.commitments[0].id, reads: 1, priceCents: 100 })).body.code).toBe('contract-already-ended');
  const fee = await scene.bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: ON, issuedOn: ON });
  expect([fee.netCents, fee.taxCents]).toEqual([15_000, 750]);
});

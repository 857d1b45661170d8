import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aSeason } from '../support/season.ts';

interface Standing {
  /** owed of the game balls and of the concession reads */
  owed: number[];
  toBill: number;
  contractBalance: number;
  receivable: number;
  unapplied: number;
  tax: number;
  cash: number;
}

/** What the postings of a contract and its payments come to: debit +, credit -, cents. */
async function books({ ask }: Department, commitmentIds: string[]): Promise<Standing> {
  const balance = async (account: string, commitmentId: string | null = null) => {
    const [row] = await ask<{ amount: number }>(
      `select coalesce(sum(case when to_account = $2 then amount else 0 end - case when from_account = $2 then amount else 0 end), 0) as amount
         from posting where department_id = current_department() and journal = $1 and ($3::uuid is null or commitment_id = $3)`,
      [commitmentId ? 'reads' : /^\d/.test(account) ? 'money' : 'agreed', account, commitmentId],
    );
    return Number(row!.amount);
  };
  return {
    owed: [await balance('owed', commitmentIds[0]), await balance('owed', commitmentIds[1])],
    toBill: await balance('toBill'),
    contractBalance: await balance('2100'),
    receivable: await balance('1100'),
    unapplied: await balance('2150'),
    tax: await balance('2200'),
    cash: await balance('1000'),
  };
}

test('the golden contract comes to the cent through the forms: signing, two invoices, an amendment and two checks', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const { director, bookkeeper } = department;
  const draft = await aContract(department, season);
  const lines = draft.commitments.map((one: { id: string }) => one.id) as string[];
  const check = (receivedOn: string, amountCents: number, invoiceId: string) =>
    bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'check', amountCents, applications: [{ invoiceId, amountCents }] });

  const signed = await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  expect(signed.number).toBe('C-2027-0001');
  expect(await books(department, lines)).toEqual({ owed: [6, 8], toBill: 70_000, contractBalance: 0, receivable: 0, unapplied: 0, tax: 0, cash: 0 });

  const first = await bookkeeper.make('/api/invoices', { contractId: draft.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  expect([first.number, first.netCents, first.taxCents, first.grossCents]).toEqual(['TR-2027-0001', 35_000, 1_750, 36_750]);
  expect(await books(department, lines)).toEqual({ owed: [6, 8], toBill: 35_000, contractBalance: -35_000, receivable: 36_750, unapplied: 0, tax: -1_750, cash: 0 });

  const paid = await check('2026-12-05', 36_750, first.id);
  expect([paid.appliedCents, paid.unappliedCents]).toEqual([36_750, 0]);
  expect((await bookkeeper.look(`/api/invoices/${first.id}`)).state).toBe('paid');
  expect(await books(department, lines)).toEqual({ owed: [6, 8], toBill: 35_000, contractBalance: -35_000, receivable: 0, unapplied: 0, tax: -1_750, cash: 36_750 });

  await director.make(`/api/contracts/${draft.id}/amend`, { commitmentId: lines[1], reads: 4, priceCents: 12_000, amendedOn: '2027-01-06' });
  expect(await books(department, lines)).toMatchObject({ owed: [6, 12], toBill: 47_000, contractBalance: -35_000 });

  // No night is played here, so the contract balance is the golden one less the revenue of its nights: -302.90 - 517.10.
  const second = await bookkeeper.make('/api/invoices', { contractId: draft.id, issuedOn: '2027-01-15' });
  expect([second.netCents, second.taxCents]).toEqual([47_000, 2_350]);
  expect(await books(department, lines)).toEqual({ owed: [6, 12], toBill: 0, contractBalance: -82_000, receivable: 49_350, unapplied: 0, tax: -4_100, cash: 36_750 });

  await check('2027-01-20', 30_000, second.id);
  expect(await books(department, lines)).toEqual({ owed: [6, 12], toBill: 0, contractBalance: -82_000, receivable: 19_350, unapplied: 0, tax: -4_100, cash: 66_750 });

  const { lines: account } = await bookkeeper.look(`/api/contracts/${draft.id}/account-statement`);
  expect(account[0].after).toEqual({ toBill: 0, billed: 82_000, receivable: 19_350, contractBalance: -82_000, unapplied: 0, tax: 4_100, earned: 0 });
  expect(account.at(-1).sentence).toBe('The contract was signed: 2 lines, 700.00.');
  expect(account[0].cause).toMatchObject({ kind: 'payment', label: 'Payment TR-P-2027-0002' });
  const { lines: delivery } = await director.look(`/api/contracts/${draft.id}/delivery-statement`);
  expect(delivery.map((line: any) => [line.readKindName, line.after.owed])).toEqual([['Concession read', 12], ['Sponsored game ball', 6], ['Concession read', 8]]);
  expect((await director.look(`/api/contracts/${draft.id}`)).standing).toMatchObject({ promised: 18, owed: 18, billedCents: 82_000, toBillCents: 0, receivableCents: 19_350 });
});

import { expect, test } from 'vitest';
import type { Day } from '../../server/domain/day.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aContract, aSeason } from '../support/season.ts';

/** Owed of A and B, given of A and B; to bill, contract balance, receivable, tax, cash and revenue in cents, debit +, credit -. */
async function booksOf({ ask, id }: Department, [a, b]: string[]) {
  const rows = await ask<{ journal: string; commitment_id: string | null; account: string; amount: number }>(
    `select journal, commitment_id, account, sum(amount) as amount from (
       select journal, commitment_id, to_account as account, amount from posting where department_id = $1
       union all select journal, commitment_id, from_account, -amount from posting where department_id = $1) as moved
     group by journal, commitment_id, account`,
    [id],
  );
  const sum = (journal: string, account: string, commitmentId?: string) =>
    rows.filter((row) => row.journal === journal && row.account === account && (!commitmentId || row.commitment_id === commitmentId)).reduce((total, row) => total + Number(row.amount), 0);
  return [
    `${sum('reads', 'owed', a)}/${sum('reads', 'given', a)}`, `${sum('reads', 'owed', b)}/${sum('reads', 'given', b)}`,
    sum('agreed', 'toBill'), sum('money', '2100'), sum('money', '1100'), sum('money', '2200'), sum('money', '1000'), sum('money', '4000'),
  ];
}

test('the golden contract, played night by night at the table, comes to the cent and to the read through its first twelve steps', async () => {
  const department = await aDepartment();
  const { director, bookkeeper, announcer } = department;
  const season = await aSeason(department, 0);
  const draft = await aContract(department, season);
  const lines = draft.commitments.map((one: { id: string }) => one.id) as [string, string];
  const device = new TableDevice();
  const books = () => booksOf(department, lines);

  /** Plays a game at home, logs its reads, signs the night off. Answers the entries. */
  const night = async (playedOn: Day, given: [number, number], notRead = 0) => {
    const game = await director.make('/api/games', { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn, startsAtClock: '19:00', venueId: season.venueId });
    const reads = [...Array(given[0]).fill(lines[0]), ...Array(given[1]).fill(lines[1])].map((line, cue) => device.read(line, game.id, cue + 1));
    const missed = Array.from({ length: notRead }, (_, cue) => device.read(lines[1], game.id, 20 + cue, 'notRead', 'ranOutOfTime'));
    const sent = await announcer.make(`/api/nights/${game.nightIds[0]}/log`, { deviceId: device.deviceId, entries: [...reads, ...missed] });
    expect(sent.results.map((result: { status: string }) => result.status)).toEqual([...reads, ...missed].map(() => 'stored'));
    await director.make(`/api/nights/${game.nightIds[0]}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    return { nightId: game.nightIds[0] as string, entries: reads };
  };
  const check = (receivedOn: string, amountCents: number, invoiceId: string) =>
    bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn, method: 'check', amountCents, applications: [{ invoiceId, amountCents }] });

  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  expect(await books()).toEqual(['6/0', '8/0', 70_000, 0, 0, 0, 0, 0]);
  const first = await bookkeeper.make('/api/invoices', { contractId: draft.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  expect(await books()).toEqual(['6/0', '8/0', 35_000, -35_000, 36_750, -1_750, 0, 0]);
  await night('2026-12-01' as Day, [1, 1]);
  expect(await books()).toEqual(['5/1', '7/1', 35_000, -24_544, 36_750, -1_750, 0, -10_456]);
  await check('2026-12-05', 36_750, first.id);
  expect(await books()).toEqual(['5/1', '7/1', 35_000, -24_544, 0, -1_750, 36_750, -10_456]);
  const eighth = await night('2026-12-08' as Day, [1, 1]);
  expect(await books()).toEqual(['4/2', '6/2', 35_000, -14_089, 0, -1_750, 36_750, -20_911]);
  await night('2026-12-15' as Day, [1, 0], 1);
  expect(await books()).toEqual(['3/3', '6/2', 35_000, -7_271, 0, -1_750, 36_750, -27_729]);
  await night('2026-12-18' as Day, [1, 2]);
  expect(await books()).toEqual(['2/4', '4/4', 35_000, 6_820, 0, -1_750, 36_750, -41_820]);
  const taken = device.entry({ kind: 'takenBack', takesBackEntryId: eighth.entries[1]!.id });
  await director.make(`/api/nights/${eighth.nightId}/amend`, { reason: 'found the next morning', deviceId: device.deviceId, entries: [taken] });
  expect(await books()).toEqual(['2/4', '5/3', 35_000, 3_184, 0, -1_750, 36_750, -38_184]);
  await director.make(`/api/contracts/${draft.id}/amend`, { commitmentId: lines[1], reads: 4, priceCents: 12_000, amendedOn: '2027-01-06' });
  expect(await books()).toEqual(['2/4', '9/3', 47_000, 3_184, 0, -1_750, 36_750, -38_184]);
  await night('2027-01-08' as Day, [1, 2]);
  expect(await books()).toEqual(['1/5', '7/5', 47_000, 16_710, 0, -1_750, 36_750, -51_710]);
  const second = await bookkeeper.make('/api/invoices', { contractId: draft.id, throughDay: '2027-01-15', issuedOn: '2027-01-15' });
  expect(await books()).toEqual(['1/5', '7/5', 0, -30_290, 49_350, -4_100, 36_750, -51_710]);
  await check('2027-01-20', 30_000, second.id);
  expect(await books()).toEqual(['1/5', '7/5', 0, -30_290, 19_350, -4_100, 66_750, -51_710]);
});

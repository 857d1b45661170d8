import { describe, expect, test } from 'vitest';
import { addDays } from '../../server/domain/day.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { TableDevice, aLaterSeason, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

const WRITTEN = ['ledger_event', 'ledger_entry', 'posting', 'credit_memo', 'credit_memo_line', 'placement', 'application', 'audit_row', 'number_series', 'night', 'game'] as const;

/** How many rows there are of what a move writes, and how the placements and the game stand. */
async function everythingWritten({ ask, id }: Department): Promise<Record<string, unknown>> {
  const counts: Record<string, unknown> = {};
  for (const table of WRITTEN) [counts[table]] = await ask(`select count(*) as rows, coalesce(sum(hashtext(t::text)::bigint), 0) as sum from ${table} as t where department_id = $1`, [id]);
  return counts;
}

interface Told {
  department: Department;
  season: Season;
  creamery: { id: string; commitments: { id: string }[] };
  hardware: { id: string; commitments: { id: string }[] };
  term: { id: string; commitments: { id: string }[] };
}

/** A game that three contracts of two sellers reach: credited and billed, moving on, and over the whole term. */
async function aGameOfThree(gameCount = 3, seasonOf = aLaterSeason): Promise<Told> {
  const department = await aDepartment();
  const { director, bookkeeper } = department;
  const season = await seasonOf(department, gameCount);
  const boosters = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB', taxBasisPoints: 0 });
  const sponsor = await director.make('/api/sponsors', { name: 'Snowmelt Creamery', categoryId: season.categoryId });
  const payer = await director.make('/api/payers', { name: 'Snowmelt Creamery', sponsorId: sponsor.id });
  const inFull = { kind: 'inFull', on: '2026-11-20' };
  const { readKinds } = season;
  const creamery = await aSignedContract(department, { ...season, sellerId: boosters.id, sponsorId: sponsor.id, payerId: payer.id }, { title: 'Concession reads', priceCents: 20_000, billingPlan: inFull, commitments: [{ readKindId: readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4_000 }] });
  await bookkeeper.make('/api/invoices', { contractId: creamery.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  const draft = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Bank shots and balls', cancelledGamePolicy: 'valueMovesOn',
    term: { seasonId: season.seasonId, startsOn: season.startsOn, endsOn: season.endsOn, pricing: 'fixed', priceCents: 10_000, billingPlan: inFull },
    commitments: [{ readKindId: readKinds.concession, counting: 'perGame', reads: 1, rateCents: 5_000 }], benefits: [],
  });
  await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const hardware = await director.look(`/api/contracts/${draft.id}`);
  const term = await aSignedContract(department, season, { title: 'Game balls', priceCents: 15_000, billingPlan: inFull, commitments: [{ readKindId: readKinds.gameBall, counting: 'perTerm', reads: gameCount, rateCents: 7_500 }] });
  await director.make('/api/plan/spread', { seasonId: season.seasonId });
  return { department, season, creamery, hardware, term };
}

const contractIn = (preview: any, contractId: string) => preview.contracts.find((one: any) => one.contractId === contractId);
const lineIn = (preview: any, contractId: string) => contractIn(preview, contractId)?.lines[0];

describe('a game that is to be cancelled', () => {
  test('shows what it does to every contract, writes nothing, and does exactly that', async () => {
    const { department, season, creamery, hardware, term } = await aGameOfThree();
    const { director } = department;
    const { gameId } = season.games[1]!;
    const before = await everythingWritten(department);
    const preview = await director.make(`/api/games/${gameId}/move-previews`, { kind: 'cancel', reason: 'Ice' });
    expect(await everythingWritten(department)).toEqual(before);
    expect([preview.label, preview.before.status, preview.after.status]).toEqual(['Herons at Kestrels', 'planned', 'cancelled']);

    // Three games of two reads share 200.00: 33.34, 33.34, 33.33, 33.33, 33.33, 33.33; credits take from the end.
    const credited = contractIn(preview, creamery.id);
    expect([credited.sellerName, credited.creditedCents, credited.toBillChangeCents]).toEqual(['Kestrel Boosters', 6_666, 0]);
    expect(lineIn(preview, creamery.id)).toMatchObject({ name: 'Concession read', credited: 2, creditedCents: 6_666, released: 0, placesLost: 2, placesMoved: 0 });
    expect(credited.memos).toEqual([{ netCents: 6_666, taxCents: 0, grossCents: 6_666, invoiceNumbers: [expect.stringMatching(/^KB-/)] }]);
    expect(lineIn(preview, hardware.id)).toMatchObject({ credited: 0, creditedCents: 0, released: 1, placesLost: 1 });
    expect(contractIn(preview, hardware.id)).toMatchObject({ sellerName: 'Tamarack Ridge Athletics', creditedCents: 0, memos: [] });
    expect(lineIn(preview, term.id)).toMatchObject({ credited: 0, released: 0, placesLost: 1 });
    expect(preview.nights).toEqual([expect.objectContaining({ nightId: season.games[1]!.nightId, gamesLeft: 0, tableLinks: [] })]);

    await director.make(`/api/games/${gameId}/cancel`, { reason: 'Ice' });
    const [memo, ...others] = (await director.look('/api/credit-memos')).data;
    expect([others, memo.contractId, memo.netCents, memo.grossCents]).toEqual([[], creamery.id, credited.memos[0].netCents, credited.memos[0].grossCents]);
    expect(await readsBooked(department, gameId)).toEqual(preview.contracts.flatMap((one: any) => one.lines.flatMap((line: any) => [
      ...(line.credited > 0 ? [[one.contractId, 'credited', line.credited]] : []), ...(line.released > 0 ? [[one.contractId, 'released', line.released]] : []),
    ])).toSorted());
    expect(await placesOf(department, gameId)).toBe(0);
  });

  test('says how many reads of the season find no place any more, and why', async () => {
    const { department, season } = await aGameOfThree(1);
    const preview = await department.director.make(`/api/games/${season.games[0]!.gameId}/move-previews`, { kind: 'cancel', reason: 'Ice' });
    expect(preview.shortfall).toMatchObject({ readsBefore: 0, readsAfter: 1, isProven: true });
    expect(preview.shortfall.promises).toEqual([expect.objectContaining({ sponsorName: 'Juniper & Pike Hardware', readKindName: 'Sponsored game ball', readsBefore: 0, readsAfter: 1 })]);
    expect(preview.shortfall.because.length).toBeGreaterThan(0);
  });

  // Nights are signed off no further ahead than money is dated: a night that is played lies in the nearer season.
  test('with a read that counts is refused as it always was', async () => {
    const { department, season, creamery } = await aGameOfThree(3, aSeason);
    const { director } = department;
    const [{ gameId, nightId }] = season.games as [Season['games'][0]];
    const device = new TableDevice();
    await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.read(creamery.commitments[0]!.id, gameId, 1)] });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    const asked = await director.post(`/api/games/${gameId}/move-previews`, { kind: 'cancel' });
    const done = await director.post(`/api/games/${gameId}/cancel`, { reason: 'Ice' });
    expect([asked.status, asked.body.code]).toEqual([done.status, done.body.code]);
    expect(asked.body.code).toBe('game-has-counted-read');
  });
});

describe('a game that is to be moved', () => {
  test('takes its reads and places along to the new day, and so it does', async () => {
    const { department, season, creamery, term } = await aGameOfThree();
    const { director } = department;
    const { gameId, playedOn } = season.games[1]!;
    const to = addDays(playedOn, 3);
    const placed = await placesOf(department, gameId);
    const preview = await director.make(`/api/games/${gameId}/move-previews`, { kind: 'reschedule', to });
    expect(preview.after).toEqual({ status: 'planned', playedOn: to });
    expect(lineIn(preview, creamery.id)).toMatchObject({ credited: 0, released: 0, added: 0, kept: 2, placesLost: 0, placesMoved: 2 });
    expect(lineIn(preview, term.id)).toMatchObject({ kept: 0, placesMoved: 1 });
    expect(preview.nights).toEqual([expect.objectContaining({ heldOn: playedOn, newHeldOn: to, isGone: false, gamesLeft: 1 })]);
    expect([preview.shortfall.readsBefore, preview.shortfall.readsAfter]).toEqual([0, 0]);
    await director.make(`/api/games/${gameId}/postpone`, { reason: 'Snow', to });
    expect(await placesOf(department, gameId)).toBe(placed);
  });

  test.each([
    ['without a day its reads wait', { kind: 'postpone' }, 'postponed'],
    ['and is not told where to, is refused', { kind: 'reschedule' }, 'malformed'],
    ['when it has not begun cannot be suspended', { kind: 'suspend' }, 'game-not-under-way'],
  ])('%s', async (_name, form, expected) => {
    const { department, season, creamery } = await aGameOfThree();
    const { status, body } = await department.director.post(`/api/games/${season.games[1]!.gameId}/move-previews`, form);
    if (status >= 400) return expect(body.code).toBe(expected);
    expect(body.after.status).toBe(expected);
    expect(lineIn(body, creamery.id)).toMatchObject({ credited: 0, released: 0, kept: 2, placesKept: 2, placesLost: 0 });
  });

  test('while it is under way and suspended keeps what it owes', async () => {
    const { department, season, creamery } = await aGameOfThree();
    const { director } = department;
    const { gameId } = season.games[1]!;
    await director.make(`/api/games/${gameId}/start`);
    const preview = await director.make(`/api/games/${gameId}/move-previews`, { kind: 'suspend' });
    expect([preview.after.status, lineIn(preview, creamery.id).kept]).toEqual(['suspended', 2]);
    expect((await director.look(`/api/games/${gameId}`)).status).toBe('underWay');
  });
});

async function placesOf({ ask, id }: Department, gameId: string): Promise<number> {
  const [row] = await ask<{ places: number }>('select count(*) as places from placement where department_id = $1 and game_id = $2', [id, gameId]);
  return row!.places;
}

/** What was booked on the ledger of reads because of a game: contract, account, reads. */
async function readsBooked({ ask, id }: Department, gameId: string): Promise<unknown[]> {
  const rows = await ask<{ contractId: string; account: string; reads: number }>(
    `select posting.contract_id as "contractId", posting.to_account as account, sum(posting.amount) as reads
       from posting join ledger_event as event on event.department_id = $1 and event.id = posting.event_id
      where posting.department_id = $1 and posting.journal = 'reads' and event.cause = 'game' and event.cause_id = $2
      group by posting.contract_id, posting.to_account`,
    [id, gameId],
  );
  return rows.map(({ contractId, account, reads }) => [contractId, account, reads]).toSorted();
}

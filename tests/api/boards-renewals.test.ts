import { parse } from 'csv-parse/sync';
import readExcelFile from 'read-excel-file/node';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { tellToTheEnd, theGoldenContract } from '../support/golden-contract.ts';
import { inDays } from '../support/offers.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

const renewalsOf = ({ director }: Department, query = '') => director.look(`/api/boards/renewals?${query}`);

/** K1 is over; the department sells for 2026-27 now. */
async function afterTheGoldenContract() {
  const golden = await theGoldenContract();
  await tellToTheEnd(golden);
  const { department, season } = golden;
  const next = (await department.director.look('/api/seasons?q=2026-27')).data[0];
  const here = `seasonId=${season.seasonId}`;
  return { golden, department, season, next, row: async () => (await renewalsOf(department, here)).rows[0], here };
}

// LEDGER.md, section 5: 6 and 12 reads, 15 of them given, 1 made good, 2 credited; 700.00 and 120.00.
test('the golden contract stands there with its price, what became of its reads, that it is paid, and what to offer next', async () => {
  const { department, here, next, row, season } = await afterTheGoldenContract();
  const board = await renewalsOf(department, here);
  expect([board.seasonName, board.nextSeasonName, board.isOver, board.rows.length, board.priceCents, board.keptCents]).toEqual(['Basketball 2024-25', 'Basketball 2026-27', true, 1, 82_000, 0]);
  expect(board.rows[0]).toMatchObject({ priceCents: 82_000, promised: 18, given: 15, madeGood: 1, credited: 2, owed: 0, paid: 'paid', openCents: 0, follows: { state: 'nothing', words: 'Nothing yet' } });
  // Game balls 5 + 1 of 6: again. Concession reads 10 of 12: ten can be given. No rate card yet: 6 × 75.00 + 10 × 40.00.
  expect(board.rows[0].suggestion).toMatchObject({ worthCents: 85_000, package: null, lines: [{ quantity: 6, rateCents: 7_500, rateFrom: 'contract' }, { quantity: 10, rateCents: 4_000, rateFrom: 'contract' }] });
  const { director } = department;
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 8_000 });
  await director.make('/api/rate-card-lines', { seasonId: next.id, readKindId: season.readKinds.concession, priceCents: 4_200 });
  const carries = [{ readKindId: season.readKinds.concession, counting: 'perTerm', quantity: 20 }, { benefitName: 'Banner', quantity: 1, rateCents: 1_000 }];
  await director.make('/api/packages', { seasonId: next.id, name: 'Home court', priceCents: 95_000, lines: carries });
  await director.make('/api/packages', { seasonId: next.id, name: 'Bleachers', priceCents: 81_999, lines: carries });
  const { suggestion } = await row();
  expect([suggestion.worthCents, suggestion.package.name, suggestion.words]).toEqual([
    90_000, 'Home court',
    'Sponsored game ball: 6 of 6 given; 6 again at $80.00 is $480.00 by this season’s rate card. Concession read: 10 of 12 given; 10, as many as could be given, at $42.00 is $420.00. In all that is $900.00. Package “Home court” at $950.00 carries 20 × Concession read, 1 × Banner.',
  ]);
});

test('what is suggested can be put as an offer just so, and the board tells what follows, step by step', async () => {
  const { department, next, row, here } = await afterTheGoldenContract();
  const { director } = department;
  const { offer, sponsorId } = await row();
  expect([offer.seasonId, offer.priceCents, offer.pricing]).toEqual([next.id, 85_000, 'fixed']);
  const made = await director.make('/api/offers', { ...offer, startsOn: next.startsOn, endsOn: next.endsOn, lapsesOn: inDays(14), holdsInventory: false });
  expect((await row()).follows).toEqual({ state: 'drafted', contractId: null, offerId: made.id, words: `An offer is drawn up: ${offer.title}` });
  await director.make(`/api/offers/${made.id}/put`, { putOn: inDays(0), beyondPlacesReason: 'The games are not in yet' });
  expect((await row()).follows.state).toBe('offered');
  await director.make(`/api/offers/${made.id}/decline`, { declinedOn: inDays(0), reason: 'A new owner' });
  expect((await row()).follows).toMatchObject({ state: 'declined', words: 'Declined: A new owner' });
  await director.make(`/api/sponsors/${sponsorId}/lose`, { lostOn: inDays(0), reason: 'Sold the store' });
  expect((await row()).follows).toMatchObject({ state: 'lost', words: 'Lost: Sold the store' });
  await director.make(`/api/sponsors/${sponsorId}/win-back`);
  const again = await aSignedContract(department, { ...(await sameSponsor(department, next)), sponsorId } as never, { title: 'Again' });
  expect((await row()).follows).toMatchObject({ state: 'signed', contractId: again.id, words: `Signed again: ${again.number}` });
  expect((await renewalsOf(department, here)).keptCents).toBe(82_000);
});

async function sameSponsor({ director }: Department, next: any) {
  const [seller, payer, kinds] = await Promise.all(['sellers', 'payers', 'read-kinds'].map((path) => director.look(`/api/${path}?perPage=10&sort=name`)));
  const kind = (name: string) => kinds.data.find((one: any) => one.name === name).id;
  return { sellerId: seller.data[0].id, payerId: payer.data[0].id, seasonId: next.id, startsOn: next.startsOn, endsOn: next.endsOn, readKinds: { gameBall: kind('Sponsored game ball'), concession: kind('Concession read') } };
}

test('in the middle of a season with nothing played the same is suggested again, drafts are left out, and the greatest price comes first', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const { director } = department;
  expect((await renewalsOf(department)).rows).toEqual([]);
  await aContract(department, season, { title: 'A draft', priceCents: 900_000 });
  const small = await aSignedContract(department, season, { title: 'Small', priceCents: 30_000, commitments: [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 1, rateCents: 4_000 }] });
  const large = await aSignedContract(department, season, {
    title: 'Large', commitments: [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 10, readsAtMost: 30, rateCents: 1_000 }], benefits: [{ name: 'Banner on the north rail', quantity: 1, rateCents: 10_000, isTaxed: false }],
  });
  const board = await renewalsOf(department);
  expect([board.seasonName, board.nextSeasonId, board.isOver]).toEqual(['Basketball 2026-27', null, false]);
  expect(board.rows.map((row: any) => [row.contractId, row.priceCents, row.paid, row.suggestion.worthCents])).toEqual([[large.id, 70_000, 'notBilled', 20_000], [small.id, 30_000, 'notBilled', 8_000]]);
  expect(board.rows[0].offer.benefitLines).toEqual([{ name: 'Banner on the north rail', quantity: 1, rateCents: 10_000, fairValueCents: null, earns: 'onDelivery', isTaxed: false }]);
  expect(board.rows[0].suggestion.words).toContain('nothing was counted yet; 10 again');
  expect(board.rows[1].suggestion.words).toContain('nothing was due yet; 1 a game, 2 in all, again');
  const { personId: callerId } = (await director.look('/api/people?perPage=10')).data[0];
  const { version } = await director.look(`/api/sponsors/${season.sponsorId}`);
  await director.patch(`/api/sponsors/${season.sponsorId}`, { callerPersonId: callerId }, { version });
  const byCaller = await Promise.all([`callerPersonId=${callerId}`, 'isNobodys=true'].map(async (query) => (await renewalsOf(department, query)).rows.length));
  expect([byCaller, (await renewalsOf(department)).callers.length]).toEqual([[2, 0], 1]);
});

test('the board is a CSV file and a workbook, and nobody but who sees contracts sees it', async () => {
  const { department, here } = await afterTheGoldenContract();
  const rows = parse((await department.director.bytes(`/api/boards/renewals?${here}&as=csv`)).bytes, { bom: true }) as string[][];
  expect([rows[1]!.slice(0, 9), rows.at(-1)!.slice(0, 4)]).toEqual([['Juniper & Pike Hardware', 'C-2025-0001', 'Game balls and concession reads', '820.00', '18', '15', '1', '2', 'Paid'], ['Total', '', '', '820.00']]);
  const [sheet] = await readExcelFile((await department.director.bytes(`/api/boards/renewals?${here}&as=xlsx`)).bytes);
  expect(sheet!.data.length).toBe(rows.length);
  expect((await department.announcer.get('/api/boards/renewals')).status).toBe(403);
  expect((await department.director.get('/api/boards/renewals?seasonId=019aaaaa-0000-7000-8000-000000000000')).status).toBe(404);
});

test('Home counts the statements of performance that are to be issued for contracts that are over, and nothing for the table', async () => {
  const department = await aDepartment();
  const season = await aSeason(department, 0);
  const proof = async () => (await department.director.look('/api/home')).proof;
  const term = (days: number) => ({ startsOn: inDays(days - 5), endsOn: inDays(days) });
  const seasonOf = async (days: number) => department.director.make('/api/seasons', { name: `Basketball ${days}`, sport: 'basketball', startsOn: inDays(days - 9), endsOn: inDays(days) });
  // Seven days before its end and ninety after are common practice, no source.
  for (const [days, counted] of [[8, 0], [7, 1], [-90, 2], [-91, 2]] as const) {
    const { id } = await seasonOf(days);
    const draft = await aContract(department, { ...season, seasonId: id }, { title: `Ends ${days}`, term: term(days), billingPlan: { kind: 'inFull', on: inDays(days) } });
    await department.director.make(`/api/contracts/${draft.id}/sign`, { signedOn: inDays(days - 9), signedByName: 'Hazel Juniper' });
    expect([days, await proof()]).toEqual([days, { answersWaiting: 0, answersLate: 0, statementsToIssue: counted }]);
  }
  expect((await department.announcer.look('/api/home')).proof).toBeNull();
});

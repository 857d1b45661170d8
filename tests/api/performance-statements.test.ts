import { describe, expect, test } from 'vitest';
import { application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { theGoldenContract } from '../support/golden-contract.ts';
import type { GoldenContract } from '../support/golden-contract.ts';
import { pagesOfPdf } from '../support/pdf.ts';
import { TableDevice, aContract, aSeason, aSeasonThatIsOver, aSignedContract } from '../support/season.ts';
import { aSponsorProof } from '../support/sponsor-proof.ts';
import { Visitor } from '../support/visitor.ts';

const THROUGH = '2025-03-13';

/** K1 with its first nights: A 1 and B 1 given on two nights, then A 1 given and B not read. */
async function aPlayedContract(): Promise<GoldenContract> {
  const golden = await theGoldenContract();
  const { director, bookkeeper } = golden.department;
  await director.make(`/api/contracts/${golden.contractId}/sign`, { signedOn: '2024-11-20', signedByName: 'Hazel Juniper' });
  const invoice = await bookkeeper.make('/api/invoices', { contractId: golden.contractId, throughDay: '2024-11-23', issuedOn: '2024-11-23' });
  const first = await golden.night('2024-12-01', [1, 1]);
  await golden.receive('2024-12-05', 'check', 36_750, { [invoice.id]: 36_750 });
  await golden.night('2024-12-08', [1, 1]);
  await golden.night('2024-12-15', [1, 0], { notRead: 1 });
  await director.make(`/api/nights/${first.nightId}/attendance`, { attendance: 412, how: 'tickets' });
  return golden;
}

const pathOf = ({ contractId }: GoldenContract) => `/api/contracts/${contractId}/performance-statements`;
const issue = async (golden: GoldenContract) => golden.department.director.make(pathOf(golden), { throughOn: THROUGH });
const wordsOf = async (department: Department, id: string) => {
  const { status, bytes } = await department.director.bytes(`/api/performance-statements/${id}/statement.pdf`);
  expect(status).toBe(200);
  return (await pagesOfPdf(bytes)).join(' ');
};

describe('a statement of performance', () => {
  test('says from the ledgers what was promised and given, each night, the account, and the seal it was issued under', async () => {
    const golden = await aPlayedContract();
    const { department, a, b } = golden;
    const statement = await issue(golden);
    expect(statement).toMatchObject({ number: 1, throughOn: THROUGH, replacedBy: null, isOutOfDate: false, contractNumber: 'C-2025-0001', sponsorName: 'Juniper & Pike Hardware' });
    const { lines, nights, account, notSignedOff } = statement.content;
    expect(lines.map((line: any) => [line.commitmentId, line.promised, line.given, line.madeGood, line.credited, line.stillToCome, line.extra])).toEqual([[a, 6, 3, 0, 0, 3, 0], [b, 8, 2, 0, 0, 6, 0]]);
    expect(nights.map((night: any) => [night.heldOn, night.attendance, night.attendanceHow, night.reads.map((read: any) => read.outcome)])).toEqual([
      ['2024-12-01', 412, 'tickets', ['given', 'given']], ['2024-12-08', null, null, ['given', 'given']], ['2024-12-15', null, null, ['given', 'notRead']],
    ]);
    expect(account.map((line: any) => [line.on, line.chargeCents, line.creditCents, line.balanceCents])).toEqual([['2024-11-23', 36_750, 0, 36_750], ['2024-12-05', 0, 36_750, 0]]);
    expect(notSignedOff).toBe(0);
    const [seal] = await department.ask<{ number: number; head: string }>(`select number, encode(head, 'hex') as head from seal where department_id = $1 order by number desc limit 1`, [department.id]);
    expect([statement.sealNumber, statement.sealHead]).toEqual([seal!.number, seal!.head]);
    expect(await department.director.look(`/api/performance-statements/${statement.id}/check`)).toMatchObject({ isVerified: true, followedTo: seal!.number });
  });

  test('on paper names the head of its seal, calls the audience an estimate and says which nights it leaves out, and is the same bytes twice', async () => {
    const golden = await aPlayedContract();
    const statement = await issue(golden);
    const words = await wordsOf(golden.department, statement.id);
    for (const said of [
      `seal ${statement.sealNumber}, head ${statement.sealHead.slice(0, 16)}`, 'An estimate: 824 audience contacts. Each of 2 reads given on 1 night',
      'For 2 nights with 3 reads no attendance was recorded', 'Not read', 'Local rules and the business office decide', '$367.50',
    ]) expect(words).toContain(said);
    const once = await golden.department.director.bytes(`/api/performance-statements/${statement.id}/statement.pdf`);
    expect(once.bytes.equals((await golden.department.bookkeeper.bytes(`/api/performance-statements/${statement.id}/statement.pdf`)).bytes)).toBe(true);
  });

  test('is refused where nothing has changed since the last one', async () => {
    const golden = await aPlayedContract();
    await issue(golden);
    const again = await golden.department.director.post(pathOf(golden), { throughOn: THROUGH });
    expect([again.status, again.body.code, again.body.detail]).toEqual([409, 'statement-says-the-same', 'Nothing has changed since statement 1. It stands.']);
    expect((await golden.department.director.look(pathOf(golden))).total).toBe(1);
  });

  test('of which a night was signed off afterward says so, and once the next is out it names that one', async () => {
    const golden = await aPlayedContract();
    const { department } = golden;
    const first = await issue(golden);
    const before = await wordsOf(department, first.id);
    await golden.night('2024-12-18', [1, 2]);
    expect(await department.director.look(`/api/performance-statements/${first.id}`)).toMatchObject({ isOutOfDate: true, replacedBy: null });
    const second = await issue(golden);
    expect([second.number, second.content.lines.map((line: any) => line.given)]).toEqual([2, [4, 4]]);
    const seen = await department.director.look(`/api/performance-statements/${first.id}`);
    expect(seen).toMatchObject({ isOutOfDate: false, replacedBy: { id: second.id, number: 2 } });
    expect(seen.content).toEqual(first.content);
    expect((await wordsOf(department, first.id)).replace(/Replaced by statement 2 of \w+ \d+, \d{4} /, '')).toBe(before);
    expect(await department.director.look(`/api/performance-statements/${first.id}/check`)).toMatchObject({ isVerified: true });
    const listed = await department.director.look('/api/performance-statements?standing=latest');
    expect(listed.data.map((one: any) => one.id)).toEqual([second.id]);
  });

  test('of which a read was taken back afterward, or an attendance found, says that the books have changed', async () => {
    const golden = await aPlayedContract();
    const { director } = golden.department;
    const later = await golden.night('2024-12-18', [1, 2]);
    const first = await issue(golden);
    await golden.takeBack(later.nightId, later.entries[1]!.id);
    expect((await director.look(`/api/performance-statements/${first.id}`)).isOutOfDate).toBe(true);
    const second = await issue(golden);
    await director.make(`/api/nights/${later.nightId}/attendance`, { attendance: 300, how: 'counted' });
    expect((await director.look(`/api/performance-statements/${second.id}`)).isOutOfDate).toBe(true);
  });

  test('tells nothing of days after its last one', async () => {
    const golden = await aPlayedContract();
    const { director } = golden.department;
    const early = await director.make(pathOf(golden), { throughOn: '2024-12-07' });
    expect(early.content.lines.map((line: any) => line.given)).toEqual([1, 1]);
    expect(early.content.nights.map((night: any) => night.heldOn)).toEqual(['2024-12-01']);
    await golden.night('2024-12-18', [1, 2]);
    expect((await director.look(`/api/performance-statements/${early.id}`)).isOutOfDate).toBe(false);
  });

  test('tells of makegoods for which day they stand, and of credits', async () => {
    const golden = await aPlayedContract();
    const { director, bookkeeper } = golden.department;
    const icy = await golden.game('2025-01-22');
    await director.make(`/api/games/${icy.gameId}/cancel`, { reason: 'Ice' });
    const agreed = await director.make(`/api/contracts/${golden.contractId}/makegoods`, {
      commitmentId: golden.a, gameId: icy.gameId, missed: 1, replacementReadKindId: golden.season.readKinds.concession, replacements: 1, agreedOn: '2025-01-25', agreedWith: 'Hazel Juniper',
    });
    await golden.night('2025-01-29', [0, 0], { makegoodId: agreed.data[0].id });
    await bookkeeper.make(`/api/contracts/${golden.contractId}/credits`, { commitmentId: golden.b, count: 2, reason: 'Two reads were not given', on: '2025-02-15' });
    const { content, id } = await issue(golden);
    expect(content.lines.map((line: any) => [line.given, line.madeGood, line.credited])).toEqual([[3, 1, 0], [2, 0, 2]]);
    expect(content.nights.at(-1).reads).toMatchObject([{ outcome: 'makegood', forMissedOn: '2025-01-22' }]);
    expect(content.changes.map((one: any) => one.on)).toEqual(['2025-01-25', '2025-01-29', '2025-02-15']);
    const words = await wordsOf(golden.department, id);
    for (const said of ['Makegood for Jan 22, 2025', 'Two reads were not given']) expect(words).toContain(said);
  });

  test('of a contract without a game is issued all the same; of an unsigned one it is refused', async () => {
    const department = await aDepartment();
    const season = await aSeasonThatIsOver(department);
    const draft = await aContract(department, season, { term: { startsOn: '2024-11-20', endsOn: '2025-03-13' }, billingPlan: { kind: 'inFull', on: '2024-11-23' } });
    const path = `/api/contracts/${draft.id}/performance-statements`;
    const refused = await department.director.post(path, {});
    expect([refused.status, refused.body.code]).toEqual([422, 'statement-before-signing']);
    await department.director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2024-11-20', signedByName: 'Hazel Juniper' });
    const statement = await department.director.make(path, {});
    expect(statement.content).toMatchObject({ nights: [], account: [], changes: [] });
    expect(await wordsOf(department, statement.id)).toContain('No night was played for this contract yet.');
  });

  test('can be looked at as a draft, which has no number and gives none out', async () => {
    const golden = await aPlayedContract();
    const { director } = golden.department;
    const draft = await director.look(`/api/contracts/${golden.contractId}/performance-statement-draft?throughOn=${THROUGH}`);
    expect(draft).toMatchObject({ latest: null, saysTheSame: false });
    const { status, bytes } = await director.bytes(`/api/contracts/${golden.contractId}/performance-statement-draft.pdf?throughOn=${THROUGH}`);
    expect(status).toBe(200);
    expect((await pagesOfPdf(bytes)).join(' ')).toContain('Draft, not issued');
    expect((await director.look(pathOf(golden))).total).toBe(0);
    await issue(golden);
    expect((await director.look(`/api/contracts/${golden.contractId}/performance-statement-draft?throughOn=${THROUGH}`)).saysTheSame).toBe(true);
  });

  test('is not verified where its seal’s head is not the one in the books', async () => {
    const golden = await aPlayedContract();
    const { department } = golden;
    const statement = await issue(golden);
    const admin = await application.ownerPool.connect();
    try {
      await admin.query(`begin; set local app.department_id = '${department.id}'`);
      await admin.query('alter table seal disable trigger user');
      await admin.query(`update seal set head = sha256('other'::bytea) where department_id = $1 and number = $2`, [department.id, statement.sealNumber]);
      await admin.query('alter table seal enable trigger user');
      await admin.query('commit');
      expect(await department.director.look(`/api/performance-statements/${statement.id}/check`)).toMatchObject({ isVerified: false });
      await admin.query(`begin; set local app.department_id = '${department.id}'; alter table seal disable trigger user`);
      await admin.query(`update seal set head = decode($3, 'hex') where department_id = $1 and number = $2`, [department.id, statement.sealNumber, statement.sealHead]);
      await admin.query('alter table seal enable trigger user; commit');
    } finally {
      admin.release();
    }
    expect(await department.director.look(`/api/performance-statements/${statement.id}/check`)).toMatchObject({ isVerified: true });
  });

  test('is the director’s to issue; the bookkeeper reads it, the announcer does not', async () => {
    const golden = await aPlayedContract();
    const { bookkeeper, announcer } = golden.department;
    expect((await bookkeeper.post(pathOf(golden), {})).body.code).toBe('role-missing');
    expect((await bookkeeper.get(pathOf(golden))).status).toBe(200);
    expect((await announcer.get(pathOf(golden))).body.code).toBe('role-missing');
  });

  test('is read by the link of the sponsor it was issued to, and by that of no other', async () => {
    const golden = await aPlayedContract();
    const { director } = golden.department;
    const statement = await issue(golden);
    const other = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: golden.season.categoryId });
    const bearerOf = async (sponsorId: string) => Visitor.byLink((await director.make(`/api/sponsors/${sponsorId}/links`, { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' })).token);
    const [own, foreign] = [await bearerOf(golden.season.sponsorId), await bearerOf(other.id)];
    const path = '/api/sponsor-page/performance-statements';
    expect((await own.look(path)).data).toMatchObject([{ id: statement.id, number: 1, replacedBy: null }]);
    expect((await own.bytes(`${path}/${statement.id}/statement.pdf`)).bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect((await foreign.look(path)).data).toEqual([]);
    expect((await foreign.get(`${path}/${statement.id}/statement.pdf`)).body.code).toBe('not-found');
  });

  test('of a contract that was handed on tells the new owner nothing of the former one’s words, invoices, payments and reasons', async () => {
    const department = await aDepartment();
    const { season, contract, link } = await aSponsorProof(department);
    const { director, bookkeeper } = department;
    const path = `/api/contracts/${contract.id}/performance-statements`;
    await bookkeeper.make(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[0].id, count: 1, reason: 'Hazel Juniper asked', on: '2026-11-26' });
    const first = await director.make(path, {});
    expect(first.content.account.length).toBeGreaterThan(1);
    const sponsor = await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: season.categoryId });
    const payer = await director.make('/api/payers', { name: 'Blue Lantern Tire', sponsorId: sponsor.id });
    await director.make(`/api/contracts/${contract.id}/assign`, { toSponsorId: sponsor.id, toPayerId: payer.id, on: '2026-11-27', reason: 'The store was sold' });
    const second = await director.make(path, {});
    const { head, nights, benefits: _, ...said } = second.content;
    expect([head.sponsorName, said.account]).toEqual(['Blue Lantern Tire', []]);
    expect(said.changes.map((one: any) => one.sentence)).toEqual(['1 of Sponsored game ball was credited.']);
    expect(nights.flatMap((night: any) => night.reads.map((read: any) => read.copyTitle)).filter(Boolean)).toEqual([]);
    expect(/Juniper|Hazel/.test(JSON.stringify([nights, said]))).toBe(false);
    const { data: [own] } = await link.look('/api/sponsor-page/performance-statements');
    expect(own).toMatchObject({ id: first.id, replacedBy: null });
  });

  test('tells a night by its day and not by its title, and says where its last day had not come yet', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 1);
    const { director, bookkeeper } = department;
    const contract = await aSignedContract(department, season, { commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perNight', reads: 1, rateCents: 7500 }] });
    const { nightId, gameId } = season.games[0]!;
    const { version } = await director.look(`/api/nights/${nightId}`);
    await director.patch(`/api/nights/${nightId}`, { title: 'Senior night of Xochitl' }, { version });
    await bookkeeper.make(`/api/contracts/${contract.id}/credits`, { commitmentId: contract.commitments[0].id, gameId, count: 1, reason: 'It was not read', on: '2026-11-26' });
    const { id, content } = await director.make(`/api/contracts/${contract.id}/performance-statements`, { throughOn: '2099-03-13' });
    expect(content.changes.map((one: any) => one.sentence)).toEqual(['1 of Sponsored game ball was credited, Night of December 4, 2026. Reason: It was not read.']);
    expect(await wordsOf(department, id)).toMatch(/Told through March 13, 2099, as far as it was known on/);
  });

  test('tells a read that nobody logged after those of its night', async () => {
    const department = await aDepartment();
    const { season, contract } = await aSponsorProof(department);
    const { director } = department;
    const { gameId, nightId } = season.games[3]!;
    const device = new TableDevice();
    const [{ id: placementId, cueKey }] = (await director.look(`/api/nights/${nightId}/placements`)).data.filter((one: any) => one.windowKey === 'halftime');
    await director.make(`/api/nights/${nightId}/log`, { deviceId: device.deviceId, entries: [device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId: contract.commitments[1].id, placementId, cueKey, windowKey: 'halftime' })] });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    const { content } = await director.look(`/api/contracts/${contract.id}/performance-statement-draft?throughOn=${season.endsOn}`);
    expect(content.nights.at(-1).reads.map((read: any) => [read.outcome, read.why])).toEqual([['given', null], ['notRead', 'nothing in the log']]);
  });

  test('holds no name of a student or of another sponsor', async () => {
    const golden = await aPlayedContract();
    const { director } = golden.department;
    await director.make('/api/sponsors', { name: 'Blue Lantern Tire', categoryId: golden.season.categoryId });
    const players = await golden.department.ask<{ name: string }>('select name from player where department_id = $1', [golden.department.id]);
    const statement = await issue(golden);
    const said = `${JSON.stringify(statement.content)} ${await wordsOf(golden.department, statement.id)}`;
    expect(players.length).toBeGreaterThan(0);
    for (const name of ['Blue Lantern', ...players.map((player) => player.name)]) expect([name, said.includes(name)]).toEqual([name, false]);
  });
});

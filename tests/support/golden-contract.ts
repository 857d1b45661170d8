import { expect } from 'vitest';
import { aDepartment } from './department.ts';
import type { Department } from './department.ts';
import { TableDevice, aContract, aSeasonThatIsOver } from './season.ts';
import type { Season } from './season.ts';

interface Balances {
  of: (journal: string, account: string, commitmentId?: string) => number;
  trial: Record<string, number>;
}

/** What the postings come to: debit +, credit -; in cents, or in reads. */
export async function balances({ ask, id }: Department, through = '2199-12-31'): Promise<Balances> {
  const rows = await ask<{ journal: string; commitment_id: string | null; account: string; amount: number }>(
    `select journal, commitment_id, account, sum(amount) as amount from (
       select journal, commitment_id, to_account as account, amount from posting where department_id = $1 and effective_on <= $2
       union all select journal, commitment_id, from_account, -amount from posting where department_id = $1 and effective_on <= $2) as moved
     group by journal, commitment_id, account`,
    [id, through],
  );
  const of = (journal: string, account: string, commitmentId?: string) =>
    rows.filter((row) => row.journal === journal && row.account === account && (!commitmentId || row.commitment_id === commitmentId)).reduce((sum, row) => sum + Number(row.amount), 0);
  const accounts = [...new Set(rows.filter((row) => row.journal === 'money').map((row) => row.account))].sort();
  return { of, trial: Object.fromEntries(accounts.map((account) => [account, of('money', account)]).filter(([, amount]) => amount !== 0)) };
}

/** The golden contract, told by those who keep it: a director, a bookkeeper, an announcer. */
export class GoldenContract {
  private readonly device = new TableDevice();

  constructor(
    readonly department: Department,
    readonly season: Season,
    readonly contractId: string,
    readonly a: string,
    readonly b: string,
  ) {}

  /** A owed, given, made good; B owed, given, credited, extra; then TB, CB, AR, UC, ST, cash and SR, in cents. */
  async row() {
    const { of } = await balances(this.department);
    const read = (line: string, ...accounts: string[]) => accounts.map((account) => of('reads', account, line)).join('/');
    const dollars = ['2100', '1100', '2150', '2200', '1000', '4000'].map((account) => of('money', account));
    return [read(this.a, 'owed', 'given', 'madeGood'), read(this.b, 'owed', 'given', 'credited', 'extra'), of('agreed', 'toBill'), ...dollars];
  }

  async game(playedOn: string) {
    const { seasonId, teamId, opponentTeamId, venueId } = this.season;
    const game = await this.department.director.make('/api/games', { seasonId, level: 'varsity', homeTeamId: teamId, visitorTeamIds: [opponentTeamId], playedOn, startsAtClock: '19:00', venueId });
    return { gameId: game.id as string, nightId: game.nightIds[0] as string };
  }

  /** Plays a game at home, logs its reads, signs the night off. Answers the entries. */
  async night(playedOn: string, given: [number, number], { notRead = 0, makegoodId }: { notRead?: number; makegoodId?: string } = {}) {
    const { director, announcer } = this.department;
    const { gameId, nightId } = await this.game(playedOn);
    const entries = [...Array<string>(given[0]).fill(this.a), ...Array<string>(given[1]).fill(this.b)].map((line, cue) => this.device.read(line, gameId, cue + 10));
    const missed = Array.from({ length: notRead }, (_, cue) => this.device.read(this.b, gameId, 20 + cue, 'notRead', 'ranOutOfTime'));
    const instead = makegoodId ? [await this.replacement(gameId, makegoodId)] : [];
    await announcer.make(`/api/nights/${nightId}/log`, { deviceId: this.device.deviceId, entries: [...entries, ...missed, ...instead] });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    return { nightId, entries };
  }

  private async replacement(gameId: string, makegoodId: string) {
    const placement = await this.department.director.make('/api/placements', { commitmentId: this.a, gameId, windowKey: 'halftime', makegoodId });
    expect(placement).toMatchObject({ readKindName: 'Concession read', makegoodId });
    return this.device.entry({ kind: 'read', outcome: 'given', gameId, commitmentId: this.a, placementId: placement.id, cueKey: placement.cueKey, windowKey: 'halftime' });
  }

  async takeBack(nightId: string, entryId: string) {
    const entries = [this.device.entry({ kind: 'takenBack', takesBackEntryId: entryId })];
    await this.department.director.make(`/api/nights/${nightId}/amend`, { reason: 'found the next morning', deviceId: this.device.deviceId, entries });
  }

  async receive(receivedOn: string, method: string, amountCents: number, applied: Record<string, number>) {
    const applications = Object.entries(applied).map(([invoiceId, cents]) => ({ invoiceId, amountCents: cents }));
    return this.department.bookkeeper.make('/api/payments', { sellerId: this.season.sellerId, payerId: this.season.payerId, receivedOn, method, amountCents, applications });
  }
}

/** K1 of LEDGER.md, two years before its days, so that its months are over and can be closed. */
export async function theGoldenContract(): Promise<GoldenContract> {
  const department = await aDepartment();
  const season = await aSeasonThatIsOver(department);
  const draft = await aContract(department, season, {
    billingPlan: { kind: 'installments', installments: [{ on: '2024-11-23', share: 1 }, { on: '2025-01-15', share: 1 }] },
    term: { startsOn: '2024-11-20', endsOn: '2025-03-13' },
  });
  const [a, b] = draft.commitments.map((one: { id: string }) => one.id) as [string, string];
  return new GoldenContract(department, season, draft.id, a, b);
}

/** K1 from its signing to its close, without looking at what it comes to on the way. */
export async function tellToTheEnd(golden: GoldenContract): Promise<void> {
  const { contractId, b, season, department: { director, bookkeeper } } = golden;
  const contract = `/api/contracts/${contractId}`;
  const bill = (day: string) => bookkeeper.make('/api/invoices', { contractId, throughDay: day, issuedOn: day });
  await director.make(`${contract}/sign`, { signedOn: '2024-11-20', signedByName: 'Hazel Juniper' });
  const first = await bill('2024-11-23');
  await golden.night('2024-12-01', [1, 1]);
  await golden.receive('2024-12-05', 'check', 36_750, { [first.id]: 36_750 });
  const eighth = await golden.night('2024-12-08', [1, 1]);
  await golden.night('2024-12-15', [1, 0], { notRead: 1 });
  await golden.night('2024-12-18', [1, 2]);
  for (const month of ['2024-11', '2024-12']) await bookkeeper.make(`/api/months/${month}/close`, {});
  await golden.takeBack(eighth.nightId, eighth.entries[1]!.id);
  await director.make(`${contract}/amend`, { commitmentId: b, reads: 4, priceCents: 12_000, amendedOn: '2025-01-06' });
  await golden.night('2025-01-08', [1, 2]);
  const second = await bill('2025-01-15');
  await golden.receive('2025-01-20', 'check', 30_000, { [second.id]: 30_000 });
  const icy = await golden.game('2025-01-22');
  await director.make(`/api/games/${icy.gameId}/cancel`, { reason: 'Ice' });
  const agreed = await director.make(`${contract}/makegoods`, {
    commitmentId: golden.a, gameId: icy.gameId, missed: 1, replacementReadKindId: season.readKinds.concession, replacements: 2, agreedOn: '2025-01-25', agreedWith: 'Hazel Juniper',
  });
  const makegoodId = agreed.data[0].id as string;
  await golden.night('2025-01-29', [0, 3], { makegoodId });
  await bookkeeper.make('/api/months/2025-01/close', {});
  await golden.night('2025-02-05', [0, 2], { makegoodId });
  await bookkeeper.make(`${contract}/credits`, { commitmentId: b, count: 2, reason: 'Two reads were not given', on: '2025-02-15' });
  const check = await golden.receive('2025-02-18', 'check', 15_000, { [second.id]: 12_309 });
  await golden.night('2025-02-19', [0, 1]);
  await bookkeeper.make(`/api/payments/${check.id}/return`, { kind: 'returned', returnedOn: '2025-02-24', bankFeeCents: 1_200, reason: 'Not enough in the account' });
  const charge = await bookkeeper.make('/api/charges', { payerId: season.payerId, sellerId: season.sellerId, contractId, description: 'Bank fee of the returned check', amountCents: 1_200, issuedOn: '2025-02-24' });
  const transfer = await golden.receive('2025-03-02', 'transfer', 14_000, { [second.id]: 12_309, [charge.id]: 1_200 });
  await bookkeeper.make(`/api/payments/${transfer.id}/refunds`, { amountCents: 491, refundedOn: '2025-03-05', method: 'check' });
  await director.make(`${contract}/close`, { on: '2025-03-05' });
}

import { v7 } from 'uuid';
import type { Department } from '../support/department.ts';
import { aContract, aNightInDays, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** An object of each kind that routes name in their address, by the first word of the address and the name in braces. */
export type Objects = Record<string, string>;

export async function everyObject(department: Department): Promise<Objects> {
  const { director } = department;
  const season = await aSeason(department, 1);
  const signed = await aSignedContract(department, season, { benefits: [{ name: 'Banner at the Perch', quantity: 1, rateCents: 10_000 }], title: 'Walls' });
  const draft = await aContract(department, season, { title: 'Draft of the walls' });
  const copy = await director.make('/api/copies', { sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'Tonight’s game ball.', text: 'Tonight’s game ball comes from Juniper and Pike Hardware.' });
  const slogan = await director.make('/api/slogans', { sponsorId: season.sponsorId, text: 'Better tools, better days', knownFrom: 'The sign over the door' });
  const link = await director.make(`/api/sponsors/${season.sponsorId}/links`, { label: 'Hazel Juniper', expiresAt: '2099-01-01T00:00:00.000Z' });
  const tonight = await aNightInDays(department, 0);
  const tableLink = await director.make(`/api/nights/${tonight.nightId}/table-links`, { label: 'Odell, substitute', maySignOff: true });
  const line = await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.gameBall, priceCents: 7500 });
  const reserved = await director.make('/api/reserved-categories', { categoryId: (await director.make('/api/sponsor-categories', { name: 'Soft drinks' })).id, heldBy: 'Ridge Valley School District, drink contract', startsOn: '2026-07-01' });
  const windowPlaces = await director.make('/api/window-places', { sport: 'wrestling', windowKind: 'pregame', places: 2 });
  const script = await director.make('/api/scripts', { moment: 'welcome', title: 'Welcome of the walls', text: 'Good evening.' });
  await director.make(`/api/nights/${season.games[0]!.nightId}/packet-issues`);
  const placement = await director.make('/api/placements', { commitmentId: signed.commitments[0].id, gameId: season.games[0]!.gameId, windowKey: 'pregame' });
  await director.make(`/api/nights/${season.games[0]!.nightId}/packet-issues`);
  const honours = await director.make(`/api/nights/${season.games[0]!.nightId}/honours-lists`, { title: 'Senior night', kind: 'seniors', windowKind: 'pregame' });
  const invoice = await director.make('/api/invoices', { contractId: signed.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  const payment = await director.make('/api/payments', {
    sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-01', method: 'check', reference: '1041', amountCents: 1000,
    applications: [{ invoiceId: invoice.id, amountCents: 1000 }],
  });
  const certificate = await director.make(`/api/payers/${season.payerId}/exemption-files`, { name: 'certificate.pdf', content: Buffer.from('%PDF-1.7').toString('base64') });
  const run = await director.make('/api/billing-runs', { throughDay: '2026-11-30', issuedOn: '2026-11-30' });
  const memo = await aMemo(department, season);
  const { waitingWriteOff } = await director.make(`/api/invoices/${(await director.make('/api/charges', { sellerId: season.sellerId, payerId: season.payerId, description: 'Fee of a returned check', amountCents: 1200, issuedOn: '2026-12-01' })).id}/write-off-requests`, { amountCents: 1200, reason: 'The store closed' });
  const batch = await director.make('/api/journal-batches', { sellerId: season.sellerId, throughOn: '2026-12-01', allowsOpenMonth: true });
  // Taken by the announcer, who sees no other.
  const take = (reference: string) => department.announcer.make('/api/receipts', { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Juniper', takenOn: '2026-12-01', method: 'check', reference, amountCents: 700 });
  const [receipt, deposited] = [await take('2041'), await take('2042')];
  const slip = await director.make('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-02', paymentIds: [deposited.paymentId], countedCents: 700 });
  const asked = await director.make(`/api/nights/${season.games[0]!.nightId}/requests`, { kind: 'other', fields: { text: 'The snack stand closes at halftime.' } });
  const people = await director.look('/api/people');
  const atTheDoors = { id: v7(), sequence: 1, kind: 'note', occurredAt: '2026-12-05T02:00:00.000Z' };
  for (const text of ['Doors open', 'Doors shut']) await director.make(`/api/nights/${season.games[0]!.nightId}/log`, { deviceId: signed.id, entries: [{ ...atTheDoors, detail: { text } }] });
  const aside = (await director.look(`/api/nights/${season.games[0]!.nightId}/log/aside`)).data[0];
  const bundle = await director.make('/api/packages', { seasonId: season.seasonId, name: 'Package of the walls', priceCents: 7500, lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 1, rateCents: 7500 }] });
  const offer = await director.make('/api/offers', { sponsorId: season.sponsorId, sellerId: season.sellerId, seasonId: season.seasonId, title: 'Offer of the walls', priceCents: 7500, startsOn: '2026-11-20', endsOn: '2027-03-13', lapsesOn: '2027-01-15' });
  const message = await director.make('/api/messages', { kind: 'invoice', aboutId: invoice.id, toAddress: 'hazel@juniper.example' });
  const feed = await director.make('/api/calendar-feeds', { calendar: 'nights', label: 'Calendar of the walls' });
  const proposal = await director.make('/api/plan-proposals', { seasonId: season.seasonId, kind: 'plan', withSeconds: false });
  const statement = await director.make(`/api/contracts/${signed.id}/performance-statements`, {});
  const statementRun = await director.make('/api/statement-runs', { seasonId: season.seasonId });
  const makegood = await aMakegoodProposal(department, season);
  const dispute = await aDispute(department, season, signed);
  return {
    'makegood-proposals/id': makegood.id,
    'read-disputes/id': dispute.id,
    'performance-statements/id': statement.id, 'sponsor-page/statementId': statement.id,
    'statement-runs/id': statementRun.id,
    'offers/id': offer.id,
    'calendar-feeds/id': feed.id, 'calendars/token': link.token,
    'reserved-categories/id': reserved.id,
    'window-places/id': windowPlaces.id,
    'plan-proposals/id': proposal.id,
    'write-off-requests/id': waitingWriteOff.id,
    'messages/id': message.id,
    'people/id': people.data[0].id, 'requests/id': asked.id, 'ask/token': link.token,
    'schools/id': season.schoolId, 'venues/id': season.venueId, 'seasons/id': season.seasonId, 'teams/id': season.teamId, 'players/id': season.playerIds[0]!,
    'games/id': season.games[0]!.gameId, 'nights/id': season.games[0]!.nightId,
    'sponsor-categories/id': season.categoryId, 'sponsors/id': season.sponsorId, 'sellers/id': season.sellerId, 'payers/id': season.payerId,
    'read-kinds/id': season.readKinds.gameBall, 'packages/id': bundle.id, 'rate-card-lines/id': line.id, 'contracts/id': signed.id, 'contracts/benefitId': signed.benefits[0].id,
    'copies/id': copy.id, 'copies/versionId': copy.versions[0].id, 'slogans/id': slogan.id, 'sponsors/linkId': link.id, 'sponsor-page/versionId': copy.versions[0].id, 'sponsor-page/invoiceId': invoice.id, 'sponsor-page/memoId': memo.id, 'sponsor-page/proposalId': makegood.id, linkToken: link.token, 'nights/linkId': tableLink.id, tableAddress: tableLink.address, tablePin: tableLink.pin, tonightId: tonight.nightId, 'placements/id': placement.id, 'honours-lists/id': honours.id, 'scripts/id': script.id,
    'receipts/id': receipt.id, 'deposit-slips/id': slip.id,
    'billing-runs/id': run.id, 'payers/fileId': certificate.data[0].id,
    'nights/asideId': aside.id, 'credit-memos/id': memo.id, 'journal-batches/id': batch.id, 'journal-layouts/id': season.sellerId, 'months/month': '2026-11', 'accounts/code': '1000', 'invoices/id': invoice.id, 'payments/id': payment.id, 'applications/id': payment.applications[0].id, draft: draft.id,
  };
}

/** A game that was billed is cancelled, so that its read is credited. */
async function aMemo(department: Department, season: Season): Promise<{ id: string }> {
  const { director } = department;
  const game = { seasonId: season.seasonId, level: 'varsity', homeTeamId: season.teamId, visitorTeamIds: [season.opponentTeamId], playedOn: '2027-01-22', startsAtClock: '19:00', venueId: season.venueId };
  const cancelled = await director.make('/api/games', game);
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perGame', reads: 1, rateCents: 4000 }];
  const contract = await aSignedContract(department, season, { title: 'Credited', commitments, priceCents: 8000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  await director.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-30', issuedOn: '2026-11-23' });
  await director.make(`/api/games/${cancelled.id}/cancel`, { reason: 'Ice' });
  return (await director.look('/api/credit-memos')).data[0];
}

/** More is promised than the season can carry. */
async function aMakegoodProposal(department: Department, season: Season): Promise<{ id: string }> {
  const { director } = department;
  const commitments = [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 90, rateCents: 100 }];
  const contract = await aSignedContract(department, season, { title: 'Short', commitments, priceCents: 9000, billingPlan: { kind: 'inFull', on: '2026-11-20' } });
  const [line] = (await director.look(`/api/contracts/${contract.id}/shortfalls`)).data;
  return director.make('/api/makegood-proposals', { contractId: contract.id, commitmentId: line.commitmentId, missed: [{ key: line.missed.at(-1).key }], remedy: 'carryOver' });
}

/** As a sponsor asks by its link. */
async function aDispute(department: Department, season: Season, contract: any): Promise<{ id: string }> {
  const id = v7();
  await department.ask(
    `insert into read_dispute (department_id, id, sponsor_id, contract_id, commitment_id, night_id, asked_by_name, what, asked_at) values ($1, $2, $3, $4, $5, $6, 'Hazel Juniper', 'We did not hear it.', now())`,
    [department.id, id, season.sponsorId, contract.id, contract.commitments[0].id, season.games[0]!.nightId],
  );
  return { id };
}

import { addDays } from '../../server/domain/day.ts';
import { dayAt, instantOf } from '../../server/domain/instant.ts';
import type { Department } from '../support/department.ts';
import { anOffer, anOpenOffer, inDays } from '../support/offers.ts';
import { aProposal } from '../support/plan.ts';
import { TableDevice, aSeason, aSignedContract } from '../support/season.ts';
import type { Season } from '../support/season.ts';

/** The address of a page and the heading it carries. */
export type Sheet = readonly [path: string, heading: string];
export type Rooms = Record<'Now' | 'Calendar' | 'Selling' | 'Promises' | 'Changes' | 'Money' | 'Proof' | 'Books' | 'Office', Sheet[]>;

const LISTS: Record<string, string> = {
  games: 'Games', teams: 'Teams', schools: 'Schools', venues: 'Venues', seasons: 'Seasons', offers: 'Offers', contracts: 'Contracts', sponsors: 'Sponsors',
  copies: 'Copy', 'read-kinds': 'Read kinds', packages: 'Packages', 'rate-card-lines': 'Rate card', 'sponsor-categories': 'Categories', scripts: 'Scripts',
  'billing-runs': 'Billing runs', invoices: 'Invoices', 'credit-memos': 'Credit memos', payments: 'Payments', receipts: 'Receipts', 'deposit-slips': 'Deposit slips', payers: 'Payers', sellers: 'Sellers of record', people: 'People and roles',
};

const FORMS: Record<string, string> = {
  games: 'Add a game', teams: 'Add a team', schools: 'Add a school', venues: 'Add a venue', seasons: 'Add a season', offers: 'New offer', contracts: 'New contract',
  sponsors: 'Add a sponsor', copies: 'Add copy', 'read-kinds': 'Add a read kind', packages: 'Put a package together', 'rate-card-lines': 'Add a price',
  'sponsor-categories': 'Add a category', scripts: 'Add a script', 'billing-runs': 'New billing run', payments: 'Record a payment', receipts: 'Write a receipt', 'deposit-slips': 'Make a deposit slip', payers: 'Add a payer',
  sellers: 'Add a seller of record', people: 'Add a person',
};

/** A department in mid-season: a signed contract with given reads, an invoice half paid, copy that waits for approval. */
export async function aBusyOffice(department: Department): Promise<{ rooms: Rooms; draftId: string }> {
  const { director, bookkeeper } = department;
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season, {
    commitments: [
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 6, rateCents: 7_500 },
      { readKindId: season.readKinds.concession, counting: 'perTerm', reads: 8, rateCents: 4_000 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 2, readsAtMost: 9, rateCents: 1_000 },
    ],
    benefits: [{ name: 'Banner on the north rail', quantity: 1, rateCents: 10_000, fairValueCents: 0, earns: 'onDelivery' }],
  });
  await director.make('/api/rate-card-lines', { seasonId: season.seasonId, readKindId: season.readKinds.concession, priceCents: 4_000 });
  await director.make('/api/packages', {
    seasonId: season.seasonId, name: 'Courtside', priceCents: 60_000,
    lines: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', quantity: 6, rateCents: 7_500 }, { readKindId: season.readKinds.concession, counting: 'perGame', quantity: 1 }, { benefitName: 'Banner on the north rail', quantity: 1, rateCents: 20_000 }],
  });
  const copy = await director.make('/api/copies', {
    sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball, opening night', fallbackText: 'We thank Juniper & Pike Hardware.',
    text: 'Tonight’s game ball is presented by Juniper & Pike Hardware, on Alder Street.',
  });
  await director.make(`/api/sponsors/${season.sponsorId}/contacts`, { contactedOn: '2025-11-20', how: 'visit', withWhom: 'Hazel Juniper', what: 'The game ball again, and a banner if the north rail is free.', nextStep: 'Bring the rate card', nextStepOn: '2025-11-24' });
  const draft = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title: 'Spring banner',
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 12_000, billingPlan: { kind: 'inFull', on: '2027-01-15' } },
    commitments: [{
      readKindId: season.readKinds.concession, counting: 'perTerm', reads: 3, rateCents: 4_000, windowKinds: ['halftime'], blackoutDays: ['2026-12-24', '2026-12-31'],
      pinnedGameIds: [season.games[1]!.gameId], leastPerGame: 1, mostPerGame: 2, separation: 'next',
    }],
    benefits: [],
    exclusivities: [{ categoryId: season.categoryId, reach: 'window', schoolId: season.schoolId, startsOn: '2026-11-20', endsOn: '2027-03-13', windowKinds: ['halftime'] }],
  });
  await director.make('/api/reserved-categories', { categoryId: season.categoryId, heldBy: 'Ridge Valley School District, tool contract', startsOn: '2028-07-01', endsOn: '2029-06-30' });
  await director.make('/api/read-kinds', { name: 'Long read', timing: 'scheduled', windows: ['halftime', 'timeOut'], placeGroup: 'long reads' });
  await director.make('/api/window-places', { sport: 'basketball', windowKind: 'halftime', places: 4 });
  await director.make('/api/window-places', { sport: 'basketball', windowKind: 'halftime', placeGroup: 'long reads', places: 1 });
  await director.make('/api/plan/spread', { seasonId: season.seasonId });
  for (const [calendar, label] of [['games', 'The school’s website'], ['nights', 'Odell, announcer']]) await director.make('/api/calendar-feeds', { calendar, label });
  const [first, second] = season.games as [(typeof season.games)[0], (typeof season.games)[0]];
  const device = new TableDevice();
  const line = contract.commitments[1].id;
  await director.make(`/api/nights/${first.nightId}/log`, { deviceId: device.deviceId, entries: [device.read(line, first.gameId, 1), device.read(line, first.gameId, 2, 'notRead', 'noTime')] });
  await director.make(`/api/nights/${first.nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
  await director.make(`/api/nights/${second.nightId}/packet-issues`);
  const invoice = await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  const payment = await bookkeeper.make('/api/payments', { sellerId: season.sellerId, payerId: season.payerId, receivedOn: '2026-12-05', method: 'check', amountCents: 10_000, applications: [{ invoiceId: invoice.id, amountCents: 10_000 }] });
  const memoId = await aCredit(department, season);
  const take = (reference: string, amountCents: number) => department.announcer.make('/api/receipts', { sellerId: season.sellerId, payerId: season.payerId, fromWhom: 'Hazel Juniper', takenOn: '2026-12-04', method: 'check', reference, amountCents, whatFor: 'Game ball, opening night' });
  const [deposited, receipt] = [await take('2041', 5_000), await take('2042', 7_500)];
  const slip = await bookkeeper.make('/api/deposit-slips', { sellerId: season.sellerId, depositedOn: '2026-12-07', paymentIds: [deposited.paymentId], countedCents: 4_975, note: 'Counted twice; a quarter is missing' });
  await bookkeeper.make(`/api/payers/${season.payerId}/exemption-files`, { name: 'Certificate 12-3456.pdf', content: Buffer.from('%PDF-1.7 certificate').toString('base64') });
  const run = await bookkeeper.make('/api/billing-runs', { throughDay: '2026-11-30', issuedOn: '2026-11-30' });
  const { draft: draftOffer, open: openOffer } = await withOffers(department, season);
  const ids: Record<string, string> = {
    offers: draftOffer.id,
    games: second.gameId, teams: season.teamId, schools: season.schoolId, venues: season.venueId, seasons: season.seasonId, contracts: contract.id,
    sponsors: season.sponsorId, copies: copy.id, 'read-kinds': season.readKinds.bankShot, 'sponsor-categories': season.categoryId,
    invoices: invoice.id, 'billing-runs': run.id, 'credit-memos': memoId, payments: payment.id, receipts: receipt.id, 'deposit-slips': slip.id, payers: season.payerId, sellers: season.sellerId,
  };
  for (const resource of ['rate-card-lines', 'packages', 'scripts', 'people']) ids[resource] = (await director.look(`/api/${resource}?perPage=1`)).data[0].id;
  const records: Record<string, any> = {};
  for (const [resource, id] of Object.entries(ids)) records[resource] = await director.look(`/api/${resource}/${id}`);
  const honours = await director.make(`/api/nights/${second.nightId}/honours-lists`, { title: 'Senior night', kind: 'seniors', windowKind: 'pregame' });
  await director.put(`/api/honours-lists/${honours.id}/students`, { students: [{ name: 'Mette Orr', escorts: 'her aunt', line: 'Carries a 4.0 GPA.' }, { name: 'Łukasz Wren' }] }, { version: honours.version });
  const night = await director.look(`/api/nights/${second.nightId}`);
  const batch = await bookkeeper.make('/api/journal-batches', { sellerId: season.sellerId, throughOn: '2026-11-30', allowsOpenMonth: true });
  const rooms = roomsOf(records, { batch, night, played: await director.look(`/api/nights/${first.nightId}`), draft, openOffer }, [...(await withTroubles(department, season)), ...(await withGoods(department, season)), ...(await withLetters(department, invoice.id, contract.id)), ...(await withPlan(department, season))]);
  rooms.Proof.push(...(await withMissed(department, season)), ...(await withStatements(department, season, contract)));
  return { rooms, draftId: draft.id };
}

/** A draft of an offer, and one that lies with the sponsor and lapses soon. */
async function withOffers(department: Department, season: Season): Promise<{ draft: any; open: any }> {
  const years = { years: 3, increaseBasisPoints: 250, priceVariesWith: 'attendance' };
  const line = { readKindId: season.readKinds.concession, counting: 'perGame', reads: 2, rateCents: 4000, teamIds: [season.teamId], windowKinds: ['halftime'], blackoutDays: ['2026-12-11'], pinnedGameIds: [season.games[0]!.gameId], mostPerGame: 2 };
  const benefitLines = [{ name: 'Banner on the north rail', quantity: 1, rateCents: 10_000 }];
  return {
    draft: await anOffer(department, season, { title: 'Creamery reads, next year too', readLines: [line], benefitLines, ...years }),
    open: await anOpenOffer(department, season, { title: 'Game balls for the winter', lapsesOn: inDays(3) }),
  };
}

/** A statement of performance of which the books have changed since, the next one, and a run over the season. */
async function withStatements({ director }: Department, season: Season, contract: any): Promise<Sheet[]> {
  const path = `/api/contracts/${contract.id}/performance-statements`;
  const first = await director.make(path, { throughOn: '2027-03-13' });
  await director.make(`/api/nights/${season.games[0]!.nightId}/attendance`, { attendance: 412, how: 'counted' });
  const second = await director.make(path, { throughOn: '2027-03-13' });
  const run = await director.make('/api/statement-runs', { seasonId: season.seasonId });
  for (let tries = 0; tries < 100 && (await director.look(`/api/statement-runs/${run.id}`)).state !== 'done'; tries += 1) await new Promise((wait) => setTimeout(wait, 50));
  const sponsor = second.sponsorName;
  return [
    ['/performance-statements', 'Statements'], [`/performance-statements/${first.id}/show`, `Statement 1, ${sponsor}`], [`/performance-statements/${second.id}/show`, `Statement 2, ${sponsor}`],
    ['/statement-runs', 'Runs of statements'], [`/statement-runs/${run.id}/show`, `Statements of ${run.seasonName}`], [`/contracts/${contract.id}/show?tab=performance`, contract.title],
  ];
}

/** A contract paid in goods, some of which came and some of which are late. */
async function withGoods({ director, bookkeeper }: Department, { seasonId, sellerId, payerId, sponsorId, readKinds }: Season): Promise<Sheet[]> {
  const title = 'Pizzas for reads';
  const contract = await director.make('/api/contracts', {
    sponsorId, sellerId, payerId, title, isInKind: true,
    term: { seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 60_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: readKinds.concession, counting: 'perTerm', reads: 12, rateCents: 5_000 }], benefits: [],
  });
  const path = `/api/contracts/${contract.id}`;
  const promises = [{ what: 'Pizzas for the concession stand', quantity: 40, unitCents: 1_200, dueOn: '2026-11-21' }, { what: 'Game balls', quantity: 2, unitCents: 6_000, dueOn: '2027-01-15' }];
  const { body: goods } = await director.put(`${path}/goods-promises`, { promises }, { version: (await director.look(`${path}/goods-promises`)).version });
  await director.make(`${path}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  await bookkeeper.make(`${path}/goods-deliveries`, { promiseId: goods.promises[0].id, receivedOn: '2026-11-25', quantity: 12, proof: 'Taken in by Odell at the stand' });
  return [[`/contracts/${contract.id}/show?tab=goods`, title]];
}

/** A plan that waits to be decided. */
async function withPlan({ director }: Department, { seasonId }: Season): Promise<Sheet[]> {
  const proposal = await aProposal(director, seasonId, { kind: 'replan', because: 'The packet of the second night is issued' });
  return [['/plan-proposals', 'Plans proposed'], [`/plan-proposals/${proposal.id}/show`, 'Plan of Basketball 2026-27']];
}

/** More promised than the season can carry, something put to the sponsor for it, and a question about a read. */
async function withMissed({ id: departmentId, director, ask }: Department, season: Season): Promise<Sheet[]> {
  const title = 'Game balls beyond the season';
  const { id: contractId } = await director.make('/api/contracts', {
    sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, title,
    term: { seasonId: season.seasonId, startsOn: '2026-11-20', endsOn: '2027-03-13', pricing: 'fixed', priceCents: 30_000, billingPlan: { kind: 'inFull', on: '2027-03-13' } },
    commitments: [{ readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 30, rateCents: 1_000, mostPerGame: 1 }], benefits: [],
  });
  await director.make(`/api/contracts/${contractId}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
  const [line] = (await director.look(`/api/contracts/${contractId}/shortfalls`)).data;
  const missed = line.missed.slice(-2).map(({ key }: { key: string }) => ({ key }));
  const proposal = await director.make('/api/makegood-proposals', { contractId, commitmentId: line.commitmentId, missed, remedy: 'credit', isShown: true, answerBy: '2027-01-15' });
  await ask(
    `insert into read_dispute (department_id, id, sponsor_id, contract_id, commitment_id, night_id, asked_by_name, what, asked_at) values ($1, $2, $3, $4, $5, $6, 'Hazel Juniper', 'We sat in the front row and did not hear it.', now())`,
    [departmentId, proposal.id, season.sponsorId, contractId, line.commitmentId, season.games[0]!.nightId],
  );
  return [
    [`/contracts/${contractId}/show?tab=credits`, title], ['/makegood-proposals', 'Makegoods'], [`/makegood-proposals/${proposal.id}/show`, 'Makegood for Juniper & Pike Hardware'],
    ['/read-disputes', 'Disputes'], [`/read-disputes/${proposal.id}/show`, 'Question of Juniper & Pike Hardware'],
  ];
}

/** An invoice that went out by e-mail and a letter of thanks that came back. */
async function withLetters({ bookkeeper }: Department, invoiceId: string, contractId: string): Promise<Sheet[]> {
  const invoice = await bookkeeper.make('/api/messages', { kind: 'invoice', aboutId: invoiceId, toAddress: 'bills@juniper.example' });
  const thanks = await bookkeeper.make('/api/messages', { kind: 'thankYou', aboutId: contractId, toAddress: 'hazel@juniper.example' });
  for (const until = Date.now() + 20_000; Date.now() < until && (await bookkeeper.look(`/api/messages/${thanks.id}`)).state !== 'sent'; ) await new Promise((done) => setTimeout(done, 200));
  await bookkeeper.make(`/api/messages/${thanks.id}/bounced`, { detail: 'The mailbox is full' });
  return [['/messages', 'Letters'], [`/messages/${invoice.id}/show`, invoice.subject], [`/messages/${thanks.id}/show`, thanks.subject]];
}

/** Money that went wrong: a check that came back with its fee charged on, a payment left over, a charge that is to be written off. */
async function withTroubles({ bookkeeper }: Department, { sellerId, payerId }: { sellerId: string; payerId: string }): Promise<Sheet[]> {
  const pay = (reference: string) => bookkeeper.make('/api/payments', { sellerId, payerId, receivedOn: '2026-11-24', method: 'check', reference, amountCents: 4_500 });
  const bounced = await pay('1041');
  await bookkeeper.make(`/api/payments/${bounced.id}/return`, { kind: 'returned', returnedOn: '2026-11-25', bankFeeCents: 1_200, chargeCents: 2_500, reason: 'Not sufficient funds' });
  const left = await pay('1042');
  await bookkeeper.make(`/api/payments/${left.id}/refunds`, { amountCents: 500, refundedOn: '2026-11-26', method: 'check' });
  const charge = await bookkeeper.make('/api/charges', { sellerId, payerId, description: 'Interest on last season', amountCents: 3_000, issuedOn: addDays(dayAt(instantOf(new Date().toISOString()), 'America/Denver'), -150) });
  await bookkeeper.make(`/api/invoices/${charge.id}/write-off-requests`, { amountCents: 3_000, reason: 'The old store closed' });
  return [[`/payments/${bounced.id}/show`, `Payment ${bounced.number}`], [`/payments/${left.id}/show`, `Payment ${left.number}`], [`/invoices/${charge.id}/show`, `Charge ${charge.number}`]];
}

/** A small contract that is billed in full, and of whose reads one is credited and one is to be made good. */
async function aCredit(department: Department, season: Season): Promise<string> {
  const { director, bookkeeper } = department;
  const commitments = [{ readKindId: season.readKinds.concession, counting: 'perTerm', reads: 4, rateCents: 4_000 }];
  const contract = await aSignedContract(department, season, { title: 'Concession reads of the fall', commitments, priceCents: 16_000, billingPlan: { kind: 'inFull', on: '2026-11-23' } });
  const commitmentId = contract.commitments[0].id;
  await bookkeeper.make('/api/invoices', { contractId: contract.id, throughDay: '2026-11-23', issuedOn: '2026-11-23' });
  await director.make(`/api/contracts/${contract.id}/makegoods`, { commitmentId, missed: 1, replacementReadKindId: season.readKinds.concession, replacements: 2, agreedOn: '2026-12-06', agreedWith: 'Hazel Juniper' });
  const credit = { commitmentId, count: 1, reason: 'The fire alarm ended the game early', on: '2026-12-06' };
  return (await bookkeeper.make(`/api/contracts/${contract.id}/credits`, credit)).creditMemoIds[0];
}

/** Every way to change a contract; which of them it takes now is said on the page. */
const changesOf = (id: string, name: string): Sheet[] =>
  Object.entries({
    amend: `Amend ${name}`, end: `End ${name} early`, swap: `Swap reads of ${name}`, assign: `Hand ${name} on`, hold: `Put ${name} on hold`, 'lift-hold': `Lift the hold on ${name}`,
    'lower-price': `Lower the price of ${name}`, carry: `Carry reads of ${name} over`, close: `Close ${name}`, reopen: `Open ${name} again`,
  }).map(([key, heading]) => [`/contracts/${id}/${key}`, heading]);

const nameOf = (record: any): string => record.label ?? record.title ?? record.name ?? record.readKindName;

function roomsOf(records: Record<string, any>, { night, played, draft, batch, openOffer }: Record<'night' | 'played' | 'draft' | 'batch' | 'openOffer', any>, stories: Sheet[]): Rooms {
  const shows = (resource: string): Sheet => {
    if (resource === 'invoices') return [`/invoices/${records[resource].id}/show`, `Invoice ${records[resource].number}`];
    if (resource === 'billing-runs') return [`/billing-runs/${records[resource].id}/show`, 'Billing run through Nov 30, 2026'];
    if (resource === 'credit-memos') return [`/credit-memos/${records[resource].id}/show`, `Credit memo ${records[resource].number}`];
    if (resource === 'payments') return [`/payments/${records[resource].id}/show`, `Payment ${records[resource].number}`];
    if (resource === 'receipts') return [`/receipts/${records[resource].id}/show`, `Receipt ${records[resource].number}`];
    if (resource === 'deposit-slips') return [`/deposit-slips/${records[resource].id}/show`, `Deposit slip ${records[resource].number}`];
    const name = nameOf(records[resource]);
    return [`/${resource}/${records[resource].id}/show`, resource === 'rate-card-lines' ? `Price of ${name}` : name];
  };
  const changes = (resource: string): Sheet => {
    const name = nameOf(records[resource]);
    const heading = resource === 'people' ? `Roles of ${name}` : resource === 'rate-card-lines' ? `Change the price of ${name}` : `Change ${name}`;
    return [`/${resource}/${records[resource].id}`, heading];
  };
  const all = (...resources: string[]): Sheet[] =>
    resources.flatMap((resource) => [
      [`/${resource}`, LISTS[resource]!] as Sheet,
      ...(FORMS[resource] ? [[`/${resource}/create`, FORMS[resource]] as Sheet] : []),
      shows(resource),
      ...(['billing-runs', 'invoices', 'credit-memos', 'payments', 'receipts', 'deposit-slips', 'contracts'].includes(resource) ? [] : [changes(resource)]),
    ]);
  const tabs = (path: string, heading: string, ...keys: string[]): Sheet[] => keys.map((key) => [`${path}?tab=${key}`, heading]);
  return {
    Now: [
      ['/', 'Home'],
      ['/nights', 'Nights'],
      ...tabs(`/nights/${night.id}/show`, night.title, 'packet', 'placements', 'honours', 'people', 'table', 'requests', 'log', 'tidy'),
      ...tabs(`/nights/${played.id}/show`, played.title, 'requests', 'log', 'tidy'),
    ],
    Calendar: [...all('games', 'teams', 'schools', 'venues', 'seasons'), [`/seasons/${records['seasons'].id}/roll-over`, `Roll over ${nameOf(records['seasons'])}`], ['/plan', 'Plan board'], ['/plan?view=list', 'Plan board'], ['/window-places', 'Places in windows'], ['/calendar-feeds', 'Calendar feeds']],
    Selling: [
      ['/calls', 'Who to call'],
      ...all('offers', 'packages', 'rate-card-lines'),
      [`/offers/${openOffer.id}/show`, openOffer.title],
      ['/can-we-promise', 'Can we promise this?'],
      ['/left-to-sell', 'Left to sell'],
    ],
    Promises: [
      ...all('contracts', 'sponsors', 'copies', 'read-kinds', 'sponsor-categories', 'scripts'),
      ...tabs(`/contracts/${records['contracts'].id}/show`, nameOf(records['contracts']), 'fulfillment', 'delivery', 'credits', 'account', 'explanation', 'invoices', 'copy'),
      ...tabs(`/scripts/${records['scripts'].id}/show`, nameOf(records['scripts']), 'versions'),
      [`/contracts/${draft.id}`, `Change ${draft.title}`], [`/contracts/${draft.id}/show`, draft.title],
      ...(draft.commitments.length > 0 ? tabs(`/contracts/${draft.id}/show`, draft.title, 'places') : []),
    ],
    Changes: changesOf(records['contracts'].id, nameOf(records['contracts'])),
    Money: [['/open-money', 'Open money'], ...all('billing-runs', 'invoices', 'credit-memos', 'payments', 'receipts', 'deposit-slips', 'payers', 'sellers'), ['/check-entry', 'Enter checks'], ['/find', 'Find a document'], ['/find?q=juniper', 'Find a document'], ...stories],
    Proof: [['/glance', 'Season at a glance'], ['/at-risk', 'Promises at risk'], ['/income-board', 'Income'], [`/income-board?over=season&seasonId=${records['seasons'].id}`, 'Income'], ['/renewals', 'Renewals']],
    Books: [
      ['/trial-balance', 'Trial balance'], ['/account-ledger', 'Account ledger'], ['/aging?by=invoiceAge', 'Aging'], ['/unearned-revenue', 'Unearned revenue'],
      ['/income-by-team', 'Income by team'], ['/months', 'Months'], ['/months/2026-11/show', 'November 2026'], ['/accounts', 'Accounts'],
      ['/journal-batches', 'Journal'], ['/journal-batches/create', 'Next batch'], [`/journal-batches/${batch.id}/show`, `Batch ${batch.number}`], ['/journal-layouts', 'Journal layouts'],
      [`/journal-layouts/${records['sellers'].id}`, `Journal of ${records['sellers'].name}`],
    ],
    Office: [...all('people'), ['/imports', 'Imports'], ['/department', 'Department'], ['/audit', 'Audit'], ['/seals', 'Seals'], ['/me', 'You'], ['/nowhere', 'No such page']],
  };
}

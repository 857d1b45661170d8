import { addDays, firstOfMonth, lastOfMonth } from '../../server/domain/day.ts';
import type { Day } from '../../server/domain/day.ts';
import type { Department } from './department.ts';
import { TableDevice, aSeason } from './season.ts';
import type { Season } from './season.ts';

/** Numbers that look drawn by lot and are the same for the same seed. @source mulberry32, public domain, from memory */
export function lots(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296) * below);
  };
}

interface Deal {
  id: string;
  sellerId: string;
  payerId: string;
  isInKind: boolean;
  lines: string[];
}

const FIRST_DAY = '2026-08-03' as Day;
const NAMES = ['Juniper & Pike Hardware', 'Snowmelt Creamery', 'Blue Lantern Tire', 'Copperline Credit Union', 'Halvorsen Orthodontics'];

/** A season over months that lie behind: contracts with every billing plan for two sellers, and what happens to them by lot. */
export class RandomSeason {
  day = FIRST_DAY;
  readonly deals: Deal[] = [];
  sellerIds: string[] = [];
  private season!: Season;
  private readonly device = new TableDevice();
  private readonly games: { id: string; nightId: string; playedOn: Day }[] = [];

  constructor(private readonly department: Department, private readonly lot: (below: number) => number) {}

  async begin(): Promise<void> {
    const { director } = this.department;
    this.season = await aSeason(this.department, 0);
    const { version } = await director.look(`/api/seasons/${this.season.seasonId}`);
    const moved = await director.patch(`/api/seasons/${this.season.seasonId}`, { startsOn: '2026-08-01' }, { version });
    if (moved.status !== 200) throw new Error(JSON.stringify(moved.body));
    const club = await director.make('/api/sellers', { name: 'Kestrel Boosters', numberPrefix: 'KB', taxBasisPoints: 725 });
    this.sellerIds = [this.season.sellerId, club.id];
    for (let week = 0; week < 12; week += 1) {
      const playedOn = addDays(FIRST_DAY, 4 + 7 * week);
      const game = await director.make('/api/games', { seasonId: this.season.seasonId, level: 'varsity', homeTeamId: this.season.teamId, visitorTeamIds: [this.season.opponentTeamId], playedOn, startsAtClock: '19:00', venueId: this.season.venueId });
      this.games.push({ id: game.id, nightId: game.nightIds[0], playedOn });
    }
    const plans = [
      { plan: { kind: 'inFull', on: '2026-08-10' } },
      { plan: { kind: 'installments', installments: [{ on: '2026-08-05', share: 1 }, { on: '2026-09-15', share: 2 }, { on: '2026-10-15', share: 1 }] } },
      { plan: { kind: 'perReadInArrears' }, pricing: 'perRead' },
      { plan: { kind: 'depositAndArrears', depositCents: 9_900, depositOn: '2026-08-06' } },
      { plan: { kind: 'inFull', on: '2026-08-06' }, isInKind: true },
    ];
    for (const [place, one] of plans.entries()) await this.sign(place, one);
  }

  private async sign(place: number, { plan, pricing = 'fixed', isInKind = false }: { plan: object; pricing?: string; isInKind?: boolean }): Promise<void> {
    const { director } = this.department;
    const sponsor = await director.make('/api/sponsors', { name: `${NAMES[place]} ${place}`, categoryId: this.season.categoryId });
    const payer = await director.make('/api/payers', { name: `${NAMES[place]} ${place}`, sponsorId: sponsor.id });
    const sellerId = this.sellerIds[place % 2]!;
    const priceEach = pricing === 'perRead' ? { priceEachCents: 2_000 + this.lot(999) } : {};
    const counting = place % 2 === 0 && !isInKind && pricing === 'fixed' ? 'perGame' : 'perTerm';
    const { readKinds, seasonId } = this.season;
    const draft = await director.make('/api/contracts', {
      sponsorId: sponsor.id, sellerId, payerId: payer.id, title: `${NAMES[place]} at the Perch`, isInKind,
      term: { seasonId, startsOn: '2026-08-03', endsOn: '2026-11-20', pricing, priceCents: pricing === 'perRead' ? 0 : 50_000 + this.lot(90_000), billingPlan: plan },
      commitments: [
        { readKindId: readKinds.gameBall, counting, reads: counting === 'perGame' ? 1 : 10, rateCents: 7_500, ...priceEach },
        { readKindId: readKinds.concession, counting: 'perTerm', reads: 15, rateCents: 4_000, ...priceEach },
      ],
    });
    await director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-08-03', signedByName: 'Hazel Juniper' });
    const lines = draft.commitments.map((line: { id: string }) => line.id) as string[];
    this.deals.push({ id: draft.id, sellerId, payerId: payer.id, isInKind, lines });
  }

  /** One thing that happens, some days later. Answers what it was, for whoever reads a failing test. */
  async step(): Promise<string> {
    this.day = addDays(this.day, this.lot(5));
    const due = this.games[0];
    if (due && due.playedOn <= this.day) return this.playOrCancel();
    const happen = [this.bill, this.bill, this.bill, this.pay, this.pay, this.pay, this.unapply, this.voidOne, this.amend, this.goods, this.closeMonth];
    return happen[this.lot(happen.length)]!.call(this);
  }

  private async playOrCancel(): Promise<string> {
    const { director, announcer } = this.department;
    const { id, nightId, playedOn } = this.games.shift()!;
    if (this.lot(5) === 0) {
      await director.post(`/api/games/${id}/cancel`, { reason: 'Snow', on: playedOn });
      return `the game of ${playedOn} was cancelled`;
    }
    const lines = this.deals.flatMap((deal) => deal.lines.filter(() => this.lot(3) > 0));
    const entries = lines.map((line, cue) => this.device.read(line, id, cue + 1, this.lot(6) === 0 ? 'notRead' : 'given', 'ranOutOfTime'));
    if (entries.length > 0) await announcer.make(`/api/nights/${nightId}/log`, { deviceId: this.device.deviceId, entries: entries.map((entry) => (entry['outcome'] === 'given' ? { ...entry, reason: undefined } : entry)) });
    await director.make(`/api/nights/${nightId}/sign-off`, { overrideReason: 'the test does not wait for the night' });
    return `the night of ${playedOn} was signed off`;
  }

  private async bill(): Promise<string> {
    const deal = this.deals[this.lot(this.deals.length)]!;
    const answer = await this.department.bookkeeper.post('/api/invoices', { contractId: deal.id, throughDay: this.day, issuedOn: this.day });
    return `billed: ${answer.body.number ?? answer.body.code}`;
  }

  private async pay(): Promise<string> {
    const { bookkeeper } = this.department;
    const open = (await bookkeeper.look('/api/invoices?unpaid=true&perPage=100')).data as { id: string; sellerId: string; payerId: string; balanceCents: number }[];
    const invoice = open[this.lot(open.length)];
    if (!invoice) return 'nothing to pay';
    const amountCents = this.lot(3) === 0 ? invoice.balanceCents + this.lot(2_000) : 1 + this.lot(invoice.balanceCents);
    const { sellerId, payerId, id: invoiceId } = invoice;
    const answer = await bookkeeper.post('/api/payments', { sellerId, payerId, receivedOn: this.day, method: 'transfer', amountCents, applications: [{ invoiceId, amountCents: Math.min(amountCents, invoice.balanceCents) }] });
    return `paid: ${answer.body.number ?? answer.body.code}`;
  }

  private async unapply(): Promise<string> {
    const { bookkeeper } = this.department;
    const payments = (await bookkeeper.look('/api/payments?perPage=100')).data as { applications: { id: string; takenBack: boolean }[] }[];
    const applications = payments.flatMap((payment) => payment.applications).filter((one) => !one.takenBack);
    const one = applications[this.lot(applications.length)];
    if (!one) return 'nothing to take back';
    return `taken back: ${(await bookkeeper.post(`/api/applications/${one.id}/take-back`, { takenBackOn: this.day })).status}`;
  }

  private async voidOne(): Promise<string> {
    const { bookkeeper } = this.department;
    const open = (await bookkeeper.look('/api/invoices?state=open&perPage=100')).data as { id: string }[];
    const invoice = open[this.lot(open.length)];
    if (!invoice) return 'nothing to void';
    return `void: ${(await bookkeeper.post(`/api/invoices/${invoice.id}/void`, { reason: 'Wrong payer', voidedOn: this.day })).status}`;
  }

  private async amend(): Promise<string> {
    const deal = this.deals[this.lot(this.deals.length)]!;
    const reads = 1 + this.lot(3);
    const answer = await this.department.director.post(`/api/contracts/${deal.id}/amend`, { commitmentId: deal.lines[1], reads, priceCents: reads * (3_000 + this.lot(999)), amendedOn: this.day });
    return `amended: ${answer.status}`;
  }

  private async goods(): Promise<string> {
    const deal = this.deals.find((one) => one.isInKind)!;
    const answer = await this.department.bookkeeper.post(`/api/contracts/${deal.id}/goods`, { receivedOn: this.day, what: 'Bread for the concession stand', amountCents: 1_000 + this.lot(9_000) });
    return `goods: ${answer.status}`;
  }

  /** Closes the month before, so that what comes later for it is booked into this one. */
  private async closeMonth(): Promise<string> {
    const before = addDays(firstOfMonth(this.day), -1);
    if (before < FIRST_DAY) return 'no month to close';
    const answer = await this.department.bookkeeper.post(`/api/months/${before.slice(0, 7)}/close`, { acknowledgesNights: true });
    // Something of the closed month turns up afterwards.
    const deal = this.deals[this.lot(this.deals.length)]!;
    await this.department.bookkeeper.post('/api/payments', { sellerId: deal.sellerId, payerId: deal.payerId, receivedOn: lastOfMonth(before), method: 'check', amountCents: 1 + this.lot(500) });
    return `closed ${before.slice(0, 7)}: ${answer.status}`;
  }
}

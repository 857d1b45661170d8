import fc from 'fast-check';
import { expect, test } from 'vitest';
import { dueToBill } from '../../server/domain/billing/due-to-bill.ts';
import type { BillingPlan } from '../../server/domain/billing/billing-plan.ts';
import { invoiceAmounts } from '../../server/domain/billing/invoice.ts';
import { creditApplied, creditRefunded, paymentReceived, spreadOverInvoices } from '../../server/domain/billing/payment.ts';
import { dayOf } from '../../server/domain/day.ts';
import { MONEY } from '../../server/domain/ledger/account.ts';
import { assertBalanced, balanceOf, balancesOfPostings } from '../../server/domain/ledger/balances.ts';
import type { Posting } from '../../server/domain/ledger/posting.ts';
import { centsOf } from '../../server/domain/money.ts';
import { Refused } from '../../server/domain/refusals.ts';
import { bookHappening, positionOf } from '../../server/domain/sponsorship/apply-happening.ts';
import { amountsOf } from '../../server/domain/sponsorship/contract-amounts.ts';
import type { ContractTerms, LineTerms } from '../../server/domain/sponsorship/contract-terms.ts';
import type { Happening } from '../../server/domain/sponsorship/happening.ts';
import { invariantsOf } from '../../server/domain/sponsorship/invariants.ts';
import type { Position } from '../../server/domain/sponsorship/position.ts';
import { readsOfLine, readsOfSlot } from '../../server/domain/sponsorship/slot-reads.ts';
import { sentenceFor } from '../../server/domain/sponsorship/sentence.ts';

const LAST_DAY = dayOf('2027-06-30');
const GAMES = ['g1', 'g2', 'g3', 'g4'];

const lineOfAnyKind = (place: number): fc.Arbitrary<LineTerms> =>
  fc.record({ shape: fc.constantFrom('term', 'game', 'occurrence', 'each', 'benefit', 'perGamePlayed'), reads: fc.integer({ min: 1, max: 9 }), rate: fc.integer({ min: 1, max: 9000 }) }).map(({ shape, reads, rate }) => {
    const line = { kind: 'reads', lineId: `line${place}`, name: `Line ${place}`, counting: 'perTerm', pricing: 'fixed', reads, rateCents: centsOf(rate) } as const;
    if (shape === 'game') return { ...line, counting: 'perGame', reads: 2, games: GAMES.slice(0, 3).map((gameId) => ({ gameId, reads: 2 })) };
    if (shape === 'occurrence') return { ...line, counting: 'onOccurrence', reads: 0, readsAtLeast: reads, readsAtMost: reads + 3 };
    if (shape === 'perGamePlayed') return { ...line, counting: 'onOccurrence', reads: 0, gamesPlanned: 4 };
    if (shape === 'each') return { ...line, pricing: 'perRead', priceEachCents: centsOf(rate) };
    if (shape === 'benefit') return { kind: 'benefit', lineId: `line${place}`, name: 'Banner', quantity: reads, rateCents: centsOf(rate), earns: 'onDelivery' };
    return line;
  });

const anyTerms: fc.Arbitrary<ContractTerms> = fc
  .record({
    lines: fc.integer({ min: 1, max: 3 }).chain((count) => fc.tuple(...Array.from({ length: count }, (_, place) => lineOfAnyKind(place)))),
    price: fc.integer({ min: 0, max: 200000 }),
    policy: fc.constantFrom('credit', 'valueMovesOn'),
    least: fc.option(fc.integer({ min: 1, max: 30000 })),
    most: fc.option(fc.integer({ min: 30000, max: 60000 })),
    inKind: fc.boolean(),
  })
  .map(({ lines, price, policy, least, most, inKind }) => {
    const fixed = lines.some((line) => line.kind === 'benefit' || line.pricing === 'fixed');
    const priced = lines.some((line) => line.kind === 'reads' && line.pricing === 'perRead');
    return {
      contractId: 'contract',
      priceCents: centsOf(fixed ? price : 0),
      cancelledGame: policy as ContractTerms['cancelledGame'],
      lines,
      ...(fixed && inKind ? { inKindCents: centsOf(Math.floor(price / 3)) } : {}),
      ...(priced && least !== null ? { billAtLeastCents: centsOf(least) } : {}),
      ...(priced && most !== null ? { billAtMostCents: centsOf(most) } : {}),
    };
  });

const PLANS: BillingPlan[] = [
  { kind: 'inFull', on: dayOf('2026-11-01') },
  { kind: 'installments', installments: [{ on: dayOf('2026-11-01'), share: 1 }, { on: dayOf('2026-12-01'), share: 2 }, { on: dayOf('2027-06-01'), share: 1 }] },
  { kind: 'perReadInArrears' },
  { kind: 'depositAndArrears', depositCents: centsOf(100), depositOn: dayOf('2026-11-01') },
];

/** One step of a season: what is tried, on which line, in which game, how much. */
const anyStep = fc.record({ what: fc.nat(28), line: fc.nat(2), game: fc.nat(3), count: fc.constantFrom(1, 1, 1, 2, 2, 3, 4), cents: fc.integer({ min: 1, max: 9000 }) });

type Step = typeof anyStep extends fc.Arbitrary<infer S> ? S : never;

class Season {
  position: Position | null = null;
  readonly told: Happening[] = [];
  readonly postings: Posting[] = [];
  private made = 0;

  constructor(private readonly plan: BillingPlan, readonly taxBasisPoints: number) {}

  newId = (): string => `id${(this.made += 1)}`;

  /** Books what the rules allow; a "no" leaves everything as it was. */
  tryTo(happening: Happening): boolean {
    try {
      const { position, postings, happening: booked } = bookHappening(this.position, happening);
      this.position = position;
      this.postings.push(...postings);
      this.told.push(booked);
      assertBalanced(balancesOfPostings(postings));
      const broken = invariantsOf(position);
      if (broken.length > 0) throw new Error(`${happening.kind}: ${broken.join('; ')}`);
      if (sentenceFor(happening).includes('undefined')) throw new Error(`no sentence for ${happening.kind}`);
      return true;
    } catch (error) {
      if (error instanceof Refused && error.code !== 'entry-does-not-balance') return false;
      throw error;
    }
  }

  mustDo(happening: Happening): void {
    if (!this.tryTo(happening)) throw new Error(`${happening.kind} was refused while settling`);
  }

  state(): Position {
    if (!this.position) throw new Error('not signed');
    return this.position;
  }

  invoice(through = LAST_DAY): void {
    const { lines, netCents } = dueToBill(this.plan, this.state(), through);
    if (netCents === 0) return;
    const { taxCents } = invoiceAmounts(lines, this.taxBasisPoints);
    const invoiceId = this.newId();
    this.tryTo({ kind: 'invoiced', invoiceId, number: invoiceId, netCents, taxCents, lines });
  }
}

function happeningOf(step: Step, season: Season): Happening | null {
  const position = season.state();
  const lineId = `line${step.line % position.lines.length}`;
  const gameId = GAMES[step.game] ?? 'g1';
  const { count, cents } = step;
  const memoId = season.newId();
  const readIds = Object.keys(position.reads);
  const some = (ids: string[]) => ids[step.cents % Math.max(1, ids.length)] ?? 'none';
  switch (step.what) {
    case 0: case 1: case 2: case 3: case 4: case 5:
      return { kind: 'readCounted', readId: season.newId(), lineId, gameId };
    case 6: case 7:
      return { kind: 'readTakenBack', readId: some(readIds) };
    case 8:
      return { kind: 'occurrenceCounted', occurrenceId: season.newId(), lineId, times: count };
    case 9:
      return { kind: 'occurrenceTakenBack', occurrenceId: some(Object.keys(position.occurrences)) };
    case 10:
      return { kind: 'makegoodAgreed', makegoodId: season.newId(), lineId, gameId, missed: count, replacements: 1 + (cents % 4) };
    case 11: case 12:
      return { kind: 'makegoodGiven', makegoodId: some(position.lines.flatMap((line) => line.slots.flatMap((slot) => slot.makegoods.map((one) => one.makegoodId)))), readId: season.newId() };
    case 13:
      return { kind: 'readsCredited', lineId, gameId, count, memoId };
    case 14:
      return { kind: 'readsReleased', lineId, gameId, count };
    case 15:
      return { kind: 'readsForfeited', lineId, gameId, count };
    case 16:
      return { kind: 'gameCancelled', gameId, memoId };
    case 17:
      return { kind: 'gameAdded', gameId, lines: [{ lineId, reads: count }] };
    case 18:
      return { kind: 'amended', changes: [{ lineId, gameId, reads: count - 2, priceCents: centsOf(cents % 2 ? cents - 3000 : 0) }], memoId };
    case 19:
      return { kind: 'priceLowered', byCents: centsOf(cents), memoId };
    case 20:
      return { kind: 'allowanceGiven', amountCents: centsOf(cents % 500 + 1), memoId };
    case 21:
      return { kind: 'benefitDelivered', deliveryId: season.newId(), lineId, quantity: count };
    case 22:
      return { kind: 'gamePlayed', lineId, gameId };
    case 23:
      return { kind: 'carriedOut', carryId: season.newId(), toContractId: 'next', lineId, gameId, count };
    case 24:
      return { kind: 'carriedIn', carryId: season.newId(), fromContractId: 'last', lineId, gameId, count, valuesCents: Array.from({ length: count }, () => cents), billedCents: centsOf(cents % 2 ? cents : 0), taxCents: centsOf(0) };
    case 25:
      return { kind: 'discountTaken', invoiceId: some(position.documents.map((one) => one.invoiceId)), amountCents: centsOf(1 + (cents % 200)) };
    case 26:
      return { kind: 'swapped', fromLineId: lineId, fromReads: count, toLineId: `line${(step.line + 1) % position.lines.length}`, toReads: step.game + 1, priceCents: centsOf(cents % 3 ? 0 : cents - 4000), memoId };
    case 27:
      return { kind: 'occurrenceCounted', occurrenceId: season.newId(), lineId, times: count };
    default:
      return position.documents.length > 0 ? { kind: 'invoiceVoided', invoiceId: some(position.documents.map((one) => one.invoiceId)), number: '' } : { kind: 'goodsReceived', goodsId: season.newId(), amountCents: centsOf(cents), what: 'Programs' };
  }
}

/** Settles a season to the last cent: reads credited, the rest ended, billed, paid, what is over refunded. */
function settle(season: Season, endIt: boolean): void {
  if (endIt) season.mustDo({ kind: 'ended', feeCents: centsOf(500), memoId: season.newId(), keepsMinimum: true });
  for (const line of season.state().lines) {
    for (const slot of line.slots) {
      const { owed } = readsOfSlot(line, slot);
      if (owed > 0) season.mustDo({ kind: 'readsCredited', lineId: line.terms.lineId, count: owed, memoId: season.newId(), ...(slot.gameId ? { gameId: slot.gameId } : {}) });
    }
  }
  for (const line of season.state().lines) {
    if (line.terms.kind !== 'reads' || line.terms.gamesPlanned === undefined) continue;
    for (let game = line.gamesPlayed.length; game < line.values.length; game += 1) season.mustDo({ kind: 'gamePlayed', lineId: line.terms.lineId, gameId: season.newId() });
  }
  if (season.state().terms.billAtLeastCents !== undefined) season.tryTo({ kind: 'minimumClaimed' });
  for (let round = 0; round < 3; round += 1) season.invoice();
  const { toBillCents } = amountsOf(season.state());
  if (toBillCents > 0) season.mustDo({ kind: 'invoiced', invoiceId: season.newId(), number: 'last', netCents: centsOf(toBillCents), taxCents: centsOf(0), lines: [] });
  if (toBillCents < 0) season.mustDo({ kind: 'overbillingCredited', memoId: season.newId() });
  payAndClose(season);
}

function payAndClose(season: Season): void {
  const now = () => balancesOfPostings(season.postings);
  // A carry-over's credit is met by the other contract, which is not part of this season.
  const carries = new Set(season.state().carries.map((carry) => carry.carryId));
  const keyed = (account: string) =>
    [...now().values()].filter((one) => one.journal === 'money' && one.account === account && !carries.has(one.keys.unappliedId ?? ''));
  const openInvoices = () => keyed(MONEY.receivable).map((one) => ({ invoiceId: one.keys.invoiceId ?? '', balanceCents: one.amount }));
  const credits = () => keyed(MONEY.unappliedCredit).filter((one) => one.amount < 0);
  const useCredits = () => {
    for (const { keys, amount } of credits()) {
      const unappliedId = keys.unappliedId ?? '';
      for (const application of spreadOverInvoices(unappliedId, centsOf(-amount), openInvoices())) {
        const balanceCents = openInvoices().find((one) => one.invoiceId === application.invoiceId)?.balanceCents ?? 0;
        season.postings.push(...creditApplied(application, application.amountCents, balanceCents));
      }
    }
  };
  useCredits();
  const due = balanceOf(now(), 'money', MONEY.receivable);
  if (due > 0) season.postings.push(...paymentReceived('last-payment', centsOf(due + 7)));
  useCredits();
  for (const { keys, amount } of credits()) season.postings.push(...creditRefunded(keys.unappliedId ?? '', centsOf(-amount), -amount));
  season.mustDo({
    kind: 'closed',
    receivableCents: centsOf(balanceOf(now(), 'money', MONEY.receivable)),
    unappliedCents: centsOf(keyed(MONEY.unappliedCredit).reduce((sum, one) => sum + one.amount, 0)),
  });
}

test('whatever happens in a season, every invariant holds after every event and the close leaves nothing', () => {
  fc.assert(
    fc.property(anyTerms, fc.constantFrom(...PLANS), fc.constantFrom(0, 500, 725), fc.array(anyStep, { minLength: 5, maxLength: 40, size: 'max' }), fc.boolean(), (terms, plan, tax, steps, endIt) => {
      const season = new Season(plan, tax);
      if (!season.tryTo({ kind: 'signed', terms })) return;
      for (const [place, step] of steps.entries()) {
        if (place % 7 === 3) season.invoice(dayOf(`2026-1${1 + (place % 2)}-15`));
        const happening = happeningOf(step, season);
        if (happening) season.tryTo(happening);
      }
      settle(season, endIt);
      expect(positionOf(JSON.parse(JSON.stringify(season.told)) as Happening[])).toEqual(season.position);
      const balances = balancesOfPostings(season.postings);
      for (const account of [MONEY.receivable, MONEY.contractBalance]) expect(balanceOf(balances, 'money', account)).toBe(0);
      expect(balanceOf(balances, 'agreed', 'toBill')).toBe(0);
      expect(balanceOf(balances, 'reads', 'owed')).toBe(0);
      expect(season.state().lines.every((line) => readsOfLine(line).owed === 0)).toBe(true);
      assertBalanced(balances);
    }),
    { numRuns: 150 },
  );
}, 30_000);

test('what a read has earned never changes by a later event that is no taking back', () => {
  fc.assert(
    fc.property(anyTerms, fc.array(anyStep, { minLength: 5, maxLength: 30, size: 'max' }), (terms, steps) => {
      const season = new Season({ kind: 'perReadInArrears' }, 500);
      if (!season.tryTo({ kind: 'signed', terms })) return;
      for (const step of steps) {
        const before = season.state();
        const happening = happeningOf(step, season);
        if (!happening || ['readTakenBack', 'occurrenceTakenBack', 'benefitDeliveryTakenBack'].includes(happening.kind)) continue;
        if (!season.tryTo(happening)) continue;
        const [was, is] = [amountsOf(before), amountsOf(season.state())];
        expect(is.earnedFixedCents).toBeGreaterThanOrEqual(was.earnedFixedCents);
        if (happening.kind !== 'readCounted') continue;
        before.lines.forEach((line, place) => expect(season.state().lines[place]?.values.slice(0, line.values.length)).toEqual(line.values));
      }
    }),
    { numRuns: 100 },
  );
}, 30_000);

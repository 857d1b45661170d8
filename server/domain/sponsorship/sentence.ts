import type { Day } from '../day.ts';
import type { Cents } from '../money.ts';
import { amountInSentence } from '../money.ts';
import type { Happening, HappeningKind, HappeningOf } from './happening.ts';
import type { Position } from './position.ts';

/** Names for what a happening only knows by id; what is not known is left out of the sentence. */
export interface Names {
  line?: (lineId: string) => string | undefined;
  game?: (gameId: string) => string | undefined;
  contract?: (contractId: string) => string | undefined;
  /** how a day is written */
  day?: (day: Day) => string;
}

type Told<K extends HappeningKind> = (happening: HappeningOf<K>, say: Say) => string;

interface Say {
  line: (lineId: string) => string;
  game: (gameId: string | undefined) => string;
  contract: (contractId: string) => string;
  day: (day: Day) => string;
}

const money = (amountCents: Cents) => amountInSentence(amountCents);

const many = (count: number, one: string, several = `${one}s`) => `${count} ${count === 1 ? one : several}`;

const SENTENCES: { [K in HappeningKind]: Told<K> } = {
  signed: ({ terms }) => `The contract was signed: ${many(terms.lines.length, 'line')}, ${money(terms.priceCents)}.`,
  openingPosition: ({ given, billedCents, paidCents }) =>
    `Taken over from before: ${given.reduce((sum, one) => sum + one.count, 0)} given, ${money(billedCents)} billed, ${money(paidCents)} paid.`,
  amended: ({ changes, newLines = [] }, say) =>
    `The contract was amended: ${[
      ...changes.map((one) => `${one.reads >= 0 ? '+' : ''}${one.reads} ${say.line(one.lineId)} for ${money(one.priceCents)}`),
      ...newLines.map((one) => `new: ${one.line.name} for ${money(one.priceCents)}`),
    ].join('; ')}.`,
  swapped: ({ fromReads, fromLineId, toReads, toLineId }, say) => `${fromReads} ${say.line(fromLineId)} were swapped for ${toReads} ${say.line(toLineId)}.`,
  priceLowered: ({ byCents }) => `The price of what is still to come was lowered by ${money(byCents)}.`,
  readCounted: ({ lineId, gameId, times = 1 }, say) => `${times === 1 ? 'A read was' : `${times} reads were`} given: ${say.line(lineId)}${say.game(gameId)}.`,
  readTakenBack: () => 'A read was taken back: it does not count.',
  occurrenceCounted: ({ lineId, times = 1 }, say) => `It happened ${times === 1 ? 'once' : `${times} times`}, so a mention is owed: ${say.line(lineId)}.`,
  occurrenceTakenBack: () => 'A happening was taken back: no mention is owed for it.',
  gamePlayed: ({ lineId, gameId }, say) => `A game was played and earned its share: ${say.line(lineId)}${say.game(gameId)}.`,
  gamePlayedTakenBack: ({ lineId, gameId }, say) => `A game's share was taken back: ${say.line(lineId)}${say.game(gameId)}.`,
  makegoodAgreed: ({ missed, replacements, lineId }, say) =>
    `A makegood was agreed: ${many(replacements, 'replacement')} for ${missed} missed of ${say.line(lineId)}.`,
  makegoodGiven: () => 'A makegood read was given.',
  readsCredited: ({ count, lineId, gameId }, say) => `${count} of ${say.line(lineId)} ${count === 1 ? 'was' : 'were'} credited${say.game(gameId)}.`,
  readsReleased: ({ count, lineId, gameId }, say) =>
    `${count} of ${say.line(lineId)} ${count === 1 ? 'is' : 'are'} no longer owed${say.game(gameId)}; the value moved to the reads still to come.`,
  readsForfeited: ({ count, lineId, gameId }, say) => `${count} of ${say.line(lineId)} ${count === 1 ? 'was' : 'were'} forfeited by the sponsor${say.game(gameId)}.`,
  gameCancelled: ({ gameId }, say) => `A game was cancelled${say.game(gameId)}.`,
  gameAdded: ({ gameId, lines }, say) => `A game was added${say.game(gameId)}: ${lines.map((one) => `${one.reads} more of ${say.line(one.lineId)}`).join('; ')}.`,
  ended: ({ feeCents }) => `The contract ended before its time${feeCents ? `, for a fee of ${money(feeCents)}` : ''}.`,
  carriedOut: ({ count, lineId, toContractId }, say) => `${count} of ${say.line(lineId)} ${count === 1 ? 'was' : 'were'} carried over to ${say.contract(toContractId)}.`,
  carriedIn: ({ count, lineId, fromContractId }, say) => `${count} of ${say.line(lineId)} came over from ${say.contract(fromContractId)}.`,
  invoiced: ({ number, netCents, taxCents }) =>
    `Invoice ${number} was issued: ${money(netCents)}${taxCents > 0 ? ` and ${money(taxCents)} tax` : ''}.`,
  invoiceVoided: ({ number }) => `Invoice ${number} was voided.`,
  allowanceGiven: ({ amountCents }) => `An allowance of ${money(amountCents)} was given on reads already given.`,
  discountTaken: ({ amountCents }) => `A discount of ${money(amountCents)} was taken for paying early.`,
  overbillingCredited: () => 'What was billed beyond the reads that count was credited.',
  minimumClaimed: () => 'The least amount agreed was taken into the books.',
  benefitDelivered: ({ lineId, quantity }, say) => `Delivered: ${quantity} ${say.line(lineId)}.`,
  benefitDeliveryTakenBack: () => 'A delivery was taken back.',
  benefitEarnedThrough: ({ lineId, throughOn }, say) => `${say.line(lineId)} has earned its share through ${say.day(throughOn)}.`,
  goodsReceived: ({ what, amountCents }) => `Goods were received for ${money(amountCents)}: ${what}.`,
  closed: () => 'The contract was closed: everything is settled.',
  reopened: () => 'The contract was opened again.',
};

/** One plain sentence for a statement: what happened. */
export function sentenceFor(happening: Happening, names: Names = {}): string {
  const say: Say = {
    line: (lineId) => names.line?.(lineId) ?? 'reads',
    game: (gameId) => {
      const name = gameId === undefined ? undefined : names.game?.(gameId);
      return name === undefined ? '' : `, ${name}`;
    },
    contract: (contractId) => names.contract?.(contractId) ?? 'the other term',
    day: (day) => names.day?.(day) ?? day,
  };
  const tell = SENTENCES[happening.kind] as (happening: Happening, say: Say) => string;
  const why = 'reason' in happening && happening.reason ? ` Reason: ${happening.reason.replace(/\.$/, '')}.` : '';
  return `${tell(happening, say)}${why}`;
}

/** The names of a contract's own lines. */
export function namesOf(position: Position): Names {
  return { line: (lineId) => position.lines.find((line) => line.terms.lineId === lineId)?.terms.name };
}

import type { EventRow, Told } from '../../billing/statements/statement-names.service.ts';
import type { Day } from '../../domain/day.ts';
import { clockAt } from '../../domain/instant.ts';
import { paceOfLines } from '../../domain/reports/pace-of-lines.ts';
import { reasonForSponsor } from '../../domain/reports/reason-for-sponsor.ts';
import type { StatementAccountLine, StatementContent, StatementHead, StatementLine, StatementNight, StatementOutcome, StatementRead } from '../../domain/reports/statement-content.ts';
import type { TermState } from '../../sponsorship/contract-view.ts';
import type { FulfillmentView, LineFulfillment, NightFulfillment, ReadGiven } from '../fulfillment/fulfillment.dto.ts';
import type { ReadAccount } from './performance.sql.ts';

export interface HeadRow extends Omit<StatementHead, 'throughOn' | 'seasonName' | 'startsOn' | 'endsOn'> {
  contractId: string;
  termId: string;
  state: TermState;
  zone: string;
}

export type StandingRow = Record<ReadAccount, number> & { commitmentId: string };

export interface ChangeRow extends EventRow {
  contractId: string;
  isOfFormerOwner: boolean;
}

export interface AccountRow extends EventRow {
  contractId: string;
  cents: number;
  memoNumber: string | null;
}

/** What was read of one contract. */
export interface StatementFacts {
  head: HeadRow;
  view: FulfillmentView;
  /** by commitment, at the end of the last day */
  standings: ReadonlyMap<string, StandingRow>;
  changes: readonly ChangeRow[];
  account: readonly AccountRow[];
  /** of the sponsor's own copy; other words that were read under the contract are not told */
  ownTitles: ReadonlySet<string>;
  told: ReadonlyMap<string, Told>;
  throughOn: Day;
}

/** What the statement says, of days up to the last one. */
export function contentOf({ head, view, standings, changes, account, ownTitles, told, throughOn }: StatementFacts): StatementContent {
  const { contractId: _, termId: _term, state: _state, zone, ...names } = head;
  const sentence = (eventId: string): string => told.get(eventId)?.sentence ?? '';
  return {
    head: { ...names, seasonName: view.seasonName, startsOn: view.startsOn, endsOn: view.endsOn, throughOn },
    lines: view.lines.map((line) => lineOf(line, standings.get(line.commitmentId))),
    pace: paceOfLines(view.lines.map((line) => line.pace), throughOn),
    benefits: view.benefits.map((benefit) => benefitOf(benefit, throughOn)),
    nights: view.nights.filter((night) => night.heldOn <= throughOn).flatMap((night) => nightOf(night, zone, ownTitles)),
    notSignedOff: view.nights.filter((night) => night.heldOn <= throughOn).flatMap((night) => night.reads).filter((read) => read.what === 'logged').length,
    changes: changes.map(({ eventId, occurredOn }) => ({ on: occurredOn as Day, sentence: sentence(eventId) })),
    account: accountOf(account, sentence),
  };
}

function lineOf({ commitmentId, readKindName, counting }: LineFulfillment, standing: StandingRow | undefined): StatementLine {
  const of = (account: ReadAccount): number => standing?.[account] ?? 0;
  return {
    commitmentId, name: readKindName, counting,
    promised: of('promised'), given: of('given'), madeGood: of('madeGood'), credited: of('credited'), released: of('released'), carried: of('carried'), stillToCome: of('owed'), extra: of('extra'),
  };
}

function benefitOf({ name, quantity, dueOn, earns, startsOn, endsOn, deliveries }: FulfillmentView['benefits'][number], throughOn: Day): StatementContent['benefits'][number] {
  const proofs = deliveries.filter((one) => !one.isTakenBack && one.deliveredOn <= throughOn).map(({ deliveredOn, quantity: pieces, proof }) => ({ on: deliveredOn, quantity: pieces, proof }));
  const isShown = earns === 'overDays';
  return { name, quantity, delivered: proofs.reduce((sum, one) => sum + one.quantity, 0), dueOn, shownFrom: isShown ? startsOn : null, shownTo: isShown ? endsOn : null, proofs };
}

/** A night on which something was read or should have been; what nobody signed off yet is left out. */
function nightOf(night: NightFulfillment, zone: string, ownTitles: ReadonlySet<string>): StatementNight[] {
  const reads = night.reads.filter((read) => read.what !== 'logged').toSorted(byTime);
  if (reads.length === 0 || !night.isSignedOff) return [];
  const opponents = night.games.map((game) => game.opponentName ?? game.label);
  const { nightId, heldOn, attendance, attendanceHow } = night;
  return [{ nightId, heldOn, opponent: [...new Set(opponents)].join(', '), attendance, attendanceHow, reads: reads.map((read) => readOf(read, zone, ownTitles)) }];
}

/** What nobody logged has no hour and comes last. */
function byTime(one: ReadGiven, other: ReadGiven): number {
  const [first, second] = [one.at ?? '~', other.at ?? '~'];
  return first < second ? -1 : first > second ? 1 : 0;
}

/** What somebody typed at the table may name a student: only reasons of the lists and the words of the books go to a sponsor. */
function readOf({ entryId, readKindName, windowName, at, copyTitle, copyVersionNumber, what, why, atTheTable, forMissedOn }: ReadGiven, zone: string, ownTitles: ReadonlySet<string>): StatementRead {
  const isOfTheBooks = entryId === null || what === 'takenBack';
  const isOwn = copyTitle !== null && ownTitles.has(copyTitle);
  return {
    readKindName, windowName, clock: at === null ? null : clockAt(at, zone), copyTitle: isOwn ? copyTitle : null, copyVersionNumber: isOwn ? copyVersionNumber : null,
    outcome: what as StatementOutcome, why: isOfTheBooks ? why : reasonForSponsor(why), atTheTable, forMissedOn,
  };
}

function accountOf(rows: readonly AccountRow[], sentence: (eventId: string) => string): StatementAccountLine[] {
  let balanceCents = 0;
  return rows.map(({ eventId, occurredOn, cents, memoNumber }) => {
    balanceCents += cents;
    const said = sentence(eventId);
    return { on: occurredOn as Day, sentence: memoNumber === null ? said : `Credit memo ${memoNumber}: ${said}`, chargeCents: Math.max(0, cents), creditCents: Math.max(0, -cents), balanceCents };
  });
}

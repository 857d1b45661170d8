import type { Counting } from '../../domain/sponsorship/contract-terms.ts';
import type { Standing } from '../../domain/sponsorship/standing.ts';
import type { Day } from '../../domain/day.ts';
import type { Instant } from '../../domain/instant.ts';
import type { TermState } from '../../sponsorship/contract-view.ts';

/** What a forecast rests on; all zero and `words` says so where there is nothing yet. */
export interface ForecastGround {
  /** reads that are planned for games to come */
  planned: number;
  /** owed reads that have no place yet; they are counted as if they got one */
  withoutPlace: number;
  /** reads that were planned on nights signed off, of the windows in question */
  windowReadsPlanned: number;
  /** and how many of those were given */
  windowReadsGiven: number;
  /** games signed off over which mentions were counted */
  gamesCounted: number;
  /** games of earlier seasons that are leaned on */
  earlierGames: number;
}

/** How the rest of a commitment is likely to go. Chances between 0 and 1, counts in reads of the whole term. */
export interface LineForecast {
  /** that everything still owed is given in the games left; null where nobody can say */
  chanceAllGiven: number | null;
  /** given and made good at the end, as expected, to a tenth */
  expectedFinal: number;
  /** nine in ten seasons like this end between these, both included */
  low: number;
  high: number;
  ground: ForecastGround;
  /** on what it rests, in one sentence */
  words: string;
}

export interface BrokenFloor {
  gameId: string;
  playedOn: Day;
  label: string;
  least: number;
  given: number;
}

/** The share of the promise that should have been given by the end of a day of games, and what was. */
export interface PacePoint {
  on: Day;
  expected: number;
  given: number;
}

export interface LineFulfillment {
  commitmentId: string;
  readKindId: string;
  readKindName: string;
  counting: Counting;
  /** promised, owed, given, made good, credited, released, carried, extra, pace and what is logged but not signed off */
  standing: Standing;
  /** reads placed on games to come, makegoods among them */
  planned: number;
  /** owed, and no game is left that could carry them as promised */
  shortfall: number;
  /** the part of its price that nothing has earned yet, cents */
  openCents: number;
  gamesInAll: number;
  gamesPlayed: number;
  brokenFloors: BrokenFloor[];
  forecast: LineForecast | null;
  pace: PacePoint[];
}

export interface BenefitFulfillment {
  benefitId: string;
  name: string;
  quantity: number;
  delivered: number;
  dueOn: Day | null;
  earns: 'onDelivery' | 'overDays';
  /** over days: from when to when it is shown, and through which day that has been counted */
  startsOn: Day | null;
  endsOn: Day | null;
  earnedThroughOn: Day | null;
  deliveries: { deliveredOn: Day; quantity: number; proof: string; isTakenBack: boolean }[];
}

/** One read as it stands in the log and the ledger. Of those at the table it says a role or initials, never a student's name. */
export interface ReadGiven {
  /** the log entry; with `occurrence` it names the read. Null for a planned read that the log of a night signed off does not have */
  entryId: string | null;
  occurrence: number;
  commitmentId: string;
  readKindName: string;
  gameId: string | null;
  windowKey: string | null;
  windowName: string | null;
  at: Instant | null;
  copyTitle: string | null;
  copyVersionNumber: number | null;
  /** counted, logged and not signed off yet, not read, or taken back since */
  what: 'given' | 'extra' | 'makegood' | 'logged' | 'notRead' | 'cutShort' | 'takenBack';
  /** in words of the house's own list, never as it was typed */
  why: string | null;
  atTheTable: string | null;
  /** the day of the missed read it stands for */
  forMissedOn: Day | null;
  disputeId: string | null;
}

export interface NightFulfillment {
  nightId: string;
  heldOn: Day;
  isSignedOff: boolean;
  games: { gameId: string; label: string; opponentName: string | null; status: string }[];
  attendance: number | null;
  attendanceHow: 'tickets' | 'counted' | 'estimated' | 'signOff' | null;
  reads: ReadGiven[];
  /** reads of this contract that are planned for the night and not logged yet */
  planned: number;
}

export interface WindowFulfillment {
  windowKind: string;
  windowName: string;
  /** reads that were to be given there on nights signed off */
  planned: number;
  given: number;
  notRead: number;
  /** reads planned there for games to come */
  toCome: number;
}

/** One contract's proof: what was promised and what was given, from the ledgers, the log and the calendar alone. */
export interface FulfillmentView {
  contractId: string;
  number: string | null;
  title: string;
  sponsorId: string;
  sponsorName: string;
  seasonId: string;
  seasonName: string;
  startsOn: Day;
  endsOn: Day;
  state: TermState;
  asOf: Day;
  sum: Standing;
  planned: number;
  shortfall: number;
  /** that everything owed on every line is given; null where a line has none */
  chanceAllGiven: number | null;
  lines: LineFulfillment[];
  benefits: BenefitFulfillment[];
  nights: NightFulfillment[];
  windows: WindowFulfillment[];
}

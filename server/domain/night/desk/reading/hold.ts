import type { EntryKind } from '../../log-entry.ts';
import { standing } from '../../take-back.ts';
import { HOLD_SITUATIONS } from '../bundle.ts';
import type { HoldSituation } from '../bundle.ts';
import type { DeskLine } from '../desk-entry.ts';

/** From the last thunder or flash to the restart. @source common practice in schools, no source named */
export const LIGHTNING_SECONDS = 30 * 60;

/** After these a sponsor's read never comes next: something of the house, or play, stands between. */
const NEVER_ADJOINS: ReadonlySet<HoldSituation> = new Set(['injury', 'medical', 'weather', 'evacuation', 'threat', 'silence']);

/** What only happens when play has gone on. A substitution is none: it is made while the injured player is led off. */
const PLAY: ReadonlySet<EntryKind> = new Set(['happening', 'foul', 'basket', 'timeOut', 'periodEnd', 'score', 'serve', 'batter', 'bout']);

/** The words of the note that says so where no play is logged. */
export const PLAY_HAS_GONE_ON = 'Play has gone on after the hold';

/** Where the hold stands. */
export interface Hold {
  readonly isOn: boolean;
  /** the situation that is on, or that was on last; null where there was none tonight */
  readonly situation: HoldSituation | null;
  readonly begun: DeskLine | null;
  /** the last thunder or flash, or the beginning of a weather hold; null in another situation */
  readonly lastFlash: DeskLine | null;
  readonly ended: DeskLine | null;
  /** there was an injury, lightning, an evacuation or a silence and nothing has come between since: a sponsor's read would adjoin it */
  readonly stillAdjoins: boolean;
}

const NO_HOLD: Hold = { isOn: false, situation: null, begun: null, lastFlash: null, ended: null, stillAdjoins: false };

function situationOf(line: DeskLine): HoldSituation | null {
  const named = line.detail?.['situation'];
  return HOLD_SITUATIONS.find((situation) => situation === named) ?? null;
}

/** Words of the house that were read out, play, or the note that play has gone on. */
function separates({ kind, outcome, commitmentId, placementId, detail }: DeskLine): boolean {
  if (kind === 'read') return outcome === 'given' && commitmentId === null && placementId === null;
  if (kind === 'requestAnswered') return detail?.['answer'] === 'read';
  return PLAY.has(kind) || (kind === 'note' && detail?.['words'] === PLAY_HAS_GONE_ON);
}

function after(hold: Hold, line: DeskLine): Hold {
  if (line.kind !== 'hold') return !hold.isOn && hold.stillAdjoins && separates(line) ? { ...hold, stillAdjoins: false } : hold;
  const state = line.detail?.['state'];
  if (state === 'ended') return hold.isOn ? { ...hold, isOn: false, ended: line } : hold;
  if (state === 'flash') {
    const before = hold.isOn ? hold : { ...NO_HOLD, begun: line };
    return { ...before, isOn: true, situation: 'weather', lastFlash: line, stillAdjoins: true };
  }
  const situation = situationOf(line) ?? 'delay';
  const began = hold.isOn ? (hold.begun ?? line) : line;
  return { isOn: true, situation, begun: began, lastFlash: situation === 'weather' ? line : null, ended: null, stillAdjoins: hold.stillAdjoins || NEVER_ADJOINS.has(situation) };
}

/**
 * Where the emergency hold stands by the log. The newest situation is the one shown; one restart ends the hold; a flash
 * without a hold begins one. A second "begun" of another device does not begin it anew.
 */
export function holdOf(lines: readonly DeskLine[]): Hold {
  return standing(lines).reduce(after, NO_HOLD);
}

/** Whether a sponsor's words may be read next. */
export function mayReadSponsors(hold: Hold): boolean {
  return !hold.isOn && !hold.stillAdjoins;
}

/**
 * Seconds until play may restart after lightning; each new flash begins the thirty minutes again. A device whose clock
 * runs ahead never shows more than the whole of it.
 *
 * @param sinceFlashSeconds since the last thunder or flash
 * @source common practice in schools, no source named
 */
export function lightningLeftSeconds(sinceFlashSeconds: number): number {
  return Math.min(LIGHTNING_SECONDS, Math.max(0, Math.ceil(LIGHTNING_SECONDS - sinceFlashSeconds)));
}

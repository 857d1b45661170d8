import { standing } from '../../take-back.ts';
import { HOLD_SITUATIONS } from '../bundle.ts';
import type { HoldSituation } from '../bundle.ts';
import type { DeskLine } from '../desk-entry.ts';

/** From the last thunder or flash to the restart. @source common practice in schools, no source named */
export const LIGHTNING_SECONDS = 30 * 60;

/** After these a sponsor's read never comes next: something of the house, or play, stands between. */
const NEVER_ADJOINS: ReadonlySet<HoldSituation> = new Set(['injury', 'medical', 'evacuation', 'threat', 'silence']);

/** Where the hold stands. */
export interface Hold {
  readonly isOn: boolean;
  /** the situation that is on, or that was on last; null where there was none tonight */
  readonly situation: HoldSituation | null;
  readonly begun: DeskLine | null;
  /** the last thunder or flash, or the beginning of a weather hold; null in another situation */
  readonly lastFlash: DeskLine | null;
  readonly ended: DeskLine | null;
  /** an injury, an evacuation or a silence is over and nothing has come between: a sponsor's read would adjoin it */
  readonly stillAdjoins: boolean;
}

const NO_HOLD: Hold = { isOn: false, situation: null, begun: null, lastFlash: null, ended: null, stillAdjoins: false };

function situationOf(line: DeskLine): HoldSituation | null {
  const named = line.detail?.['situation'];
  return HOLD_SITUATIONS.find((situation) => situation === named) ?? null;
}

function after(hold: Hold, line: DeskLine): Hold {
  if (line.kind !== 'hold') {
    const separates = !(line.kind === 'mention' || (line.kind === 'read' && (line.commitmentId !== null || line.placementId !== null)));
    return !hold.isOn && hold.stillAdjoins && separates ? { ...hold, stillAdjoins: false } : hold;
  }
  const state = line.detail?.['state'];
  if (state === 'ended') return hold.isOn ? { ...hold, isOn: false, ended: line, stillAdjoins: hold.situation !== null && NEVER_ADJOINS.has(hold.situation) } : hold;
  if (state === 'flash') return hold.isOn ? { ...hold, situation: 'weather', lastFlash: line } : { ...NO_HOLD, isOn: true, situation: 'weather', begun: line, lastFlash: line };
  const situation = situationOf(line) ?? 'delay';
  const began = hold.isOn ? (hold.begun ?? line) : line;
  return { isOn: true, situation, begun: began, lastFlash: situation === 'weather' ? line : null, ended: null, stillAdjoins: false };
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

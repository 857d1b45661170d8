import type { Moment } from '../../../packet/script.ts';
import { clockOfMinutes, isClock, minutesOfClock, spokenClock } from '../../../season/night.ts';
import { capacityOf } from '../../../season/window-capacity.ts';
import { standing, takenBackIds } from '../../take-back.ts';
import type { DeskCue, DeskGame, NightBundle } from '../bundle.ts';
import type { DeskLine } from '../desk-entry.ts';
import { cueStandings } from './reads-left.ts';
import type { CueStanding } from './reads-left.ts';

/** What was said at the table about the times of tonight. */
export interface TimesTonight {
  /** by game: the clock it starts at now, `HH:MM` */
  readonly startsClocks: ReadonlyMap<string, string>;
  /** by game: seconds of its halftime now */
  readonly halftimeSeconds: ReadonlyMap<string, number>;
}

/** The latest word on each game's start and halftime; what is taken back is as if it had never been said. */
export function timesTonight(lines: readonly DeskLine[]): TimesTonight {
  const startsClocks = new Map<string, string>();
  const halftimeSeconds = new Map<string, number>();
  for (const { kind, gameId, detail } of standing(lines)) {
    if (kind !== 'timeMoved' || gameId === null || detail === null) continue;
    if (detail['what'] === 'start' && isClock(detail['clock'])) startsClocks.set(gameId, detail['clock']);
    if (detail['what'] === 'halftime' && Number.isFinite(detail['seconds'])) halftimeSeconds.set(gameId, Number(detail['seconds']));
  }
  return { startsClocks, halftimeSeconds };
}

/** When a game starts, as planned and as it is now. Minutes since midnight; null where nobody knows. */
export interface StartTonight {
  readonly gameId: string;
  readonly plannedMinutes: number | null;
  readonly minutes: number | null;
  /** "7:12 PM", "about 7:32 PM", or the words of the bundle */
  readonly text: string;
}

/**
 * The starts of the night's games. A game that follows another slides with it: its start, its usual length, the minutes
 * between. The game it follows is the one before it in the night.
 */
export function startsTonight(games: readonly DeskGame[], times: TimesTonight): StartTonight[] {
  const starts: StartTonight[] = [];
  for (const game of games) {
    const before = starts.at(-1);
    const usual = games[starts.length - 1]?.usualMinutes ?? 0;
    const follows = (minutes: number | null | undefined): number | null => (game.startsAfterMinutes === null || minutes == null ? null : minutes + usual + game.startsAfterMinutes);
    const plannedMinutes = game.startsClock === null ? follows(before?.plannedMinutes) : minutesOfClock(game.startsClock);
    const said = times.startsClocks.get(game.gameId);
    const slid = game.startsClock === null ? follows(before?.minutes) : plannedMinutes;
    const minutes = said === undefined ? slid : minutesOfClock(said);
    const clock = minutes === null ? null : spokenClock(clockOfMinutes(minutes));
    const isNew = minutes !== plannedMinutes && clock !== null;
    starts.push({ gameId: game.gameId, plannedMinutes, minutes, text: said !== undefined || !isNew ? (said === undefined ? game.startsText : clock!) : `about ${clock}` });
  }
  return starts;
}

/** Minutes since midnight of "6:38 PM"; null where the text is no clock. */
function minutesOfSpoken(text: string): number | null {
  const parts = /^(\d{1,2}):([0-5]\d) (AM|PM)$/.exec(text);
  return parts ? (Number(parts[1]) % 12) * 60 + Number(parts[2]) + (parts[3] === 'PM' ? 720 : 0) : null;
}

const movedMinutes = (start: StartTonight | undefined): number => (start?.minutes == null || start.plannedMinutes === null ? 0 : start.minutes - start.plannedMinutes);

/** The clock-back times of the cues before a game, slid with its start; by cue key, in words: "6:50 PM". */
export function slidTimes(bundle: Pick<NightBundle, 'cues' | 'games'>, times: TimesTonight): ReadonlyMap<string, string> {
  const starts = new Map(startsTonight(bundle.games, times).map((start) => [start.gameId, start]));
  const texts = new Map<string, string>();
  for (const { cueKey, gameId, startsText } of bundle.cues) {
    if (startsText === null) continue;
    const minutes = minutesOfSpoken(startsText);
    const by = gameId === null ? 0 : movedMinutes(starts.get(gameId));
    texts.set(cueKey, minutes === null || by === 0 ? startsText : spokenClock(clockOfMinutes(minutes + by)));
  }
  return texts;
}

/**
 * Words of the house that can be left for another window; the anthem, line-ups, scores and the association's words cannot.
 * The same as the packet moves first where a window is too full.
 */
export const HOUSE_WORDS_THAT_WAIT: ReadonlySet<DeskCue['moment']> = new Set<Moment>([
  'conduct', 'substances', 'seating', 'officials', 'recognition', 'honours', 'floorSafety', 'concession', 'fundraiser', 'club', 'camp',
]);

/** A window that is shorter than was planned: what stays in it, in the order to read, and what has no room. */
export interface ShorterWindow {
  readonly gameId: string;
  readonly windowKey: string;
  readonly title: string;
  readonly capacitySeconds: number;
  readonly plannedSeconds: number;
  readonly stays: readonly DeskCue[];
  readonly fallsOut: readonly DeskCue[];
}

/** Seconds there are now in a window, by what was said tonight; null where nothing limits it. */
export function capacityTonight(bundle: Pick<NightBundle, 'games' | 'windows'>, times: TimesTonight): (gameId: string, windowKey: string) => number | null {
  const starts = new Map(startsTonight(bundle.games, times).map((start) => [start.gameId, start]));
  const planned = new Map(bundle.windows.map((window) => [`${window.gameId} ${window.windowKey}`, window.capacitySeconds]));
  return (gameId, windowKey) => {
    const capacitySeconds = planned.get(`${gameId} ${windowKey}`) ?? null;
    const halftimeSeconds = times.halftimeSeconds.get(gameId);
    if (windowKey === 'halftime' && halftimeSeconds !== undefined) {
      const rules = bundle.games.find((game) => game.gameId === gameId)?.rules ?? null;
      return capacityOf(rules, 'halftime', { halftimeSeconds, timeOutsReliedOn: null }).capacitySeconds ?? halftimeSeconds;
    }
    if (windowKey !== 'pregame' || capacitySeconds === null) return capacitySeconds;
    return Math.max(0, capacitySeconds + movedMinutes(starts.get(gameId)) * 60);
  };
}

const staysLonger = (one: DeskCue, other: DeskCue): number => one.priority - other.priority || one.number - other.number;
const canWait = (cue: DeskCue): boolean => cue.isSponsored || HOUSE_WORDS_THAT_WAIT.has(cue.moment);

/** Who stays: what cannot wait, then by priority as long as there is room; a short one may stay where a long one has none. */
function ranked(open: readonly DeskCue[], roomSeconds: number): { stays: DeskCue[]; fallsOut: DeskCue[] } {
  let room = roomSeconds - open.filter((cue) => !canWait(cue)).reduce((sum, cue) => sum + cue.seconds, 0);
  const fallsOut = new Set<DeskCue>();
  for (const cue of open.filter(canWait).toSorted(staysLonger)) {
    if (cue.seconds > room) fallsOut.add(cue);
    else room -= cue.seconds;
  }
  const kept = open.filter((cue) => !fallsOut.has(cue));
  const reads = kept.filter((cue) => cue.isSponsored).toSorted(staysLonger);
  return { stays: kept.map((cue) => (cue.isSponsored ? reads.shift()! : cue)), fallsOut: [...fallsOut].sort(staysLonger) };
}

/**
 * The windows that got shorter than planned. Their open cues are ranked by priority: sponsor reads swap places among
 * themselves so that the most important is read first, the words of the house keep theirs; what does not fit any more is
 * listed and may be read in another window.
 */
export function shorterWindows(bundle: Pick<NightBundle, 'cues' | 'games' | 'windows'>, standings: ReadonlyMap<string, CueStanding>, times: TimesTonight): ShorterWindow[] {
  const capacity = capacityTonight(bundle, times);
  return bundle.windows.flatMap(({ gameId, windowKey, title, capacitySeconds: plannedSeconds }) => {
    const capacitySeconds = capacity(gameId, windowKey);
    if (capacitySeconds === null || plannedSeconds === null || capacitySeconds >= plannedSeconds) return [];
    const within = bundle.cues.filter((cue) => cue.gameId === gameId && cue.windowKey === windowKey && cue.moment !== 'mention');
    const isOpen = (cue: DeskCue): boolean => standings.get(cue.cueKey)?.state === 'open';
    const used = within.filter((cue) => !isOpen(cue) && standings.get(cue.cueKey)?.state !== 'notRead').reduce((sum, cue) => sum + cue.seconds, 0);
    return [{ gameId, windowKey, title, capacitySeconds, plannedSeconds, ...ranked(within.filter(isOpen), capacitySeconds - used) }];
  });
}

/**
 * The order of the cues in each window that got shorter, by `gameId windowKey`: as it was ranked when the times were last
 * moved. What is logged after that changes no place, so nothing moves under a thumb.
 */
export function orderInShorterWindows(bundle: Pick<NightBundle, 'cues' | 'games' | 'windows'>, lines: readonly DeskLine[]): ReadonlyMap<string, readonly string[]> {
  const gone = takenBackIds(lines);
  const moved = lines.findLastIndex(({ id, kind }) => kind === 'timeMoved' && !gone.has(id));
  const standings = cueStandings(bundle.cues, lines.slice(0, moved + 1));
  const windows = shorterWindows(bundle, standings, timesTonight(lines));
  return new Map(windows.map(({ gameId, windowKey, stays, fallsOut }) => {
    const open = [...stays, ...fallsOut];
    const before = bundle.cues.filter((cue) => cue.gameId === gameId && cue.windowKey === windowKey && cue.moment !== 'mention' && !open.includes(cue));
    return [`${gameId} ${windowKey}`, [...before, ...open].map(({ cueKey }) => cueKey)];
  }));
}

import { awaitingIn } from '../../domain/makegoods/shortfall-of-line.ts';
import { beliefBefore, forecastOf, learned } from '../../domain/planning/forecast.ts';
import type { Seen } from '../../domain/planning/forecast.ts';
import { mentionWords, scheduledWords } from '../../domain/reports/forecast-words.ts';
import { loggedApart } from '../../domain/sponsorship/standing.ts';
import { mentionForecast } from '../../domain/reports/mention-forecast.ts';
import { scheduledForecast } from '../../domain/reports/scheduled-forecast.ts';
import { NOTHING_KNOWN, chanceOfRead, sumOfRecords } from '../../domain/reports/window-record.ts';
import type { WindowRecord } from '../../domain/reports/window-record.ts';
import { kindOfWindow } from '../../domain/season/window-names.ts';
import type { ForecastGround, LineForecast } from './fulfillment.dto.ts';
import type { LineToShow } from './fulfillment-lines.ts';
import type { PlannedRow } from './fulfillment-rows.service.ts';

const NO_GROUND: ForecastGround = { planned: 0, withoutPlace: 0, windowReadsPlanned: 0, windowReadsGiven: 0, gamesCounted: 0, earlierGames: 0 };

type Records = ReadonlyMap<string, WindowRecord>;

/** The forecast of mentions: what happened in the games counted and in earlier seasons tells of the games left. */
export function mentionsForecast({ view, line, gamesCounted, gamesLeft }: LineToShow, earlier: Seen): LineForecast {
  const { standing, gamesInAll } = view;
  const [slot] = line!.slots;
  const occurrences = slot?.occurrences ?? 0;
  const toCome = forecastOf(learned(beliefBefore(earlier), { occurrences, games: gamesCounted }), gamesLeft);
  const so = {
    occurrences,
    settled: standing.given + standing.madeGood,
    removed: standing.credited + standing.released + standing.carried,
    atLeast: slot?.promised ?? 0,
    atMost: slot?.atMost ?? null,
  };
  const ground = { ...NO_GROUND, gamesCounted, earlierGames: earlier.games };
  if (gamesInAll === 0) return unknown(view, ground);
  return { ...mentionForecast(so, toCome), ground, words: mentionWords({ occurrences, gamesCounted, gamesLeft, earlierGames: earlier.games }) };
}

/** The forecast of scheduled reads: each planned one by the record of its window, those without a place by all windows of the commitment. */
export function readsForecast(shown: LineToShow, planned: readonly PlannedRow[], windows: ReadonlySet<string>, records: Records): LineForecast {
  const { view, gamesLeft, gamesCounted } = shown;
  const { standing, shortfall } = view;
  const recordOf = (kind: string): WindowRecord => records.get(kind) ?? NOTHING_KNOWN;
  const chanceIn = ({ windowKey }: PlannedRow): number => chanceOfRead(recordOf(kindOfWindow(windowKey)));
  const own = planned.filter((row) => row.makegoodId === null);
  const somewhere = chanceOfRead(sumOfRecords([...windows].map(recordOf)));
  const logged = loggedApart(shown.line!, shown.logged);
  const unplaced = Math.max(0, standing.owed - shown.line!.slots.reduce((sum, slot) => sum + awaitingIn(slot), 0) - logged.own - own.length - shortfall);
  const makegoods = logged.replacements.filter(({ makegood }) => makegood.settled < makegood.missed).map(({ makegood, logged: counted }) => {
    const placed = planned.filter((row) => row.makegoodId === makegood.makegoodId);
    const given = makegood.given + counted;
    const open = gamesLeft === 0 ? 0 : Math.max(0, makegood.replacements - given - placed.length);
    return { ...makegood, given, open, chances: [...placed.map(chanceIn), ...Array<number>(open).fill(somewhere)] };
  });
  const free = gamesLeft === 0 ? 0 : unplaced;
  const withoutPlace = free + makegoods.reduce((sum, one) => sum + one.open, 0);
  const kinds = new Set([...planned.map((row) => kindOfWindow(row.windowKey)), ...(withoutPlace > 0 ? windows : [])]);
  const { planned: windowReadsPlanned, given: windowReadsGiven } = sumOfRecords([...kinds].map(recordOf));
  const ground: ForecastGround = { ...NO_GROUND, planned: planned.length, withoutPlace, windowReadsPlanned, windowReadsGiven, gamesCounted };
  if (view.gamesInAll === 0 && standing.owed > 0) return unknown(view, ground);
  const told = scheduledForecast({
    settled: standing.given + standing.madeGood, logged: logged.own, owed: standing.owed,
    chances: own.map(chanceIn), makegoods, withoutPlace: Array<number>(free).fill(somewhere),
  });
  return { ...told, ground, words: scheduledWords({ ...ground, owed: standing.owed, logged: standing.loggedNotSignedOff, shortfall }) };
}

/** Without a game in the calendar anything may still become of it. */
function unknown({ standing }: LineToShow['view'], ground: ForecastGround): LineForecast {
  const settled = standing.given + standing.madeGood;
  return { chanceAllGiven: null, expectedFinal: settled, low: settled, high: settled + standing.owed, ground, words: 'No game that could carry it is in the calendar, so nobody can say.' };
}

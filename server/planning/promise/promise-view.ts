import { answerInWords, lineInWords, shortBeforeInWords, shortGamesInWords } from '../../domain/planning/promise/answer-in-words.ts';
import type { LineAnswer, PromiseAnswer } from '../../domain/planning/promise/promise-answer.ts';
import { windowKindsOf } from '../../domain/planning/promise/left-to-sell.ts';
import type { PlanPromise, PlanRead, PlanSeason } from '../../domain/planning/season.ts';
import { NO_ROOM_IN_COMPANY, bottleneckInWords } from '../../domain/planning/words/bottleneck.ts';
import type { BottleneckNames, NamedPromise } from '../../domain/planning/words/bottleneck.ts';
import type { PlanLine } from '../facts/plan-line.ts';
import type { CheckedGame, CheckedLine, CheckedMonth, PromiseCheckView } from './promise-check.dto.ts';

export interface ToShow {
  readonly seasonId: string;
  /** with what is asked */
  readonly season: PlanSeason;
  readonly lines: readonly PlanLine[];
  readonly answer: PromiseAnswer;
  /** all reads of the plan that is shown */
  readonly reads: readonly PlanRead[];
  readonly kindNames: ReadonlyMap<string, string>;
  /** who is in the way of the deal, one sentence each */
  readonly obstacles: readonly string[];
  /** what is read on occurrence, one sentence each */
  readonly forecasts: ReadonlyMap<string, string>;
  /** "this offer" */
  readonly deal: string;
}

function reachOf(promise: PlanPromise, season: PlanSeason): NonNullable<NamedPromise['reach']> {
  const wanted = new Set(promise.slots.flatMap((slot) => slot.gameIds));
  const games = season.games.filter((game) => wanted.has(game.gameId));
  return { gameIds: games.map((game) => game.gameId), windowKinds: windowKindsOf(promise, games), isLocked: games.length > 0 && games.every((game) => game.isLocked) };
}

/** Names for the ids of a bottleneck of this season. */
export function namesOf(season: PlanSeason, askedIds: ReadonlySet<string>, deal: string): BottleneckNames {
  const games = new Map(season.games.map((game) => [game.gameId, game]));
  const promises = new Map(season.promises.map((one) => [one.promiseId, { ...one, isThis: askedIds.has(one.promiseId), reach: reachOf(one, season) }]));
  return { game: (id) => games.get(id), promise: (id) => promises.get(id), this: deal };
}

/** The answer with its sentences, its lines in the order in which they were asked, and the plan month by month. */
export function promiseCheckView(shown: ToShow): PromiseCheckView {
  const { answer, season, lines, obstacles } = shown;
  const names = namesOf(season, new Set(lines.map((line) => line.id)), shown.deal);
  const scheduled = lines.filter((line) => line.counting !== 'onOccurrence');
  const lacksGames = scheduled.some((line) => !answer.lines.some((one) => one.promiseId === line.id && one.asked > 0));
  const can = obstacles.length > 0 || lacksGames ? 'no' : answer.can;
  const bottlenecks = answer.bottlenecks.map((one) => bottleneckInWords(one, names));
  return {
    seasonId: shown.seasonId,
    can,
    asked: answer.asked,
    atLeast: answer.atLeast,
    atMost: answer.atMost,
    shortBefore: answer.shortBefore,
    sentence: sentenceOf(shown, can, scheduled.length === 0),
    because: [...obstacles, ...new Set(bottlenecks), ...[withoutBottleneck(shown), shortBeforeInWords(answer)].filter((one) => one !== null)],
    lines: lines.map((line) => lineView(line, shown, answer.lines.find((one) => one.promiseId === line.id))),
    months: monthsOf(shown),
    by: answer.by,
  };
}

function sentenceOf({ answer, obstacles }: ToShow, can: PromiseCheckView['can'], needNoPlace: boolean): string {
  if (obstacles.length > 0) return 'No: whatever the places, this sponsor cannot be promised it as it is.';
  const sentence = answerInWords(answer, needNoPlace);
  return can === 'no' && answer.can === 'yes' && !needNoPlace && answer.asked > 0 ? 'No: there is no game for some of these reads.' : sentence;
}

/** There are places enough, and still no plan. */
function withoutBottleneck({ answer }: ToShow): string | null {
  if (answer.bottlenecks.length > 0 || answer.atLeast === answer.asked) return null;
  return `There are places enough, but ${NO_ROOM_IN_COMPANY} for all of them.`;
}

function lineView(line: PlanLine, { kindNames, forecasts, season, lines }: ToShow, answer: LineAnswer | undefined): CheckedLine {
  const scheduled = lines.filter((one) => one.counting !== 'onOccurrence').length;
  const games = new Map(season.games.map((game) => [game.gameId, game]));
  const shortGames = (answer?.shortGameIds ?? []).flatMap((id): CheckedGame[] => {
    const game = games.get(id);
    return game === undefined ? [] : [{ gameId: id, label: game.label, playedOn: game.playedOn }];
  });
  const none: LineAnswer = { promiseId: line.id, asked: 0, inPlan: 0, atLeastAlone: 0, atMostAlone: 0, shortGameIds: [] };
  const { asked, inPlan, atLeastAlone, atMostAlone } = answer ?? none;
  const sentence = line.counting === 'onOccurrence' ? (forecasts.get(line.id) ?? 'It needs no place of its own: it is read whenever it happens.') : lineInWords(answer ?? none, scheduled === 1);
  const kind = { readKindId: line.readKindId, readKindName: kindNames.get(line.readKindId) ?? 'Reads', counting: line.counting };
  return { id: line.id, ...kind, asked, inPlan, atLeastAlone, atMostAlone, sentence, shortGames, shortGamesSentence: shortGamesInWords(shortGames) };
}

function monthsOf({ season, lines, reads }: ToShow): CheckedMonth[] {
  const monthOf = new Map(season.games.map((game) => [game.gameId, game.playedOn.slice(0, 7)]));
  const asked = new Set(lines.map((line) => line.id));
  return [...new Set(monthOf.values())].toSorted().map((month) => {
    const inMonth = reads.filter((read) => asked.has(read.promiseId) && monthOf.get(read.gameId) === month);
    const counts = [...asked].map((id): [string, number] => [id, inMonth.filter((read) => read.promiseId === id).length]);
    return { month, games: season.games.filter((game) => game.playedOn.startsWith(month)).length, reads: Object.fromEntries(counts) };
  });
}

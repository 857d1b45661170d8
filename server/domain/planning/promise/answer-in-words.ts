import { asSentence, countedInWords, gamesInWords, numberInWords } from '../words/counted.ts';
import type { NamedGame } from '../words/counted.ts';
import type { LineAnswer, PromiseAnswer } from './promise-answer.ts';

const ofTheReads = (fit: number, asked: number): string => (asked === 1 ? 'the read' : `${fit === 0 ? 'none' : numberInWords(fit)} of the ${countedInWords(asked, 'read')}`);

const verb = (fit: number): string => (fit === 1 || fit === 0 ? 'fits' : 'fit');

/**
 * The answer in one sentence: "No: nine of the twelve reads fit, and no plan holds more."
 *
 * @param needNoPlace whether all that is asked is read on occurrence
 */
export function answerInWords(answer: PromiseAnswer, needNoPlace = false): string {
  const { can, asked, atLeast, atMost } = answer;
  if (needNoPlace) return 'Yes: these reads need no place of their own, they are read whenever it happens.';
  if (asked === 0) return 'No: there is no game for these reads.';
  const kept = answer.shortBefore > 0 ? 'nothing promised before loses a read by it' : 'everything promised before stays whole';
  if (can === 'yes') return `Yes: ${asked === 1 ? 'the read fits' : asked === 2 ? 'both reads fit' : `all ${countedInWords(asked, 'read')} fit`}, and ${kept}.`;
  if (can === 'between') return `Between ${numberInWords(atLeast)} and ${ofTheReads(atMost, asked)}: that all of them fit could not be proven in the time there was.`;
  if (atLeast === atMost) return asked === 1 ? 'No: the read does not fit.' : `No: ${ofTheReads(atLeast, asked)} ${verb(atLeast)}${atLeast === 0 ? '' : ', and no plan holds more'}.`;
  return `No: between ${numberInWords(atLeast)} and ${ofTheReads(atMost, asked)} fit, and not all of them.`;
}

/** The answer behind a sentence that has said no already: "Nine of the twelve reads fit, and no plan holds more." */
export function withoutVerdict(sentence: string): string {
  return asSentence(sentence.replace(/^(Yes|No): /, ''));
}

/** What was short before is said by itself, so that nobody blames it on what is asked; null where nothing was. */
export function shortBeforeInWords(answer: PromiseAnswer): string | null {
  if (answer.shortBefore === 0) return null;
  return `Already ${countedInWords(answer.shortBefore, 'read')} short before this, promised to others.`;
}

/** The most that can be promised of one line, where it is not all: "At most nine alone; seven beside the other lines." */
export function lineInWords(line: LineAnswer, isOnlyLine: boolean): string {
  if (line.asked === 0) return 'There is no game for it.';
  if (line.inPlan === line.asked) return line.asked === 1 ? 'It fits.' : line.asked === 2 ? 'Both fit.' : `All ${numberInWords(line.asked)} fit.`;
  const alone = line.atLeastAlone === line.atMostAlone ? `${line.atMostAlone === 0 ? 'None fits' : `At most ${numberInWords(line.atMostAlone)}`}` : `Between ${numberInWords(line.atLeastAlone)} and ${numberInWords(line.atMostAlone)}`;
  if (isOnlyLine) return `${alone}.`;
  return line.atMostAlone === 0 ? `${alone}, alone or beside the other lines.` : `${alone} alone, ${numberInWords(line.inPlan)} beside the other lines.`;
}

/** Which games have no place for a line that counts game by game; null where none lacks one. */
export function shortGamesInWords(games: readonly NamedGame[]): string | null {
  if (games.length === 0) return null;
  if (games.length > 3) return `${asSentence(gamesInWords(games))} have too few places for it.`;
  const named = games.map((game) => gamesInWords([game]));
  return `Too few places for it: ${named.join('; ')}.`;
}

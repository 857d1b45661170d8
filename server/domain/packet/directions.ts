import { nearest } from './nearest-word.ts';

/** A direction the editor offers; anything else in double square brackets is printed as it stands. */
export interface KnownDirection {
  /** What the button of the editor puts in. */
  readonly insert: string;
  readonly name: string;
  readonly sentence: string;
  /** Seconds it takes; `text` is what stands between the brackets. Null: this is not that direction. */
  readonly secondsOf: (text: string) => number | null;
}

/** The longest a direction may take: a longer silence is a break, not a direction. */
export const LONGEST_DIRECTION_SECONDS = 600;

const fixed = (pattern: RegExp, seconds: number) => (text: string): number | null => (pattern.test(text) ? seconds : null);
const ownSeconds = (pattern: RegExp) => (text: string): number | null => {
  const found = pattern.exec(text);
  return found ? Number(found[1]) : null;
};

/**
 * The directions and what each takes, the first that fits.
 *
 * @source common practice in gyms, no source
 */
export const KNOWN_DIRECTIONS: readonly KnownDirection[] = [
  { insert: '[[pause 3]]', name: 'Pause', sentence: 'So many seconds of silence, such as the three after the visiting team is named.', secondsOf: ownSeconds(/^pause (\d{1,3})\b/i) },
  { insert: '[[wait for applause]]', name: 'Applause', sentence: 'Until the applause dies down: eight seconds.', secondsOf: fixed(/applause/i, 8) },
  { insert: '[[wait for the starter to turn]]', name: 'Starter', sentence: 'Until the starter has greeted the other bench and turns for the official: four seconds.', secondsOf: fixed(/^wait\b.*\bstarter\b/i, 4) },
  { insert: '[[play the recording, about 90 seconds]]', name: 'Lasts', sentence: 'Something that goes on for so many seconds: “about 90 seconds” at the end says how long.', secondsOf: ownSeconds(/\b(\d{1,3}) seconds\W*$/i) },
  { insert: '[[hand over the microphone to the singer]]', name: 'Microphone', sentence: 'The microphone goes to somebody else: five seconds.', secondsOf: fixed(/^hand over the microphone\b/i, 5) },
  { insert: '[[wait until the floor is clear]]', name: 'Wait', sentence: 'Any other wait: four seconds.', secondsOf: fixed(/^wait\b/i, 4) },
];

/** Something wrong with the brackets of a script, and the line it stands in. */
export interface DirectionProblem {
  /** from 1 */
  readonly line: number;
  readonly sentence: string;
}

const VERBS = ['pause', 'wait'];

function problemInside(text: string): string | null {
  const words = text.replace(/\s+/g, ' ').trim();
  if (words === '') return 'the direction is empty; write what is done, such as [[wait for applause]]';
  if (/^pause\b(?! \d)/i.test(words)) return `“${words}” does not say how long; write the seconds, such as [[pause 3]]`;
  const [first = ''] = words.toLowerCase().split(' ');
  const meant = VERBS.includes(first) || !/^\S+ \d/.test(words) ? null : nearest(first, VERBS);
  if (meant) return `“${first}” is no direction with seconds; did you mean “${meant}”?`;
  const seconds = KNOWN_DIRECTIONS.map((known) => known.secondsOf(words)).find((found) => found !== null) ?? 0;
  return seconds > LONGEST_DIRECTION_SECONDS ? `“${words}” takes more than ten minutes` : null;
}

/**
 * What is wrong with the directions of a script: a bracket that is not closed or not opened, one inside
 * another, an empty direction, a pause without its seconds. In the order of their lines.
 *
 * @param text the script as it is written
 */
export function directionProblems(text: string): DirectionProblem[] {
  const problems: DirectionProblem[] = [];
  let openedAt: number | null = null;
  let line = 1;
  const say = (at: number, sentence: string): number => problems.push({ line: at, sentence });
  let opened = 1;
  for (const { 0: sign, index } of text.matchAll(/\n|\[\[|\]\]/g)) {
    if (sign === '\n') line += 1;
    else if (sign === '[[') {
      if (openedAt !== null) say(opened, 'a direction is opened with [[ and another one begins before it is closed with ]]');
      [openedAt, opened] = [index, line];
    } else if (openedAt === null) say(line, 'a direction is closed with ]] that was never opened with [[');
    else {
      const inside = problemInside(text.slice(openedAt + 2, index).replace(/\{\{.*?\}\}|\{%.*?%\}/gs, 'x'));
      if (inside !== null) say(opened, inside);
      openedAt = null;
    }
  }
  if (openedAt !== null) say(opened, 'a direction is opened with [[ and never closed with ]]');
  return problems.sort((one, other) => one.line - other.line);
}

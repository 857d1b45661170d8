import type { DeskCue, DeskMention, NightBundle } from '../bundle.ts';
import type { NewDeskEntry } from '../desk-entry.ts';
import type { QueuedMention } from './mention-queue.ts';
import { mentionEntry, readEntry } from './read-entry.ts';

/** Boxes one line of a tally may tick. */
const MOST_TIMES = 30;

/** One line of a paper tally that is understood. */
export interface PaperLine {
  readonly text: string;
  readonly cue: DeskCue;
  /** what it is where the code is that of a mention */
  readonly mention: DeskMention | null;
  readonly times: number;
  /** the window it was read in; null for its own */
  readonly windowKey: string | null;
}

/** One line that is refused, and why. */
export interface PaperProblem {
  readonly text: string;
  readonly sentence: string;
  /** the code that was most likely meant */
  readonly nearestCode: string | null;
}

type Tallied = Pick<NightBundle, 'cues' | 'mentions' | 'windows'>;

const plain = (text: string): string => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
const partsOf = (code: string): { beginning: string; number: number } => {
  const [, beginning = '', digits = '0'] = /^(.*?)(\d+)$/.exec(code) ?? [];
  return { beginning, number: Number(digits) };
};

/** The code of tonight nearest to one that is not: the same letter with the nearest number, else the same number with another letter. */
export function nearestCode(code: string, codes: readonly string[]): string | null {
  const written = partsOf(code.toUpperCase());
  const same = codes.filter((other) => partsOf(other).beginning === written.beginning);
  const [near] = same.toSorted((one, other) => Math.abs(partsOf(one).number - written.number) - Math.abs(partsOf(other).number - written.number));
  return near ?? codes.find((other) => partsOf(other).number === written.number && !other.startsWith('E')) ?? null;
}

function lineOf(text: string, bundle: Tallied): PaperLine | PaperProblem {
  const [, code, times = '1', window] = /^((?:\d+-)?\p{L}\d+)(?:\s*[x×*]\s*(\d{1,3}))?(?:\s+in\s+(.+))?$/iu.exec(text) ?? [];
  const problem = (sentence: string, near: string | null = null): PaperProblem => ({ text, sentence, nearestCode: near });
  if (code === undefined) return problem(`“${text}” is not a code. Write a code as the packet prints it, and how often: H3, T1 x2.`);
  const cue = bundle.cues.find((one) => one.code.toLowerCase() === code.toLowerCase());
  if (!cue) {
    const near = nearestCode(code, bundle.cues.map((one) => one.code));
    return problem(`Nothing tonight has the code ${code.toUpperCase()}.${near === null ? '' : ` The nearest is ${near}.`}`, near);
  }
  const count = Number(times);
  if (count < 1 || count > MOST_TIMES) return problem(`${cue.code} was ticked ${count} times; a line takes 1 to ${MOST_TIMES}.`);
  const mention = bundle.mentions.find((one) => one.cueKey === cue.cueKey) ?? null;
  if (window === undefined) return { text, cue, mention, times: count, windowKey: null };
  const windows = bundle.windows.filter((one) => one.gameId === cue.gameId);
  const found = windows.find((one) => plain(one.title) === plain(window) || plain(one.windowKey) === plain(window));
  if (!found) return problem(`No window of this game is called “${window}”. There are: ${windows.map((one) => one.title).join(', ')}.`);
  return { text, cue, mention, times: count, windowKey: found.windowKey };
}

/**
 * Takes a tally apart that was kept on paper: codes as the packet prints them, how often, and the window where it was not
 * their own. "H3, T1 x2, M1 x4", "T2 in halftime". Codes may stand on lines of their own, behind commas, or in a row.
 */
export function paperTally(text: string, bundle: Tallied): { lines: PaperLine[]; problems: PaperProblem[] } {
  const pieces = text.replace(/\s+(?=(?:\d+-)?(?!x\d)\p{L}\d)/giu, ',').split(/[,;\n]/).map((piece) => piece.trim().replace(/\s+/g, ' ')).filter((piece) => piece !== '');
  const read = pieces.map((piece) => lineOf(piece, bundle));
  return { lines: read.filter((one): one is PaperLine => 'cue' in one), problems: read.filter((one): one is PaperProblem => 'sentence' in one) };
}

/**
 * The tally with another code in the place of one that is not of tonight; every other code stays, also one that begins alike.
 *
 * @param wrong the piece that was refused, such as "H13 x2"
 */
export function withCodeInstead(text: string, wrong: string, code: string): string {
  const [written = ''] = /^(?:\d+-)?\p{L}\d+/iu.exec(wrong) ?? [];
  return text.replace(/(?:\d+-)?\p{L}\d+/giu, (one) => (one.toLowerCase() === written.toLowerCase() ? code : one));
}

/** The tally that is left once its first steps are written: a line that was written in part keeps the rest of its ticks. */
export function paperRest(lines: readonly PaperLine[], doneSteps: number): string {
  let done = doneSteps;
  return lines
    .flatMap(({ text, times }) => {
      const left = Math.max(0, times - done);
      done = Math.max(0, done - times);
      if (left === 0) return [];
      return left === times ? text : text.replace(/(?<=\d)\s*[x×*]\s*\d{1,3}/iu, left === 1 ? '' : ` x${left}`);
    })
    .join(', ');
}

/** One thing to write: a read, or a mention with the happening that has to be written before it. */
export interface PaperStep {
  readonly entry: NewDeskEntry;
  /** written first; its id becomes the entry's `happeningEntryId`. Null where the log knows the happening, or for a read */
  readonly happening: NewDeskEntry | null;
}

const FROM_PAPER = { fromPaper: true } as const;

/**
 * The entries of a tally, marked "from paper" and without a game clock. A mention answers what waits in the queue first; for
 * each one more that was ticked, a happening is written with it, since nobody mentions what has not happened.
 *
 * @param ourTeamId the team whose happenings owe the mention, by game; null where nobody knows
 */
export function paperSteps(lines: readonly PaperLine[], queue: readonly QueuedMention[], ourTeamId: (gameId: string) => string | null): PaperStep[] {
  const waiting = [...queue];
  return lines.flatMap(({ cue, mention, times, windowKey }) =>
    Array.from({ length: times }, (): PaperStep => {
      const how = { windowKey, fromPaper: true };
      if (mention === null) return { entry: readEntry(cue, how), happening: null };
      const place = waiting.findIndex((one) => one.mention.cueKey === mention.cueKey);
      const [answered] = place === -1 ? [] : waiting.splice(place, 1);
      if (answered) return { entry: mentionEntry(answered, how), happening: null };
      const teamId = mention.whose === 'ours' ? ourTeamId(mention.gameId) : null;
      return {
        entry: mentionEntry({ mention, happeningEntryIds: [] }, how),
        happening: { kind: 'happening', gameId: mention.gameId, teamId, detail: { happening: mention.happening, ...FROM_PAPER } },
      };
    }),
  );
}

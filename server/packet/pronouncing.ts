import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { setImmediate as nextTurn } from 'node:timers/promises';
import { syllable } from 'syllable';
import type { Pronouncing } from '../domain/packet/syllables.ts';

/** Fewer words than this, and the file was not read as it was meant. */
const WORDS_AT_LEAST = 130_000;
const LINES_A_TURN = 4_000;

let loading: Promise<Pronouncing> | null = null;

/**
 * The CMU pronouncing dictionary, read once and only when first asked for; the package `syllable` counts what
 * it does not know.
 */
export function pronouncing(): Promise<Pronouncing> {
  loading ??= syllablesOfWords().then((words) => ({ known: (word) => words.get(word) ?? null, guess: syllable }));
  return loading;
}

/**
 * Its module is one literal of 135,000 entries, which holds the event loop for up to a second when imported.
 * Read as text in slices, a request in between waits a few milliseconds; only the counts are kept.
 */
async function syllablesOfWords(): Promise<Map<string, number>> {
  const words = new Map<string, number>();
  const lines = (await readFile(createRequire(import.meta.url).resolve('cmu-pronouncing-dictionary'), 'utf8')).split('\n');
  for (const [place, line] of lines.entries()) {
    const entry = /^ {2}"(.+)": "([A-Z0-2 ]+)/.exec(line);
    if (entry) words.set(entry[1]!, vowelsIn(entry[2]!));
    if (place % LINES_A_TURN === 0) await nextTurn();
  }
  if (words.size < WORDS_AT_LEAST) throw new Error(`the pronouncing dictionary holds only ${words.size} words`);
  return words;
}

/** A vowel of the dictionary carries its stress: "W EH1 L K AH0 M" has two. */
function vowelsIn(sounds: string): number {
  return sounds.match(/[012]/g)?.length ?? 0;
}

const STRONG = /[aeoáéóíú]/g;

/** Letters whose Spanish names have more than one syllable. */
const LETTER_NAMES: Readonly<Record<string, number>> = { F: 2, H: 2, J: 2, L: 2, M: 2, N: 2, Ñ: 2, R: 2, S: 2, V: 2, W: 4, X: 2, Z: 2 };

/**
 * Syllables of a Spanish word. An open vowel, and a closed one with an accent, each carry a syllable; a
 * closed vowel leans on its neighbour (diphthong); h is silent between vowels; the u of que, qui, gue, gui
 * is not heard, that of güe, güi is; y is a vowel where no vowel follows.
 *
 * @returns at least 1
 * @source Real Academia Española, Ortografía de la lengua española, on diphthongs, triphthongs and hiatus (from memory)
 */
export function spanishSyllables(word: string): number {
  if (/^[A-ZÑ]$/.test(word)) return LETTER_NAMES[word] ?? 1;
  const heard = word
    .toLowerCase()
    .normalize('NFC')
    .replace(/(?<!c)h/g, '')
    .replace(/([qg])u(?=[eiéí])/g, '$1')
    .replace(/y(?![aeiouáéíóú])/g, 'i');
  const runs = heard.match(/[aeiouáéíóúü]+/g) ?? [];
  return Math.max(1, runs.reduce((sum, run) => sum + nucleiOf(run), 0));
}

/** "ia" one, "ía" two, "uí" one, "ea" two, "uai" one. */
function nucleiOf(run: string): number {
  const open = run.match(/[aeoáéó]/g)?.length ?? 0;
  if (open === 0) return 1;
  return run.match(STRONG)?.length ?? 1;
}

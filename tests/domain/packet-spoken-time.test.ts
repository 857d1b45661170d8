import { describe, expect, test } from 'vitest';
import { dictionary } from 'cmu-pronouncing-dictionary';
import { sayAsSyllables, secondsOfSyllables, spokenSeconds, spokenSyllables, spokenWords, wordsNotKnown } from '../../server/domain/packet/spoken-time.ts';
import { spoken } from '../../server/domain/packet/segment.ts';
import { BY_RULE, syllablesByRule } from '../../server/domain/packet/syllables.ts';
import { CALIBRATION_CARD, CALIBRATION_SYLLABLES, CALIBRATION_WORDS, measuredRate, syllablesPerSecond, voiceAt } from '../../server/domain/packet/voice.ts';
import { pronouncing } from '../../server/packet/pronouncing.ts';

const words = await pronouncing();
const english = { language: 'en', pronouncing: words } as const;

describe('syllables', () => {
  // Counted in the CMU pronouncing dictionary, npm cmu-pronouncing-dictionary 3.0.0.
  const TABLE =
    'basketball 3, announcer 3, sponsor 2, sponsored 2, concession 3, concessions 3, welcome 2, anthem 2, national 3, quarter 2, timeout 2, athletic 3, department 3, ' +
    'tobacco 3, alcohol 3, vehicle 3, license 2, raffle 2, fundraiser 3, gymnasium 4, varsity 3, volleyball 3, wrestling 2, sportsmanship 3, spectators 3, officials 3, ' +
    'overtime 3, junior 2, senior 2, forward 2, guard 1, center 2, halftime 2, refreshments 3, bank 1, shot 1, game 1, ball 1, pizza 2, pharmacy 3, insurance 3, bonus 2, ' +
    'foul 1, personal 3, technical 3, ladies 2, gentlemen 3, lineup 2, every 3, family 3, fire 2, hour 2';
  test.each(TABLE.split(', ').map((row) => row.split(' ') as [string, string]))('%s has %s', (word, syllables) => {
    expect(spokenSyllables(word, english)).toBe(Number(syllables));
  });

  test('the dictionary is read whole: every word of the package, with its syllables', () => {
    let count = 0;
    for (const [word, sounds] of Object.entries(dictionary)) {
      count += 1;
      if (words.known?.(word) !== (sounds.match(/[012]/g)?.length ?? 0)) throw new Error(`${word} is read as ${words.known?.(word)}`);
    }
    expect(count).toBe(135_155);
  });

  test('a word is found without its accent, its owner’s s and its plural', () => {
    expect([spokenSyllables('Timeouts', english), spokenSyllables('café', english), spokenSyllables('the Kestrels’ bench', english), spokenSyllables('the coach’s card', english)]).toEqual([2, 2, 4, 4]);
  });

  test('a letter is said by its name: W has three', () => {
    expect([spokenSyllables('WWW', english), spokenSyllables('JV', english)]).toEqual([9, 2]);
  });

  test('a word the dictionary does not know is counted by rule, also in scripts without an alphabet', () => {
    expect([spokenSyllables('zyxblat', english), spokenSyllables('Łukasz', english), spokenSyllables('体育館', english), spokenSyllables('ناصر', english) > 0]).toEqual([2, 2, 3, true]);
  });

  test('by rule alone, without a dictionary, nine words in ten are counted alike', () => {
    const plain = Object.entries(dictionary).filter(([word]) => /^[a-z]+$/.test(word));
    const alike = plain.filter(([word, sounds]) => syllablesByRule(word) === sounds.match(/[012]/g)?.length);
    expect(alike.length / plain.length).toBeGreaterThan(0.9);
  });

  test.each([
    ['SO-cheel oh-KON-kwoh', 5],
    ['shiv-AWN', 2],
    ['shawn', 1],
    ['WOO-kahsh', 2],
    ['Juniper and Pike', 5],
  ])('a respelling counts by its hyphenated parts: %s has %i', (sayAs, syllables) => {
    expect(sayAsSyllables(sayAs, english)).toBe(syllables);
  });

  test('a name with a respelling takes the seconds of the respelling', () => {
    const voice = voiceAt(140, words);
    const seconds = (sayAs: string | null) => spoken('Guard, number 12, Xochitl Okonkwo.', voice, sayAs, 'Xochitl Okonkwo').seconds;
    expect(seconds('a-b-c-d-e-f-g-h-i-j')).toBeGreaterThan(seconds('SO-cheel oh-KON-kwoh'));
    expect(spoken('Guard, number 12, Xochitl Okonkwo.', voice, 'SO-cheel', 'not there').seconds).toBe(seconds(null));
  });
});

describe('seconds', () => {
  test('the card is 75 spoken words, all of them in the dictionary, and its syllables are counted right', () => {
    expect(spokenWords(CALIBRATION_CARD)).toBe(CALIBRATION_WORDS);
    expect(spokenSyllables(CALIBRATION_CARD, english)).toBe(CALIBRATION_SYLLABLES);
    expect(wordsNotKnown(CALIBRATION_CARD, words)).toEqual([]);
  });

  // 150, 160 and 180 words a minute: publishers' and radio practice; 183: Brysbaert (2019), J. Memory & Language 109;
  // 130: common practice for public speaking. Seconds = words x 60 / rate, to a tenth.
  test.each([[150, 30], [183, 24.6], [130, 34.6], [160, 28.1], [180, 25]])('75 words at %i a minute take %f seconds', (rate, seconds) => {
    expect(secondsOfSyllables(spokenSyllables(CALIBRATION_CARD, english), rate)).toBeCloseTo(seconds, 1);
    expect(spokenSeconds(CALIBRATION_CARD, voiceAt(rate, words))).toBe(Math.ceil(seconds));
  });

  // A public-radio rule of thumb: five syllables a second, so 75 syllables in a credit of 15 seconds.
  test('75 syllables at five a second take 15 seconds, 150 words at 150 a minute take 60', () => {
    const five = (5 * CALIBRATION_WORDS * 60) / CALIBRATION_SYLLABLES;
    expect(syllablesPerSecond(five)).toBeCloseTo(5, 9);
    expect(secondsOfSyllables(75, five)).toBeCloseTo(15, 9);
    expect(spokenSeconds(`${CALIBRATION_CARD} ${CALIBRATION_CARD}`, voiceAt(150, words))).toBe(60);
  });

  // American English about 3.5 syllables a second: Wilson & Netsell (2009).
  test('at 140 words a minute an announcer says about three and a half syllables a second', () => {
    expect(syllablesPerSecond(140)).toBeCloseTo(3.45, 2);
  });

  test('what fills a window to the second fits, a syllable more takes the next second', () => {
    const voice = voiceAt((5 * CALIBRATION_WORDS * 60) / CALIBRATION_SYLLABLES, words);
    expect(spokenSeconds('bank '.repeat(75), voice)).toBe(15);
    expect(spokenSeconds('bank '.repeat(76), voice)).toBe(16);
  });

  test('60 and 240 words a minute are reading rates, 59 and 241 are none', () => {
    expect([spokenSeconds('word', voiceAt(60)), spokenSeconds('word', voiceAt(240)), spokenSeconds('', voiceAt(140))]).toEqual([1, 1, 0]);
    expect(() => voiceAt(59)).toThrow(RangeError);
    expect(() => voiceAt(241)).toThrow(RangeError);
    expect(() => voiceAt(Number.NaN)).toThrow(RangeError);
  });

  test.each([[30, 150], [32.1, 140], [75, 60], [75.7, null], [18.75, 240], [18.6, null], [0, null]])('the card read in %f seconds is %s words a minute', (seconds, rate) => {
    expect(measuredRate(seconds)).toBe(rate);
  });
});

describe('words an announcer may stumble over', () => {
  test('names the dictionary does not know are told, the others are not', () => {
    expect(wordsNotKnown('Xochitl Okonkwo, Maya Ruiz and Łukasz', words)).toEqual(['xochitl', 'okonkwo', 'łukasz']);
    expect(wordsNotKnown('number 12, at 7:30 PM, W. Ruiz', words)).toEqual([]);
  });

  test('without a dictionary nothing is told', () => {
    expect(wordsNotKnown('Xochitl Okonkwo', BY_RULE)).toEqual([]);
  });
});

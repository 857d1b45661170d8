import { createRequire } from 'node:module';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cardinalWords, ordinalWords } from '../../server/domain/packet/number-words.ts';
import { spanishNumberWords } from '../../server/domain/packet/said-spanish.ts';
import { saidWords, spokenSyllables, spokenWords } from '../../server/domain/packet/spoken-time.ts';
import { BY_RULE } from '../../server/domain/packet/syllables.ts';
import { pronouncing } from '../../server/packet/pronouncing.ts';

const { toWords, toWordsOrdinal } = createRequire(import.meta.url)('number-to-words') as { toWords: (number: number) => string; toWordsOrdinal: (number: number) => string };
const plain = (words: string) => words.replace(/[,-]/g, ' ').replace(/\s+/g, ' ').trim();
const said = (text: string) => saidWords(text).join(' ');

describe('numbers in words', () => {
  test.each([[0, 'zero'], [21, 'twenty one'], [101, 'one hundred one'], [1234, 'one thousand two hundred thirty four'], [1_000_000, 'one million']])('%i is “%s”', (number, words) => {
    expect(cardinalWords(number)).toBe(words);
  });

  test('cardinals and ordinals agree with the npm package number-to-words', () => {
    for (let number = 0; number <= 1200; number += 1) {
      expect(cardinalWords(number)).toBe(plain(toWords(number)));
      expect(ordinalWords(number)).toBe(plain(toWordsOrdinal(number)));
    }
    fc.assert(fc.property(fc.integer({ min: 0, max: 2_000_000_000 }), (number) => {
      expect(cardinalWords(number)).toBe(plain(toWords(number)));
    }));
  });
});

// "555-555-5555 is ten spoken words", money and house numbers are spelled out before counting: radio copy pages
// (advertisingbc.ca, nicnatarella.com). Plate forms of California, Maryland and Illinois: AAMVA, MOVE magazine,
// June 2012. The other rows: common practice, no source.
describe('what is written is said in words', () => {
  test.each([
    ['Welcome to Alder Fieldhouse.', 'welcome to alder fieldhouse'],
    ['555-555-5555', 'five five five five five five five five five five'],
    ['(303) 555-0142', 'three oh three five five five oh one four two'],
    ['+1 303-555-0142', 'one three oh three five five five oh one four two'],
    ['555-0142', 'five five five oh one four two'],
    ['555-01', 'five hundred fifty five to oh one'],
    ['$19.99', 'nineteen dollars and ninety nine cents'],
    ['$1', 'one dollar'],
    ['$0.50', 'fifty cents'],
    ['$1,250.50', 'one thousand two hundred fifty dollars and fifty cents'],
    ['$2.5 million', 'two point five million dollars'],
    ['50%', 'fifty percent'],
    ['at 7:00', 'at seven'],
    ['at 7:05', 'at seven oh five'],
    ['7:30 PM', 'seven thirty P M'],
    ['7 p.m. tonight', 'seven P M tonight'],
    ['5–7 PM', 'five to seven P M'],
    ['7:00 PM – 9:00 PM', 'seven P M to nine P M'],
    ['at 7 o’clock', 'at seven o\'clock'],
    ['7:60', 'seven sixty'],
    ['Friday, Dec. 4, 2026', 'friday december fourth twenty twenty six'],
    ['December 32', 'december thirty two'],
    ['12/4', 'december fourth'],
    ['13/4', 'thirteen four'],
    ['2026-12-04', 'december fourth twenty twenty six'],
    ['2026-27', 'twenty twenty six twenty seven'],
    ['1905', 'nineteen oh five'],
    ['1900', 'nineteen hundred'],
    ['2005', 'two thousand five'],
    ['since 1961', 'since nineteen sixty one'],
    ['the 1980s', 'the nineteen eighties'],
    ['21st', 'twenty first'],
    ['number 42', 'number forty two'],
    ['0', 'zero'],
    ['00', 'double zero'],
    ['No. 5', 'number five'],
    ['No. Never', 'no never'],
    ['52-48', 'fifty two to forty eight'],
    ['1/2', 'one half'],
    ['3.5', 'three point five'],
    ['10,000', 'ten thousand'],
    ['4x100', 'four by one hundred'],
    ['class 3A', 'class three A'],
    ['80301', 'eight oh three oh one'],
    ['1ABC234', 'one A B C two three four'],
    ['1A/B2345', 'one A B two three four five'],
    ['A12-3456', 'A one two three four five six'],
    ['plate KTR 4821, blue', 'plate K T R four eight two one blue'],
    ['Juniper & Pike', 'juniper and pike'],
    ['the U.S. team', 'the U S team'],
    ['J. R. Okonkwo', 'J R okonkwo'],
    ['JV and NFHS at the PA', 'J V and N F H S at the P A'],
    ['GOOD EVENING', 'good evening'],
    ['St. Odile on Main St. tonight', 'saint odile on main street tonight'],
    ['1200 N. Alder Dr. with Dr. Okafor', 'twelve hundred north alder drive with doctor okafor'],
    ['Henry Ruiz III', 'henry ruiz the third'],
    ['tickets@tamarack.example', 'tickets at tamarack dot example'],
    ['Off the glass: Copperline!', 'off the glass copperline'],
    ['time-out', 'time out'],
    ['____', ''],
    ['🏀 – …', ''],
    ['', ''],
  ])('“%s” is “%s”', (text, words) => {
    expect(said(text)).toBe(words);
  });

  test('the dictionary tells a word in capitals from initials', async () => {
    const dictionary = { language: 'en', pronouncing: await pronouncing() } as const;
    expect(saidWords('HOME and FFA', dictionary).join(' ')).toBe('home and F F A');
  });

  test('twenty thousand signs of anything come to an end', () => {
    for (const piece of ['1', 'A', '1,', '$1.', 'a.', 'plate 1', '-', '5-', 'A.B.', 'a@b.', '(303) ', "'"]) {
      // A pattern that goes back over its own steps would not come to an end within the test's limit.
      expect(spokenWords(piece.repeat(20_000 / piece.length))).toBeLessThanOrEqual(20_000 * 8);
    }
  });
});

describe('Spanish', () => {
  test.each([
    ['a las 7:00', 'a las siete'],
    ['a las 7:30 p. m.', 'a las siete y treinta P M'],
    ['$20', 'veinte dólares'],
    ['$1.50', 'un dólar con cincuenta centavos'],
    ['555-0142', 'cinco cinco cinco cero uno cuatro dos'],
    ['el 4 de diciembre de 2026', 'el cuatro de diciembre de dos mil veintiséis'],
    ['50%', 'cincuenta por ciento'],
    ['Juniper & Pike', 'juniper y pike'],
    ['1.º', 'primero'],
    ['la Sra. Ruiz', 'la señora ruiz'],
    ['52-48', 'cincuenta y dos a cuarenta y ocho'],
  ])('“%s” is “%s”', (text, words) => {
    expect(saidWords(text, { language: 'es', pronouncing: BY_RULE }).join(' ')).toBe(words);
  });

  test.each([[16, 'dieciséis'], [31, 'treinta y uno'], [100, 'cien'], [101, 'ciento uno'], [500, 'quinientos'], [1000, 'mil'], [21_000, 'veintiún mil'], [1_000_000, 'un millón']])('%i is “%s”', (number, words) => {
    expect(spanishNumberWords(number)).toBe(words);
  });

  // Diphthong, triphthong, hiatus, silent h, que/qui/gue/gui and the diaeresis: Ortografía de la lengua española (from memory).
  test.each([
    ['ciudad', 2], ['aire', 2], ['Uruguay', 3], ['construir', 2], ['muy', 1],
    ['día', 2], ['país', 2], ['oír', 2], ['poeta', 3], ['leer', 2], ['leíais', 3], ['Raúl', 2], ['río', 2], ['rio', 1],
    ['hola', 2], ['ahora', 3], ['ahumar', 2], ['búho', 2], ['vehículo', 4], ['chico', 2],
    ['queso', 2], ['quién', 1], ['guitarra', 3], ['guerra', 2], ['pingüino', 3], ['agua', 2],
    ['mayo', 2], ['rey', 1], ['y', 1], ['bienvenidos', 4], ['gimnasio', 3], ['árbitros', 3], ['baloncesto', 4], ['señoras', 3],
    ['JV', 4], ['7', 2],
  ])('%s has %i syllables', (word, syllables) => {
    expect(spokenSyllables(word, { language: 'es', pronouncing: BY_RULE })).toBe(syllables);
  });
});

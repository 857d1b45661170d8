import { describe, expect, test } from 'vitest';
import { isLegalNumber, LEGAL_NUMBERS, numberWarnings } from '../../server/domain/season/legal-numbers.ts';
import { nameToPrint, nameToSay, stricterChoice } from '../../server/domain/season/player-name.ts';
import type { PlayerNamed } from '../../server/domain/season/player-name.ts';

describe('basketball numbers (NFHS Basketball Rule 3-4-3)', () => {
  test('there are 37 of them', () => {
    expect(LEGAL_NUMBERS.fingers?.size).toBe(37);
  });

  test.each([
    ['0', true], ['00', true], ['5', true], ['6', false], ['10', true], ['15', true], ['16', false], ['29', false],
    ['55', true], ['60', false], ['99', false], ['000', false], ['05', false],
  ])('%s is allowed: %s', (number, allowed) => {
    expect(isLegalNumber('fingers', number)).toBe(allowed);
  });

  test('an odd number warns and stays as listed', () => {
    expect(numberWarnings('fingers', ['5', '16']).map((warning) => [warning.code, ...warning.numbers])).toEqual([['number-odd', '16']]);
  });

  test('a team may list 0 or 00 but not both', () => {
    expect(numberWarnings('fingers', ['0', '5'])).toEqual([]);
    expect(numberWarnings('fingers', ['0', '00']).map((warning) => warning.code)).toEqual(['numbers-0-and-00']);
  });

  test('a number worn twice is warned once, players without a number never', () => {
    expect(numberWarnings('fingers', ['12', '12', '', '']).map((warning) => warning.code)).toEqual(['number-twice']);
  });

  test('volleyball may wear 60, wrestling wears none', () => {
    expect(numberWarnings('upTo99', ['60'])).toEqual([]);
    expect(numberWarnings('none', ['700'])).toEqual([]);
  });
});

describe('a family chooses how a student is announced', () => {
  const xochitl: PlayerNamed = { name: 'Xochitl Okonkwo', number: '00', sayAs: 'SO-cheel oh-KON-kwoh', announce: 'name' };

  test.each([
    ['name', 'Xochitl Okonkwo', 'SO-cheel oh-KON-kwoh'],
    ['numberOnly', 'number 00', 'number 00'],
    ['aMember', 'a member of the team', 'a member of the team'],
    ['silence', null, null],
  ] as const)('with "%s" she is printed as %s', (announce, printed, spoken) => {
    expect(nameToPrint({ ...xochitl, announce })).toBe(printed);
    expect(nameToSay({ ...xochitl, announce })).toBe(spoken);
  });

  test('the number worn tonight is read, not the one listed', () => {
    expect(nameToPrint({ ...xochitl, announce: 'numberOnly' }, '14')).toBe('number 14');
  });

  test('of two choices the stricter holds', () => {
    expect([stricterChoice('name', 'silence'), stricterChoice('aMember', 'numberOnly')]).toEqual(['silence', 'aMember']);
  });
});

import { expect, test } from 'vitest';
import { foodCaution, isInSchoolDay } from '../../server/domain/sponsorship/food-copy.ts';
import { friday, saturday } from '../support/calendar.ts';

const school = friday('2026-12-04');
const ENDS = '15:00';

/** 7 CFR 210.11(a)(5): midnight before until thirty minutes after the end of the official school day. */
test.each([
  ['the midnight before', school, '00:00', true],
  ['a pep rally at half past two', school, '14:30', true],
  ['the last second of the half hour after school', school, '15:30:00', true],
  ['one second later', school, '15:30:01', false],
  ['an evening game', school, '19:00', false],
  ['a Saturday tournament at noon', saturday('2026-12-05'), '12:00', false],
] as const)('%s', (_, day, clock, inside) => {
  expect(isInSchoolDay(day, clock, ENDS)).toBe(inside);
});

test('a candy bar read at half past two is cautioned, at half past seven it is not', () => {
  expect(foodCaution({ isFood: true, readOn: school, clock: '14:30' }, ENDS)).toContain('7 CFR 210.31(c)(3)(iii)');
  expect(foodCaution({ isFood: true, readOn: school, clock: '19:30' }, ENDS)).toBeNull();
});

test('a hardware store is not cautioned at any hour, nor a game whose hour nobody knows', () => {
  expect(foodCaution({ isFood: false, readOn: school, clock: '14:30' }, ENDS)).toBeNull();
  expect(foodCaution({ isFood: true, readOn: school, clock: null }, ENDS)).toBeNull();
});

test('a school that ends later has a later school day', () => {
  expect(isInSchoolDay(school, '16:00', '15:30')).toBe(true);
  expect(isInSchoolDay(school, '16:01', '15:30')).toBe(false);
});

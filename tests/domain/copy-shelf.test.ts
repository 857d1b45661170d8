import { expect, test } from 'vitest';
import { dayOf } from '../../server/domain/day.ts';
import { CopyShelf } from '../../server/planning/copy-shelf.ts';
import type { ShelfRow } from '../../server/planning/copy-shelf.ts';

const day = dayOf('2026-12-04');
const TURNS = new Map([['opener', 0], ['second', 1], ['third', 2]]);

const row = (copyId: string, more: Partial<ShelfRow> = {}): ShelfRow => ({
  copyId, sponsorId: 'juniper', readKindId: 'timeOut', fallbackText: `The neutral line of ${copyId}.`, isStopped: false, rotates: false,
  versionId: `${copyId}-1`, number: 1, language: 'en', text: `The words of ${copyId}.`, secondLanguage: null, secondText: null,
  startsOn: null, endsOn: null, isApproved: true, ...more,
});

/** As the database hands them: newest copy first, newest version first. */
const chosen = (rows: ShelfRow[], gameId = 'opener', preferred: string | null = null) =>
  new CopyShelf(rows, TURNS).choose({ sponsorId: 'juniper', readKindId: 'timeOut', day, gameId, preferred });

test('two copies that rotate take turns by game, the older one first', () => {
  const rows = [row('lumber', { rotates: true }), row('nails', { rotates: true })];
  expect(['opener', 'second', 'third'].map((game) => chosen(rows, game).versionId)).toEqual(['nails-1', 'lumber-1', 'nails-1']);
});

test('the same game gets the same words however often it is asked', () => {
  const rows = [row('lumber', { rotates: true }), row('nails', { rotates: true })];
  expect(chosen(rows, 'second')).toEqual(chosen(rows, 'second'));
});

test('a copy out of its days or stopped loses its turn to the other', () => {
  expect(chosen([row('lumber', { rotates: true, startsOn: dayOf('2027-01-01') }), row('nails', { rotates: true })], 'second').versionId).toBe('nails-1');
  expect(chosen([row('lumber', { rotates: true, isStopped: true }), row('nails', { rotates: true })], 'second').versionId).toBe('nails-1');
});

test('a placement’s own copy wins over the newest one, and over those that take turns', () => {
  expect(chosen([row('lumber'), row('nails')], 'opener', 'nails-1').versionId).toBe('nails-1');
  expect(chosen([row('lumber', { rotates: true }), row('nails')], 'second', 'nails-1').versionId).toBe('nails-1');
});

test('a placement made before its copy rotated takes turns like any other', () => {
  const rows = [row('lumber', { rotates: true }), row('nails', { rotates: true })];
  expect(chosen(rows, 'second', 'nails-1').versionId).toBe('lumber-1');
});

test('the newest approved version of a copy is read, its second text with it', () => {
  const newest = row('nails', { versionId: 'nails-3', number: 3, isApproved: false });
  const approved = row('nails', { versionId: 'nails-2', number: 2, secondLanguage: 'es', secondText: 'Las palabras.' });
  expect(chosen([newest, approved, row('nails')])).toMatchObject({ versionId: 'nails-2', secondLanguage: 'es', secondText: 'Las palabras.', isApproved: true });
});

test('words on the last of their days are read, a day later they are not', () => {
  expect(chosen([row('nails', { endsOn: day })]).isApproved).toBe(true);
  expect(chosen([row('nails', { endsOn: dayOf('2026-12-03') })]).versionId).toBeNull();
});

test('a stopped copy leaves the neutral line, and nothing else', () => {
  expect(chosen([row('nails', { isStopped: true })])).toMatchObject({ versionId: null, text: null, fallbackText: 'The neutral line of nails.' });
});

import { expect, test } from 'vitest';
import { v7, version } from 'uuid';
import { isId, newId } from '../../server/platform/database/ids.ts';

/** RFC 9562 (May 2024), appendix A.6: unix_ts_ms 0x017F22E279B0, version 7, rand_a 0xCC3, variant 0b10, rand_b 0x18C4DC0C0C07398F. */
const PUBLISHED = '017f22e2-79b0-7cc3-98c4-dc0c0c07398f';

const millisecondsOf = (id: string) => Number.parseInt(id.replaceAll('-', '').slice(0, 12), 16);

test('the published vector is an id here, of version 7, made on 2022-02-22 at 19:22:22 UTC', () => {
  expect(isId(PUBLISHED)).toBe(true);
  expect(version(PUBLISHED)).toBe(7);
  expect(new Date(millisecondsOf(PUBLISHED)).toISOString()).toBe('2022-02-22T19:22:22.000Z');
});

test('our maker of ids gives the published vector back from its parts', () => {
  const random = Uint8Array.from([0, 0, 0, 0, 0, 0, 0x0c, 0xc3, 0x98, 0xc4, 0xdc, 0x0c, 0x0c, 0x07, 0x39, 0x8f]);
  const seq = (0xcc3 << 20) | (0x18c4dc >> 2);
  const made = v7({ msecs: 1_645_557_742_000, seq, random });
  expect([millisecondsOf(made), version(made)]).toEqual([1_645_557_742_000, 7]);
  expect(made.slice(0, 13)).toBe('017f22e2-79b0');
});

test('a new id is of version 7, carries the time it was made, and sorts after the one before', () => {
  const before = Date.now();
  const ids = Array.from({ length: 200 }, newId);
  expect(ids.every((id) => version(id) === 7 && isId(id))).toBe(true);
  expect(millisecondsOf(ids[0]!)).toBeGreaterThanOrEqual(before);
  expect(ids.toSorted()).toEqual(ids);
});

test('what only looks like an id is none', () => {
  for (const text of ['', PUBLISHED.slice(1), `${PUBLISHED}0`, '017f22e2-79b0-9cc3-98c4-dc0c0c07398f', 7]) expect([text, isId(text)]).toEqual([text, false]);
});

import { expect, test } from 'vitest';
import type { DeskEntry, EntryPlace } from '../../server/domain/night/desk/desk-entry.ts';
import { entriesOfFile, heldFile } from '../../server/domain/night/desk/outbox/held-file.ts';
import { countsInWords, countsOf, emptyOutbox, linesOf, nextSequence, written } from '../../server/domain/night/desk/outbox/outbox.ts';
import type { Outbox } from '../../server/domain/night/desk/outbox/outbox.ts';
import { received, takenOver } from '../../server/domain/night/desk/outbox/outbox-reading.ts';
import { answered, batchToSend, bodyOf, retryDelayMilliseconds, signedInAgain, triedAgain } from '../../server/domain/night/desk/outbox/outbox-sending.ts';
import { waitingCount } from '../../server/domain/night/desk/waiting-count.ts';
import type { BatchAnswer } from '../../server/domain/night/desk/outbox/outbox-sending.ts';

const id = (device: number, place: number) => `0193a000-0000-7000-8000-${String(device * 1000 + place).padStart(12, '0')}`;
const deviceId = id(9, 1);

function entry(place: number, more: Partial<DeskEntry> = {}): DeskEntry {
  return {
    id: id(1, place), deviceId, sequence: place, kind: 'note', outcome: null, reason: `note ${place}`, gameId: null, cueKey: null, placementId: null, commitmentId: null,
    windowKey: null, teamId: null, playerNumber: null, period: null, clock: null, detail: null, happeningEntryId: null, takesBackEntryId: null,
    occurredAt: '2026-12-05T02:00:00.000Z', ...more,
  };
}

const boxOf = (count: number): Outbox => Array.from({ length: count }, (_, place) => entry(place + 1)).reduce(written, emptyOutbox(deviceId));
const say = (box: Outbox, answer: BatchAnswer): Outbox => answered(box, batchToSend(box)!, answer);
const no = (status: number): BatchAnswer => ({ kind: 'refused', status, sentence: `The server said ${status}.` });
const places = (box: Outbox) => Object.values(countsOf(box));

test('a batch is a hundred entries in their order, and sent again it is the same', () => {
  const box = boxOf(101);
  const first = batchToSend(box)!;
  expect([first.entries.length, first.entries[0]!.sequence, first.entries.at(-1)!.sequence]).toEqual([100, 1, 100]);
  expect(JSON.stringify(bodyOf(batchToSend(say(box, { kind: 'silence' }))!))).toBe(JSON.stringify(bodyOf(first)));
  expect(bodyOf(first).entries[0]).not.toHaveProperty('deviceId');
});

test.each([
  ['stored', [0, 1, 0], null],
  ['already', [0, 1, 0], null],
  ['aside', [0, 0, 1], 'Why.'],
  ['refused', [0, 0, 1], 'Why.'],
] as const)('an entry that is %s stands at %j', (status, counts, sentence) => {
  const box = say(boxOf(1), { kind: 'results', results: [{ id: id(1, 1), status, number: 1, sentence: 'Why.' }] });
  expect(places(box)).toEqual(counts);
  expect(linesOf(box)[0]!.sentence).toBe(sentence);
});

test.each([
  [401, [2, 0, 0], false, 0, 'asks to sign in, the queue stays'],
  [403, [0, 0, 2], false, 0, 'holds all: it is the same for every entry'],
  [404, [0, 0, 2], false, 0, 'holds all: there is no such night'],
  [409, [2, 0, 0], true, 0, 'is about one of them, which has to be found'],
  [422, [2, 0, 0], true, 0, 'is about one of them, which has to be found'],
  [400, [2, 0, 0], true, 0, 'is about one of them, which has to be found'],
  [429, [2, 0, 0], true, 1, 'is tried again later'],
  [500, [2, 0, 0], true, 1, 'is tried again later'],
  [503, [2, 0, 0], true, 1, 'is tried again later'],
] as const)('an answer of %i to a batch of two leaves %j', (status, counts, goesOn, failures, _says) => {
  const box = say(boxOf(2), no(status));
  expect([places(box), batchToSend(box) !== null, box.failures]).toEqual([counts, goesOn, failures]);
});

test('one bad entry among a hundred is found and held alone, the others go through', () => {
  let box = boxOf(100);
  let sends = 0;
  for (let batch = batchToSend(box); batch !== null; batch = batchToSend(box)) {
    const isBad = batch.entries.some((one) => one.sequence === 42);
    box = answered(box, batch, isBad ? no(422) : { kind: 'results', results: batch.entries.map((one) => ({ id: one.id, status: 'stored', number: one.sequence })) });
    expect((sends += 1)).toBeLessThan(40);
  }
  expect(places(box)).toEqual([0, 99, 1]);
  expect(linesOf(box).filter((line) => line.place === 'needsAttention').map((line) => line.sequence)).toEqual([42]);
});

test('who is asked to sign in loses nothing, and signed in again the same entries go out', () => {
  const box = say(boxOf(3), no(401));
  expect(batchToSend(box)).toBeNull();
  expect(batchToSend(written(box, entry(4)))).toBeNull();
  expect(batchToSend(signedInAgain(box))!.entries.map((one) => one.sequence)).toEqual([1, 2, 3]);
});

test('held entries go out again when somebody wants it, and an answer that comes late takes nothing back', () => {
  const held = say(boxOf(2), no(403));
  expect(batchToSend(held)).toBeNull();
  const again = triedAgain(held);
  const batch = batchToSend(again)!;
  const stored = answered(again, batch, { kind: 'results', results: batch.entries.map((one, place) => ({ id: one.id, status: 'stored', number: place + 1 })) });
  expect(places(answered(stored, batch, no(403)))).toEqual([0, 2, 0]);
  expect(places(answered(stored, batch, { kind: 'results', results: [{ id: id(1, 1), status: 'aside' }] }))).toEqual([0, 2, 0]);
});

test('an answer about other entries than those sent is no answer', () => {
  const box = say(boxOf(1), { kind: 'results', results: [{ id: id(5, 5), status: 'stored', number: 1 }] });
  expect([places(box), box.failures]).toEqual([[1, 0, 0], 1]);
});

test.each([
  [0, 0.5, 0],
  [1, 0, 500],
  [1, 0.999, 1000],
  [2, 0, 1000],
  [4, 0.5, 6000],
  [5, 0, 7500],
  [50, 0.999, 14_993],
])('after %i failures and with chance %d the next try waits %i milliseconds', (failures, chance, wait) => {
  expect(retryDelayMilliseconds(failures, chance)).toBe(wait);
});

test('an entry that the server has and this device lost is taken in, and its place is not taken again', () => {
  const box = received(emptyOutbox(deviceId), [{ ...entry(7), number: 1 }]);
  expect([places(box), nextSequence(box), box.readUpTo]).toEqual([[0, 1, 0], 8, 1]);
});

test('lines of another device come in whatever order and however often, and the cursor waits for the gap', () => {
  const other = (place: number) => ({ ...entry(place, { id: id(2, place), deviceId: id(9, 2) }), number: place });
  let box = received(boxOf(0), [other(3), other(1)]);
  expect(box.readUpTo).toBe(1);
  box = received(received(box, [other(2)]), [other(3), other(2)]);
  expect([box.readUpTo, linesOf(box).map((line) => line.number)]).toEqual([3, [1, 2, 3]]);
  expect(linesOf(written(box, entry(1))).map((line) => [line.number, line.isOwn])).toEqual([[1, false], [2, false], [3, false], [null, true]]);
});

test('a clock that is hours wrong changes no order', () => {
  const early = { occurredAt: '2019-01-01T00:00:00.000Z' };
  const box = [entry(1), entry(2, early), entry(3)].reduce(written, emptyOutbox(deviceId));
  expect(linesOf(box).map((line) => line.sequence)).toEqual([1, 2, 3]);
});

test.each([
  [{ onDevice: 3, onServer: 41, needsAttention: 0 }, '3 entries are on this device only, 41 are on the server, none needs attention.'],
  [{ onDevice: 1, onServer: 1, needsAttention: 1 }, '1 entry is on this device only, 1 is on the server, 1 needs attention.'],
  [{ onDevice: 0, onServer: 0, needsAttention: 2 }, 'No entry is on this device only, none is on the server, 2 need attention.'],
])('%j reads as a sentence', (counts, sentence) => {
  expect(countsInWords(counts)).toBe(sentence);
});

test('what a file holds goes out in the name of the device that wrote it, after this device\'s own', () => {
  const theirs = entry(4, { id: id(3, 4), deviceId: id(9, 3) });
  const text = JSON.stringify(heldFile('friday', 'Herons at Kestrels', [theirs]));
  const read = entriesOfFile(text, 'friday');
  const box = takenOver(boxOf(1), 'entries' in read ? read.entries : []);
  expect(batchToSend(box)).toEqual({ deviceId, entries: [entry(1)] });
  const after = say(box, { kind: 'results', results: [{ id: id(1, 1), status: 'stored', number: 1 }] });
  expect(batchToSend(after)).toEqual({ deviceId: id(9, 3), entries: [theirs] });
  expect(nextSequence(after)).toBe(2);
  expect(linesOf(box).map((line) => [line.deviceId, line.isOwn, line.place])).toEqual([[deviceId, true, 'onDevice'], [id(9, 3), false, 'onDevice']]);
});

test.each([
  ['not json', 'This is no file of table entries.'],
  ['{"format":"other"}', 'This is no file of table entries.'],
  [JSON.stringify(heldFile('saturday', 'Otters at Kestrels', [])), 'This file is of another night: Otters at Kestrels.'],
  [JSON.stringify({ ...heldFile('friday', '', []), version: 2 }), 'This file was written by a newer page. Load this page anew, then try again.'],
  [JSON.stringify(heldFile('friday', '', [entry(1, { id: 'one' })])), 'This file is damaged: one of its entries cannot be read. Nothing was taken from it.'],
])('a file that is not this night\'s says why: %s', (text, sentence) => {
  expect(entriesOfFile(text, 'friday')).toEqual({ sentence });
});

test.each<[EntryPlace[], number, number]>([
  [[], 0, 0],
  [['onServer', 'needsAttention'], 0, 0],
  [['onServer', 'onDevice'], 0, 1],
  [['onServer'], 1, 1],
  [['onDevice', 'onDevice'], 1, 3],
])('with entries %j and %i that could not be stored the sign-off waits for %i', (lines, unstored, count) => {
  expect(waitingCount(lines.map((place) => ({ place })), unstored)).toBe(count);
});

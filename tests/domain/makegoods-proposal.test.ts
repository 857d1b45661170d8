import { describe, expect, test } from 'vitest';
import { checkOutcome } from '../../server/domain/makegoods/dispute.ts';
import type { MissedAndClaimed } from '../../server/domain/makegoods/missed-reads.ts';
import { becauseOf, checkMissed, proposalInWords, readsInstead, settledByReplacement } from '../../server/domain/makegoods/proposal.ts';
import type { ProposalToSay } from '../../server/domain/makegoods/proposal.ts';
import { Refused } from '../../server/domain/refusals.ts';

function codeOf(act: () => unknown): string | null {
  try {
    act();
    return null;
  } catch (failure) {
    return failure instanceof Refused ? failure.code : 'broken';
  }
}

const read = (more: Partial<MissedAndClaimed> = {}): MissedAndClaimed => ({
  slotId: null, nightId: 'night', gameId: 'game', windowKey: 'halftime', placementId: 'placement', missedOn: '2026-12-04' as never, because: 'windowOver', why: 'no time', proposalId: null, isOpen: true, ...more,
});

describe('what one proposal may speak for', () => {
  test.each([
    ['as many as are open', [read(), read()], 2, null],
    ['one more than are open', [read(), read(), read()], 2, 'more-missed-than-owed'],
    ['one that stands in another', [read(), read({ proposalId: 'other' })], 2, 'missed-read-claimed-twice'],
    ['reads of one game', [read({ slotId: 'a' }), read({ slotId: 'a' })], 2, null],
    ['reads of two games that are counted by themselves', [read({ slotId: 'a' }), read({ slotId: 'b' })], 2, 'missed-reads-of-two-games'],
  ])('%s', (_what, missed, open, code) => {
    expect(codeOf(() => checkMissed(missed, open))).toBe(code);
  });

  test('why they are short is the season before a game before a window, and a wish where games are left', () => {
    expect(becauseOf([read(), read({ because: 'gameCancelled' }), read({ because: 'seasonEnding' })], true)).toBe('seasonEnding');
    expect(becauseOf([read(), read({ because: 'gameCancelled' })], true)).toBe('gameCancelled');
    expect(becauseOf([read()], true)).toBe('windowOver');
    expect(becauseOf([read({ because: 'gameCancelled' })], false)).toBe('asked');
  });
});

describe('reads of another kind', () => {
  const instead = { missed: 4, priceCents: 2_500, otherCents: 7_500, reads: null };
  test.each([
    ['as few as will do', {}, 2, null],
    ['one more by wish', { reads: 3 }, 3, null],
    ['one fewer than will do', { reads: 1 }, null, 'makegood-worth-less'],
    ['a kind that is not on the rate card', { otherCents: null }, null, 'makegood-kind-without-price'],
    ['the same value to the cent', { missed: 3, reads: 1 }, 1, null],
  ])('%s', (_what, more, reads, code) => {
    expect(codeOf(() => readsInstead({ ...instead, ...more }))).toBe(code);
    if (reads !== null) expect(readsInstead({ ...instead, ...more })).toBe(reads);
  });

  // LEDGER.md, section 2, row 15: N missed for M given, missed i settles when replacement ⌈iM/N⌉ is given.
  test.each([
    [4, 2, [1, 1, 2, 2]],
    [2, 4, [2, 4]],
    [3, 2, [1, 2, 2]],
    [1, 2, [2]],
    [3, 3, [1, 2, 3]],
  ])('of %d missed for %d given each is settled by its replacement', (missed, given, settling) => {
    expect(Array.from({ length: missed }, (_, at) => settledByReplacement(at + 1, missed, given))).toEqual(settling);
    for (let replacement = 1; replacement <= given; replacement += 1) {
      expect(settling.filter((one) => one <= replacement)).toHaveLength(Math.floor((replacement * missed) / given));
    }
  });
});

test.each([
  ['credit', { amountCents: 7_500 }, 'A credit of $75.00 for 3 missed reads (Concession read).'],
  ['credit', { missedReads: 1, amountCents: 2_500 }, 'A credit of $25.00 for 1 missed read (Concession read).'],
  ['carryOver', { amountCents: 7_500 }, '3 missed reads (Concession read) go on into the next contract, with the value of $75.00.'],
  ['carryOver', { missedReads: 1, amountCents: 0 }, '1 missed read (Concession read) goes on into the next contract.'],
  ['moreReads', { replacementReads: 3, replacementReadKindName: 'Concession read' }, '3 more reads of the same kind for 3 missed reads (Concession read).'],
  ['otherKind', { replacementReads: 1, replacementReadKindName: 'Sponsored game ball' }, '1 read of another kind (Sponsored game ball) for 3 missed reads (Concession read).'],
] as [ProposalToSay['remedy'], Partial<ProposalToSay>, string][])('a proposal of %s says what it is', (remedy, more, words) => {
  expect(proposalInWords({ remedy, missedReads: 3, readKindName: 'Concession read', replacementReads: null, replacementReadKindName: null, amountCents: null, ...more })).toBe(words);
});

test('what the log has can be taken back, and what it does not have can be added', () => {
  expect([codeOf(() => checkOutcome('takenBack', true)), codeOf(() => checkOutcome('takenBack', false)), codeOf(() => checkOutcome('added', false)), codeOf(() => checkOutcome('added', true)), codeOf(() => checkOutcome('stands', false))])
    .toEqual([null, 'dispute-without-read', null, 'dispute-of-a-read', null]);
});

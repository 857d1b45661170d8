import { describe, expect, test } from 'vitest';
import { mentionQueue } from '../../server/domain/night/desk/reading/mention-queue.ts';
import { nearestCode, paperRest, paperSteps, paperTally, withCodeInstead } from '../../server/domain/night/desk/reading/paper-tally.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';

const bundle = aNightBundle();
const understood = (text: string) => paperTally(text, bundle).lines.map(({ cue, times, windowKey }) => `${cue.code} ${times}${windowKey === null ? '' : ` ${windowKey}`}`);
const refused = (text: string) => paperTally(text, bundle).problems.map(({ sentence }) => sentence);

test.each([
  ['H1, H13', 'H13', 'H12', 'H1, H12'],
  ['H1 x2, h13 x2', 'h13 x2', 'H12', 'H1 x2, H12 x2'],
  ['H13, H1', 'H1', 'H2', 'H13, H2'],
  ['1-H1, H1', 'H1', 'H2', '1-H1, H2'],
])('%j with %j replaced by %s is %j', (text, wrong, code, after) => {
  expect(withCodeInstead(text, wrong, code)).toBe(after);
});

test.each([
  [0, 'H1, T1 x3, M1 × 2'],
  [1, 'T1 x3, M1 × 2'],
  [2, 'T1 x2, M1 × 2'],
  [3, 'T1, M1 × 2'],
  [5, 'M1'],
  [6, ''],
])('of H1, T1 x3, M1 × 2 there is left after %i steps: %j', (done, left) => {
  expect(paperRest(paperTally('H1, T1 x3, M1 × 2', bundle).lines, done)).toBe(left);
});

describe('a tally kept on paper', () => {
  test.each([
    ['H1', ['H1 1']],
    ['h1', ['H1 1']],
    ['H1, T1 x2\nM1 x4', ['H1 1', 'T1 2', 'M1 4']],
    ['H1 T1 x2 M1', ['H1 1', 'T1 2', 'M1 1']],
    ['T1 × 2; B1 in halftime', ['T1 2', 'B1 1 halftime']],
    ['T2 in Time-out 1', ['T2 1 timeOut1']],
    ['', []],
    ['T1 x30', ['T1 30']],
  ])('%j', (text, lines) => {
    expect([understood(text), refused(text)]).toEqual([lines, []]);
  });

  test.each([
    ['T1 x31', ['T1 was ticked 31 times; a line takes 1 to 30.']],
    ['T1 x0', ['T1 was ticked 0 times; a line takes 1 to 30.']],
    ['T9', ['Nothing tonight has the code T9. The nearest is T2.']],
    ['halftime twice', ['“halftime twice” is not a code. Write a code as the packet prints it, and how often: H3, T1 x2.']],
    ['T1 in the lobby', [expect.stringMatching(/^No window of this game is called “the lobby”\. There are: Before the game, /)]],
  ])('%j is refused with a sentence', (text, sentences) => {
    expect([understood(text), refused(text)]).toEqual([[], sentences]);
  });

  test('one wrong line leaves the others standing', () => {
    expect([understood('H1, T9, B1'), refused('H1, T9, B1')]).toEqual([['H1 1', 'B1 1'], ['Nothing tonight has the code T9. The nearest is T2.']]);
  });
});

test.each([
  ['T9', 'T2'],
  ['t3', 'T2'],
  ['Q1', 'P1'],
  ['Q77', null],
])('%s was most likely %s', (code, near) => {
  expect(nearestCode(code, ['P1', 'P2', 'T1', 'T2', 'M1'])).toBe(near);
});

describe('the entries of a tally', () => {
  const steps = (text: string, log = new DeskLog()) => paperSteps(paperTally(text, bundle).lines, mentionQueue(bundle, log.lines), () => 'team-kestrels');

  test('they are marked "from paper" and carry no game clock', () => {
    const [step] = steps('T1 in halftime');
    expect(step).toMatchObject({ happening: null, entry: { kind: 'read', outcome: 'given', windowKey: 'halftime', detail: { fromPaper: true } } });
    expect(step!.entry.clock).toBeUndefined();
  });

  test('a mention answers the shots that wait, and brings its own shot where none does', () => {
    const log = new DeskLog();
    log.write({ kind: 'happening', teamId: 'team-kestrels', detail: { happening: 'bankShot' } });
    const [first, second] = steps('M1 x2', log);
    expect(first).toMatchObject({ happening: null, entry: { kind: 'mention', happeningEntryId: 'tablet-1' } });
    expect(second).toMatchObject({
      happening: { kind: 'happening', teamId: 'team-kestrels', detail: { happening: 'bankShot', fromPaper: true } },
      entry: { kind: 'mention', happeningEntryId: null, detail: { fromPaper: true } },
    });
  });
});

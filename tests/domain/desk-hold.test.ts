import { describe, expect, test } from 'vitest';
import type { HoldSituation } from '../../server/domain/night/desk/bundle.ts';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { LIGHTNING_SECONDS, PLAY_HAS_GONE_ON, holdOf, lightningLeftSeconds, mayReadSponsors } from '../../server/domain/night/desk/reading/hold.ts';
import { readEntry } from '../../server/domain/night/desk/reading/read-entry.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';

const bundle = aNightBundle();
const begun = (situation: HoldSituation): NewDeskEntry => ({ kind: 'hold', detail: { state: 'begun', situation } });
const flash: NewDeskEntry = { kind: 'hold', detail: { state: 'flash', situation: 'weather' } };
const ended: NewDeskEntry = { kind: 'hold', detail: { state: 'ended' } };
const sponsored = readEntry(bundle.cues.find((cue) => cue.isSponsored)!);
const ofHouse = bundle.cues.find((cue) => !cue.isSponsored)!;
const house = readEntry(ofHouse);

function after(...entries: NewDeskEntry[]) {
  const log = new DeskLog();
  for (const entry of entries) log.write(entry);
  return holdOf(log.lines);
}

describe('the emergency hold', () => {
  test.each([
    ['nothing', [], false, true],
    ['an injury', [begun('injury')], true, false],
    ['a delay', [begun('delay')], true, false],
    ['a delay that is over', [begun('delay'), ended], false, true],
    ['lightning that is over: no sponsor right after it', [begun('weather'), ended], false, false],
    ['a flash that is over', [flash, ended], false, false],
    ['an injury that is over: no sponsor right after it', [begun('injury'), ended], false, false],
    ['an injury that is over and the house has spoken', [begun('injury'), ended, house], false, true],
    ['an injury that is over and a sponsor was read all the same', [begun('injury'), ended, sponsored], false, false],
    ['an injury that is over and play has gone on', [begun('injury'), ended, { kind: 'basket' }], false, true],
    ['an injury that became a delay and is over', [begun('injury'), begun('delay'), ended], false, false],
    ['a flash in a delay that is over', [begun('delay'), flash, begun('delay'), ended], false, false],
    ['a delay right after an injury', [begun('injury'), ended, begun('delay'), ended], false, false],
    ['a delay after an injury and play', [begun('injury'), ended, { kind: 'basket' }, begun('delay'), ended], false, true],
    ['an evacuation that is over', [begun('evacuation'), ended], false, false],
    ['a silence that is over', [begun('silence'), ended], false, false],
    ['a flash alone begins one', [flash], true, false],
    ['an end without a beginning', [ended], false, true],
  ] as const)('%s', (_, entries, isOn, mayRead) => {
    const hold = after(...entries);
    expect([hold.isOn, mayReadSponsors(hold)]).toEqual([isOn, mayRead]);
  });

  test.each([
    ['a foul', { kind: 'foul' }, true],
    ['a time-out', { kind: 'timeOut' }, true],
    ['the end of a period', { kind: 'periodEnd' }, true],
    ['the note that play has gone on', { kind: 'note', detail: { words: PLAY_HAS_GONE_ON } }, true],
    ['a request that was read', { kind: 'requestAnswered', detail: { answer: 'read' } }, true],
    ['a house cue not read', readEntry(ofHouse, { outcome: 'notRead', reason: 'noTime' }), false],
    ['a declined request', { kind: 'requestAnswered', detail: { answer: 'declined' } }, false],
    ['another note', { kind: 'note', reason: 'the ball is flat' }, false],
    ['a check of the book', { kind: 'book', detail: { agrees: true } }, false],
    ['a line of the roster', { kind: 'worn', playerNumber: '12' }, false],
    ['a moved time', { kind: 'timeMoved', detail: { what: 'start', clock: '19:12' } }, false],
    ['a substitution, as of the injured player', { kind: 'substitution' }, false],
  ] as const)('after an injury: %s', (_, entry, mayRead) => {
    expect(mayReadSponsors(after(begun('injury'), ended, entry))).toBe(mayRead);
  });

  test('one that was begun by mistake is taken back', () => {
    const log = new DeskLog();
    log.takeBack(log.write(begun('evacuation')).id);
    expect(holdOf(log.lines)).toMatchObject({ isOn: false, situation: null });
  });

  test('the newest situation is shown; the beginning stays where it was', () => {
    expect(after(begun('delay'), begun('weather'))).toMatchObject({ situation: 'weather', begun: { sequence: 1 }, lastFlash: { sequence: 2 } });
  });

  test('each flash is the last one, until the next', () => {
    expect(after(begun('weather')).lastFlash).toMatchObject({ sequence: 1 });
    expect(after(begun('weather'), flash, flash).lastFlash).toMatchObject({ sequence: 3 });
  });
});

describe('the lightning clock', () => {
  // Thirty minutes after the last thunder or flash: common practice in schools, no source named.
  test.each([
    [0, LIGHTNING_SECONDS],
    [1799, 1],
    [1800, 0],
    [7200, 0],
    // a device whose clock is ahead by an hour
    [-3600, LIGHTNING_SECONDS],
  ])('%i seconds after the last flash: %i left', (since, left) => {
    expect(lightningLeftSeconds(since)).toBe(left);
  });
});

import { describe, expect, test } from 'vitest';
import type { DeskMention, NightBundle } from '../../server/domain/night/desk/bundle.ts';
import type { NewDeskEntry } from '../../server/domain/night/desk/desk-entry.ts';
import { happeningButtons, mentionQueue, mentionToGive, momentOf } from '../../server/domain/night/desk/reading/mention-queue.ts';
import { mentionEntry } from '../../server/domain/night/desk/reading/read-entry.ts';
import { DeskLog, aNightBundle } from './desk-night.ts';

const bundle = aNightBundle();
const copperline = bundle.mentions[0]!;
const shot = { kind: 'happening', teamId: 'team-kestrels', playerNumber: '12', period: '2nd quarter', clock: '5:32', detail: { happening: 'bankShot' } } as const;
const withMentions = (...mentions: Partial<DeskMention>[]): NightBundle => ({ ...bundle, mentions: mentions.map((one) => ({ ...copperline, ...one })) });
const queued = (log: DeskLog, of: NightBundle = bundle) => mentionQueue(of, log.lines).map((one) => `${one.mention.sponsorName} ${one.happeningEntryIds.join('+')}`);

function afterShots(count: number): DeskLog {
  const log = new DeskLog();
  for (let number = 0; number < count; number += 1) log.write({ ...shot, clock: `${7 - number}:00` });
  return log;
}

describe('mentions that are owed', () => {
  test('each bank shot of ours owes one, in order, until it is given', () => {
    const log = afterShots(2);
    expect(queued(log)).toEqual(['Copperline Credit Union tablet-1', 'Copperline Credit Union tablet-2']);
    log.write(mentionEntry(mentionQueue(bundle, log.lines)[0]!));
    expect(queued(log)).toEqual(['Copperline Credit Union tablet-2']);
  });

  test('a shot of the visitors owes one only where both teams’ shots do', () => {
    const log = new DeskLog();
    log.write({ ...shot, teamId: 'team-herons' });
    expect(queued(log)).toEqual([]);
    expect(queued(log, withMentions({ whose: 'both' }))).toEqual(['Copperline Credit Union tablet-1']);
  });

  test('one shot owes a mention to every sponsor whose terms cover it', () => {
    const both = withMentions({}, { commitmentId: 'other', cueKey: 'game:game-1/mention/other', sponsorName: 'Blue Lantern Tire' }, { commitmentId: 'dunks', cueKey: 'game:game-1/mention/dunks', happening: 'dunk' });
    expect(queued(afterShots(1), both)).toEqual(['Copperline Credit Union tablet-1', 'Blue Lantern Tire tablet-1']);
  });

  test('several shots are one mention where the contract says so, and all of them are answered by it', () => {
    const asOne = withMentions({ severalCountAsOne: true });
    const log = afterShots(3);
    expect(queued(log, asOne)).toEqual(['Copperline Credit Union tablet-1+tablet-2+tablet-3']);
    log.write(mentionEntry(mentionQueue(asOne, log.lines)[0]!));
    expect(queued(log, asOne)).toEqual([]);
  });

  test('a shot taken back owes nothing any more; a mention taken back is owed again', () => {
    const log = afterShots(1);
    const given = log.write(mentionEntry(mentionQueue(bundle, log.lines)[0]!));
    log.takeBack(given.id);
    expect(queued(log)).toEqual(['Copperline Credit Union tablet-1']);
    log.takeBack('tablet-1');
    expect(queued(log)).toEqual([]);
  });

  test.each(['cutShort', 'notRead'] as const)('a mention that was %s leaves the queue: the table has spoken', (outcome) => {
    const log = afterShots(1);
    log.write(mentionEntry(mentionQueue(bundle, log.lines)[0]!, { outcome, reason: 'playResumed' }));
    expect(queued(log)).toEqual([]);
  });

  test.each([
    ['eight seconds apart are one shot', '5:24', 1],
    ['nine seconds apart are two', '5:23', 2],
  ])('two devices with clocks %s', (_, clock, count) => {
    const [here, there] = [new DeskLog('tablet'), new DeskLog('phone')];
    here.write(shot);
    there.write({ ...shot, clock });
    expect(mentionQueue(bundle, [...here.lines, ...there.lines])).toHaveLength(count);
  });

  test('the shooter is told by number and team', () => {
    expect(mentionQueue(bundle, afterShots(1).lines)[0]!.shooters).toEqual([{ teamId: 'team-kestrels', playerNumber: '12' }]);
  });
});

describe('the mention at hand', () => {
  const two = withMentions({}, { commitmentId: 'other', cueKey: 'game:game-1/mention/other', sponsorName: 'Blue Lantern Tire', happening: 'dunk' });
  const dunk = { ...shot, detail: { happening: 'dunk' } } as const;
  const own = afterShots(1);
  const atHand = { cueKey: copperline.cueKey, happeningEntryId: 'tablet-1' };
  const sponsorOf = (lines: DeskLog['lines'], held: typeof atHand | null) => mentionToGive(mentionQueue(two, lines), held)?.mention.sponsorName;
  const other = (entry: NewDeskEntry) => {
    const log = new DeskLog('phone');
    log.write(entry);
    return log.lines;
  };

  test('a happening of another device that sorts before it does not take its place', () => {
    const lines = [...other(dunk), ...own.lines];
    expect([sponsorOf(lines, null), sponsorOf(lines, atHand)]).toEqual(['Blue Lantern Tire', 'Copperline Credit Union']);
  });

  test('the same happening logged by another device as well is still the one at hand', () => {
    expect(sponsorOf([...other(dunk), ...other({ ...shot, clock: '7:00' }).map((line) => ({ ...line, id: 'phone-2' })), ...own.lines], atHand)).toBe('Copperline Credit Union');
  });

  test('once it is given the first of the queue follows; an empty queue has none', () => {
    const given = afterShots(1);
    given.write(mentionEntry(mentionQueue(two, given.lines)[0]!));
    expect(sponsorOf([...other(dunk), ...given.lines], atHand)).toBe('Blue Lantern Tire');
    expect(sponsorOf(given.lines, atHand)).toBeUndefined();
  });
});

describe('when a mention is called', () => {
  // CHECKS PA-01, PA-06: nothing is announced while the clock runs, so the default holds it.
  test.each([
    ['nextWindow', 3, 'held'],
    ['deadBall', 4, 'deadBall'],
    ['deadBall', 4.1, 'held'],
    ['atOnce', 9, 'atOnce'],
  ] as const)('%s, %d seconds: %s', (setting, seconds, moment) => {
    expect(momentOf({ seconds }, setting)).toBe(moment);
  });
});

test('one button for a kind of happening, whoever its sponsors are', () => {
  const [button, ...others] = happeningButtons(withMentions({}, { commitmentId: 'other', whose: 'both' }).mentions);
  expect(others).toEqual([]);
  expect(button).toMatchObject({ happening: 'bankShot', occurrence: 'bank shot', whose: 'both' });
  expect(button!.mentions).toHaveLength(2);
});

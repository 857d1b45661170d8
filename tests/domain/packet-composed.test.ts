import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import type { Announce, NightForPacket, PacketSettings } from '../../server/domain/packet/night-for-packet.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import type { Cue, Packet } from '../../server/domain/packet/packet.ts';
import { isReady } from '../../server/domain/packet/readiness.ts';
import type { Script } from '../../server/domain/packet/script.ts';
import { game, herons, kestrels, longNight, mention, night, placement, player, render, readinessOf } from './packet-night.ts';

const composed = (of: NightForPacket = night(), library: readonly Script[] = DEFAULT_SCRIPTS): Packet => composePacket(of, library, render);
const moments = (packet: Packet): string[] => packet.cues.map((cue) => cue.moment);
const textOf = (cue: Cue | undefined): string => (cue?.segments ?? []).map((segment) => segment.text).join('\n');
const cueFor = (packet: Packet, moment: string): Cue | undefined => packet.cues.find((cue) => cue.moment === moment);
const settings = (extra: Partial<PacketSettings>): Partial<NightForPacket> => ({ settings: { ...DEFAULT_PACKET_SETTINGS, ...extra } });
const script = (moment: Script['moment'], text: string, extra: Partial<Script> = {}): Script => ({ key: moment, moment, title: moment, language: 'en', text, isOn: true, place: 1, ...extra });

// Order of a night: common practice, no source.
test('the night goes from the welcome to the anthem, the game ball, both line-ups, the game and good night', () => {
  expect(moments(composed())).toEqual([
    'welcome', 'conduct', 'substances', 'seating', 'anthem', 'anthem', 'sponsorPresentation', 'lineUpVisitors', 'lineUpHome',
    'callsOfPlay', 'mention', 'sponsorRead', 'sponsorRead', 'periodScore', 'sponsorRead', 'halftime', 'floorSafety', 'sponsorRead', 'concession', 'sponsorRead',
    'sponsorRead', 'postgame', 'vehicleNotice', 'lostChild', 'foundItem', 'medical', 'delay', 'injury', 'weather', 'evacuation', 'threat',
  ]);
});

test('cues are numbered one after the other and every key stands once', () => {
  const { cues } = composed(longNight());
  expect(cues.map((cue) => cue.number)).toEqual(cues.map((_, place) => place + 1));
  expect(new Set(cues.map((cue) => cue.cueKey)).size).toBe(cues.length);
});

test('a read keeps its key when another read comes before it', () => {
  const before = composed(night({ games: [game({ placements: [placement('game-1', 'timeout', 2, 'Blue Lantern Tire')] })] }));
  const after = composed(night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Pinyon Print Works'), placement('game-1', 'timeout', 2, 'Blue Lantern Tire')] })] }));
  const keyOf = (packet: Packet): string | undefined => packet.cues.find((cue) => cue.sponsorName === 'Blue Lantern Tire')?.cueKey;
  expect(keyOf(before)).toBe('game:game-1/timeout/2');
  expect(keyOf(after)).toBe(keyOf(before));
});

test('a night of three games has one welcome, one anthem before the varsity game and one good night', () => {
  const packet = composed(longNight());
  expect(packet.cues.filter((cue) => cue.moment === 'welcome')).toHaveLength(1);
  expect(packet.cues.filter((cue) => cue.moment === 'anthem').map((cue) => cue.gameId)).toEqual(['game-1', 'game-1']);
  expect(packet.cues.filter((cue) => cue.moment === 'postgame').map((cue) => cue.gameId)).toEqual(['game-2']);
  expect(packet.cues.filter((cue) => cue.moment === 'betweenGames').map((cue) => cue.gameId)).toEqual(['game-0', 'game-1']);
  expect(packet.games).toHaveLength(3);
});

test('the same night gives the same packet', () => {
  expect(JSON.stringify(composed())).toBe(JSON.stringify(composed()));
});

test('the visiting line-up leaves its crowd three seconds and the home line-up has energy', () => {
  expect(textOf(cueFor(composed(), 'lineUpVisitors'))).toMatch(/^Level voice\.\n.*visiting Port Ansel High School Herons\.\nPause 3 seconds/);
  expect(textOf(cueFor(composed(), 'lineUpHome'))).toMatch(/^With energy\.\n.*Kestrels!\nPause 3 seconds/);
});

test('each starter is position, number and name, with the respelling beside it and a wait behind it', () => {
  const segments = cueFor(composed(), 'lineUpHome')?.segments ?? [];
  const place = segments.findIndex((segment) => segment.text === 'Center, number 23, Łukasz Wierzbicki.');
  expect(segments[place]?.sayAs).toBe('WOO-kahsh vyezh-BIT-skee');
  expect(segments[place + 1]).toMatchObject({ kind: 'direction', text: expect.stringContaining('greeted the other bench') });
});

test('the anthem keeps the whole first verse on a page of its own behind it', () => {
  const { cues } = composed();
  const place = cues.findIndex((cue) => cue.moment === 'anthem');
  expect(textOf(cues[place + 1])).toContain('the land of the free and the home of the brave');
  expect(cues[place + 1]).toMatchObject({ ownPage: true });
});

test('a prayer is off by default, and on it carries the two cases and the counsel', () => {
  const library = DEFAULT_SCRIPTS.map((one) => (one.moment === 'prayer' ? { ...one, isOn: true } : one));
  expect(cueFor(composed(), 'prayer')).toBeUndefined();
  expect(cueFor(composed(night(), library), 'prayer')).toBeUndefined();
  expect(cueFor(composed(night(settings({ prayer: true }))), 'prayer')).toBeUndefined();
  const prayer = cueFor(composed(night(settings({ prayer: true })), library), 'prayer');
  expect(prayer?.caution).toContain('Santa Fe v. Doe (2000)');
  expect(prayer?.caution).toContain('Kennedy v. Bremerton (2022)');
  expect(prayer?.caution).toContain('counsel');
});

test('the anthem is played or sung, never both', () => {
  expect(textOf(cueFor(composed(), 'anthem'))).toContain('Play the recording');
  const sung = composed(night({ ...settings({ anthem: 'sung' }), people: [{ role: 'singer', name: 'Amparo Reyes', sayAs: null, arrivesText: null }] }));
  expect(textOf(cueFor(sung, 'anthem'))).toContain('sung tonight by Amparo Reyes');
  expect(textOf(cueFor(sung, 'anthem'))).not.toContain('Play the recording');
});

// NFHS basketball point of emphasis 2014-15, announcer responsibilities.
test.each([
  ['nextWindow', 'Hold it: read it in the next time-out or break', null],
  ['deadBall', 'At the next dead ball, four seconds or less', null],
  ['atOnce', 'At the basket', expect.stringContaining('nothing is announced while the clock runs')],
] as const)('a bank-shot mention with %s says when, and warns where the guidance differs', (bankShotMention, when, caution) => {
  const cue = cueFor(composed(night(settings({ bankShotMention }))), 'mention');
  expect(textOf(cue)).toContain(when);
  expect(cue?.caution).toEqual(caution);
  expect(cue).toMatchObject({ isSponsored: true, commitmentId: 'commitment-bank', placementId: null, cueKey: 'game:game-1/mention/commitment-bank' });
});

test('a dead-ball mention of four seconds is read, one of five is held', () => {
  const at = (copyText: string): string => textOf(cueFor(composed(night({ ...settings({ bankShotMention: 'deadBall' }), games: [game({ mentions: [mention('game-1', { copyText })] })] })), 'mention'));
  expect(at('one two three four five six seven eight nine ten go')).not.toContain('Longer than four seconds');
  expect(at('one two three four five six seven eight nine ten eleven')).toContain('Longer than four seconds');
});

// NFHS basketball point of emphasis 2014-15: the number of fouls is not announced.
test('foul calls have names and no counts, unless the department reads them, which shows the caution', () => {
  const calls = (of: Packet): string => of.games[0]?.calls.map((call) => call.say).join(' ') ?? '';
  expect(composed().games[0]?.countsNote).toContain('do not read');
  expect(calls(composed())).not.toContain('quarter');
  const read = composed(night(settings({ foulCountsRead: true })));
  expect(calls(read)).toContain('of the quarter');
  expect(read.games[0]?.countsNote).toContain('is not announced');
});

describe('words that are not approved', () => {
  const cueOf = (extra: Parameters<typeof placement>[4]): Cue | undefined =>
    composed(night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Pinyon Print Works', extra)] })] })).cues.find((cue) => cue.placementId !== null);

  test.each([
    ['approved words are read', {}, 'This break comes to you from Pinyon Print Works', false],
    ['unapproved words give way to the neutral line', { isApproved: false }, 'We thank Pinyon Print Works.', true],
    ['missing words give way to the neutral line', { copyText: null }, 'We thank Pinyon Print Works.', true],
    ['no words at all are not read', { copyText: null, fallbackText: null }, 'do not read', true],
    ['blank words are no words', { copyText: '  ', fallbackText: ' ' }, 'do not read', true],
  ])('%s', (_, extra, words, usesFallback) => {
    expect(textOf(cueOf(extra))).toContain(words);
    expect(cueOf(extra)).toMatchObject({ usesFallback, copyVersion: usesFallback ? null : 1 });
  });
});

test('an emergency stops every sponsor read and carries none', () => {
  const emergencies = composed().cues.filter((cue) => ['injury', 'weather', 'evacuation', 'threat'].includes(cue.moment));
  expect(emergencies).toHaveLength(4);
  for (const cue of emergencies) expect(cue).toMatchObject({ isSponsored: false, caution: expect.stringContaining('All sponsor reads stop at once'), window: null });
  expect(textOf(emergencies[2])).toContain('Exits are behind both baskets');
});

test('the threat wording is the district’s alone, and without one nothing is said', () => {
  expect(cueFor(composed(), 'threat')?.segments.every((segment) => segment.kind === 'direction')).toBe(true);
  const own = composed(night({ venue: { ...night().venue, threatText: 'Words of the district.' } }));
  expect(textOf(cueFor(own, 'threat'))).toBe('Words of the district.');
});

test('the end of the night names the next game away and the next at home', () => {
  const words = textOf(cueFor(composed(), 'postgame'));
  expect(words).toContain('play next on Tuesday, December 8 at 7:00 PM, on the road at Quarry Bend.');
  expect(words).toContain('The next home game is Friday, December 11 at 7:00 PM against Linden Falls.');
  expect(textOf(cueFor(composed(night({ nextGame: null, nextHomeGame: null })), 'postgame'))).not.toContain('play next');
});

test('a script of the association is read in its place and owes nobody anything', () => {
  const packet = composed(night(), [...DEFAULT_SCRIPTS, script('mustCarryPregame', 'The association asks for fair play.')]);
  expect(moments(packet).slice(0, 6)).toEqual(['welcome', 'conduct', 'substances', 'seating', 'mustCarryPregame', 'anthem']);
  expect(cueFor(packet, 'mustCarryPregame')).toMatchObject({ isSponsored: false, placementId: null });
});

test('a Spanish welcome stands beside the English one as a cue of its own', () => {
  const packet = composed(night(), [...DEFAULT_SCRIPTS, script('welcome', 'Bienvenidos a {{ venue }}.', { key: 'welcome-es', language: 'es', place: 2 })]);
  expect(packet.cues.filter((cue) => cue.moment === 'welcome').map((cue) => [cue.language, cue.cueKey])).toEqual([['en', 'game:game-1/welcome'], ['es', 'game:game-1/welcome-es']]);
});

test('a misspelt variable is a line to mend and never a blank in the gym', () => {
  const packet = composed(night(), [script('welcome', 'Welcome to {{ venu }}.')]);
  expect(textOf(cueFor(packet, 'welcome'))).toContain('could not be filled in');
  expect(readinessOf(packet)).toContainEqual(expect.objectContaining({ code: 'script-broken', grade: 'mustFix', sentence: expect.stringContaining('venu') }));
});

describe('a student whose family chose otherwise', () => {
  const secret = 'Ottilie Strandfjord-Nguyễn';
  const withPlayer = (announce: Announce, isStarter: boolean, extra: Partial<NightForPacket> = {}): NightForPacket =>
    night({ games: [game({ home: { ...kestrels, roster: [player('7', secret, { announce, isStarter, sayAs: 'ot-TEEL-yeh strand-FYORD', grade: '9' })] } })], ...extra });

  test.each([
    ['numberOnly', 'Guard, number 7.'],
    ['aMember', 'A member of the team.'],
    ['silence', 'Number 7 is not announced: leave the space and go on'],
  ] as const)('with %s is introduced as “%s” and named nowhere', (announce, said) => {
    const packet = composed(withPlayer(announce, true));
    expect(textOf(cueFor(packet, 'lineUpHome'))).toContain(said);
    expect(JSON.stringify(packet)).not.toContain('Ottilie');
    expect(JSON.stringify(packet)).not.toContain('TEEL');
    expect(cueFor(packet, 'lineUpHome')?.lineUp?.rows[0]).toMatchObject({ name: null, sayAs: null, grade: null, number: '7' });
  });

  test('with the name is named', () => {
    expect(textOf(cueFor(composed(withPlayer('name', true)), 'lineUpHome'))).toContain(secret);
  });

  test.each(['Ottilie Strandfjord-Nguyễn', 'OTTILIE STRANDFJORD-NGUYEN', 'ottilie\u00a0strandfjord-nguyễn', 'Ottilie Strandfjord-Nguyễn'.normalize('NFD')])(
    'is taken out of a script, sponsor’s words and the list of people as %s', (spelling) => {
      const packet = composePacket(
        { ...withPlayer('silence', false), people: [{ role: 'honouree', name: spelling, sayAs: null, arrivesText: null }] },
        [...DEFAULT_SCRIPTS, script('mustCarryPregame', `A hand for ${spelling}!`)], render,
      );
      expect(JSON.stringify(packet).normalize('NFC').toLowerCase()).not.toContain('ottilie');
      expect(textOf(cueFor(packet, 'mustCarryPregame'))).toBe('A hand for a member of the team!');
      expect(readinessOf(packet)).toContainEqual(expect.objectContaining({ code: 'name-not-to-be-used', grade: 'mustFix' }));
    });

  test('a longer name that only contains hers is left alone', () => {
    const packet = composed({ ...withPlayer('silence', false), people: [{ role: 'singer', name: `${secret}son`, sayAs: null, arrivesText: null }] });
    expect(packet.people[0]?.name).toBe(`${secret}son`);
  });

  test('is named in no packet of any night', () => {
    fc.assert(fc.property(
      fc.array(fc.record({ announce: fc.constantFrom<Announce>('numberOnly', 'aMember', 'silence'), isStarter: fc.boolean() }), { maxLength: 12 }),
      fc.boolean(), fc.boolean(),
      (choices, visitors, foulCountsRead) => {
        const roster = choices.map((choice, place) => player(String(place), `Zephyrine Quill ${'abcdefghijkl'[place]}`, { ...choice, sayAs: 'zeh-fee-REEN kwill' }));
        const teams = visitors ? { visitors: { ...herons, roster } } : { home: { ...kestrels, roster } };
        const packet = composed(night({ games: [game(teams)], ...settings({ foulCountsRead }) }));
        expect(JSON.stringify(packet)).not.toMatch(/Zephyrine|zeh-fee/i);
      },
    ), { numRuns: 50 });
  });
});

describe('before you print', () => {
  const codes = (of: NightForPacket): string[] => readinessOf(composed(of)).map((line) => `${line.grade} ${line.code}`);

  test('a night with everything in order has nothing to mend', () => {
    const packet = composed(night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Pinyon Print Works')] })] }));
    expect(readinessOf(packet)).toEqual([]);
    expect(isReady(packet)).toBe(true);
  });

  test.each<[string, NightForPacket, string]>([
    ['no roster', night({ games: [game({ visitors: { ...herons, roster: [] } })] }), 'mustFix no-roster'],
    ['no starters', night({ games: [game({ visitors: { ...herons, roster: [player('4', 'Britta Sandoval')] } })] }), 'worthKnowing no-starters'],
    ['one number twice', night({ games: [game({ visitors: { ...herons, roster: [player('4', 'Britta Sandoval'), player('4', 'Fern Gallagher')] } })] }), 'mustFix number-clash'],
    ['a name nobody knows how to say', night({ games: [game({ visitors: { ...herons, roster: [player('4', 'Siobhán Vane')] } })] }), 'worthKnowing name-without-say-as'],
    ['no words and no neutral line', night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Blue Lantern Tire', { copyText: null, fallbackText: null })] })] }), 'mustFix no-copy'],
    ['no words but a neutral line', night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Blue Lantern Tire', { copyText: null })] })] }), 'worthKnowing no-copy'],
    ['unapproved words', night(), 'worthKnowing copy-not-approved'],
    ['unapproved words and no neutral line', night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Blue Lantern Tire', { isApproved: false, fallbackText: null })] })] }), 'mustFix copy-not-approved'],
    ['no evacuation text', night({ venue: { ...night().venue, evacuationText: null } }), 'mustFix no-emergency-text'],
    ['nobody at the microphone', night({ people: [] }), 'mustFix nobody-announcing'],
    ['no next game', night({ nextGame: null }), 'worthKnowing no-next-game'],
    ['no sponsor', night({ games: [game({ placements: [], mentions: [] })] }), 'worthKnowing no-sponsor-reads'],
    ['no game', night({ games: [] }), 'mustFix no-game'],
  ])('%s is found', (_, of, wanted) => {
    expect(codes(of)).toContain(wanted);
  });

  test('0 and 00 are two numbers', () => {
    const roster = [player('0', 'Britta Sandoval', { isStarter: true }), player('00', 'Fern Gallagher')];
    expect(codes(night({ games: [game({ visitors: { ...herons, roster } })] }))).not.toContain('mustFix number-clash');
  });

  test('what must be mended stands before what is worth knowing', () => {
    const grades = readinessOf(composed(night({ people: [], nextGame: null, games: [game({ visitors: { ...herons, roster: [] } })] }))).map((line) => line.grade);
    expect(grades).toEqual([...grades].sort());
  });
});

test('the table card lists every cue of the game once, sponsor reads with a box each', () => {
  const packet = composed();
  const rows = packet.card.flatMap((section) => section.rows);
  const onCard = packet.cues.filter((cue) => cue.gameId !== null && cue.window !== null);
  expect(rows.map((row) => row.cueKey).sort()).toEqual(onCard.map((cue) => cue.cueKey).sort());
  expect(rows.filter((row) => row.isSponsored).every((row) => row.boxes >= 1)).toBe(true);
  expect(packet.sponsoredSeconds).toBe(packet.cues.filter((cue) => cue.isSponsored).reduce((sum, cue) => sum + cue.seconds, 0));
});

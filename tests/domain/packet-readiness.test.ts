import { describe, expect, test } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import type {
  GameForPacket, HonoursForPacket, MentionForPacket, NightForPacket, PacketSettings, PersonForPacket, PlacementForPacket, PlayerForPacket, SponsorFacts,
} from '../../server/domain/packet/night-for-packet.ts';
import type { Packet } from '../../server/domain/packet/packet.ts';
import { addressOf } from '../../server/domain/packet/readiness-line.ts';
import { isReady } from '../../server/domain/packet/readiness.ts';
import type { Script } from '../../server/domain/packet/script.ts';
import { syllablesByRule } from '../../server/domain/packet/syllables.ts';
import type { Pronouncing } from '../../server/domain/packet/syllables.ts';
import { game, herons, kestrels, mention, night, placement, player, render, readinessOf } from './packet-night.ts';

const FACTS: SponsorFacts = {
  sponsorId: 'sponsor-1', contractId: 'contract-1', copyId: 'copy-1', waitingVersion: null, categoryId: 'category-print', categoryName: 'Printing',
  isBlocked: false, isFood: false, exceptionApprovedBy: null, readKindId: 'kind-1', sponsorsPerGame: 2, isSigned: true,
};
const facts = (extra: Partial<SponsorFacts> = {}): { facts: SponsorFacts } => ({ facts: { ...FACTS, ...extra } });

const read = (extra: Partial<PlacementForPacket> = {}, name = 'Pinyon Print Works', place = 1): PlacementForPacket => placement('game-1', 'timeout', place, name, { ...facts(), ...extra });
const five = (extra: readonly PlayerForPacket[] = []): readonly PlayerForPacket[] => [...['4', '11', '22', '33', '5'].map((number) => player(number, 'Britta Sandoval', { isStarter: true })), ...extra];
const people = (...others: readonly string[]): readonly PersonForPacket[] => ['announcer', 'spotter', ...others].map((role) => ({ role, name: 'Junia Pike', sayAs: null, arrivesText: null }));

/** A night with nothing to mend; each row of the tables takes one thing away. */
const whole = (of: Partial<GameForPacket> = {}, extra: Partial<NightForPacket> = {}, settings: Partial<PacketSettings> = {}): NightForPacket =>
  night({ people: people(), games: [game({ placements: [read()], mentions: [], ...of })], settings: { ...DEFAULT_PACKET_SETTINGS, ...settings }, ...extra });
const visitors = (extra: Partial<GameForPacket['visitors']>): Partial<GameForPacket> => ({ visitors: { ...herons, ...extra } });
const script = (moment: Script['moment'], text: string): Script => ({ key: moment, scriptId: `script-${moment}`, moment, title: moment, language: 'en', text, isOn: true, place: 1 });
const plus = (...scripts: readonly Script[]): readonly Script[] => [...DEFAULT_SCRIPTS, ...scripts];
const seniors = (name: string, sayAs: string | null): HonoursForPacket => ({
  honoursListId: 'list-1', title: 'Senior night', kind: 'seniors', window: 'halftime', secondsEach: 20, openingText: 'Thank you.',
  students: [{ playerId: 'p', name, sayAs, announce: 'name', escorts: null, line: null }],
});
const venue = (extra: Partial<NightForPacket['venue']>): Partial<NightForPacket> => ({ venue: { ...night().venue, venueId: 'venue-1', ...extra } });

const composed = (of: NightForPacket, library: readonly Script[] = DEFAULT_SCRIPTS, pronouncing?: Pronouncing): Packet => composePacket(of, library, render, pronouncing);
const codesOf = (of: NightForPacket, library?: readonly Script[]): string[] => readinessOf(composed(of, library)).map((line) => `${line.grade} ${line.code}`);

test('a night with everything in order has nothing to mend and can be issued', () => {
  const packet = composed(whole());
  expect(readinessOf(packet)).toEqual([]);
  expect(isReady(packet)).toBe(true);
});

type Row = [code: string, passes: NightForPacket, fails: NightForPacket, where: string];
const theNight = (tab: string): string => `/nights/night-1/show?tab=${tab}`;

const ROWS: readonly Row[] = [
  ['mustFix no-game', whole(), night({ people: people(), games: [] }), '/nights/night-1/show'],
  ['mustFix nobody-announcing', whole(), whole({}, { people: people().slice(1) }), theNight('people')],
  ['worthKnowing no-spotter', whole(), whole({}, { people: people().slice(0, 1) }), theNight('people')],
  ['worthKnowing no-singer', whole({}, { people: people('singer') }, { anthem: 'sung' }), whole({}, {}, { anthem: 'sung' }), theNight('people')],
  ['worthKnowing no-colour-guard', whole({}, { people: people('colourGuard') }, { flag: 'colourGuard' }), whole({}, {}, { flag: 'colourGuard' }), theNight('people')],
  ['worthKnowing no-officials', whole({}, { people: people('official') }, { officialsIntroduced: true }), whole({}, {}, { officialsIntroduced: true }), theNight('people')],
  ['worthKnowing no-presenter', whole({ placements: [read()] }), whole({ placements: [read({ presents: 'game ball' })] }), theNight('people')],
  ['mustFix no-emergency-text', whole({}, venue({})), whole({}, venue({ exitsText: null })), '/venues/venue-1'],
  ['worthKnowing no-defibrillator-place', whole({}, venue({})), whole({}, venue({ defibrillatorPlace: null })), '/venues/venue-1'],
  ['worthKnowing no-next-game', whole(), whole({}, { nextGame: null }), '/games'],
  ['mustFix game-moved', whole({ movedSinceIssue: false }, { issuedNumber: 2 }), whole({ movedSinceIssue: true }, { issuedNumber: 2 }), theNight('packet')],
  // NFHS Basketball Rule 5-5-1: ten minutes, at most fifteen when the visitors are told before the start.
  ['worthKnowing halftime-long', whole({}, {}, { halftimeSeconds: 600 }), whole({}, {}, { halftimeSeconds: 601 }), '/nights/night-1'],
  ['mustFix halftime-too-long', whole({}, {}, { halftimeSeconds: 900 }), whole({}, {}, { halftimeSeconds: 960 }), '/nights/night-1'],

  ['mustFix no-opponent', whole(), whole(visitors({ teamId: 'visitors-to-be-announced', roster: [] })), '/games/game-1'],
  ['mustFix no-roster', whole(visitors({ roster: five() })), whole(visitors({ roster: [] })), '/teams/team-herons/show'],
  ['worthKnowing no-starters', whole(visitors({ roster: five() })), whole(visitors({ roster: [player('4', 'Britta Sandoval')] })), '/teams/team-herons/show'],
  ['worthKnowing line-up-uneven', whole(visitors({ roster: five() })), whole(visitors({ roster: five().slice(0, 4) })), '/teams/team-herons/show'],
  ['worthKnowing no-head-coach', whole(), whole(visitors({ headCoach: null })), '/teams/team-herons'],
  ['mustFix number-clash', whole(visitors({ roster: five([player('44', 'Mette Lund')]) })), whole(visitors({ roster: five([player('4', 'Mette Lund')]) })), '/teams/team-herons/show'],
  // NFHS Basketball Rule 3-4-3: no digit above 5.
  ['worthKnowing number-illegal', whole(visitors({ roster: five([player('55', 'Mette Lund')]) })), whole(visitors({ roster: five([player('56', 'Mette Lund')]) })), '/teams/team-herons/show'],
  ['worthKnowing numbers-0-and-00', whole(visitors({ roster: five([player('0', 'Mette Lund')]) })), whole(visitors({ roster: five([player('0', 'Mette Lund'), player('00', 'Fern Gallagher')]) })), '/teams/team-herons/show'],

  ['worthKnowing name-without-say-as', whole(visitors({ headCoach: 'Siobhán Vane', headCoachSayAs: 'shi-VAWN vayn' })), whole(visitors({ headCoach: 'Siobhán Vane', headCoachSayAs: null })), '/teams/team-herons/show'],
  ['worthKnowing name-without-say-as', whole({}, { honours: [seniors('Łukasz Wren', 'WOO-kash ren')] }), whole({}, { honours: [seniors('Łukasz Wren', null)] }), theNight('honours')],
  ['worthKnowing name-right-to-left', whole({}, { people: [...people(), { role: 'other', name: 'Nguyễn Thị Ngọc', sayAs: null, arrivesText: null }] }), whole({}, { people: [...people(), { role: 'other', name: 'נועה', sayAs: null, arrivesText: null }] }), theNight('people')],
  ['worthKnowing name-with-emoji', whole(visitors({ roster: five([player('44', "Mette O'Lund-Ørsted")]) })), whole(visitors({ roster: five([player('44', 'Mette 🏀 Lund')]) })), '/teams/team-herons/show'],
  ['worthKnowing name-glyph-missing', whole(visitors({ roster: five([player('44', 'Đặng Wójcik', { sayAs: 'dang VOY-chik' })]) })), whole(visitors({ roster: five([player('44', '王小明', { sayAs: 'wang' })]) })), '/teams/team-herons/show'],
  ['worthKnowing name-long', whole(visitors({ roster: five([player('44', 'M'.repeat(40))]) })), whole(visitors({ roster: five([player('44', 'M'.repeat(41))]) })), '/teams/team-herons/show'],

  ['worthKnowing no-copy', whole(), whole({ placements: [read({ copyText: null })] }), '/copies/copy-1/show'],
  ['mustFix no-copy', whole({ placements: [read({ copyText: null })] }), whole({ placements: [read({ copyText: null, fallbackText: null, ...facts({ copyId: null }) })] }), '/copies'],
  ['worthKnowing copy-not-approved', whole(), whole({ placements: [read({ isApproved: false })] }), '/copies/copy-1/show'],
  ['mustFix copy-not-approved', whole({ placements: [read({ isApproved: false })] }), whole({ placements: [read({ isApproved: false, fallbackText: null })] }), '/copies/copy-1/show'],
  ['worthKnowing copy-changed', whole({ placements: [read(facts({ waitingVersion: null }))] }), whole({ placements: [read(facts({ waitingVersion: 2 }))] }), '/copies/copy-1/show'],
  ['mustFix category-blocked', whole({ placements: [read(facts({ isBlocked: true, exceptionApprovedBy: 'Ottilie Brandvold' }))] }), whole({ placements: [read(facts({ isBlocked: true }))] }), '/contracts/contract-1/show'],
  ['mustFix contract-not-signed', whole(), whole({ placements: [read(facts({ isSigned: false }))] }), '/contracts/contract-1/show'],
  // 7 CFR 210.11(a)(5): the school day ends thirty minutes after the last bell.
  ['worthKnowing food-in-school-day', whole({ startsClock: '15:31', placements: [read(facts({ isFood: true }))] }), whole({ startsClock: '15:30', placements: [read(facts({ isFood: true }))] }), '/sponsors/sponsor-1/show'],
  [
    'mustFix competitors-in-window',
    whole({ placements: [read(), placement('game-1', 'halftime', 1, 'Blue Lantern Tire', facts())] }),
    whole({ placements: [read(), placement('game-1', 'timeout', 2, 'Blue Lantern Tire', { ...facts(), windowKey: 'timeOut1' })] }), theNight('placements'),
  ],
  [
    'mustFix exclusive-held-twice',
    whole({ placements: [read(facts({ sponsorsPerGame: 1 })), read({ ...facts({ sponsorsPerGame: 1 }), cueKey: 'x', windowKey: 'timeOut2' }, 'Pinyon Print Works', 2)] }),
    whole({ placements: [read(facts({ sponsorsPerGame: 1 }))], mentions: [mention('game-1', facts({ sponsorsPerGame: 1, categoryId: 'bank' })) as MentionForPacket] }), theNight('placements'),
  ],
  ['mustFix window-not-ours', whole({ owners: { windowsOwnedBy: 'us', windowOwners: { halftime: 'conference' } } }), whole({ owners: { windowsOwnedBy: 'us', windowOwners: { timeOut: 'conference' } } }), theNight('placements')],
  ['mustFix window-not-ours', whole({ owners: { windowsOwnedBy: 'association', windowOwners: { timeOut: 'us' } } }), whole({ owners: { windowsOwnedBy: 'association', windowOwners: {} } }), theNight('placements')],
  ['worthKnowing no-sponsor-reads', whole(), whole({ placements: [] }), theNight('placements')],
];

test.each(ROWS)('%s', (code, passes, fails, where) => {
  expect(codesOf(passes)).not.toContain(code);
  expect(codesOf(fails)).toContain(code);
  const line = readinessOf(composed(fails)).find((one) => `${one.grade} ${one.code}` === code)!;
  expect(addressOf(line)).toBe(where);
  expect(line.sentence).toMatch(/^.{20,}$/s);
});

describe('scripts', () => {
  const lineOf = (text: string, of: NightForPacket = whole()) => readinessOf(composed(of, plus(script('recognition', text)))).find(({ resource }) => resource === 'scripts');

  test.each([
    ['a word that stands for somebody', 'A hand for {{ singer }}.', whole({}, { people: people('singer', 'honouree') }), null],
    ['one that stands for nobody tonight', 'A hand for {{ singer }}.', whole({}, { people: people('honouree') }), 'script-variable-empty'],
    ['one that asks first', 'A hand{% if singer %} for {{ singer }}{% endif %}.', whole({}, { people: people('honouree') }), null],
    ['one with something in its place', 'A hand for {{ singer | default: "our singer" }}.', whole({}, { people: people('honouree') }), null],
    ['a misspelt one', 'A hand for {{ singr }}.', whole({}, { people: people('honouree') }), 'script-broken'],
    ['a part of no game', 'Next: {{ nextGame.dayText }}.', whole({}, { people: people('honouree'), nextGame: null }), 'script-broken'],
  ])('%s', (_, text, of, code) => {
    expect(lineOf(text, of)?.code ?? null).toBe(code);
    if (code) expect(addressOf(lineOf(text, of)!)).toBe('/scripts/script-recognition/show');
  });

  test('a hole in a script is named', () => {
    expect(lineOf('A hand for {{ singer }}.')?.sentence).toBe('The script “recognition” says “{{ singer }}”, and tonight nothing stands there.');
  });

  test('somebody is recognized, and nobody is named', () => {
    const library = plus(script('recognition', 'A hand, please.'));
    expect(codesOf(whole({}, { people: people('honouree') }), library)).not.toContain('worthKnowing no-honouree');
    expect(codesOf(whole(), library)).toContain('worthKnowing no-honouree');
  });
});

describe('a student whose family chose otherwise', () => {
  const secret = 'Ottilie Strandfjord';
  const hidden = { home: { ...kestrels, roster: [player('7', secret, { announce: 'silence' as const })] } };
  const lineOf = (of: NightForPacket, library?: readonly Script[]) => readinessOf(composed(of, library)).find(({ code }) => code === 'name-not-to-be-used');

  test.each([
    ['in a script', whole(hidden), plus(script('club', `Thanks to ${secret}.`)), '/scripts/script-club/show'],
    ['in a sponsor’s words', whole({ ...hidden, placements: [read({ copyText: `${secret} shops here.` })] }), DEFAULT_SCRIPTS, '/copies/copy-1/show'],
    ['in an honours list’s opening', whole(hidden, { honours: [{ ...seniors('Tamsin Orlebar', null), openingText: `${secret} speaks.` }] }), DEFAULT_SCRIPTS, theNight('honours')],
    ['among the people of the night', whole(hidden, { people: [...people(), { role: 'other', name: secret, sayAs: null, arrivesText: null }] }), DEFAULT_SCRIPTS, theNight('people')],
  ])('%s is found, and the line leads there without the name', (_, of, library, where) => {
    const line = lineOf(of, library);
    expect(line?.grade).toBe('mustFix');
    expect(addressOf(line!)).toBe(where);
    expect(line?.sentence).not.toContain('Ottilie');
  });

  test('is no line where nothing names them', () => {
    expect(lineOf(whole(hidden))).toBeUndefined();
  });
});

describe('names and the dictionary', () => {
  const words = new Map([['britta', 2], ['sandoval', 3], ['arkwright', 2], ['ngozi', 3]]);
  const dictionary: Pronouncing = { known: (word) => words.get(word.toLowerCase()) ?? null, guess: syllablesByRule };
  const unsaid = (extra: Partial<GameForPacket['visitors']>): string[] =>
    readinessOf(composed(whole(visitors(extra)), DEFAULT_SCRIPTS, dictionary)).filter(({ code, id }) => code === 'name-without-say-as' && id === 'team-herons').map(({ sentence }) => sentence);

  test('a name it knows needs no respelling, one it does not know does', () => {
    expect(unsaid({ roster: five(), headCoach: 'Britta Arkwright' })).toEqual([]);
    expect(unsaid({ roster: five(), headCoach: 'Britta Quiverdale' })[0]).toContain('Britta Quiverdale');
    expect(unsaid({ roster: five(), headCoach: 'Britta Quiverdale', headCoachSayAs: 'KWIV-er-dayl' })).toEqual([]);
  });

  test('many of them are one line', () => {
    const roster = Array.from({ length: 10 }, (_, place) => player(String(place), `Quiverdale ${place}`, { isStarter: place < 5 }));
    expect(unsaid({ roster, headCoach: null })[0]).toMatch(/and 4 more\.$/);
  });
});

test('what must be mended stands first, and one sponsor with three reads is one line', () => {
  const reads = [1, 2, 3].map((place) => placement('game-1', 'timeout', place, 'Blue Lantern Tire', { ...facts({ isSigned: false }), windowKey: `timeOut${place}` }));
  const lines = readinessOf(composed(whole({ placements: reads }, { people: [], nextGame: null })));
  expect(lines.filter(({ code }) => code === 'contract-not-signed')).toHaveLength(1);
  expect(lines.map(({ grade }) => grade)).toEqual(lines.map(({ grade }) => grade).sort());
});

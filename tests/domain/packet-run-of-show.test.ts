import { describe, expect, test } from 'vitest';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import type { HonouredStudent, HonoursForPacket, NightForPacket, PacketSettings } from '../../server/domain/packet/night-for-packet.ts';
import type { Cue, Packet } from '../../server/domain/packet/packet.ts';
import { countedBack, pregameSeconds } from '../../server/domain/packet/pregame-clock.ts';
import { ANTHEM_VARIANTS } from '../../server/domain/packet/script.ts';
import type { Script } from '../../server/domain/packet/script.ts';
import { game, kestrels, longNight, mention, night, placement, player, render } from './packet-night.ts';

const composed = (of: NightForPacket = night(), library: readonly Script[] = DEFAULT_SCRIPTS): Packet => composePacket(of, library, render);
const settings = (extra: Partial<PacketSettings>): Partial<NightForPacket> => ({ settings: { ...DEFAULT_PACKET_SETTINGS, ...extra } });
const cueFor = (packet: Packet, moment: string): Cue | undefined => packet.cues.find((cue) => cue.moment === moment);
const textOf = (cue: Cue | undefined): string => (cue?.segments ?? []).map((segment) => segment.text).join('\n');
const script = (moment: Script['moment'], text: string, extra: Partial<Script> = {}): Script => ({ key: moment, moment, title: moment, language: 'en', text, isOn: true, place: 1, ...extra });
const person = (role: string, name: string, arrivesText: string | null = null, note: string | null = null) => ({ role, name, sayAs: null, arrivesText, note });

describe('the clock before a game', () => {
  type Counted = Parameters<typeof countedBack>[0][number];
  const cue = (moment: Counted['moment'], seconds: number, extra: Partial<Counted> = {}): Counted => ({ cueKey: moment, gameId: 'game-1', window: 'pregame', moment, seconds, ...extra });
  const atSeven = [game({ startsClock: '19:00' })];

  // Usual times before a game: common practice, no source.
  test('a game at 7:00 PM has its anthem at 6:38 PM and its line-ups from 6:52 PM', () => {
    const clock = countedBack([cue('welcome', 30), cue('anthem', 110), cue('lineUpVisitors', 60), cue('lineUpHome', 70)], atSeven);
    expect([...clock].reverse()).toEqual([['welcome', '6:35 PM'], ['anthem', '6:38 PM'], ['lineUpVisitors', '6:52 PM'], ['lineUpHome', '6:56 PM']]);
  });

  test.each([
    ['line-ups of six minutes still begin eight minutes before', 180, '6:52 PM'],
    ['of one second more they begin a minute earlier', 181, '6:51 PM'],
  ])('%s', (_, each, begins) => {
    expect(countedBack([cue('lineUpVisitors', each), cue('lineUpHome', 180)], atSeven).get('lineUpVisitors')).toBe(begins);
  });

  test('a long list of seniors after the anthem does not move it, and one too long for the time moves it forward', () => {
    const withSeniors = (seconds: number) => countedBack([cue('anthem', 110), cue('honours', seconds), cue('lineUpVisitors', 60), cue('lineUpHome', 60)], atSeven);
    expect(withSeniors(14 * 20).get('anthem')).toBe('6:38 PM');
    expect(withSeniors(22 * 20 + 300).get('anthem')).toBe('6:37 PM');
  });

  test('a floating start has no clock to count back from, and reads during the game have none either', () => {
    expect(countedBack([cue('anthem', 110)], [game({ startsClock: null })]).size).toBe(0);
    expect(countedBack([cue('anthem', 110)], [game()]).size).toBe(0);
    expect(countedBack([cue('halftime', 10, { window: 'halftime' })], atSeven).size).toBe(0);
  });

  test('a second game by the clock only counts its own seconds back, for the first is still being played', () => {
    const clock = countedBack([cue('anthem', 110, { gameId: 'game-2' })], [game({ startsClock: '17:30' }), game({ gameId: 'game-2', startsClock: '19:00' })]);
    expect(clock.get('anthem')).toBe('6:56 PM');
  });

  test('there are 23 minutes to speak in before the first game, and what lies between two games before the second', () => {
    expect([pregameSeconds({}, 0), pregameSeconds({ startsAfterMinutes: 20 }, 1), pregameSeconds({ startsAfterMinutes: 0 }, 1), pregameSeconds({}, 1)]).toEqual([1380, 1080, 0, null]);
  });

  test('the packet carries it', () => {
    const { cues, runOfShow } = composed(night({ games: [game({ startsClock: '19:00' })] }));
    expect(cues.find(({ moment }) => moment === 'anthem')?.startsText).toBe('6:38 PM');
    expect(runOfShow.find(({ title }) => title.startsWith('Anthem'))?.startsText).toBe('6:38 PM');
    expect(cues.filter(({ window }) => window !== 'pregame').every(({ startsText }) => startsText === null)).toBe(true);
  });
});

describe('codes', () => {
  test('stand for the window and count on in it, and no two are the same', () => {
    const { cues } = composed();
    const codes = cues.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    expect(cues.filter(({ moment }) => ['welcome', 'mention', 'halftime', 'postgame', 'vehicleNotice'].includes(moment)).map(({ code }) => code)).toEqual(['P1', 'M1', 'H1', 'F2', 'N1']);
    expect(cues.filter(({ sponsorName, window }) => sponsorName && window === 'timeout').map(({ code }) => code)).toEqual(['T1', 'T2']);
    expect(cues.filter(({ code }) => code.startsWith('E')).every(({ window, isSponsored }) => window === null && !isSponsored)).toBe(true);
  });

  test('of a second and third game begin with its number, and a night’s notices with none', () => {
    const packet = composed(longNight());
    const codes = packet.cues.map(({ code }) => code);
    expect(new Set(codes).size).toBe(codes.length);
    for (const [place, prefix] of [[0, ''], [1, '2-'], [2, '3-']] as const) {
      expect(packet.cues.filter((cue) => cue.gameId === `game-${place}` && cue.window === 'timeout').map(({ code }) => code)).toEqual([1, 2, 3].map((number) => `${prefix}T${number}`));
    }
    expect(packet.cues.filter((cue) => cue.gameId === null).every(({ code }) => /^[NE]\d+$/.test(code))).toBe(true);
  });

  test('leave the key the log counts by alone', () => {
    const keys = (extra: readonly string[]) => composed(night({ games: [game({ placements: [...extra.map((name, place) => placement('game-1', 'timeout', place + 1, name)), placement('game-1', 'halftime', 1, 'Snowmelt Creamery')] })] })).cues.find(({ sponsorName }) => sponsorName === 'Snowmelt Creamery');
    expect([keys([])?.cueKey, keys(['Pinyon Print Works'])?.cueKey]).toEqual(['game:game-1/halftime/1', 'game:game-1/halftime/1']);
    expect(composed().cues.find(({ moment }) => moment === 'mention')?.cueKey).toBe(mention('game-1').cueKey);
  });

  test('are the ones on the card and in the run of show', () => {
    const packet = composed(longNight());
    const of = new Map(packet.cues.map(({ number, code }) => [number, code]));
    for (const row of [...packet.runOfShow, ...packet.card.flatMap(({ rows }) => rows)]) expect(row.code).toBe(of.get(row.number));
    expect(packet.runOfShow.map(({ number }) => number)).toEqual(packet.cues.filter(({ windowKey }) => windowKey !== null).map(({ number }) => number));
  });
});

describe('the anthem', () => {
  const library = ANTHEM_VARIANTS.map((variant, place) => script('anthem', `Form ${variant}.`, { key: `anthem-${variant}`, title: variant, variant, place: place + 1 }));

  test.each([
    ['sung', 'colourGuard', 'sungColourGuard'], ['sung', 'inPlace', 'sungFlagInPlace'],
    ['played', 'colourGuard', 'playedColourGuard'], ['played', 'inPlace', 'playedFlagInPlace'],
  ] as const)('%s with the flag %s is one form of four', (anthem, flag, title) => {
    const said = composed(night(settings({ anthem, flag })), library).cues.filter((cue) => cue.moment === 'anthem');
    expect(said.map((cue) => cue.title)).toEqual([title, 'The anthem, first verse']);
  });

  test('a library without tonight’s form gives what it has of it rather than nothing', () => {
    const old = [script('anthem', 'Sung.', { key: 'anthem-sung', title: 'sung' }), script('anthem', 'Played.', { key: 'anthem-played', title: 'played' })];
    expect(cueFor(composed(night(settings({ anthem: 'sung', flag: 'colourGuard' })), old), 'anthem')?.title).toBe('sung');
    expect(cueFor(composed(night(settings({ anthem: 'sung', flag: 'colourGuard' })), library.filter(({ variant }) => variant !== 'sungColourGuard')), 'anthem')?.title).toBe('sungFlagInPlace');
  });
});

describe('who must be where', () => {
  const people = [person('singer', 'Amparo Reyes', '6:20 PM', 'Waits at the west doors.'), person('colourGuard', 'Cadets of the ridge'), person('presenter', 'Junia Pike', '6:40 PM')];

  test('the anthem asks for color guard and singer, with where they wait and when they come', () => {
    const packet = composed(night({ ...settings({ anthem: 'sung', flag: 'colourGuard' }), people }));
    expect(cueFor(packet, 'anthem')?.whoText).toBe('Color guard: Cadets of the ridge. Singer: Amparo Reyes (Waits at the west doors), here by 6:20 PM');
    expect(cueFor(packet, 'sponsorPresentation')?.whoText).toBe('Presenter: Junia Pike, here by 6:40 PM');
    expect(packet.runOfShow.filter(({ whoText }) => whoText !== null)).toHaveLength(2);
  });

  test('somebody who is missing is said to be missing, and a recording needs nobody', () => {
    expect(cueFor(composed(night({ ...settings({ anthem: 'sung' }), people: [] })), 'anthem')?.whoText).toBe('Singer: nobody is named yet');
    expect(cueFor(composed(), 'anthem')?.whoText).toBeNull();
  });
});

test('the officials are introduced before the line-ups, and only where the department does so', () => {
  const people = [person('official', 'Ivo Brandt'), person('official', 'Noor Castellan'), person('official', 'Petra Vance')];
  const of = (officialsIntroduced: boolean) => composed(night({ ...settings({ officialsIntroduced }), people }));
  expect(cueFor(of(false), 'officials')).toBeUndefined();
  const cues = of(true).cues.map(({ moment }) => moment);
  expect(cues.indexOf('officials')).toBe(cues.indexOf('lineUpVisitors') - 1);
  expect(textOf(cueFor(of(true), 'officials'))).toContain('Ivo Brandt, Noor Castellan and Petra Vance');
});

describe('two languages', () => {
  const library = [script('welcome', 'Welcome to {{ venue }}, everyone.', { secondLanguage: 'es', secondText: 'Bienvenidos a {{ venue }}. [[pause 3]]' })];

  test('of a script are one reading, and their seconds add up', () => {
    const welcome = cueFor(composed(night(), library), 'welcome')!;
    expect(welcome.second).toMatchObject({ language: 'es', segments: [{ kind: 'spoken', text: 'Bienvenidos a Alder Fieldhouse.' }, { kind: 'direction' }] });
    const first = welcome.segments.reduce((sum, { seconds }) => sum + seconds, 0);
    expect(welcome.seconds).toBe(first + welcome.second!.seconds);
    expect(composed(night(), library).cues.filter(({ moment }) => moment === 'welcome')).toHaveLength(1);
  });

  test('of a sponsor’s words are one read, and the neutral line has no second', () => {
    const spanish = { copySecondLanguage: 'es', copySecondText: 'Gracias a Pinyon Print Works.' } as const;
    const read = (extra: object): Cue | undefined => composed(night({ games: [game({ placements: [placement('game-1', 'timeout', 1, 'Pinyon Print Works', { ...spanish, ...extra })] })] })).cues.find((cue) => cue.placementId !== null);
    expect(read({})?.second?.segments[0]?.text).toBe('Gracias a Pinyon Print Works.');
    expect(read({ isApproved: false })).toMatchObject({ second: null, usesFallback: true });
  });
});

describe('honours', () => {
  const student = (name: string, extra: Partial<HonouredStudent> = {}): HonouredStudent => ({ playerId: name, name, sayAs: null, announce: 'name', escorts: null, line: null, ...extra });
  const list = (students: readonly HonouredStudent[], extra: Partial<HonoursForPacket> = {}): HonoursForPacket => ({
    honoursListId: 'list-1', title: 'Senior night', kind: 'seniors', window: 'pregame', secondsEach: 20, openingText: 'Tonight we thank our seniors.', students, ...extra,
  });
  const fourteen = Array.from({ length: 14 }, (_, place) => student(`Marisol Quintanar the ${place + 1}th`));
  const of = (honours: HonoursForPacket) => composed(night({ honours: [honours] })).cues.filter(({ moment }) => moment === 'honours');

  test('fourteen seniors at twenty seconds take 280 seconds and the opening, on sheets of six', () => {
    const cues = of(list(fourteen));
    expect(cues.map(({ title, segments }) => [title, segments.length])).toEqual([['Senior night (1 of 3)', 7], ['Senior night (2 of 3)', 6], ['Senior night (3 of 3)', 2]]);
    expect(cues.reduce((sum, { seconds }) => sum + seconds, 0)).toBe(280 + cues[0]!.segments[0]!.seconds);
    expect(cues.map(({ cueKey }) => cueKey)).toEqual(['night/honours/list-1', 'night/honours/list-1/2', 'night/honours/list-1/3']);
  });

  test.each([['pregame', 'P'], ['halftime', 'H'], ['postgame', 'F']] as const)('in the %s stand there', (window, letter) => {
    const [cue] = of(list([student('Tamsin Orlebar')], { window }));
    expect([cue?.window, cue?.code.charAt(0)]).toEqual([window, letter]);
  });

  test('a senior is said with escorts and line, and the respelling stands beside the name', () => {
    const [cue] = of(list([student('Siobhán Vane', { sayAs: 'shi-VAWN vayn', escorts: 'her parents Aoife and Len Vane', line: 'She will study forestry.' })]));
    expect(cue?.segments[1]).toMatchObject({ text: 'Siobhán Vane, with her parents Aoife and Len Vane. She will study forestry.', sayAs: 'shi-VAWN vayn' });
  });

  test.each([['numberOnly', 'A member of the team.'], ['aMember', 'A member of the team.'], ['silence', 'One student of this list is not announced']] as const)(
    'a senior whose family chose %s is named nowhere, nor is who walks beside them', (announce, said) => {
      const packet = composed(night({ honours: [list([student('Ottilie Strandfjord', { announce, escorts: 'Agnes Strandfjord', line: 'Ottilie sings.' })])] }));
      expect(textOf(cueFor(packet, 'honours'))).toContain(said);
      expect(JSON.stringify(packet)).not.toMatch(/Strandfjord|Ottilie/);
    });

  test('an honoured student who is on no roster is still taken out of a script', () => {
    const packet = composed(night({ honours: [list([student('Zephyrine Quillon', { announce: 'silence' })])] }), [...DEFAULT_SCRIPTS, script('recognition', 'A hand for Zephyrine Quillon!')]);
    expect(JSON.stringify(packet)).not.toContain('Zephyrine');
  });

  test('a list nobody stands on yet is only its opening, and without one nothing', () => {
    expect(of(list([]))).toHaveLength(1);
    expect(composed(night({ honours: [list([], { openingText: '' })] })).cues.filter(({ moment }) => moment === 'honours')).toHaveLength(0);
  });
});

describe('sports without a halftime', () => {
  const of = (sport: string): Packet => composed(night({ games: [game({ sport, placements: [], mentions: [] })], honours: [] }));

  test.each(['volleyball', 'baseball', 'wrestling'])('%s has no halftime script, and the concession stand in a break between', (sport) => {
    const packet = of(sport);
    expect(cueFor(packet, 'halftime')).toBeUndefined();
    expect(cueFor(packet, 'concession')).toMatchObject({ window: 'betweenPeriods', windowKey: expect.stringMatching(/^betweenPeriods\d+$/) });
  });

  test('a sport without a profile still has a packet', () => {
    expect(of('quidball').cues.map(({ moment }) => moment)).toEqual(expect.arrayContaining(['welcome', 'lineUpHome', 'postgame', 'evacuation']));
  });

  test('football takes halftime after the second quarter', () => {
    const packet = composed(night({ games: [game({ sport: 'football' })] }));
    const windows = packet.cues.map(({ windowKey }) => windowKey).filter((key, place, all) => key !== null && all.indexOf(key) === place);
    expect(windows).toEqual(['pregame', 'deadBall', 'timeOut1', 'timeOut2', 'betweenPeriods1', 'halftime', 'betweenPeriods2', 'postgame']);
    expect(packet.runOfShow.map(({ windowTitle }) => windowTitle)).toEqual(expect.arrayContaining(['After the first quarter', 'After the third quarter', 'Halftime']));
  });
});

describe('bad input', () => {
  test('a night without games has a title, no cues and no run of show', () => {
    expect(composed(night({ games: [] }))).toMatchObject({ title: 'Tamarack Ridge Athletics', cues: [], runOfShow: [], windows: [], nextTimeOut: [] });
  });

  test('sixty players, a name of forty letters and no sponsor make a whole packet', () => {
    const name = 'Maximiliana Featherstonehaugh-Nguyễn-Lee';
    expect([...name]).toHaveLength(40);
    const roster = Array.from({ length: 60 }, (_, place) => player(String(place), place === 0 ? name : `Britta Sandoval ${place}`, { isStarter: place < 5 }));
    const packet = composed(night({ games: [game({ home: { ...kestrels, roster }, placements: [], mentions: [] })] }));
    expect(packet.games[0]?.home.rows).toHaveLength(60);
    expect(textOf(cueFor(packet, 'lineUpHome'))).toContain(name);
    expect(packet.cues.some(({ isSponsored }) => isSponsored)).toBe(false);
  });
});

import { describe, expect, test } from 'vitest';
import { voiceAt } from '../../server/domain/packet/voice.ts';
import { fillIn } from '../../server/packet/liquid.ts';
import { directionProblems, KNOWN_DIRECTIONS } from '../../server/domain/packet/directions.ts';
import { LIBRARY_TO_START_WITH } from '../../server/domain/packet/default-scripts.ts';
import { SPANISH_EXAMPLES } from '../../server/domain/packet/default-scripts-spanish.ts';
import { lettersApart, nearest } from '../../server/domain/packet/nearest-word.ts';
import { ANTHEM_VARIANTS, anthemVariant, EMERGENCY_MOMENTS, HONOURS_VARIANTS, libraryFor, MOMENTS } from '../../server/domain/packet/script.ts';
import type { Script } from '../../server/domain/packet/script.ts';
import { EMPTIEST_VARIABLES, EXAMPLE_VARIABLES, greetingAt, namesInARow, playingAreaOf, SCRIPT_VARIABLES } from '../../server/domain/packet/script-variables.ts';
import { directionSeconds, segmentsOf } from '../../server/domain/packet/segment.ts';
import { variablesOf } from '../../server/domain/packet/variables-of-night.ts';
import { PROFILES } from '../../server/domain/season/profiles.ts';
import { night } from './packet-night.ts';

const said = (text: string): string => segmentsOf(text, voiceAt(140)).filter((segment) => segment.kind === 'spoken').map((segment) => segment.text).join('\n');

describe('the scripts a department starts with', () => {
  test('hold something for every moment of the night', () => {
    expect(MOMENTS.filter((moment) => !LIBRARY_TO_START_WITH.some((script) => script.moment === moment))).toEqual([]);
  });

  test('each have a key of their own, and no title twice in a moment and sport', () => {
    expect(new Set(LIBRARY_TO_START_WITH.map((script) => script.key)).size).toBe(LIBRARY_TO_START_WITH.length);
    expect(new Set(LIBRARY_TO_START_WITH.map((script) => `${script.moment} ${script.sport} ${script.title}`)).size).toBe(LIBRARY_TO_START_WITH.length);
  });

  test.each(LIBRARY_TO_START_WITH.map((script) => [script.key, script.text] as const))('%s is filled in on a full night and on the emptiest one', (_, text) => {
    for (const variables of [EXAMPLE_VARIABLES, EMPTIEST_VARIABLES]) {
      // What is presented has a sponsor, a thing and words on any night.
      const filled = fillIn(text, { ...variables, ...(text.includes('{{ copy }}') ? { sponsor: 'Pinyon Print Works', presents: 'game ball', copy: 'Words.' } : {}) });
      expect(directionProblems(filled)).toEqual([]);
      expect(filled).not.toMatch(/\{\{|\}\}|\{%|\bnull\b|undefined|\[object/);
    }
  });

  test.each(Object.entries(SPANISH_EXAMPLES))('the Spanish %s is filled in, and belongs to a script', (key, text) => {
    expect(said(fillIn(text, EXAMPLE_VARIABLES))).not.toBe('');
    expect(LIBRARY_TO_START_WITH.some((script) => script.key === key)).toBe(true);
  });

  // NFHS basketball point of emphasis 2014-15, announcer responsibilities: what is not announced.
  test.each(LIBRARY_TO_START_WITH.map((script) => [script.key, script.text] as const))('%s tells no count that is kept for the table', (_, text) => {
    expect(said(text)).not.toMatch(/\b(team fouls?|fouls? (of|on) the (quarter|half)|personal foul|time-outs? (left|remaining)|points? (for|by)|has \w+ fouls?|minutes? (left|to go|remaining)|seconds? (left|to go|remaining)|blocking|traveling|technical)\b/i);
  });

  // 26 CFR 1.513-4(c)(2)(v): what makes an advertisement of an acknowledgment.
  test.each(LIBRARY_TO_START_WITH.map((script) => [script.key, script.text] as const))('%s persuades nobody to buy', (_, text) => {
    expect(said(text)).not.toMatch(/\b(best|finest|cheap|save|sale|discount|free|buy|visit (us|our|them)|call (now|them)|hurry|don't miss|great (deal|value)|delicious)\b/i);
  });

  test('a sponsor stands in no script but the presentation, and never beside the flag', () => {
    const naming = LIBRARY_TO_START_WITH.filter((script) => /\{\{ ?(sponsor|copy)/.test(script.text)).map((script) => script.key);
    expect(naming).toEqual(['sponsorPresentation']);
    for (const script of LIBRARY_TO_START_WITH.filter(({ moment }) => moment === 'anthem')) expect(script.text).toContain('No sponsor is named next to the flag');
  });

  test('prayer, the association’s words, and what comes in on forms are off', () => {
    const off = new Set(LIBRARY_TO_START_WITH.filter((script) => !script.isOn).map((script) => script.moment));
    expect([...off]).toEqual(['mustCarryPregame', 'prayer', 'mustCarryHalftime', 'recognition', 'fundraiser', 'club', 'camp']);
  });

  test.each([
    ['sung', 'colourGuard', 'sungColourGuard'], ['sung', 'inPlace', 'sungFlagInPlace'], ['played', 'colourGuard', 'playedColourGuard'], ['played', 'inPlace', 'playedFlagInPlace'],
  ] as const)('the anthem %s with the flag %s is the form %s', (anthem, flag, variant) => {
    expect(anthemVariant(anthem, flag)).toBe(variant);
    const [script, ...more] = LIBRARY_TO_START_WITH.filter((one) => one.variant === variant);
    expect(more).toEqual([]);
    expect(script!.text.includes('[[the colors come in')).toBe(flag === 'colourGuard');
    expect(script!.text.includes('hand over the microphone')).toBe(anthem === 'sung');
  });

  // 36 U.S.C. 301(b): stand, face the flag, right hand over the heart, hats off; with no flag displayed, face the music.
  test.each(ANTHEM_VARIANTS)('the anthem %s asks for hats off, the flag and the hand, only once the colors are presented', (variant) => {
    const text = said(LIBRARY_TO_START_WITH.find((one) => one.variant === variant)!.text);
    for (const words of ['Please rise', 'take off your hats', 'face the flag', 'right hand over the heart']) expect(text).toContain(words);
    const full = LIBRARY_TO_START_WITH.find((one) => one.variant === variant)!.text;
    if (variant.endsWith('ColourGuard')) expect(full.indexOf('not before')).toBeLessThan(full.indexOf('national anthem'));
    else expect(full).toContain('faces the music');
  });

  test('there is an opening for seniors and one for honors', () => {
    expect(LIBRARY_TO_START_WITH.filter(({ moment }) => moment === 'honours').map(({ variant }) => variant)).toEqual([...HONOURS_VARIANTS]);
  });

  test('a vehicle notice says everything twice', () => {
    const text = said(LIBRARY_TO_START_WITH.find(({ moment }) => moment === 'vehicleNotice')!.text);
    for (const blank of ['(color and make)', '(where)', 'license plate __', '(what is wrong)']) expect(text.split(blank)).toHaveLength(3);
  });

  test('lightning restarts after thirty minutes, and the building’s exits are read', () => {
    expect(LIBRARY_TO_START_WITH.find(({ moment }) => moment === 'weather')!.text).toContain('thirty minutes after the last thunder or flash');
    expect(fillIn(LIBRARY_TO_START_WITH.find(({ moment }) => moment === 'evacuation')!.text, EXAMPLE_VARIABLES)).toContain('There are four exits');
  });

  test('an emergency of every kind is there', () => {
    for (const moment of EMERGENCY_MOMENTS) expect(LIBRARY_TO_START_WITH.some((script) => script.moment === moment && script.isOn)).toBe(true);
  });

  test('each sport has its own calls of play, and its own word for where it is played', () => {
    const sports = [...new Set(PROFILES.map((profile) => profile.sport))];
    for (const sport of sports) expect(LIBRARY_TO_START_WITH.filter((script) => script.moment === 'callsOfPlay' && script.sport === sport)).toHaveLength(1);
    expect(['basketball', 'football', 'wrestling', 'softball', 'lacrosse'].map(playingAreaOf)).toEqual(['floor', 'field', 'mat', 'diamond', 'field']);
  });
});

describe('the library of a night', () => {
  const one = (key: string, extra: Partial<Script> = {}): Script => ({ key, moment: 'periodScore', title: key, language: 'en', text: key, isOn: true, place: 1, ...extra });
  const library = [{ sport: null, script: one('any') }, { sport: 'volleyball', script: one('sets') }, { sport: null, script: one('hello', { moment: 'welcome' }) }];
  const keys = (sports: string[], of = library): string[] => libraryFor(of, new Set(sports)).map((script) => script.key);

  test('a sport’s own script stands in the place of the one for every sport', () => expect(keys(['volleyball'])).toEqual(['sets', 'hello']));
  test('another sport reads the one for every sport', () => expect(keys(['basketball'])).toEqual(['any', 'hello']));
  test('a sport’s own script that is off stands in nobody’s place', () => {
    expect(keys(['volleyball'], [library[0]!, { sport: 'volleyball', script: one('sets', { isOn: false }) }])).toEqual(['any', 'sets']);
  });
});

describe('variables', () => {
  test('each has a sentence and an example, and stands once', () => {
    expect(new Set(SCRIPT_VARIABLES.map(({ name }) => name)).size).toBe(SCRIPT_VARIABLES.length);
    for (const { sentence, example } of SCRIPT_VARIABLES) expect([sentence.endsWith('.'), example === '']).toEqual([true, false]);
  });

  test('a packet fills in exactly the names of the table', () => {
    const of = night();
    expect(Object.keys(variablesOf(of, of.games[0]!, 0)).sort()).toEqual(SCRIPT_VARIABLES.map(({ name }) => name).sort());
  });

  test.each([
    ['11:59 AM', 'Good morning', 'today'], ['12:00 PM', 'Good afternoon', 'today'], ['4:59 PM', 'Good afternoon', 'today'],
    ['5:00 PM', 'Good evening', 'tonight'], ['time to be announced', 'Good evening', 'tonight'], ['12:30 AM', 'Good morning', 'today'],
  ])('a first game at %s begins with %s', (starts, greeting, tonight) => expect(greetingAt(starts)).toEqual({ greeting, tonight }));

  test('names are joined as they are read', () => {
    expect([[], ['A'], ['A', 'B'], ['A', 'B', 'C']].map(namesInARow)).toEqual([null, 'A', 'A and B', 'A, B and C']);
  });
});

describe('directions', () => {
  test.each([
    ['pause 3', 3], ['Pause 20', 20], ['wait for applause', 8], ['wait for the starter to turn', 4], ['Wait until the starter has greeted the other bench', 4],
    ['wait until the floor is clear', 4], ['hand over the microphone to the singer', 5], ['play the recording, about 90 seconds', 90], ['the anthem, about 110 seconds', 110],
    ['music down', 0], ['Level voice.', 0], ['Play the recording. One hand stays on the fader.', 0],
  ])('“%s” takes %i seconds', (text, seconds) => expect(directionSeconds(text)).toBe(seconds));

  test('each that the editor offers takes time and is written right', () => {
    for (const { insert, secondsOf } of KNOWN_DIRECTIONS) {
      expect(directionProblems(insert)).toEqual([]);
      expect(secondsOf(insert.slice(2, -2))).toBeGreaterThan(0);
    }
  });

  test.each([
    ['[[pause 3]] and on', []],
    ['one\n[[pause 3', [[2, 'never closed']]],
    ['one\ntwo ]] three', [[2, 'never opened']]],
    ['[[wait\n[[pause 3]]', [[1, 'another one begins']]],
    ['[[ ]]', [[1, 'is empty']]],
    ['a\n\n[[pause]]', [[3, 'does not say how long']]],
    ['[[pause a moment]]', [[1, 'does not say how long']]],
    ['[[puase 3]]', [[1, 'did you mean “pause”']]],
    ['[[pause 600]]', []],
    ['[[pause 601]]', [[1, 'more than ten minutes']]],
    ['[[music down]]', []],
    ['[[hand over to {{ singer }}]]', []],
    ['[[a\nb]]\n]]', [[3, 'never opened']]],
  ] as const)('%j', (text, problems) => {
    expect(directionProblems(text)).toEqual(problems.map(([line, words]) => ({ line, sentence: expect.stringContaining(words) })));
  });
});

describe('the word somebody meant', () => {
  // Distances by hand.
  test.each([['kitten', 'sitting', 3], ['ab', 'ba', 1], ['', 'abc', 3], ['venue', 'venue', 0], ['ca', 'abc', 3]])('%s and %s are %i apart', (one, other, apart) => expect(lettersApart(one, other)).toBe(apart));
  const names = SCRIPT_VARIABLES.map(({ name }) => name);
  test.each([
    ['homeNicknam', 'homeNickname'], ['HomeNickname', 'homeNickname'], ['venu', 'venue'], ['visitorNicname', 'visitorNickname'], ['snger', 'singer'], ['xyzzy', null], ['colorGuard', 'colourGuard'],
  ])('%s is %s', (written, meant) => expect(nearest(written, names)).toBe(meant));
});

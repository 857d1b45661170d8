import { describe, expect, test } from 'vitest';
import { lineUpSegments } from '../../server/domain/packet/line-up-forms.ts';
import { teamSheet } from '../../server/domain/packet/line-up.ts';
import type { PlayerForPacket } from '../../server/domain/packet/night-for-packet.ts';
import { voiceAt } from '../../server/domain/packet/voice.ts';
import { profileFor } from '../../server/domain/season/sport-profile.ts';
import type { Sport, SportProfile } from '../../server/domain/season/sport-profile.ts';
import { game, herons, kestrels, player } from './packet-night.ts';

const voice = voiceAt(140);

/** What is read for a home team of these players, directions in brackets, the coach left out. */
function read(sport: Sport, roster: readonly PlayerForPacket[], more: Partial<SportProfile> = {}): string[] {
  const sheet = teamSheet(game({ sport, home: { ...kestrels, headCoach: null, roster: roster.map((one) => ({ ...one, isStarter: true })) } }), 'home');
  return lineUpSegments(sheet, voice, { ...profileFor(sport, 2026), ...more }).map(({ kind, text }) => (kind === 'direction' ? `[${text}]` : text));
}

const said = (lines: string[]) => lines.filter((line) => !line.startsWith('['));

describe('a line-up is read in the form of its sport (common practice, no source)', () => {
  test('basketball: by number, each with a wait, a short position in words', () => {
    expect(read('basketball', [player('23', 'Łukasz Wierzbicki', { position: 'C' }), player('3', 'Siobhán Delacroix', { position: 'forward' })])).toEqual([
      'Forward, number 3, Siobhán Delacroix.', '[Wait until the starter has greeted the other bench and turned for the official]',
      'Center, number 23, Łukasz Wierzbicki.', '[Wait until the starter has greeted the other bench and turned for the official]',
    ]);
  });

  test('football: offense, then defense, then special teams, and who has no unit first', () => {
    const lines = read('football', [player('7', 'Bo Strand', { position: 'K' }), player('54', 'Ines Calloway', { position: 'LB' }), player('12', 'Amparo Reyes', { position: 'QB' }), player('80', 'Mette Lund', { position: null })]);
    expect(lines).toEqual([
      'Number 80, Mette Lund.', 'On offense.', 'Quarterback, number 12, Amparo Reyes.', '[Wait for applause for the offense]',
      'On defense.', 'Linebacker, number 54, Ines Calloway.', '[Wait for applause for the defense]', 'On special teams.', 'Kicker, number 7, Bo Strand.', '[Wait for applause for the special teams]',
    ]);
  });

  test('wrestling: lightest first, by weight, without shirt numbers', () => {
    expect(said(read('wrestling', [player('1', 'Amparo Reyes', { position: '285' }), player('2', 'Bo Strand', { position: '106 lb' }), player('3', 'Ines Calloway', { position: '132' })]))).toEqual([
      'At 106 pounds, Bo Strand.', 'At 132 pounds, Ines Calloway.', 'At 285 pounds, Amparo Reyes.',
    ]);
  });

  test('baseball: in batting order where the roster has it, else the book is asked', () => {
    expect(said(read('baseball', [player('4', 'Bo Strand', { position: '2 CF' }), player('21', 'Amparo Reyes', { position: '10 P' }), player('30', 'Ines Calloway', { position: '1. SS' })]))).toEqual([
      'Batting first, shortstop, number 30, Ines Calloway.', 'Batting second, center field, number 4, Bo Strand.', 'Batting tenth, pitcher, number 21, Amparo Reyes.',
    ]);
    expect(read('softball', [player('4', 'Bo Strand', { position: 'CF' })])[0]).toBe('[Take the batting order from the official book]');
  });

  test('alternating: a visitor, then a starter of ours, each with the team; our own cue has the coach alone', () => {
    const rules = { ...profileFor('basketball', 2026), lineUp: 'alternating' as const };
    const both = game({ home: kestrels, visitors: herons });
    const lines = lineUpSegments(teamSheet(both, 'visitors'), voice, rules, teamSheet(both, 'home')).filter(({ kind }) => kind === 'spoken').map(({ text }) => text);
    expect(lines.slice(0, 2)).toEqual(['For the Herons, guard, number 00, Juno Halloran.', 'For the Kestrels, guard, number 0, Xochitl Marchetti.']);
    expect(lineUpSegments(teamSheet(both, 'home'), voice, rules).filter(({ kind }) => kind === 'spoken').map(({ text }) => text)).toEqual(['Your head coach, Ngozi Okonkwo.']);
  });

  test.each([
    ['basketball', 'numberOnly', 'Guard, number 30.'],
    ['basketball', 'aMember', 'A member of the team.'],
    ['wrestling', 'numberOnly', 'At 132 pounds, a member of the team.'],
    ['wrestling', 'aMember', 'A member of the team.'],
    ['baseball', 'numberOnly', 'Batting first, shortstop, number 30.'],
  ] as const)('in %s a family’s "%s" is read as “%s”, and silence is not read at all', (sport, announce, words) => {
    const position = { basketball: 'G', wrestling: '132', baseball: '1 SS' }[sport];
    expect(said(read(sport, [player('30', 'Ottilie Strand', { announce, position })]))).toEqual([words]);
    expect(said(read(sport, [player('30', 'Ottilie Strand', { announce: 'silence', position })]))).toEqual([]);
  });

  test('no starter marked: the book has them', () => {
    expect(read('volleyball', [])).toEqual(['[No starters are marked: take them from the official book]']);
  });
});

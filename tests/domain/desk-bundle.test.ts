import { expect, test } from 'vitest';
import { aNightBundle, DeskLog } from './desk-night.ts';

test('the bundle of the Herons’ night has its game, its rules, its cues and the mention of the bank shot', () => {
  const bundle = aNightBundle();
  expect(bundle.games[0]).toMatchObject({ gameId: 'game-1', title: 'Herons at Kestrels, varsity', rules: { teamFouls: { countedPer: 'quarter' } } });
  expect([bundle.cues.length, bundle.mentions.map((mention) => mention.sponsorName)]).toEqual([31, ['Copperline Credit Union']]);
  expect(bundle.holdTexts.map((text) => text.situation)).toEqual(['medical', 'delay', 'injury', 'weather', 'evacuation', 'threat']);
});

test('a family’s choice travels with the bundle: no name where it is not announced', () => {
  expect(JSON.stringify(aNightBundle())).not.toMatch(/Ottilie|Perpetua|Wilhelmina|Zuleika/);
});

test('a log in memory counts its places on the device', () => {
  const log = new DeskLog();
  const note = log.write({ kind: 'note', reason: 'The horn is loud' });
  log.takeBack(note.id);
  expect(log.lines.map((line) => [line.sequence, line.kind, line.takesBackEntryId])).toEqual([[1, 'note', null], [2, 'takenBack', 'tablet-1']]);
});

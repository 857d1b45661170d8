import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { makeBundle } from '../../server/domain/night/desk/make-bundle.ts';
import type { NightBundle } from '../../server/domain/night/desk/bundle.ts';
import type { Instant } from '../../server/domain/instant.ts';
import { composePacket } from '../../server/domain/packet/compose-packet.ts';
import { DEFAULT_SCRIPTS } from '../../server/domain/packet/default-scripts.ts';
import { DEFAULT_PACKET_SETTINGS } from '../../server/domain/packet/night-for-packet.ts';
import type { NightForPacket } from '../../server/domain/packet/night-for-packet.ts';
import type { Script } from '../../server/domain/packet/script.ts';
import { game, longNight, mention, night, placement, render } from './packet-night.ts';

const FACTS = { zone: 'America/Denver', madeAt: '2026-12-03T18:00:00.000Z' as Instant, contentDigest: 'digest', takesPublicRequests: false };
const PLAIN = DEFAULT_SCRIPTS.filter((script) => script.sport === null);

function bundleOf(facts: NightForPacket, library: readonly Script[] = PLAIN): NightBundle {
  return makeBundle(composePacket(facts, library, render), facts, FACTS);
}

test('a night at the table has its games with their rules, its cues by their codes and the priority of each read', () => {
  const bundle = bundleOf(night({ settings: { ...DEFAULT_PACKET_SETTINGS, timeOutsReliedOn: 1 }, games: [game({ placements: [placement('game-1', 'timeout', 3, 'Blue Lantern Tire', { priority: 1 }), placement('game-1', 'halftime', 1, 'Pinyon Print Works', { priority: 3 })] })] }));
  expect(bundle.games[0]).toMatchObject({ title: 'Herons at Kestrels, varsity', ourTeamIds: ['team-kestrels'], rules: { periods: { name: 'quarter', count: 4 }, teamFouls: { playerLimit: 5 } } });
  const reads = bundle.cues.filter((cue) => cue.placementId !== null).map(({ code, sponsorName, priority }) => [code, sponsorName, priority]);
  expect(reads).toEqual([['T1', 'Blue Lantern Tire', 1], [expect.stringMatching(/^H/), 'Pinyon Print Works', 3]]);
  expect(bundle.cues.find((cue) => cue.moment === 'welcome')).toMatchObject({ priority: 2, gameId: 'game-1' });
  expect(bundle.nextTimeOut).toEqual(['T1']);
  const lastInAWindow = bundle.cues.findLastIndex((cue) => cue.gameId !== null);
  expect(bundle.cues.slice(lastInAWindow + 1).map((cue) => cue.code[0]).join('')).toMatch(/^N+E+$/);
});

test('a mention names its happening as an entry does, whose it is, and no direction of the paper', () => {
  const both = mention('game-1', { commitmentId: 'commitment-three', cueKey: 'game:game-1/mention/commitment-three', occurrence: 'Three-point play', whose: 'both', severalCountAsOne: true });
  const { mentions } = bundleOf(night({ games: [game({ mentions: [mention('game-1'), both] })] }));
  expect(mentions.map(({ happening, occurrence, whose, severalCountAsOne }) => [happening, occurrence, whose, severalCountAsOne])).toEqual([
    ['bankShot', 'bank shot', 'ours', false],
    ['threePointPlay', 'Three-point play', 'both', true],
  ]);
  expect(mentions[0]).toMatchObject({ code: 'M1', sponsorName: 'Copperline Credit Union', segments: [{ kind: 'spoken', text: 'Off the glass: Copperline Credit Union.' }] });
});

test('every hold has a text, the venue’s own first, and silence is fixed', () => {
  const { holdTexts } = bundleOf(night());
  expect(holdTexts.map((text) => text.situation)).toEqual(['injury', 'medical', 'weather', 'evacuation', 'threat', 'delay', 'silence']);
  expect(holdTexts.find((text) => text.situation === 'evacuation')!.segments[0]!.text).toContain('Please leave the building now');
  const without = bundleOf(night(), PLAIN.filter((script) => script.moment !== 'weather'));
  expect(without.holdTexts.find((text) => text.situation === 'weather')!.segments).toMatchObject([{ kind: 'direction', text: expect.stringContaining('administrator on duty') }]);
});

test('a request has its script, also where the notice is switched off in the library; three kinds are the table’s alone', () => {
  const { requestScripts } = bundleOf(night());
  expect(requestScripts.map(({ kind, isTableOnly }) => [kind, isTableOnly])).toEqual([
    ['vehicle', false], ['fundraiser', false], ['fundraiser', false], ['fundraiser', false], ['lostChild', true], ['foundItem', true], ['medical', true],
  ]);
  expect(requestScripts.every((script) => script.segments.length > 0)).toBe(true);
  const own = PLAIN.map((script) => (script.moment === 'vehicleNotice' ? { ...script, text: 'Our own words about a car.' } : script));
  expect(bundleOf(night(), own).requestScripts[0]!.segments[0]!.text).toBe('Our own words about a car.');
});

test('a student whose family chose otherwise is named nowhere in it', () => {
  const text = JSON.stringify(bundleOf(night({ games: [game({ mentions: [mention('game-1', { copyText: 'Wilhelmina Astor shops at Copperline.' })] })] })));
  for (const name of ['Ottilie', 'Perpetua', 'Wilhelmina', 'Zuleika']) expect([name, text.includes(name)]).toEqual([name, false]);
  expect(text).toContain('Nguyễn Thị Bảo Ngọc');
});

test('a night of a sport the house does not know has no rules and still all its cues', () => {
  const bundle = bundleOf(night({ games: [game({ sport: 'curling' })] }));
  expect([bundle.games[0]!.rules, bundle.games[0]!.usualMinutes]).toEqual([null, 90]);
  expect(bundle.cues.filter((cue) => cue.isSponsored)).toHaveLength(8);
});

/** The bound of the night desk: a telephone fetches it in the parking lot. */
test('a full night of three games and forty-five reads stays under 150 kB gzip', () => {
  const bundle = bundleOf(longNight());
  expect(bundle.cues.filter((cue) => cue.isSponsored).length).toBeGreaterThanOrEqual(24);
  expect(gzipSync(JSON.stringify(bundle)).length).toBeLessThan(150_000);
});

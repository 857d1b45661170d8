import { gunzipSync } from 'node:zlib';
import { request } from 'node:http';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';
import type { Visitor } from '../support/visitor.ts';

/** As it travels: fetch would unpack it before anybody could look. */
async function asSent(visitor: Visitor, path: string, encoding: string): Promise<{ headers: Record<string, unknown>; bytes: Buffer }> {
  return new Promise((done, fail) => {
    request(visitor.baseUrl + path, { headers: { cookie: visitor.cookie, 'accept-encoding': encoding } }, (answer) => {
      const pieces: Buffer[] = [];
      answer.on('data', (piece: Buffer) => pieces.push(piece)).on('end', () => done({ headers: answer.headers, bytes: Buffer.concat(pieces) }));
    }).on('error', fail).end();
  });
}

async function aNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 1);
  const contract = await aSignedContract(department, season, {
    priceCents: 20_000,
    commitments: [
      { readKindId: season.readKinds.gameBall, counting: 'perTerm', reads: 2, rateCents: 7500 },
      { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 1, readsAtMost: 9, rateCents: 1000 },
    ],
  });
  const { gameId, nightId } = season.games[0]!;
  const placement = await department.director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId, windowKey: 'pregame' });
  return { department, season, contract, gameId, nightId, placement };
}

test('an announcer takes the whole night along: games, rules, cues, mentions, holds and the scripts for requests', async () => {
  const { department, season, contract, gameId, nightId, placement } = await aNight();
  const bundle = await department.announcer.look(`/api/nights/${nightId}/bundle`);
  expect(bundle).toMatchObject({ nightId, zone: 'America/Denver', heldOn: '2026-12-04', departmentName: department.name, venueText: 'Alder Fieldhouse, the Perch' });
  expect(bundle.games).toMatchObject([{ gameId, sport: 'basketball', startsClock: '19:00', ourTeamIds: [season.teamId], rules: { teamFouls: { playerLimit: 5 } } }]);
  expect(bundle.cues.find((cue: any) => cue.placementId === placement.id)).toMatchObject({ gameId, commitmentId: null, isSponsored: true, windowKey: 'pregame' });
  expect(bundle.mentions).toMatchObject([{ commitmentId: contract.commitments[1].id, gameId, happening: 'bankShot', severalCountAsOne: expect.any(Boolean) }]);
  expect(bundle.holdTexts.find((text: any) => text.situation === 'evacuation').segments[0].text).toBe('Please walk to the nearest exit.');
  expect(bundle.requestScripts.map((script: any) => script.kind)).toContain('vehicle');
  const { contentDigest } = await department.announcer.look(`/api/nights/${nightId}/bundle`);
  expect(contentDigest).toBe(bundle.contentDigest);
});

test('a student whose family chose otherwise is not named on any device', async () => {
  const { department, nightId } = await aNight();
  const text = JSON.stringify(await department.announcer.look(`/api/nights/${nightId}/bundle`));
  expect([text.includes('Xochitl'), text.includes('so-cheel'), text.includes('Łukasz Wren')]).toEqual([false, false, true]);
});

test('it travels packed where the asker can unpack it, and plain otherwise', async () => {
  const { department, nightId } = await aNight();
  const path = `/api/nights/${nightId}/bundle`;
  const small = await asSent(department.announcer, path, 'gzip, deflate, br');
  const plain = await asSent(department.announcer, path, 'gzip;q=0, identity');
  expect([small.headers['content-encoding'], plain.headers['content-encoding'], small.headers['vary']]).toEqual(['gzip', undefined, 'accept-encoding']);
  const [one, other] = [gunzipSync(small.bytes), plain.bytes].map((bytes) => ({ ...JSON.parse(bytes.toString()), madeAt: '' }));
  expect(one).toEqual(other);
  expect(small.bytes.length).toBeLessThan(plain.bytes.length / 3);
});

test('a night that never was has no bundle', async () => {
  const { department } = await aNight();
  expect((await department.announcer.get('/api/nights/01900000-0000-7000-8000-000000000001/bundle')).body.code).toBe('not-found');
  expect((await department.bookkeeper.get('/api/nights/01900000-0000-7000-8000-000000000001/bundle')).body.code).toBe('role-missing');
});

import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aSeason, aSignedContract } from '../support/season.ts';

async function aNight() {
  const department = await aDepartment();
  const season = await aSeason(department, 2);
  const contract = await aSignedContract(department, season);
  const { gameId, nightId } = season.games[0]!;
  const placement = await department.director.make('/api/placements', { commitmentId: contract.commitments[0].id, gameId, windowKey: 'pregame' });
  const copy = await department.director.make('/api/copies', {
    sponsorId: season.sponsorId, readKindId: season.readKinds.gameBall, title: 'Game ball', fallbackText: 'We thank Juniper & Pike Hardware.',
    text: 'Nuts, bolts and neighbors. Xochitl Marlowe shops there.',
  });
  return { department, director: department.director, season, contract, gameId, nightId, placement, copy };
}

const cueOf = (packet: any, placementId: string) => packet.cues.find((cue: any) => cue.placementId === placementId);
const words = (cue: any): string => cue.segments.map((segment: any) => segment.text).join(' ');

test('words that nobody approved are not printed, the neutral line is; a student who opted out is named nowhere', async () => {
  const { director, nightId, placement, copy } = await aNight();
  const before = await director.look(`/api/nights/${nightId}/packet`);
  expect([cueOf(before, placement.id).usesFallback, words(cueOf(before, placement.id)).includes('We thank Juniper & Pike Hardware.')]).toEqual([true, true]);
  const [version] = (await director.look(`/api/copies/${copy.id}`)).versions;
  await director.make(`/api/copies/${copy.id}/versions/${version.id}/approve`, { approvedByName: 'Hazel Juniper', approvedOn: '2026-11-21' });
  const after = await director.look(`/api/nights/${nightId}/packet`);
  expect(words(cueOf(after, placement.id))).toContain('Nuts, bolts and neighbors.');
  expect([JSON.stringify(before), JSON.stringify(after)].filter((text) => text.includes('Marlowe') || text.includes('MAR-low'))).toEqual([]);
});

test('the packet is a PDF named by the night and its venue', async () => {
  const { director, nightId } = await aNight();
  const { status, bytes, headers } = await director.bytes(`/api/nights/${nightId}/packet.pdf`);
  expect([status, headers.get('content-type'), bytes.subarray(0, 5).toString()]).toEqual([200, 'application/pdf', '%PDF-']);
  expect(headers.get('content-disposition')).toContain('packet-2026-12-04-alder-fieldhouse.pdf');
  expect((await director.get(`/api/nights/${nightId}/packet.pdf?issue=9`)).status).toBe(404);
});

test('a script with an unknown name or an endless loop is refused with its reason, and a default comes back when its change is taken out', async () => {
  const { director } = await aNight();
  const welcome = (await director.look('/api/scripts?moment=welcome')).data[0];
  const change = (text: string) => director.patch(`/api/scripts/${welcome.id}`, { text }, { version: 1 });
  for (const text of ['{{ nobody }}', '{{ venue | shout }}', '{% for i in (1..99999999) %}x{% endfor %}', '{% include "secrets" %}', '{% if venue %}']) {
    const refused = await change(text);
    expect([text, refused.status, refused.body.code, typeof refused.body.errors.text]).toEqual([text, 422, 'script-broken', 'string']);
  }
  expect((await change('Welcome to {{ venue }}.')).body).toMatchObject({ version: 2, isDefault: false });
  expect((await director.remove(`/api/scripts/${welcome.id}`)).status).toBe(204);
  expect((await director.look(`/api/scripts/${welcome.id}`)).text).toBe(welcome.text);
});

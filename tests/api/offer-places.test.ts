import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aLaterSeason, aSignedContract } from '../support/season.ts';

/** Games with three reads at halftime each; offers of concession reads there. */
async function aRoom(games = 2) {
  const department = await aDepartment();
  const { director } = department;
  const season = await aLaterSeason(department, games);
  const halftime = (reads: number, more: Record<string, unknown> = {}) => ({ readKindId: season.readKinds.concession, counting: 'perTerm', reads, rateCents: 4_000, windowKinds: ['halftime'], ...more });
  const offer = (readLines: Record<string, unknown>[], more: Record<string, unknown> = {}) =>
    director.make('/api/offers', {
      sponsorId: season.sponsorId, sellerId: season.sellerId, payerId: season.payerId, seasonId: season.seasonId, title: 'Concession reads', priceCents: 20_000,
      startsOn: season.startsOn, endsOn: season.endsOn, lapsesOn: '2150-11-30', readLines, ...more,
    });
  const put = (id: string, more: Record<string, unknown> = {}) => director.post(`/api/offers/${id}/put`, { putOn: '2026-11-20', ...more });
  return { department, director, season, halftime, offer, put };
}

test('an offer that fits is put, and the first that does not is refused with the most and what is full', async () => {
  const { offer, put, halftime } = await aRoom();
  const first = await offer([halftime(4)]);
  expect(await put(first.id)).toMatchObject({ status: 200, body: { state: 'open', putOn: '2026-11-20', beyondPlacesReason: null, holdsNow: true } });
  const second = await offer([halftime(3)], { title: 'One too many' });
  expect(await put(second.id)).toMatchObject({
    status: 409,
    body: {
      code: 'offer-beyond-places', override: 'director', details: { most: 2, asked: 3 },
      detail: 'The season does not carry all of this offer. Two of the three reads fit, and no plan holds more. Halftime of the two games from Dec 4 to Dec 11 is full: Juniper & Pike Hardware and this offer together need seven places there, six exist.',
    },
  });
  const third = await offer([halftime(2)]);
  expect((await put(third.id)).status).toBe(200);
});

test('a director puts it all the same with a reason, which is kept with the name', async () => {
  const { offer, put, halftime } = await aRoom(1);
  const { id } = await offer([halftime(5)]);
  expect((await put(id, { beyondPlacesReason: '  ' })).status).toBe(409);
  const { status, body } = await put(id, { beyondPlacesReason: 'Two home games more are agreed and not announced yet' });
  expect([status, body.state, body.beyondPlacesReason]).toEqual([200, 'open', 'Two home games more are agreed and not announced yet']);
  expect(body.beyondPlacesPersonName).toMatch(/^director/);
});

test('a reason that was not needed is not kept', async () => {
  const { offer, put, halftime } = await aRoom(1);
  const { id } = await offer([halftime(1)]);
  expect(await put(id, { beyondPlacesReason: 'To be sure' })).toMatchObject({ status: 200, body: { beyondPlacesReason: null, beyondPlacesPersonName: null } });
});

test('an offer is put once', async () => {
  const { offer, put, halftime } = await aRoom(1);
  const { id } = await offer([halftime(1)]);
  expect((await put(id)).status).toBe(200);
  expect(await put(id)).toMatchObject({ status: 409, body: { code: 'offer-already-put' } });
});

test('what an open offer holds itself is left out when it is checked again', async () => {
  const { director, offer, put, halftime } = await aRoom(1);
  const { id } = await offer([halftime(3)]);
  await put(id);
  expect(await director.make(`/api/offers/${id}/promise-checks`)).toMatchObject({ can: 'yes', asked: 3 });
  const other = await offer([halftime(1)]);
  expect(await director.make(`/api/offers/${other.id}/promise-checks`)).toMatchObject({ can: 'no', atMost: 0 });
});

test('an offer that holds nothing takes no places from others, and is proven all the same', async () => {
  const { offer, put, halftime } = await aRoom(1);
  const loose = await offer([halftime(3)], { holdsInventory: false });
  expect((await put(loose.id)).status).toBe(200);
  const { id } = await offer([halftime(3)]);
  expect((await put(id)).status).toBe(200);
  expect((await put((await offer([halftime(1)], { holdsInventory: false })).id)).body.code).toBe('offer-beyond-places');
});

test('signed contracts take their places before any offer', async () => {
  const { department, season, offer, put, halftime } = await aRoom(1);
  await aSignedContract(department, season, { commitments: [halftime(2)] });
  expect((await put((await offer([halftime(2)])).id)).body.details).toMatchObject({ most: 1 });
  expect((await put((await offer([halftime(1)])).id)).status).toBe(200);
});

test('an offer is set down to what fits, and can be put then', async () => {
  const { director, season, offer, put, halftime } = await aRoom(2);
  await put((await offer([halftime(4)])).id);
  const draft = await offer([halftime(9), { readKindId: season.readKinds.gameBall, counting: 'perGame', reads: 1, rateCents: 7_500 }, { readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 1, readsAtMost: 9, rateCents: 1_000 }]);
  expect((await director.post(`/api/offers/${draft.id}/fit`, {}, { version: draft.version + 1 })).body.code).toBe('stale-version');
  const { status, body } = await director.post(`/api/offers/${draft.id}/fit`, {}, { version: draft.version });
  expect([status, body.readLines.map((line: any) => [line.counting, line.reads])]).toEqual([200, [['perTerm', 2], ['perGame', 1], ['onOccurrence', 0]]]);
  expect(body.readLines.map((line: any) => line.id)).toEqual(draft.readLines.map((line: any) => line.id));
  expect((await put(draft.id)).status).toBe(200);
  expect((await director.post(`/api/offers/${draft.id}/fit`, {}, { version: body.version + 1 })).body.code).toBe('offer-not-a-draft');
});

test('a line that counts game by game leaves out the days of full games where it has to', async () => {
  const { director, season, offer, put, halftime } = await aRoom(3);
  const day = season.games[1]!.playedOn;
  await put((await offer([halftime(3, { startsOn: day, endsOn: day })])).id);
  const draft = await offer([halftime(2, { counting: 'perGame' })]);
  const { body } = await director.post(`/api/offers/${draft.id}/fit`, {}, { version: draft.version });
  expect(body.readLines[0]).toMatchObject({ reads: 2, blackoutDays: [day] });
  expect((await put(draft.id)).status).toBe(200);
});

test('where not one read fits there is nothing to set it down to', async () => {
  const { director, offer, put, halftime } = await aRoom(1);
  await put((await offer([halftime(3)])).id);
  const draft = await offer([halftime(1)]);
  expect(await director.post(`/api/offers/${draft.id}/fit`, {}, { version: draft.version })).toMatchObject({ status: 422, body: { code: 'offer-fits-nothing' } });
});

test('the bookkeeper may look at what fits and puts no offer', async () => {
  const { department, offer, halftime } = await aRoom(1);
  const { id, version } = await offer([halftime(1)]);
  expect((await department.bookkeeper.post(`/api/offers/${id}/promise-checks`)).status).toBe(200);
  expect((await department.bookkeeper.post(`/api/offers/${id}/put`, { putOn: '2026-11-20' })).status).toBe(403);
  expect((await department.bookkeeper.post(`/api/offers/${id}/fit`, {}, { version })).status).toBe(403);
});

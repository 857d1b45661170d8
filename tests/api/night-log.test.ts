import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { TableDevice, aContract, aSeason, aSignedContract } from '../support/season.ts';

const DECEMBER = { overrideReason: 'the test does not wait for the night' };

async function aTable(gameCount = 1, drawn = {}) {
  const department = await aDepartment();
  const season = await aSeason(department, gameCount);
  const contract = await aSignedContract(department, season, drawn);
  const { gameId, nightId } = season.games[0]!;
  const device = new TableDevice();
  const send = (entries: unknown[], deviceId = device.deviceId) => department.announcer.post(`/api/nights/${nightId}/log`, { deviceId, entries });
  return { department, season, contract, gameId, nightId, device, send };
}

test('an entry sent twice is there once, and the same id with other content is kept aside', async () => {
  const { department, contract, gameId, nightId, device, send } = await aTable();
  const read = device.read(contract.commitments[0].id, gameId, 1);
  expect((await send([read])).body.results).toMatchObject([{ id: read.id, status: 'stored', number: 1 }]);
  expect((await send([read])).body.results).toMatchObject([{ status: 'already', number: 1 }]);
  expect((await send([{ ...read, outcome: 'notRead', reason: 'forgotten' }])).body.results).toMatchObject([{ status: 'aside' }]);
  await send([{ ...read, outcome: 'notRead', reason: 'forgotten' }]);
  expect(await department.ask('select count(*) as aside from log_entry_aside where department_id = $1', [department.id])).toEqual([{ aside: 1 }]);
  expect((await department.director.look(`/api/nights/${nightId}/log`)).entries).toHaveLength(1);
});

test('two tables that log at once number their entries 1 to n without a gap', async () => {
  const { department, contract, gameId, nightId, send } = await aTable();
  const tables = [new TableDevice(), new TableDevice(), new TableDevice()];
  const entries = tables.map((table) => [1, 2, 3, 4].map((cue) => table.read(contract.commitments[1].id, gameId, cue)));
  await Promise.all(tables.map((table, place) => send(entries[place]!, table.deviceId)));
  const log = await department.director.look(`/api/nights/${nightId}/log`);
  expect(log.entries.map((entry: { number: number }) => entry.number)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
  expect([log.state, log.toCount]).toEqual(['open', 4]);
});

test('an entry that names what is not of this night is refused alone, the others of the batch are kept', async () => {
  const { department, season, contract, gameId, device, send } = await aTable(2);
  const draft = await aContract(department, season, { title: 'Not signed yet' });
  const elsewhere = await aDepartment();
  const theirs = await aSignedContract(elsewhere, await aSeason(elsewhere, 1));
  const otherGame = season.games[1]!.gameId;
  const results = (
    await send([
      device.read(contract.commitments[0].id, gameId, 1),
      device.read(theirs.commitments[0].id, gameId, 2),
      device.read(draft.commitments[0].id, gameId, 3),
      device.read(contract.commitments[0].id, otherGame, 4),
      device.entry({ kind: 'read', outcome: 'given', gameId, cueKey: `game:${otherGame}/welcome` }),
      device.entry({ kind: 'read', outcome: 'notRead', gameId, cueKey: 'night/injury' }),
      device.entry({ kind: 'read', outcome: 'given', gameId, placementId: gameId, cueKey: 'night/injury' }),
      device.entry({ kind: 'mention', outcome: 'given', gameId, commitmentId: contract.commitments[0].id }),
      device.entry({ kind: 'takenBack', takesBackEntryId: theirs.id }),
      device.entry({ kind: 'note', reason: 'A full house' }),
    ])
  ).body.results;
  expect(results.map((result: { code?: string; status: string }) => result.code ?? result.status)).toEqual([
    'stored', 'unknown-commitment', 'contract-not-signed', 'unknown-game', 'unknown-cue', 'read-without-reason', 'unknown-placement', 'mention-on-schedule', 'unknown-entry', 'stored',
  ]);
  expect(results.every((result: { status: string; sentence?: string }) => result.status === 'stored' || result.sentence)).toBe(true);
});

test('an entry is taken back once, and a taking back stays', async () => {
  const { department, contract, gameId, nightId, device, send } = await aTable();
  const read = device.read(contract.commitments[0].id, gameId, 1);
  const back = device.entry({ kind: 'takenBack', takesBackEntryId: read.id });
  expect((await send([read, back])).body.results.map((one: { status: string }) => one.status)).toEqual(['stored', 'stored']);
  const codes = (await send([device.entry({ kind: 'takenBack', takesBackEntryId: read.id }), device.entry({ kind: 'takenBack', takesBackEntryId: back.id })])).body.results;
  expect(codes.map((one: { code: string }) => one.code)).toEqual(['entry-taken-back-already', 'taking-back-stays']);
  const log = await department.director.look(`/api/nights/${nightId}/log`);
  expect([log.toCount, log.entries[0].takenBack, log.entries[1].sentence]).toEqual([0, true, 'Entry 1 is taken back.']);
});

test('sign-off moves what was read from owed to given once, and the night takes only amendments after it', async () => {
  const { department, contract, gameId, nightId, device, send } = await aTable();
  const { announcer, director } = department;
  const [ball, concession] = contract.commitments.map((one: { id: string }) => one.id);
  const given = device.read(ball, gameId, 1);
  const cut = device.read(concession, gameId, 2, 'cutShort', 'playResumed');
  await send([given, cut, device.read(concession, gameId, 3, 'notRead', 'noTime')]);
  expect((await announcer.post(`/api/nights/${nightId}/sign-off`, DECEMBER)).body.code ?? 'signed').toBe('night-not-yet-held');
  const answers = await Promise.all([1, 2].map(() => director.post(`/api/nights/${nightId}/sign-off`, { ...DECEMBER, decisions: [{ entryId: cut.id, counts: false }] })));
  expect(answers.map((answer) => answer.body.code ?? answer.body.counted).sort()).toEqual([1, 'night-already-signed-off']);
  const { standing } = await director.look(`/api/contracts/${contract.id}`);
  expect([standing.owed, standing.given]).toEqual([13, 1]);
  expect((await send([device.entry({ kind: 'note', reason: 'late' })])).body.results[0].code).toBe('night-already-signed-off');
  expect((await announcer.post(`/api/nights/${nightId}/amend`, { reason: 'found the next morning', deviceId: device.deviceId, entries: [device.entry({ kind: 'note', reason: 'late' })] })).status).toBe(403);
  const amended = await director.post(`/api/nights/${nightId}/amend`, {
    reason: 'found the next morning',
    deviceId: device.deviceId,
    entries: [device.read(concession, gameId, 4), device.entry({ kind: 'takenBack', takesBackEntryId: given.id })],
  });
  expect(amended.body).toMatchObject({ counted: 1, released: 1 });
  const after = await director.look(`/api/contracts/${contract.id}`);
  expect(after.commitments.map((one: { standing: { given: number } }) => one.standing.given)).toEqual([0, 1]);
  expect((await director.look(`/api/games/${gameId}`)).status).toBe('played');
});

test('a bank shot that is mentioned counts once, however many tables logged it, and goes when it is taken back', async () => {
  const bank = await aDepartment();
  const season = await aSeason(bank, 1);
  const contract = await aSignedContract(bank, season, {
    priceCents: 20_000,
    commitments: [{ readKindId: season.readKinds.bankShot, counting: 'onOccurrence', readsAtLeast: 1, readsAtMost: 9, rateCents: 1000 }],
  });
  const { gameId, nightId } = season.games[0]!;
  const [one, other] = [new TableDevice(), new TableDevice()];
  const shot = { kind: 'happening', gameId, teamId: season.teamId, playerNumber: '3', period: '2nd quarter', detail: { happening: 'bankShot' } };
  const [first, second] = [one.entry({ ...shot, clock: '4:10' }), other.entry({ ...shot, clock: '4:12' })];
  const third = one.entry({ ...shot, clock: '1:05' });
  const mention = (device: TableDevice, happeningEntryId: string) =>
    device.entry({ kind: 'mention', outcome: 'given', gameId, commitmentId: contract.commitments[0].id, happeningEntryId });
  await bank.announcer.make(`/api/nights/${nightId}/log`, { deviceId: one.deviceId, entries: [first, third, mention(one, first.id), mention(one, third.id)] });
  await bank.announcer.make(`/api/nights/${nightId}/log`, { deviceId: other.deviceId, entries: [second, mention(other, second.id)] });
  expect((await bank.director.make(`/api/nights/${nightId}/sign-off`, DECEMBER)).counted).toBe(2);
  expect((await bank.director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ promised: 2, given: 2, owed: 0 });
  const amended = await bank.director.make(`/api/nights/${nightId}/amend`, { reason: 'found the next morning', deviceId: one.deviceId, entries: [one.entry({ kind: 'takenBack', takesBackEntryId: third.id })] });
  expect([amended.counted, amended.released]).toEqual([0, 1]);
  expect((await bank.director.look(`/api/contracts/${contract.id}`)).standing).toMatchObject({ given: 1, extra: 0 });
});

test('a device asks for what is new since the entry it has last, in pieces, with the device and the place of each', async () => {
  const { department, nightId, gameId, contract, device, send } = await aTable();
  const read = device.read(contract.commitments[0].id, gameId, 1);
  await send([read, device.entry({ kind: 'note', reason: 'A full house' }), device.entry({ kind: 'takenBack', takesBackEntryId: read.id })]);
  const after = async (query: string) => department.announcer.look(`/api/nights/${nightId}/log?${query}`);
  expect(await after('after=0&limit=2')).toMatchObject({ lastNumber: 3, state: 'open', entries: [{ number: 1, deviceId: device.deviceId, sequence: 1, sponsorName: 'Juniper & Pike Hardware' }, { number: 2, sequence: 2 }] });
  expect(await after('after=2')).toMatchObject({ lastNumber: 3, entries: [{ number: 3, takesBackEntryId: read.id, sentence: 'Entry 1 is taken back.' }] });
  expect((await after('after=3')).entries).toEqual([]);
  expect((await department.announcer.get(`/api/nights/${nightId}/log?after=-1`)).status).toBe(400);
  expect((await after('limit=1')).entries).toHaveLength(3);
});

test('every kind of entry is taken with what it has to say, and refused alone without it', async () => {
  const { department, season, nightId, gameId, device, send } = await aTable();
  const at = { gameId, teamId: season.opponentTeamId, period: '1st quarter' };
  const whole = [
    { kind: 'score', ...at, detail: { points: 6, what: 'touchdown' } }, { kind: 'serve', ...at }, { kind: 'batter', ...at, playerNumber: '4' },
    { kind: 'bout', ...at, detail: { weightClass: '132', how: 'fall', points: 6 } }, { kind: 'book', gameId, detail: { agrees: true } },
    { kind: 'hold', detail: { state: 'begun', situation: 'weather' } }, { kind: 'timeMoved', gameId, detail: { what: 'start', clock: '19:12' } },
    { kind: 'worn', ...at, playerNumber: '14', detail: { name: 'Fern Gallagher', sayAs: 'fern GAL-uh-her' } },
    { kind: 'request', detail: { requestKind: 'vehicle', fields: { plate: 'ABC 123' } } }, { kind: 'requestAnswered', detail: { requestId: 'one', answer: 'approved' } },
  ];
  expect((await send(whole.map((fields) => device.entry(fields)))).body.results.map((one: { status: string }) => one.status)).toEqual(whole.map(() => 'stored'));
  const empty = ['score', 'serve', 'batter', 'book', 'hold', 'timeMoved', 'worn', 'request', 'requestAnswered'];
  expect((await send(empty.map((kind) => device.entry({ kind, gameId })))).body.results.map((one: { code: string }) => one.code)).toEqual([
    'play-without-team', 'play-without-team', 'play-without-team', 'book-without-answer', 'hold-without-state', 'moved-without-time', 'worn-without-player', 'request-without-kind', 'answer-without-request',
  ]);
  const { entries } = await department.director.look(`/api/nights/${nightId}/log`);
  expect(entries.map((entry: { sentence: string }) => entry.sentence).filter((sentence: string) => /undefined|null|NaN|\[object/.test(sentence))).toEqual([]);
});

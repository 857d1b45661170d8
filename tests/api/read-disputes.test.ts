import { v7 } from 'uuid';
import { expect, test } from 'vitest';
import { aDepartment } from '../support/department.ts';
import { aShortContract } from '../support/short-contract.ts';
import type { ShortContract } from '../support/short-contract.ts';

/** As the sponsor's page writes it down. */
async function asked({ department, season, contractId, commitmentId }: ShortContract, entryId: string | null): Promise<{ id: string; version: number }> {
  const id = v7();
  const { gameId, nightId } = season.games[0]!;
  await department.ask(
    `insert into read_dispute (department_id, id, sponsor_id, contract_id, commitment_id, night_id, game_id, entry_id, asked_by_name, what, asked_at)
      values ($1, $2, $3, $4, $5, $6, $7, $8, 'Hazel Juniper', 'We sat in the front row and did not hear it.', now())`,
    [department.id, id, season.sponsorId, contractId, commitmentId, nightId, gameId, entryId],
  );
  return { id, version: 1 };
}

const givenEntry = async ({ department, commitmentId }: ShortContract): Promise<string> => {
  const [row] = await department.ask<{ entry_id: string }>('select entry_id from counted_read where commitment_id = $1 order by cue_key limit 1', [commitmentId]);
  return row!.entry_id;
};

test('a question about a read is answered once: it stands, and the director’s list says so', async () => {
  const short = await aShortContract(await aDepartment());
  const { director, bookkeeper } = short.department;
  const { id, version } = await asked(short, await givenEntry(short));
  expect((await director.look('/api/read-disputes?state=open')).data).toMatchObject([{ id, sponsorName: 'Juniper & Pike Hardware', heldOn: '2026-12-04', gameLabel: 'Herons at Kestrels', windowName: 'Halftime', what: 'We sat in the front row and did not hear it.' }]);
  const answer = (form: object, v = version) => director.post(`/api/read-disputes/${id}/answer`, form, { version: v });
  expect((await answer({ outcome: 'added', answer: 'Here it is.' })).body.code).toBe('dispute-of-a-read');
  const answered = await answer({ outcome: 'stands', answer: 'It was read at halftime; the recording has it.' });
  expect(answered.body).toMatchObject({ state: 'answered', outcome: 'stands', version: 2 });
  expect((await answer({ outcome: 'takenBack', answer: 'No.' }, 2)).body.code).toBe('dispute-answered-already');
  expect((await answer({ outcome: 'takenBack', answer: 'No.' }, 1)).status).toBe(412);
  expect((await bookkeeper.look(`/api/read-disputes?contractId=${short.contractId}&state=answered`)).total).toBe(1);
  expect(await short.standing()).toMatchObject({ given: 33 });
});

test('where the sponsor is right the read is taken back by an amendment of its night, and is owed again', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const { id, version } = await asked(short, await givenEntry(short));
  const answered = await director.post(`/api/read-disputes/${id}/answer`, { outcome: 'takenBack', answer: 'You are right: the microphone was off.' }, { version });
  expect([answered.status, answered.body.outcome]).toEqual([200, 'takenBack']);
  expect(await short.standing()).toMatchObject({ given: 32, owed: 8, earnedCents: 80_000 });
  expect((await director.look(`/api/nights/${short.season.games[0]!.nightId}/tidy`)).amendments).toMatchObject([{ reason: 'A sponsor asked: You are right: the microphone was off.', released: 1 }]);
});

test('a read that the log does not have is added, and what is not there cannot be taken back', async () => {
  const short = await aShortContract(await aDepartment());
  const { director } = short.department;
  const { id, version } = await asked(short, null);
  const answer = (form: object) => director.post(`/api/read-disputes/${id}/answer`, form, { version });
  expect((await answer({ outcome: 'takenBack', answer: 'No.' })).body.code).toBe('dispute-without-read');
  expect((await answer({ outcome: 'added', answer: 'It was read, and nobody logged it.' })).status).toBe(200);
  expect(await short.standing()).toMatchObject({ given: 34, owed: 6 });
});

import { v7 } from 'uuid';
import { describe, expect, onTestFinished, test } from 'vitest';
import { anApplication, application } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import { aContract, aSeason, aSignedContract } from '../support/season.ts';

/** A run answers before it is through; this asks until it is. */
async function finished({ director }: Department, id: string): Promise<any> {
  for (let tries = 0; tries < 200; tries += 1) {
    const run = await director.look(`/api/statement-runs/${id}`);
    if (run.state === 'done' || run.state === 'cancelled') return run;
    await new Promise((wait) => setTimeout(wait, 50));
  }
  throw new Error('the run does not come to its end');
}

describe('a run of statements', () => {
  async function threeContracts() {
    const department = await aDepartment();
    const season = await aSeason(department, 0);
    const ids: string[] = [];
    for (const title of ['Game balls', 'Concession reads', 'Both']) {
      const draft = await aContract(department, season, { title });
      await department.director.make(`/api/contracts/${draft.id}/sign`, { signedOn: '2026-11-20', signedByName: 'Hazel Juniper' });
      ids.push(draft.id);
    }
    await aContract(department, season, { title: 'Not signed' });
    return { department, season, ids };
  }

  test('gives each signed contract of the season its statement under one seal, and says of those that have nothing new that theirs stands', async () => {
    const { department, season, ids } = await threeContracts();
    await department.director.make(`/api/contracts/${ids[0]}/performance-statements`, {});
    const run = await finished(department, (await department.director.make('/api/statement-runs', { seasonId: season.seasonId })).id);
    expect(run).toMatchObject({ state: 'done', contracts: 3, done: 3, issued: 2, theSame: 1, failed: 0, isRunning: false });
    expect(run.lines.map((line: any) => [line.contractId, line.outcome, line.number, line.why]).sort()).toEqual(
      [[ids[0], 'theSame', null, 'Nothing has changed since statement 1. It stands.'], [ids[1], 'issued', 1, null], [ids[2], 'issued', 1, null]].sort(),
    );
    const { data } = await department.director.look(`/api/performance-statements?runId=${run.id}`);
    expect(new Set(data.map((one: any) => one.sealNumber)).size).toBe(1);
  });

  test('that is cancelled stops, and cannot be cancelled twice', async () => {
    const { department, season } = await threeContracts();
    const { id } = await department.director.make('/api/statement-runs', { seasonId: season.seasonId });
    const answer = await department.director.post(`/api/statement-runs/${id}/cancel`);
    const run = await finished(department, id);
    if (answer.status === 200) expect(run.state).toBe('cancelled');
    else expect([answer.body.code, run.state]).toEqual(['statement-run-over', 'done']);
    expect((await department.director.post(`/api/statement-runs/${id}/cancel`)).body.code).toBe('statement-run-over');
  });

  test('over a season without a signed contract is refused', async () => {
    const department = await aDepartment();
    const season = await aSeason(department, 0);
    const refused = await department.director.post('/api/statement-runs', { seasonId: season.seasonId });
    expect([refused.status, refused.body.code]).toEqual([422, 'statement-of-nobody']);
  });

  test('started twice at once gives no contract two statements', async () => {
    const { department, season } = await threeContracts();
    const start = async () => finished(department, (await department.director.make('/api/statement-runs', { seasonId: season.seasonId })).id);
    const runs = await Promise.all([start(), start()]);
    expect(runs.reduce((sum, run) => sum + run.issued, 0)).toBe(3);
    expect((await department.director.look('/api/performance-statements')).data.map((one: any) => one.number)).toEqual([1, 1, 1]);
  });

  test('at which another server is too counts no contract twice, and gives it no second statement', async () => {
    const { department, season } = await threeContracts();
    const other = await application.ownerPool.connect();
    try {
      await other.query(`begin; set local app.department_id = '${department.id}'`);
      await other.query('select from contract where department_id = $1 for update', [department.id]);
      const { rows: [mine] } = await other.query<{ xid: string }>('select pg_current_xact_id()::xid::text as xid');
      const { id } = await department.director.make('/api/statement-runs', { seasonId: season.seasonId });
      const isWaiting = async () => (await application.ownerPool.query('select 1 from pg_locks where not granted and transactionid::text = $1', [mine!.xid])).rowCount! > 0;
      for (let tries = 0; tries < 200 && !(await isWaiting()); tries += 1) await new Promise((wait) => setTimeout(wait, 50));
      await other.query(
        `insert into performance_statement (department_id, id, contract_id, term_id, number, run_id, through_on, issued_on, content, content_digest, seal_number, seal_head)
           select department_id, gen_random_uuid(), contract_id, id, 1, $2, '2026-11-27', '2026-11-27', '{}', 'read a moment later', 1, 'head' from term where department_id = $1 and state <> 'draft'`,
        [department.id, id],
      );
      await other.query('commit');
      expect(await finished(department, id)).toMatchObject({ contracts: 3, done: 3, issued: 3, theSame: 0, failed: 0 });
    } finally {
      other.release(true);
    }
  });

  test('that a restart broke off is gone on with when the server is up again', async () => {
    const own = await anApplication();
    onTestFinished(() => own.stop());
    const department = await aDepartment({ baseUrl: own.baseUrl, pool: own.webPool });
    const season = await aSeason(department, 0);
    const { id: contractId } = await aSignedContract(department, season);
    const startAgain = await own.stopServer();
    const runId = v7();
    await department.ask(
      `insert into statement_run (department_id, id, season_id, through_on, issued_on, state, contract_ids, asked_at) values ($1, $2, $3, '2026-11-27', '2026-11-27', 'running', array[$4]::uuid[], now())`,
      [department.id, runId, season.seasonId, contractId],
    );
    await startAgain();
    expect(await finished(department, runId)).toMatchObject({ state: 'done', contracts: 1, issued: 1, failed: 0 });
  }, 120_000);
});

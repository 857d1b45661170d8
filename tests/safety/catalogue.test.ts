import { expect, test } from 'vitest';
import { ownerPool, webPool } from '../support/database.ts';

/** Known before a department is, so without a wall; each is named here on purpose. */
const BEFORE_A_DEPARTMENT = ['department', 'person', 'session', 'sign_in_attempt', 'schema_migration'];
/** A second policy: my own memberships, the link whose token I bear. */
const SECOND_POLICIES = { membership: ['my_own'], link: ['bearer'] } as Record<string, string[]>;
const HISTORY = [
  'amendment', 'application', 'audit_row', 'benefit_delivery', 'billing_run', 'billing_run_line', 'company_exception', 'contract_assignment', 'contract_hold', 'credit_memo',
  'credit_memo_line', 'deposit_slip', 'deposit_slip_line', 'exemption_file', 'goods_delivery', 'idempotency_record', 'invoice', 'invoice_discount', 'invoice_line',
  'invoice_void', 'journal_batch', 'journal_batch_entry', 'ledger_entry', 'ledger_event', 'log_entry', 'log_entry_aside', 'message', 'message_event', 'month_close',
  'night_attendance', 'night_settlement', 'packet_issue', 'payment', 'payment_return', 'performance_statement', 'posting', 'receipt', 'refund', 'script_version', 'seal', 'sign_off', 'sponsor_contact', 'write_off',
];

async function rows<T extends Record<string, any>>(sql: string): Promise<T[]> {
  return (await ownerPool.query(sql)).rows as T[];
}

const tables = await rows<{ name: string; forced: boolean; enabled: boolean }>(
  `select relname as name, relforcerowsecurity as forced, relrowsecurity as enabled from pg_class
    where relkind in ('r', 'p') and relnamespace = 'public'::regnamespace order by relname`,
);
const tenantTables = tables.filter((table) => !BEFORE_A_DEPARTMENT.includes(table.name));

test('every table is a tenant table or is named as one that is known before a department', async () => {
  const withDepartment = await rows<{ name: string }>(
    `select relname as name from pg_class join pg_attribute on attrelid = pg_class.oid where relkind = 'r' and relnamespace = 'public'::regnamespace and attname = 'department_id'`,
  );
  const names = withDepartment.map((row) => row.name);
  expect(tenantTables.filter((table) => !names.includes(table.name))).toEqual([]);
  expect(tenantTables.length).toBeGreaterThan(40);
});

test('row-level security is enabled and forced on every tenant table', () => {
  expect(tenantTables.filter((table) => !table.enabled || !table.forced).map((table) => table.name)).toEqual([]);
});

test('each wall is the one policy that one helper makes, reading and writing', async () => {
  const policies = await rows<{ tablename: string; policyname: string; qual: string; with_check: string; cmd: string }>('select * from pg_policies');
  const wall = policies.filter((policy) => policy.policyname === 'department');
  expect(wall.map((policy) => policy.tablename).sort()).toEqual(tenantTables.map((table) => table.name).sort());
  for (const policy of wall) {
    expect(policy.cmd).toBe('ALL');
    for (const side of [policy.qual, policy.with_check]) expect(side).toMatch(/^\(department_id = \( SELECT current_department\(\) AS current_department\)\)$/);
  }
  const second = policies.filter((policy) => policy.policyname !== 'department');
  expect(second.map((policy) => [policy.tablename, policy.policyname, policy.cmd]).sort()).toEqual(
    Object.entries(SECOND_POLICIES).flatMap(([table, names]) => names.map((name) => [table, name, 'SELECT'])).sort(),
  );
});

test('the department comes first in every primary key, unique constraint and index of a tenant table', async () => {
  const allowed = ['session_person', 'membership_person', 'link_token'];
  const indexes = await rows<{ name: string; table: string; first: string }>(
    `select index.relname as name, pg_class.relname as table, attname as first from pg_index
       join pg_class index on index.oid = indexrelid join pg_class on pg_class.oid = indrelid
       join pg_attribute on attrelid = indrelid and attnum = indkey[0] where pg_class.relnamespace = 'public'::regnamespace`,
  );
  const wrong = indexes.filter((index) => !BEFORE_A_DEPARTMENT.includes(index.table) && index.first !== 'department_id' && !allowed.includes(index.name));
  expect(wrong).toEqual([]);
});

test('every foreign key to a tenant table carries the department', async () => {
  const keys = await rows<{ conname: string; from: string; to: string; columns: string[] }>(
    `select conname, conrelid::regclass::text as from, confrelid::regclass::text as to,
       (select array_agg(attname::text order by place) from unnest(conkey) with ordinality as key(number, place) join pg_attribute on attrelid = conrelid and attnum = key.number) as columns
     from pg_constraint where contype = 'f' and connamespace = 'public'::regnamespace`,
  );
  expect(keys.length).toBeGreaterThan(60);
  const wrong = keys.filter((key) => !BEFORE_A_DEPARTMENT.includes(key.to) && key.columns[0] !== 'department_id');
  expect(wrong).toEqual([]);
});

test('the runtime login owns nothing, is no superuser and does not bypass the walls', async () => {
  const [login] = (await webPool.query('select rolname, rolsuper, rolbypassrls, rolcreaterole, rolcreatedb from pg_roles where rolname = current_user')).rows;
  expect(login).toMatchObject({ rolsuper: false, rolbypassrls: false, rolcreaterole: false, rolcreatedb: false });
  const owned = (await webPool.query('select relname from pg_class where pg_get_userbyid(relowner) = current_user')).rows;
  expect(owned).toEqual([]);
  await expect(webPool.query('create table intruder ()')).rejects.toThrow(/permission denied/);
});

test('the queues of jobs lie in a schema of their own, which the runtime login may use and not change', async () => {
  const [may] = (await webPool.query(`select has_schema_privilege('job', 'usage') as uses, has_schema_privilege('job', 'create') as creates`)).rows;
  expect(may).toEqual({ uses: true, creates: false });
  expect(await rows(`select name, dead_letter from job.queue order by name`)).toEqual([{ name: 'letter', dead_letter: 'letter-given-up' }, { name: 'letter-given-up', dead_letter: null }]);
  await expect(webPool.query(`select job.create_queue('intruder', '{}')`)).rejects.toThrow(/permission denied/);
});

test('history can be added to and read, nothing else, by grant and by trigger', async () => {
  const stamped = await rows<{ name: string }>(`select relname as name from pg_trigger join pg_class on pg_class.oid = tgrelid where tgname = 'append_only' order by 1`);
  expect(stamped.map((row) => row.name)).toEqual(HISTORY);
  for (const table of HISTORY) {
    const [grants] = (await webPool.query(`select has_table_privilege($1, 'insert') as ins, has_table_privilege($1, 'update') as upd, has_table_privilege($1, 'delete') as del, has_table_privilege($1, 'truncate') as trunc`, [table])).rows;
    expect([table, grants]).toEqual([table, { ins: true, upd: false, del: false, trunc: false }]);
  }
  const department = '0190a000-0000-7000-8000-00000000aaaa';
  const client = await ownerPool.connect();
  try {
    await client.query('begin');
    await client.query(`insert into department (id, name, zone) values ('${department}', 'Port Ansel', 'America/Denver')`);
    await client.query(`set local app.department_id = '${department}'`);
    await client.query(`insert into seal (department_id, id, number, covers_from, covers_to, row_count, rows_digest, head) values ('${department}', gen_random_uuid(), 1, now(), now(), 0, '', '')`);
    await expect(client.query('update seal set row_count = 7')).rejects.toThrow(/history is added to, never edited/);
  } finally {
    await client.query('rollback');
    client.release();
  }
});

test('without a scope a tenant table is an error, not an empty list', async () => {
  await expect(webPool.query('select * from school')).rejects.toThrow(/app\.department_id/);
});

test('a row of one department cannot be written into another', async () => {
  const client = await webPool.connect();
  try {
    await client.query(`begin; set local app.department_id = '0190a000-0000-7000-8000-00000000bbbb'`);
    await expect(
      client.query(`insert into sponsor_category (department_id, id, name) values ('0190a000-0000-7000-8000-00000000cccc', gen_random_uuid(), 'Hardware')`),
    ).rejects.toThrow(/row-level security/);
  } finally {
    await client.query('rollback');
    client.release();
  }
});

test('no view reads with its owner’s rights and no sequence hands out business numbers', async () => {
  expect(await rows(`select relname from pg_class where relkind in ('v', 'm') and relnamespace = 'public'::regnamespace and not coalesce(reloptions, '{}') @> '{security_invoker=true}'`)).toEqual([]);
  expect(await rows(`select relname from pg_class where relkind = 'S' and relnamespace = 'public'::regnamespace`)).toEqual([]);
});

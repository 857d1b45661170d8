import type pg from 'pg';
import { beforeAll, expect, test } from 'vitest';
import { checkBooks } from '../../server/reports/books.ts';
import { aClosedContract } from '../support/closed-contract.ts';
import { ownerPool } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import type { Department } from '../support/department.ts';
import type { Season } from '../support/season.ts';
import { everyObject } from './wall-objects.ts';

/** Which check, what is wrong, the tables that are let go of what keeps them, and the one row that the owner of the database writes there. */
const WRONG: readonly [id: string, what: string, tables: string, sql: string][] = [
  ['I1', 'a log entry is missing', 'log_entry', `update log_entry set number = number + 100 where id = (select id from log_entry limit 1)`],
  ['I2', 'an entry of the money stands in another journal', 'ledger_entry', `update ledger_entry set journal = 'agreed' where id = (select id from ledger_entry as entry where journal = 'money'
    and not exists (select from ledger_entry as other where other.event_id = entry.event_id and other.journal = 'agreed') limit 1)`],
  ['I3', 'a number of an invoice was left out', 'invoice', `update invoice set series_number = series_number + 50 where id = (select id from invoice where kind <> 'opening' limit 1)`],
  ['I4', 'an installment stands on two lines', 'invoice_line', `insert into invoice_line select (jsonb_populate_record(line, jsonb_build_object('id', gen_random_uuid(), 'place', 90))).*
    from invoice_line as line where traced_to ? 'installment' limit 1`],
  ['I5', 'a line of an invoice is a cent more', 'invoice_line', `update invoice_line set amount_cents = amount_cents + 1 where id = (select id from invoice_line limit 1)`],
  ['I5', 'more is applied to an invoice than its gross', 'application', `insert into application select (jsonb_populate_record(one, jsonb_build_object('id', gen_random_uuid(), 'amount_cents', 90000000))).*
    from application as one where takes_back_application_id is null limit 1`],
  ['I6', 'a promised read is neither owed nor given', 'posting', `update posting set to_account = 'extra' where id = (select id from posting where journal = 'reads' and to_account = 'owed' limit 1)`],
  ['I7 I11', 'a posting is not what happened', 'posting', `update posting set amount = amount + 1 where id = (select id from posting where journal = 'agreed' limit 1)`],
  ['I8', 'a table points across departments', '', `create table wrong (department_id uuid, theirs uuid, school_id uuid, foreign key (theirs, school_id) references school (department_id, id))`],
  ['I9', 'a payment was rewritten', 'payment', `update payment set note = 'Rewritten' where id = (select id from payment limit 1)`],
  ['I10', 'a failure was kept as an answer', 'idempotency_record', `update idempotency_record set status = 500 where id = (select id from idempotency_record limit 1)`],
  ['I12', 'a memo credits a cent more tax', 'credit_memo', `update credit_memo set tax_cents = tax_cents + 1, gross_cents = gross_cents + 1 where id = (select id from credit_memo limit 1)`],
  ['I13', 'a cent more was applied than booked', 'application', `update application set amount_cents = amount_cents - 1 where id = (select id from application where amount_cents > 1 limit 1)`],
  ['I14', 'something was booked after its month was closed', 'month_close', `insert into month_close (department_id, id, month, recorded_at) values (current_department(), gen_random_uuid(), '2026-11-01', '2026-01-01')`],
  ['I15', 'a contract is closed and owes reads', 'term', `update term set closed_on = '2026-12-31' where id = (select id from term where signed_on is not null and closed_on is null limit 1)`],
  ['I15', 'an invoice of a closed contract is open', 'application', `delete from application using invoice, term where invoice.id = application.invoice_id and term.contract_id = invoice.contract_id and term.closed_on is not null`],
  ['I16', 'an invoice was given up without an event', 'write_off', `update write_off set step = 'writtenOff' where step = 'asked'`],
  ['I17', 'a check left the drawer without a deposit slip', 'payment', `update payment set drawer = 'cash' where drawer = 'undepositedReceipts'`],
  ['I18', 'a hold was lifted before it began', 'contract_hold', `update contract_hold set held_on = held_on - 10 where lifts_hold_id is not null`],
  ['I19', 'a read is claimed that nobody counted', '', `insert into counted_read (department_id, id, night_id, game_id, cue_key, entry_id, commitment_id, event_id)
    select current_department(), gen_random_uuid(), gen_random_uuid(), gen_random_uuid(), 'wrong', (select id from log_entry limit 1), (select id from commitment limit 1), (select id from ledger_event limit 1)`],
  ['I30', 'a journal batch is missing', 'journal_batch', `update journal_batch set series_number = series_number + 1`],
  ['I31', 'a journal batch says a cent more', 'journal_batch', `update journal_batch set debit_cents = debit_cents + 1`],
];

let department: Department;

beforeAll(async () => {
  department = await aDepartment({ checksBooks: false });
  const objects = await everyObject(department);
  const { director } = department;
  const kinds = (await director.look('/api/read-kinds')).data as { id: string; timing: string }[];
  const season = {
    ...(await director.look(`/api/seasons/${objects['seasons/id']}`)), seasonId: objects['seasons/id'], sponsorId: objects['sponsors/id'], sellerId: objects['sellers/id'], payerId: objects['payers/id'],
    readKinds: { concession: kinds.find((kind) => kind.timing === 'scheduled')!.id },
  };
  await aClosedContract(department, season as Season);
  await director.make(`/api/contracts/${objects['contracts/id']}/hold`, { reason: 'Unpaid since January' });
  await director.make(`/api/contracts/${objects['contracts/id']}/lift-hold`, { reason: 'Paid' });
});

/** The findings after a wrong row, which is not kept. */
async function findingsAfter(tables: string, sql: string) {
  const client: pg.PoolClient = await ownerPool.connect();
  try {
    await client.query(`begin; set local app.department_id = '${department.id}'`);
    for (const table of tables.split(' ').filter((name) => name !== '')) await client.query(`alter table ${table} disable trigger user`);
    const { rowCount } = await client.query(sql);
    const findings = await checkBooks(async (asked, parameters) => (await client.query(asked, [...parameters])).rows, department.id);
    return { rowCount, findings };
  } finally {
    await client.query('rollback');
    client.release();
  }
}

test('the books hold, every check has a number of its own and says in one sentence what holds', async () => {
  const { findings } = await findingsAfter('', 'select 1');
  expect(findings.filter((finding) => finding.broken.length > 0)).toEqual([]);
  const ids = findings.flatMap(({ id }) => id.split(' '));
  expect(ids).toEqual([...new Set(ids)]);
  expect(findings.filter(({ sentence }) => !/^(?=.{30,})[a-z].*[a-z]$/.test(sentence))).toEqual([]);
});

test.each(WRONG)('%s finds that %s', async (id, what, tables, sql) => {
  const { rowCount, findings } = await findingsAfter(tables, sql);
  if (!sql.startsWith('create')) expect([what, rowCount]).not.toEqual([what, 0]);
  expect(findings.filter((finding) => finding.broken.length > 0).map((finding) => finding.id)).toContain(id);
});

test('every check of the books is shown to find something wrong', async () => {
  const { findings } = await findingsAfter('', 'select 1');
  const shown = new Set(WRONG.map(([id]) => id));
  expect(findings.map(({ id }) => id).filter((id) => !shown.has(id))).toEqual([]);
});

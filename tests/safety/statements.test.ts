import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { ownerPool, statementsFolder } from '../support/database.ts';
import { aDepartment } from '../support/department.ts';
import { aSeason } from '../support/season.ts';

/** `session_of` sets its own scope; the catalogue is nobody's. */
const AROUND = /session_of|pg_trigger|pg_settings|information_schema/;

test('every statement of the whole run that touches a tenant table names its department', async () => {
  await aSeason(await aDepartment(), 1);
  const tables = (await ownerPool.query(
    `select relname as name from pg_class join pg_attribute on attrelid = pg_class.oid where relkind = 'r' and relnamespace = 'public'::regnamespace and attname = 'department_id' and relname <> 'session'`,
  )).rows.map((row) => row.name as string);
  const touches = new RegExp(`\\b(?:from|join|into|update)\\s+"?(?:${tables.join('|')})"?\\b`, 'i');
  const statements = readdirSync(statementsFolder).flatMap((file) => readFileSync(join(statementsFolder, file), 'utf8').split('\n'));
  const touching = statements.filter((statement) => touches.test(statement) && !AROUND.test(statement));
  expect(touching.length).toBeGreaterThan(20);
  const NAMES_IT = /"?department_id"?\s*(?:=\s*\$\d|=\s*"?\w+"?\."?department_id|,|\))|^insert into "?\w+"?\s*\("?department_id|membership\.person_id = \$1/i;
  expect(touching.filter((statement) => !NAMES_IT.test(statement)).slice(0, 10)).toEqual([]);
});

test('no statement carries a value of a form in its text', async () => {
  const statements = readdirSync(statementsFolder).flatMap((file) => readFileSync(join(statementsFolder, file), 'utf8').split('\n'));
  expect(statements.filter((statement) => /Juniper|Tamarack|Alder Fieldhouse/.test(statement))).toEqual([]);
});

test('rows go into a tenant table as plain values, never out of a query of their own', async () => {
  const statements = readdirSync(statementsFolder).flatMap((file) => readFileSync(join(statementsFolder, file), 'utf8').split('\n'));
  // The queues of jobs are a library's, in a schema of their own.
  const inserts = statements.filter((statement) => /^insert into (?!job\.)/i.test(statement.trim()));
  expect(inserts.length).toBeGreaterThan(10);
  expect(inserts.filter((statement) => !/ values ?\(/i.test(statement))).toEqual([]);
});
